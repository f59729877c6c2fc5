package thrumwright.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import thrumwright.measure.Length;
import thrumwright.measure.Phrases;
import thrumwright.output.part.CutPart;
import thrumwright.piece.Destiny;
import thrumwright.piece.EdgeCord;
import thrumwright.piece.Label;
import thrumwright.piece.MadeFor;
import thrumwright.piece.Piece;
import thrumwright.plan.Plan;
import thrumwright.store.FileProblem;
import thrumwright.store.PieceFile;
import thrumwright.store.Unknown;
import thrumwright.testing.Pieces;

/** The steps in which something is sewn to a finished piece. */
class SewnOnTest {
    private static List<Step> steps(Piece piece) {
        List<Chapter> chapters = StepSheet.of(Plan.of(piece), Locale.UK).chapters();
        return chapters.get(chapters.size() - 1).steps();
    }

    private static Step step(Piece piece, String title) {
        return steps(piece).stream()
                .filter(step -> step.title().equals(title))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no step “" + title + "”"));
    }

    private static Piece panel(MadeFor madeFor, UnaryOperator<Destiny> with) {
        Piece panel = Pieces.panel();
        return panel.withDestiny(with.apply(panel.destiny().withMadeFor(Optional.of(madeFor))));
    }

    private static Destiny labelled(Destiny destiny) {
        return destiny.withLabel(Optional.of(new Label("Reed Room", "2026")));
    }

    @Test
    void nobodyMeetsThemBeforeAsking() {
        assertThat(steps(Pieces.panel()))
                .extracting(Step::title)
                .doesNotContain("Line it", "Sew on a label", "Sew a cord along the edge");
        assertThat(Pieces.panel().destiny()).isEqualTo(Destiny.UNSAID);
    }

    @Test
    void aLiningSaysWhereItIsSewnAndWhatStaysOpen() {
        Step step = step(panel(MadeFor.HUNG, destiny -> destiny.withLined(true)), "Line it");

        assertThat(step.sentences())
                .anyMatch(said -> said.startsWith("Cut a lining of washed cotton, 25 cm wide and "))
                .anyMatch(said -> said.contains("1 cm below the top edge, and 1 cm inside both sides"))
                .anyMatch(said -> said.startsWith("Sew down its top edge and both sides, a stitch every 7 mm"))
                .anyMatch(said -> said.startsWith("Its lower edge stays open"));
        assertThat(step.cautions()).anyMatch(caution -> caution.startsWith("Needles and pins"));
    }

    /** The label is on what is seen of the back. */
    @Test
    void aLabelSaysMakerYearSizeFibresAndCare() {
        String label = String.join(
                " ",
                step(panel(MadeFor.HUNG, SewnOnTest::labelled), "Sew on a label")
                        .sentences());
        assertThat(label)
                .contains("Worked panel · woven by Reed Room · 2026 · 24 cm wide, ", " · cotton, wool · Dust gently")
                .contains("sew it to the back");
        assertThat(step(panel(MadeFor.MOUNTED, SewnOnTest::labelled), "Sew on a label")
                        .sentences())
                .anyMatch(said -> said.contains("the back of the board"));
        assertThat(step(panel(MadeFor.FLOOR_OR_TABLE, SewnOnTest::labelled), "Sew on a label")
                        .sentences())
                .anyMatch(said -> said.contains("Shake out."));
        Piece blank = panel(MadeFor.SAMPLE, destiny -> destiny.withLabel(Optional.of(new Label("", ""))));
        assertThat(step(blank, "Sew on a label").sentences())
                .anyMatch(said -> said.contains("woven by ____________ · year ______"));
    }

    @Test
    void aCordSaysWhatToCutAndHowItGoesRoundCorners() {
        EdgeCord round = new EdgeCord(EdgeCord.Along.ALL_ROUND, Length.parse("4 mm"), true);
        Step step =
                step(panel(MadeFor.HUNG, destiny -> destiny.withCord(Optional.of(round))), "Sew a cord along the edge");

        assertThat(step.sentences())
                .anyMatch(
                        said -> said.matches("Make a braid 4 mm thick: lay \\d+ strands of .* together, .* each\\..*"))
                .anyMatch(said -> said.contains("Round the corners"))
                .anyMatch(said -> said.startsWith("Where it meets its beginning, tuck 2 cm"));
        EdgeCord ends = new EdgeCord(EdgeCord.Along.ENDS, Length.parse("4 mm"), false);
        assertThat(step(
                                panel(MadeFor.HUNG, destiny -> destiny.withCord(Optional.of(ends))),
                                "Sew a cord along the edge")
                        .sentences())
                .contains("It must be 28 cm long, and there are two of them.")
                .contains("In all that takes 1.8 m of Teal wool, which stand in the cut list.")
                .anyMatch(said -> said.startsWith("Lay one along the bottom edge and one along the top edge"));
    }

    /** Two cords of two strands, 45 cm each. */
    @Test
    void theStrandsOfACordAreInTheCutListAndTheTotals() {
        EdgeCord ends = new EdgeCord(EdgeCord.Along.ENDS, Length.parse("4 mm"), false);
        Piece piece = panel(MadeFor.HUNG, destiny -> destiny.withCord(Optional.of(ends)));
        StepSheet sheet = StepSheet.of(Plan.of(piece), Locale.UK);
        CutLine last = sheet.cuts().get(sheet.cuts().size() - 1);

        assertThat(last.count() + " × " + last.length() + " " + last.what() + ", " + last.use())
                .isEqualTo("4 × 45 cm Teal wool, Cords along the edge");
        assertThat(last.times()).isEqualTo("2 ×");
        assertThat(CutPart.use(last, Phrases.of("thrumwright.sheet.steps", Locale.UK)))
                .isEqualTo("Cords along the edge, step " + last.step() + "; " + last.shared());
        assertThat(last.shared()).isEqualTo("with 10 cm for the knots in place of tails");
        assertThat(last.step())
                .isEqualTo(step(piece, "Sew a cord along the edge").number());
        assertThat(sheet.yarns()).anyMatch(line -> line.text().contains("cord along the edge"));
        assertThat(StepSheet.of(Plan.of(panel(MadeFor.HUNG, destiny -> destiny)), Locale.UK)
                        .cuts())
                .noneMatch(line -> line.blockId().isEmpty());
    }

    @Test
    void aBoardSaysItsCoverItsStitchesAndItsNeedle() {
        Piece framed = panel(MadeFor.FRAMED, destiny -> destiny.withBorder(Optional.of(Length.parse("5 cm"))));
        assertThat(step(framed, "Mount it on a board and frame it").sentences())
                .anyMatch(said -> said.startsWith("Take a stiff board 34 cm by ") && said.contains("about 5 cm more"))
                .anyMatch(said -> said.startsWith("Cut washed cloth 44 cm by "))
                .anyMatch(said -> said.startsWith("Board and cloth need a frame that is 34.3 cm by "))
                .anyMatch(said -> said.contains("A curved needle"));
        Piece hides = panel(MadeFor.MOUNTED, destiny -> destiny.withBorder(Optional.of(Length.parse("0 cm"))));
        assertThat(step(hides, "Mount it on a board").sentences())
                .anyMatch(said -> said.contains("6 mm less than the piece each way"));
    }

    @Test
    void anUnderlayIsSmallerThanARug() {
        assertThat(step(panel(MadeFor.FLOOR_OR_TABLE, destiny -> destiny), "Lay it down")
                        .sentences())
                .anyMatch(said -> said.contains("an underlay that doesn’t slip, 19 cm by ")
                        && said.contains("2.5 cm less than the piece on every side"));
    }

    @Test
    void theFileKeepsItAll() throws FileProblem {
        Destiny all = labelled(new Destiny(
                Optional.of(MadeFor.MOUNTED),
                Optional.of(Length.parse("2 in")),
                true,
                Optional.of(new EdgeCord(EdgeCord.Along.SIDES, Length.parse("1/4 in"), true)),
                Optional.empty()));
        for (Destiny destiny : List.of(all, all.withMadeFor(Optional.empty()), Destiny.UNSAID)) {
            String text = new PieceFile(Pieces.panel().withDestiny(destiny), Unknown.none()).text();
            assertThat(PieceFile.read(text).piece().destiny()).isEqualTo(destiny);
        }
    }
}
