package thrumwright.piece;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import thrumwright.block.Block;
import thrumwright.block.Course;
import thrumwright.block.Row;
import thrumwright.block.YarnBlock;
import thrumwright.testing.RandomPieces;

class MirrorTest {
    @Test
    void mirroringTwiceGivesTheSameEnd() {
        RandomPieces pieces = new RandomPieces(5);
        for (int i = 0; i < 500; i++) {
            End end = pieces.next().start();
            assertThat(end.mirrored().mirrored()).isEqualTo(end);
        }
    }

    /** Row by row, the reflected end is the end read from the top with every lean turned over. */
    @Test
    void rowsComeInReverseWithTheirLeanTurnedOver() {
        RandomPieces pieces = new RandomPieces(6);
        for (int i = 0; i < 500; i++) {
            Piece piece = pieces.next();
            List<String> mirrored = leans(piece, piece.start().mirrored(), false);
            List<String> backwards = leans(piece, piece.start(), true);
            Collections.reverse(backwards);
            assertThat(mirrored).isEqualTo(backwards);
        }
    }

    private static List<String> leans(Piece piece, End end, boolean turned) {
        List<String> leans = new ArrayList<>();
        for (Block block : end.blocks()) {
            if (block instanceof YarnBlock yarn) {
                for (Row row : yarn.rows(piece.setting(piece.yarnOf(yarn, Place.START)), Course.beginning())) {
                    leans.add(block.id()
                            + row.lean()
                                    .map(lean -> turned ? lean.other() : lean)
                                    .map(Enum::name)
                                    .orElse(""));
                }
            } else {
                leans.add(block.id());
            }
        }
        return leans;
    }

    @Test
    void aTopThatFollowsDemandsNeitherShedNorSide() {
        RandomPieces pieces = new RandomPieces(7);
        for (int i = 0; i < 300; i++) {
            Piece piece = pieces.next();
            if (piece.topFollows()) {
                End top = piece.end(Place.TOP);
                assertThat(top.unforced()).isEqualTo(top);
            }
        }
    }
}
