package thrumwright.editor.canvas.gesture;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import thrumwright.block.Block;
import thrumwright.block.EdgeFinish;
import thrumwright.drawing.View;
import thrumwright.drawing.piece.PiecePicture;
import thrumwright.editor.canvas.seen.BlockSpot;
import thrumwright.editor.canvas.seen.CanvasMap;
import thrumwright.editor.edit.Edit;
import thrumwright.editor.edit.Edits;
import thrumwright.editor.edit.NewBlocks;
import thrumwright.editor.edit.Slot;
import thrumwright.editor.text.Texts;
import thrumwright.measure.UnitSystem;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;
import thrumwright.piece.Top;
import thrumwright.plan.Plan;
import thrumwright.testing.RandomPieces;
import thrumwright.testing.Seeds;

/** Blocks lie on the canvas in the order in which the piece lists them, so that what is let go lands where it was held. */
class GapsTest {
    private final Texts texts = Texts.of(Locale.UK);
    private final Edits edits = new Edits(texts.phrases(), texts.words());

    private static CanvasMap map(Piece piece) {
        return CanvasMap.of(PiecePicture.of(Plan.of(piece)), new View(4, 40, 800));
    }

    private static List<Block> onCanvas(Piece piece, Place place) {
        List<Block> upwards = new ArrayList<>(map(piece).spots().stream()
                .filter(spot -> spot.place() == place)
                .map(spot -> spot.plan().block())
                .toList());
        Collections.reverse(upwards);
        return upwards;
    }

    @Test
    void theCanvasKeepsTheOrderOfTheBlocks() {
        RandomPieces pieces = new RandomPieces(84);
        for (int i = 0; i < Seeds.of(500); i++) {
            Piece piece = pieces.next();
            for (Place place : Place.values()) {
                assertThat(onCanvas(piece, place)).isEqualTo(piece.end(place).blocks());
            }
        }
    }

    /** It lies above all that lay below the pointer, and finishes stand at the edge, whatever that is then. */
    @Test
    void aBlockLandsWhereItIsHeld() {
        RandomPieces pieces = new RandomPieces(85);
        List<Block> kinds = NewBlocks.all(UnitSystem.METRIC);
        for (int i = 0; i < Seeds.of(300); i++) {
            Piece next = pieces.next();
            Piece piece = next.withTop(new Top.OnItsOwn(next.end(Place.TOP)));
            List<BlockSpot> spots = map(piece).spots();
            if (!spots.isEmpty()) {
                BlockSpot held = spots.get(pieces.random().nextInt(spots.size()));
                Block block = kinds.get(pieces.random().nextInt(kinds.size()));
                checkLands(piece, held.middle() - 0.02, block);
            }
        }
    }

    private void checkLands(Piece piece, double y, Block block) {
        Slot slot = Gaps.of(map(piece)).at(y);
        Edit edit = edits.add(piece, slot, block);
        Piece after = edit.change().apply(piece);
        String id = edit.selects().orElseThrow().lead().orElseThrow();
        List<Block> below = onCanvas(piece, slot.place()).subList(0, slot.below());
        List<String> expected = woven(onCanvas(piece, slot.place()));
        if (!(block instanceof EdgeFinish)) {
            expected.add(woven(below).size(), id);
        }
        assertThat(woven(onCanvas(after, slot.place()))).isEqualTo(expected);
        assertThat(onCanvas(after, slot.place())).extracting(Block::id).contains(id);
    }

    private static List<String> woven(List<Block> blocks) {
        return new ArrayList<>(blocks.stream()
                .filter(block -> !(block instanceof EdgeFinish))
                .map(Block::id)
                .toList());
    }
}
