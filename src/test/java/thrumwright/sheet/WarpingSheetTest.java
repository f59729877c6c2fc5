package thrumwright.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import thrumwright.cord.PathSection;
import thrumwright.drawing.loom.WarpWay;
import thrumwright.measure.Length;
import thrumwright.measure.Phrases;
import thrumwright.measure.Sett;
import thrumwright.measure.UnitSystem;
import thrumwright.piece.Habits;
import thrumwright.piece.LoomKind;
import thrumwright.piece.LoomKinds;
import thrumwright.piece.Piece;
import thrumwright.piece.Sheds;
import thrumwright.piece.Warp;
import thrumwright.plan.Plan;
import thrumwright.testing.Pieces;
import thrumwright.testing.RandomPieces;

/** How a warp is put on, on each kind of loom. */
class WarpingSheetTest {
    private static final Piece PANEL = Pieces.panel();

    private static String text(Piece piece) {
        WarpingSheet sheet = WarpingSheet.of(Plan.of(piece), Locale.UK);
        return sheet.facts().stream()
                        .map(fact -> fact.name() + ": " + fact.value())
                        .collect(Collectors.joining("\n"))
                + sheet.steps().stream().map(WarpingSheet.WarpStep::text).collect(Collectors.joining("\n"));
    }

    private static Piece on(String kind) {
        return PANEL.withLoom(PANEL.loom().withKind(LoomKinds.of(kind, PANEL)).leavingAsUsual());
    }

    @Test
    void whatIsCountedFollowsTheKind() {
        assertThat(text(on("bar-to-bar"))).contains("To count: 72 ends", "an eight, seen from the side");
        assertThat(text(on("round-frame"))).contains("To count: 72 turns", "isn’t woven", "behind can’t be mistaken");
        assertThat(text(on("joining-bar"))).contains("To count: 72 ends", "5 cm above the lower bar");
        assertThat(text(on("nails"))).contains("To count: 36 pairs", "one of every 2");
        assertThat(text(on("notches"))).contains("To count: 72 ends", "each one");
        assertThat(text(on("rollers"))).contains("To count: 36 pairs", "front bar");
    }

    /** Nothing is said of rods or lashings where there are none. */
    @Test
    void nailsHaveNoRods() {
        Piece nails = on("nails");
        String all = text(nails)
                + PlainText.of(
                        StepSheet.of(Plan.of(nails), Locale.UK),
                        thrumwright.measure.Phrases.of("thrumwright.sheet.steps", Locale.UK));
        assertThat(all)
                .doesNotContainIgnoringCase("lashing")
                .doesNotContain(" rod")
                .doesNotContain("lower bar");
    }

    @Test
    void itIsTextToo() {
        for (LoomKind kind : LoomKinds.all(PANEL)) {
            Piece piece = on(kind.key());
            WarpingSheet sheet = WarpingSheet.of(Plan.of(piece), Locale.UK);
            String text = WarpingText.of(sheet);
            assertThat(text.lines()).allMatch(line -> line.length() <= 80);
            String words = text.replaceAll("\\s+", " ");
            assertThat(words).startsWith(sheet.title());
            sheet.steps().forEach(step -> assertThat(words).contains(step.number() + " " + step.title() + " "));
            assertThat(words).contains(sheet.counted());
        }
    }

    @Test
    void marksAreCountedInInchesOrTwoCentimetres() {
        assertThat(WarpMarks.of(PANEL).ends()).containsOnly(6).hasSize(12);
        Piece inches = PANEL.withHabits(Habits.usual(UnitSystem.INCHES))
                .withWarp(new Warp(Length.parse("5 in"), Sett.parse("7.5/in"), "cord"));
        assertThat(WarpMarks.of(inches).ends()).containsExactly(8, 7, 8, 7, 8);
        assertThat(WarpMarks.of(inches).runs()).hasSize(5);
    }

    @Test
    void marksHoldAllEndsOfAnyWarp() {
        for (int seed = 0; seed < 40; seed++) {
            Piece piece = new RandomPieces(seed).next();
            int ends = WarpMarks.of(piece).ends().stream()
                    .mapToInt(Integer::intValue)
                    .sum();
            assertThat(ends).isEqualTo(piece.warp().ends());
            assertThat(text(piece)).doesNotContain("{");
        }
    }

    @Test
    void oddAndEvenMeetTheEdgesDifferently() {
        assertThat(text(PANEL)).contains("even: a pick that goes over the end at one edge goes under");
        Piece odd = PANEL.withWarp(new Warp(Length.parse("25 cm"), Sett.parse("3/cm"), "cord"));
        assertThat(odd.warp().ends()).isEqualTo(75);
        assertThat(text(odd)).contains("odd: a pick meets the ends at both edges alike");
    }

    /** The picture is the taut cord itself: once round two bars it is as long as an end. */
    @Test
    void theDrawnWayIsTheCord() {
        double belt = 2 * 100 + 2 * Math.PI * 7;
        double drawn =
                WarpWay.of(new LoomKind.RoundFrame(LoomKind.Spacer.CORD)).cord().length();
        assertThat(drawn).isBetween(belt - Math.PI * 7 - 1e-9, belt + 1e-9);
        double eight = WarpWay.of(new LoomKind.BarToBar()).cord().length();
        assertThat(eight).isGreaterThan(2 * Math.sqrt(100 * 100 - 14 * 14));
        assertThat(drawn).isCloseTo(200 + Math.PI * 7, within(1e-9));
    }

    /** Between notched boards every end stands upright, from the notch below to the notch above, and turns behind the board. */
    @Test
    void notchesHoldUprightEnds() {
        WarpWay way = WarpWay.of(LoomKinds.of("notches", PANEL));
        List<PathSection> runs = way.cord().sections().stream()
                .filter(PathSection.Run.class::isInstance)
                .toList();
        List<Double> notches = way.boards().get(0).notches();
        assertThat(runs).hasSameSizeAs(notches);
        for (int i = 0; i < runs.size(); i++) {
            PathSection.Spot from = runs.get(i).at(0);
            PathSection.Spot to = runs.get(i).at(1);
            assertThat(from.x()).isCloseTo(notches.get(i), within(1e-9));
            assertThat(to.x()).isCloseTo(notches.get(i), within(1e-9));
            assertThat(List.of(from.z(), to.z()))
                    .containsExactlyInAnyOrder(
                            way.boards().get(0).bottom(), way.boards().get(1).bottom());
        }
    }

    /** Whatever is seen in the picture is named, in words that are there. */
    @Test
    void thePictureSaysWhatIsWhat() {
        Phrases words = Phrases.of("thrumwright.sheet.warping", Locale.UK);
        for (LoomKind kind : LoomKinds.all(PANEL)) {
            assertThat(WarpWay.of(kind).names()).as(kind.key()).hasSizeGreaterThanOrEqualTo(2);
            WarpWay.of(kind)
                    .names()
                    .forEach(name -> assertThat(words.has("way." + name.key()))
                            .as(name.key())
                            .isTrue());
        }
    }

    /** A pick over the left edge end goes into the open shed; without sheds nothing is said of them. */
    @Test
    void rowsSayTheirShed() {
        Piece leashed = PANEL.withLoom(PANEL.loom().withSheds(Sheds.STICK_AND_LEASHES));
        List<String> rows = StepSheet.of(Plan.of(leashed), Locale.UK).steps().get(0).rows().stream()
                .map(RowLine::text)
                .toList();
        assertThat(rows).isNotEmpty().allMatch(row -> row.endsWith(", open shed") || row.endsWith(", pulled shed"));
        assertThat(rows.get(0).contains("over the left")).isEqualTo(rows.get(0).endsWith("open shed"));
        assertThat(StepSheet.of(Plan.of(PANEL), Locale.UK).steps().get(0).rows())
                .noneMatch(row -> row.text().contains("shed"));
    }
}
