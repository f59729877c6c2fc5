package thrumwright.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import thrumwright.block.Block;
import thrumwright.block.OwnWords;
import thrumwright.block.Tag;
import thrumwright.measure.BadMeasure;
import thrumwright.piece.End;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;
import thrumwright.plan.BlockPlan;
import thrumwright.plan.EndPlan;
import thrumwright.plan.Plan;
import thrumwright.testing.Pieces;
import thrumwright.testing.RandomPieces;

class OwnWordingTest {
    private static Piece with(String id, String words) {
        Piece piece = Pieces.panel();
        Block block = piece.start().block(id).orElseThrow();
        return piece.withStart(piece.start().replaced(block.withTag(block.tag().withWords(words))));
    }

    private static Step step(Piece piece, Chapter.Kind kind, String title) {
        return StepSheet.of(Plan.of(piece), Locale.UK).chapters().stream()
                .filter(chapter -> chapter.kind() == kind)
                .flatMap(chapter -> chapter.steps().stream())
                .filter(step -> step.title().equals(title))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void standsOnTheSheetInPlaceOfTheProgramsOwn() {
        Piece piece = with("stiff", "Take {yarn}, {cut} of it.\n\nBeat {picks} {picks|pick|picks} from the {side}.");
        Step start = step(piece, Chapter.Kind.START, "Stiff band");
        assertThat(start.sentences()).containsExactly("Take Cotton cord, 195 cm of it.", "Beat 6 picks from the left.");
        assertThat(start.rows()).hasSize(6);
        assertThat(start.take()).isNotEmpty();
    }

    /** The top follows the start, so the words do too; what is filled in is the top's own. */
    @Test
    void isFilledInAnewAtTheTop() {
        Piece piece = with("facing", "{place}: up to {reach}.");
        assertThat(step(piece, Chapter.Kind.START, "Facing").sentences()).containsExactly("the start: up to 6.7 cm.");
        assertThat(step(piece, Chapter.Kind.TOP, "Facing").sentences().get(0)).startsWith("the top: up to 37");
    }

    @Test
    void aFoldMayHaveWordsToo() {
        assertThat(step(with("fold", "Fold here: {depth}, {layers} layers."), Chapter.Kind.START, "Hem fold")
                        .sentences())
                .containsExactly("Fold here: 1.4 cm, 2 layers.");
    }

    @Test
    void aPlaceThatIsntThereIsRefusedWithThoseThatAre() {
        assertThatThrownBy(() -> with("soumak", "Weave {pick} rows."))
                .isInstanceOf(BadMeasure.class)
                .hasMessage("There is nothing to put in the place {pick} of this block; it knows {block}, {place}, "
                        + "{height}, {reach}, {yarn}, {cut}, {widths}, {pieces}, {rows}, {picks}, {side}, {otherSide}, "
                        + "{endSide}, {tail}, {lean}, {over}, {under}.");
        assertThatThrownBy(() -> with("fold", "Fold {depth deep"))
                .hasMessageStartingWith("“{depth deep” is no place; write one like {layers}.");
        assertThatThrownBy(() -> with("fold", "x".repeat(1001))).hasMessageContaining("at most 1000 characters");
    }

    /** Whatever the plan, every place that a block says it knows can be filled. */
    @Test
    void everyPlaceCanBeFilled() {
        RandomPieces pieces = new RandomPieces(5);
        int filled = 0;
        for (int i = 0; i < 200; i++) {
            Plan plan = Plan.of(pieces.next());
            OwnWording wording = new OwnWording(plan, Locale.UK);
            for (EndPlan end : List.of(plan.start(), plan.top())) {
                for (BlockPlan block : end.blocks()) {
                    String all = OwnWords.places(block.block()).stream()
                            .map(place -> "{" + place + "}")
                            .collect(Collectors.joining("|"));
                    assertThat(wording.fill(all, end, block)).hasSize(1).noneMatch(line -> line.contains("{"));
                    filled++;
                }
            }
        }
        assertThat(filled).isGreaterThan(1000);
    }

    @Test
    void aCopyKeepsItsWords() {
        Tag tag = new Tag("stiff", "Ours", "Weave.").withId("stiff-2");
        assertThat(tag).isEqualTo(new Tag("stiff-2", "Ours", "Weave."));
        End mirrored = with("stiff", "Weave.").start().mirrored();
        assertThat(mirrored.block("stiff").orElseThrow().tag().words()).isEqualTo("Weave.");
        assertThat(new OwnWording(Plan.of(Pieces.panel()), Locale.UK).preview(Place.START, "stiff", "{rows}"))
                .containsExactly("6");
    }
}
