package thrumwright.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import thrumwright.block.Lean;
import thrumwright.block.Material;
import thrumwright.block.MaterialRole;
import thrumwright.block.Side;
import thrumwright.block.Soumak;
import thrumwright.block.Tag;
import thrumwright.block.Twining;
import thrumwright.block.Use;
import thrumwright.block.WarpFinish;
import thrumwright.measure.Length;
import thrumwright.measure.Phrases;
import thrumwright.piece.End;
import thrumwright.piece.Piece;
import thrumwright.piece.Top;
import thrumwright.plan.BlockPlan;
import thrumwright.plan.EndPlan;
import thrumwright.plan.Plan;
import thrumwright.plan.comparison.BlockPair;
import thrumwright.plan.comparison.EndComparison;
import thrumwright.plan.words.ComparisonWords;
import thrumwright.testing.Pieces;
import thrumwright.testing.RandomPieces;
import thrumwright.testing.Seeds;

class StepSheetTest {
    private static final Phrases HEADINGS = Phrases.of("thrumwright.sheet.steps", Locale.UK);

    @Test
    void stepsAreNumberedThroughAndCutsPointToTheirSteps() {
        RandomPieces pieces = new RandomPieces(21);
        for (int i = 0; i < Seeds.of(300); i++) {
            StepSheet sheet = StepSheet.of(Plan.of(pieces.next()), Locale.UK);
            List<Step> steps = sheet.steps();
            for (int n = 0; n < steps.size(); n++) {
                assertThat(steps.get(n).number()).isEqualTo(n + 1);
                assertThat(steps.get(n).sentences()).isNotEmpty().noneMatch(text -> text.contains("{"));
            }
            for (CutLine cut : sheet.cuts()) {
                Step step = steps.get(cut.step() - 1);
                if (cut.blockId().isEmpty()) {
                    assertThat(Sewn.of(step.kind())).contains(Sewn.CORD);
                    continue;
                }
                assertThat(step.picture()).hasValueSatisfying(picture -> {
                    assertThat(picture.place()).isEqualTo(cut.place());
                    assertThat(picture.blockId()).isEqualTo(cut.blockId());
                    assertThat(picture.says()).isNotBlank().doesNotContain("{");
                });
            }
        }
    }

    private static boolean shows(Step step, EndPlan end, BlockPlan block) {
        return step.picture()
                .filter(shown -> shown.place() == end.place()
                        && shown.blockId().equals(block.block().id()))
                .isPresent();
    }

    @Test
    void everyBlockThatIsWovenHasItsStepItsCutAndItsRows() {
        RandomPieces pieces = new RandomPieces(22);
        for (int i = 0; i < Seeds.of(300); i++) {
            Plan plan = Plan.of(pieces.next());
            StepSheet sheet = StepSheet.of(plan, Locale.UK);
            for (EndPlan end : List.of(plan.start(), plan.top())) {
                for (BlockPlan block : end.blocks()) {
                    if (block.work().isPresent()) {
                        Step step = sheet.steps().stream()
                                .filter(each -> shows(each, end, block))
                                .findFirst()
                                .orElseThrow();
                        int rows = block.work().get().rows().size();
                        assertThat(step.rows()).hasSize(rows <= 16 ? rows : 3);
                        assertThat(sheet.cuts().stream()
                                        .filter(cut -> cut.step() == step.number())
                                        .map(CutLine::count)
                                        .toList())
                                .isEqualTo(block.work().get().toCut().stream()
                                        .map(cut -> cut.butterflies().count())
                                        .toList());
                    }
                }
            }
        }
    }

    /** Yarn that comes up below what lies there leans up along its way: to the right /, to the left \. */
    @Test
    void theWayToLeanIsSaidRight() {
        assertThat(emerging(Lean.Z, Side.LEFT)).contains("below your own float");
        assertThat(emerging(Lean.S, Side.LEFT)).contains("above your own float");
        assertThat(emerging(Lean.Z, Side.RIGHT)).contains("above your own float");
        assertThat(emerging(Lean.S, Side.RIGHT)).contains("below your own float");
    }

    private static String emerging(Lean lean, Side from) {
        Soumak soumak = new Soumak(
                Tag.of("s"),
                new Use(new Material.OfRole(MaterialRole.WEFT), false, Optional.of(from)),
                1,
                2,
                1,
                lean,
                false);
        Piece piece = Pieces.panel().withStart(new End(List.of(soumak)));
        return String.join(
                " ", StepSheet.of(Plan.of(piece), Locale.UK).steps().get(0).sentences());
    }

    @Test
    void theRowListOfACounteredTwiningChangesItsLean() {
        Twining twining = new Twining(Tag.of("t"), Use.of(MaterialRole.WARP_CORD), 2, 1, Lean.Z, true);
        Step step = StepSheet.of(Plan.of(Pieces.panel().withStart(new End(List.of(twining)))), Locale.UK)
                .steps()
                .get(0);
        assertThat(step.rows().stream().map(row -> row.label() + row.arrow() + row.brief()))
                .containsExactly("1→/ below", "2←\\ below");
    }

    @Test
    void theSheetGoesOnToTheEnd() {
        WarpFinish fringe = new WarpFinish(Tag.of("fringe"), WarpFinish.Kind.KNOTTED, 4, Length.parse("5 cm"));
        Piece fringed = Pieces.panel()
                .withStart(Pieces.panel()
                        .start()
                        .without(Set.of("fold", "soumak", "facing", "stiff"))
                        .with(2, fringe));
        String text = PlainText.of(StepSheet.of(Plan.of(fringed), Locale.UK), HEADINGS);
        assertThat(text)
                .contains("Cut the piece from the loom")
                .contains("Part the ends into 18 groups: 4 ends each.")
                .contains("Blades cut")
                .contains("choke a small child")
                .contains("What hangs over people");
        String hemmed = PlainText.of(StepSheet.of(Plan.of(Pieces.panel()), Locale.UK), HEADINGS);
        assertThat(hemmed)
                .contains("ordering cord, then waste band")
                .contains("Fold and stitch the hem of the start")
                .contains("1.4 cm deep, in 2 layers")
                .contains("Needles and pins hurt");
    }

    /** The panel begins 4 cm above the bar, below 14.4 mm that come out: no more than 5.4 cm can stay beyond its edge. */
    @Test
    void noMoreWarpIsToStayThanTheLoomLeaves() {
        String text = PlainText.of(StepSheet.of(Plan.of(Pieces.panel()), Locale.UK), HEADINGS);
        assertThat(text.replaceAll("\\s+", " "))
                .contains("at least 15 cm must stay beyond the top edge, and 5.4 cm beyond the bottom edge");
    }

    @Test
    void plainTextKeepsToItsWidth() {
        RandomPieces pieces = new RandomPieces(23);
        for (int i = 0; i < Seeds.of(100); i++) {
            String text = PlainText.of(StepSheet.of(Plan.of(pieces.next()), Locale.UK), HEADINGS);
            assertThat(text.lines()).allMatch(line -> line.length() <= 96);
        }
    }

    private static Chapter top(Piece piece) {
        return StepSheet.of(Plan.of(piece), Locale.UK).chapters().stream()
                .filter(chapter -> chapter.kind() == Chapter.Kind.TOP)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void theTopBeginsWithTheStopLineAndWhatDiffersFromTheStart() {
        List<String> opening = top(Pieces.panel()).opening();
        // 70 cm open, less 12 cm to work in and 27.29 mm of top: worked by hand
        assertThat(opening.get(0)).startsWith("The design must have ended by 55.3 cm above the lower bar.");
        assertThat(opening)
                .containsSubsequence(
                        "Not repeated here: Ordering cord.",
                        "What differs from the start, in the order of weaving:",
                        "• Soumak: The first row leans / like the stroke in Z in the start, "
                                + "\\ like the stroke in S in the top.");
        assertThat(opening).noneMatch(sentence -> sentence.contains("{") || sentence.startsWith("• Ordering cord"));
    }

    @Test
    void aTopOnItsOwnIsToldApartFromTheStart() {
        End start = Pieces.hemmed();
        Twining more = new Twining(Tag.of("more"), Use.of(MaterialRole.WARP_CORD), 2, 1, Lean.S, false);
        Piece piece = Pieces.panel()
                .withTop(new Top.OnItsOwn(new End(List.of(more, start.blocks().get(1)))));
        assertThat(top(piece).opening())
                .anySatisfy(sentence -> assertThat(sentence).contains("Twining: 1 row in the start, 2 in the top."))
                .anySatisfy(
                        sentence -> assertThat(sentence).startsWith("Not repeated here: Ordering cord, Stiff band"));
    }

    /** Every difference that the comparison of both ends finds is on the sheet, and nothing that it doesn't. */
    @Test
    void theTopTellsAllThatTheComparisonFinds() {
        RandomPieces pieces = new RandomPieces(26);
        for (int i = 0; i < Seeds.of(200); i++) {
            Piece piece = pieces.next();
            Plan plan = Plan.of(piece);
            if (plan.top().blocks().isEmpty() || plan.start().blocks().isEmpty()) {
                continue;
            }
            ComparisonWords words = new ComparisonWords(Locale.UK, piece.shown());
            List<BlockPair> pairs = EndComparison.of(plan).pairs();
            List<String> opening = top(piece).opening();
            long told = opening.stream()
                    .filter(sentence -> sentence.startsWith("•"))
                    .count();
            assertThat(told)
                    .isEqualTo(pairs.stream()
                            .filter(pair -> !pair.differences().isEmpty() && !pair.has(BlockPair.Aspect.LEFT_OUT))
                            .count());
            for (BlockPair pair : pairs) {
                if (!pair.has(BlockPair.Aspect.LEFT_OUT)) {
                    String all = String.join(" ", words.of(pair));
                    assertThat(opening).anyMatch(sentence -> sentence.contains(all));
                }
            }
        }
    }
}
