package thrumwright.sheet.card;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import thrumwright.measure.Shown;
import thrumwright.measure.UnitSystem;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;
import thrumwright.plan.Plan;
import thrumwright.sheet.Step;
import thrumwright.sheet.StepSheet;
import thrumwright.store.BuiltIn;
import thrumwright.store.PieceFile;
import thrumwright.testing.RandomPieces;
import thrumwright.testing.Seeds;

/** What a card says, before it is laid out. */
class CardTest {
    private static Plan demo() throws Exception {
        return demo("saltmarsh-panel.json");
    }

    private static Plan demo(String name) throws Exception {
        return Plan.of(PieceFile.read(BuiltIn.DEMO.text(name)).piece());
    }

    private static List<String> told(Card card) {
        List<String> told = new ArrayList<>();
        for (CardRow row : card.rows()) {
            List<String> parts = new ArrayList<>(List.of(row.number() + " " + row.name()));
            row.ways().stream().limit(1).forEach(way -> parts.add(way.arrow() + " " + way.brief()));
            parts.addAll(row.large());
            row.count().ifPresent(count -> parts.add(count.shown()));
            row.reach().ifPresent(reach -> parts.add(reach.shown()));
            row.cut().ifPresent(cut -> parts.add(cut.letter() + " " + cut.length()));
            told.add(String.join(" | ", parts).replace('\u00a0', ' '));
        }
        return told;
    }

    private static String told(CardLine line) {
        return line.number().map(number -> number + " ").orElse("")
                + String.join(" ", line.parts().stream().map(CardSaying::shown).toList());
    }

    /**
     * The worked panel begins 60 mm above the bar. Its heights are 2.359, 12, 1.573, 4.718, 6 and 3 mm (by hand, see the
     * method), so that its blocks reach 62.4, 74.4, 75.9, 80.7, 86.7 and 89.7 mm. 72 ends are even: a pick that goes over
     * the left edge end goes under the right one.
     */
    @Test
    void theStartOfTheWorkedPanel() throws Exception {
        Card card = Card.of(demo(), Place.START, Locale.UK);

        assertThat(told(card))
                .containsExactly(
                        "1 Ordering cord | → over | 3 × | ↑ 6.2 | A 145 cm = 6½ warp widths",
                        "2 Waste band | ← over | 12 × | ↑ 7.4 | D 3.7 m = 15½ warp widths",
                        "3 Twining | ← / above | 1 × | ↑ 7.6 | A 86 cm = 4 warp widths",
                        "4 Stiff band | → under | 6 × | ↑ 8.1 | A 195 cm = 8½ warp widths",
                        "5 Facing | → under | 6 × | ↑ 8.7 | B 272 cm = 11½ warp widths",
                        "6 Soumak | → / below | 1 × | ↑ 9.0 | B goes on from step 5",
                        "7 Hem fold | fold here later | 1.4 cm deep");
        assertThat(told(card.begin())).isEqualTo("Begin ↑ 6.0");
        assertThat(card.after().stream().map(CardTest::told)).containsExactly("8 Stop line ↑ 53.3", "9 Design ← over");
    }

    @Test
    void theTopSaysWhatDiffersFromTheStart() throws Exception {
        Card card = Card.of(demo(), Place.TOP, Locale.UK);

        assertThat(told(card.begin())).isEqualTo("10 Last pick ← under at most ↑ 53.3");
        assertThat(card.rows()).extracting(CardRow::number).containsExactly(11, 12, 13, 14, 15, 16);
        assertThat(card.notes()).anyMatch(note -> note.equals("Not repeated here: Ordering cord."));
        assertThat(notes(card, 12)).contains("In the start: → / below, Tide teal.");
        assertThat(notes(card, 13)).contains("In the start: → under, Tide teal.");
        assertThat(notes(card, 15)).contains("In the start: ← / above.");
        assertThat(notes(card, 11)).isEmpty();
    }

    /** The start's arrows are from the lower bar and the top's from the start line: no card has both. */
    @Test
    void whereTheWarpTravelsTheStopLineIsToldFromTheStartLine() throws Exception {
        Plan plan = demo("tide-runner.json");
        CardLine stop = Card.of(plan, Place.START, Locale.UK).after().get(0);

        assertThat(told(Card.of(plan, Place.TOP, Locale.UK).begin()).replace('\u00a0', ' '))
                .endsWith("at most ↑ 100.8");
        assertThat(told(stop)).isEqualTo("4 Stop line");
        assertThat(stop.notes().get(0).replace('\u00a0', ' ')).contains("100.8 cm above the start line");
    }

    private static List<String> notes(Card card, int number) {
        return card.rows().stream().filter(row -> row.number() == number).findFirst().orElseThrow().notes().stream()
                .map(note -> note.replace('\u00a0', ' '))
                .toList();
    }

    /** Figures that are read from afar are all of one height: no small fractions. */
    @Test
    void heightsAreToldInFiguresOfOneHeight() {
        Shown inches = new Shown(UnitSystem.INCHES, Locale.UK);
        Shown metric = new Shown(UnitSystem.METRIC, Locale.UK);

        assertThat(inches.figures(25.4 * 3.4375)).isEqualTo("3 7/16");
        assertThat(inches.figures(25.4 / 2)).isEqualTo("1/2");
        assertThat(inches.figures(25.4 * 9)).isEqualTo("9");
        assertThat(metric.figures(90)).isEqualTo("9.0");
        assertThat(metric.figures(62.359)).isEqualTo("6.2");
        assertThat(metric.figures(437)).isEqualTo("43.7");
        assertThat(metric.figures(0)).isEqualTo("0.0");
        assertThat(new Shown(UnitSystem.METRIC, Locale.GERMANY).figures(62.359)).isEqualTo("6,2");
    }

    @Test
    void everyYarnHasALetterOfItsOwn() {
        List<String> ids = new ArrayList<>();
        for (int i = 0; i < 60; i++) {
            ids.add("y" + i);
        }
        YarnLetters letters = new YarnLetters(ids);
        Piece piece = new RandomPieces(3).next();
        List<String> all = ids.stream()
                .map(id -> letters.letter(piece.warpYarn().withId(id)))
                .toList();

        assertThat(all).doesNotHaveDuplicates().startsWith("A", "B").contains("Z", "AA", "BA");
    }

    /** Every step on the loom that is about a block has its row, in its place and with its number and height. */
    @Test
    void rowsAreTheStepsOfTheSheet() {
        for (int seed = 0; seed < Seeds.of(1000); seed++) {
            Plan plan = Plan.of(new RandomPieces(seed).next());
            StepSheet sheet = StepSheet.of(plan, Locale.UK);
            for (Place place : Place.values()) {
                Card card = Card.of(plan, Optional.empty(), sheet, place, Locale.UK);
                List<Step> steps = sheet.chapters().stream()
                        .filter(chapter -> chapter.place().equals(Optional.of(place)))
                        .flatMap(chapter -> chapter.steps().stream())
                        .filter(step -> step.picture().isPresent())
                        .toList();
                List<CardRow> onLoom = card.rows().stream()
                        .filter(row -> row.block().block().finish().isEmpty()
                                || row.block().block().finish().get().closed())
                        .toList();
                assertThat(onLoom)
                        .extracting(CardRow::number)
                        .containsExactlyElementsOf(
                                steps.stream().map(Step::number).toList());
                assertThat(onLoom)
                        .extracting(CardRow::name)
                        .containsExactlyElementsOf(
                                steps.stream().map(Step::title).toList());
                for (int i = 0; i < steps.size(); i++) {
                    assertThat(onLoom.get(i).ticks()).isEqualTo(ticks(steps.get(i)));
                    assertThat(onLoom.get(i).reach().isPresent())
                            .isEqualTo(onLoom.get(i).block().height() > 0);
                }
            }
        }
    }

    private static int ticks(Step step) {
        return step.rows().stream().mapToInt(row -> row.count()).sum();
    }
}
