package thrumwright.editor.canvas.cloth;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.EventQueue;
import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import thrumwright.drawing.Palette;
import thrumwright.drawing.piece.PiecePicture;
import thrumwright.editor.canvas.seen.Axes;
import thrumwright.plan.Plan;
import thrumwright.testing.BoardPieces;

/** The cloth becomes sharp, whatever changes while it is being painted. */
class ClothTilesTest {
    private static final Rectangle SEEN = new Rectangle(0, -400, 200, 400);

    private final PiecePicture picture =
            PiecePicture.of(Plan.of(BoardPieces.all().values().iterator().next()));
    private final CountDownLatch sharp = new CountDownLatch(1);
    private ClothTiles tiles;
    private ClothScene wanted;

    private void draw() {
        BufferedImage image = new BufferedImage(SEEN.width, SEEN.height, BufferedImage.TYPE_INT_RGB);
        tiles.draw(image.createGraphics(), wanted, SEEN, null);
    }

    private ClothScene scene(Palette palette, double scale) {
        return new ClothScene(picture, palette, Axes.whole(scale), 1);
    }

    /** At first as it is, then nearer, and in other colours before anything of that is painted. */
    private void arrived() {
        draw();
        if (tiles.sharp(wanted, SEEN) && wanted.equals(scene(Palette.onLightScreen(), 4))) {
            wanted = scene(Palette.onLightScreen(), 6);
            draw();
            wanted = scene(Palette.onDarkScreen(), 6);
            draw();
        } else if (tiles.sharp(wanted, SEEN)) {
            sharp.countDown();
        }
    }

    /** A part that is there asks for no more to be painted than where it lies. */
    @Test
    void onlyWhatIsNewIsToldOf() throws Exception {
        List<Rectangle> told = new ArrayList<>();
        EventQueue.invokeAndWait(() -> {
            tiles = new ClothTiles(part -> {
                told.add(part);
                if (tiles.sharp(wanted, SEEN)) {
                    sharp.countDown();
                }
            });
            wanted = scene(Palette.onLightScreen(), 4);
            draw();
        });
        assertThat(sharp.await(20, TimeUnit.SECONDS)).isTrue();
        EventQueue.invokeAndWait(() -> {
            assertThat(told).hasSizeGreaterThan(1).doesNotHaveDuplicates();
            assertThat(told.stream().mapToInt(part -> part.width * part.height).sum())
                    .isEqualTo(SEEN.width * SEEN.height);
        });
    }

    @Test
    void otherColoursWhileItComesNearer() throws Exception {
        EventQueue.invokeAndWait(() -> {
            tiles = new ClothTiles(part -> arrived());
            wanted = scene(Palette.onLightScreen(), 4);
            draw();
        });
        assertThat(sharp.await(20, TimeUnit.SECONDS))
                .as("sharp in the other colours")
                .isTrue();
    }
}
