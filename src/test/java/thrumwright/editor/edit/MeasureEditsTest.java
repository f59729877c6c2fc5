package thrumwright.editor.edit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import thrumwright.editor.text.Texts;
import thrumwright.measure.Length;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;
import thrumwright.plan.Plan;
import thrumwright.testing.BoardPieces;
import thrumwright.testing.Pieces;

/** What is typed over a measure of the picture comes out as near as whole picks or rows allow. */
class MeasureEditsTest {
    private final Texts texts = Texts.of(Locale.UK);
    private final MeasureEdits edits = new MeasureEdits(new Edits(texts.phrases(), texts.words()));

    @Test
    void aHemBecomesAsDeepAsItIsTyped() {
        for (Map.Entry<String, Piece> piece : BoardPieces.all().entrySet()) {
            Plan plan = Plan.of(piece.getValue());
            for (Place place : Place.values()) {
                Optional<Edit> deeper = edits.hemDepth(plan, place, Length.parse("31 mm"));
                assertThat(deeper.isPresent()).as(piece.getKey()).isEqualTo(hemmed(plan, place));
                deeper.ifPresent(edit -> assertThat(depth(edit.change().apply(piece.getValue()), place))
                        .as(piece.getKey())
                        .isCloseTo(31, within(2.0)));
            }
        }
    }

    private static boolean hemmed(Plan plan, Place place) {
        return plan.end(place)
                .hem()
                .filter(hem -> hem.band().isEmpty() && hem.folds())
                .isPresent();
    }

    private static double depth(Piece piece, Place place) {
        return Plan.of(piece).end(place).hem().orElseThrow().depth();
    }

    @Test
    void aHemKeepsAtLeastARow() {
        Piece piece = Pieces.panel();
        Edit edit =
                edits.hemDepth(Plan.of(piece), Place.TOP, Length.parse("1 mm")).orElseThrow();
        assertThat(edit.name()).contains("Facing").doesNotContain("{");
        assertThat(depth(edit.change().apply(piece), Place.START)).isBetween(5.0, 20.0);
    }

    @Test
    void freeWarpIsWhatIsTyped() {
        Piece piece = Pieces.panel();
        Length typed = Length.parse("9 cm");
        assertThat(edits.hands(typed, "room").change().apply(piece).loom().workingRoom())
                .contains(typed);
        assertThat(edits.below(typed, "clearance").change().apply(piece).loom().clearance())
                .contains(typed);
    }
}
