package thrumwright.editor.canvas.cloth;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.util.Map;
import org.junit.jupiter.api.Test;
import thrumwright.drawing.Palette;
import thrumwright.drawing.piece.PiecePicture;
import thrumwright.editor.canvas.seen.Axes;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;
import thrumwright.plan.BlockPlan;
import thrumwright.plan.Plan;
import thrumwright.testing.BoardPieces;

/** What stands in for the cloth while it is painted has every block at its height in its colour. */
class SketchTest {
    private static final double SCALE = 4;

    @Test
    void everyBlockStandsAtItsHeightInItsColour() {
        for (Map.Entry<String, Piece> piece : BoardPieces.all().entrySet()) {
            PiecePicture picture = PiecePicture.of(Plan.of(piece.getValue()));
            ClothScene scene = new ClothScene(picture, Palette.onLightScreen(), Axes.whole(SCALE), 1);
            Rectangle part = new Rectangle(0, (int) (-picture.height() * SCALE), 60, (int) (picture.height() * SCALE));
            BufferedImage sketched = new BufferedImage(part.width, part.height, BufferedImage.TYPE_INT_RGB);
            Graphics2D g = sketched.createGraphics();
            g.translate(-part.x, -part.y);
            new Sketch(scene).draw(g, part);
            g.dispose();
            int met = 0;
            for (Place place : Place.values()) {
                for (BlockPlan block : picture.plan().end(place).blocks()) {
                    if (block.yarn().isPresent() && block.height() * SCALE >= 4) {
                        met++;
                        Color yarn = scene.palette().yarn(block.yarn().get().colour());
                        double base = picture.base(place);
                        for (double mm : new double[] {block.bottom() + 0.4, block.top() - 0.4}) {
                            int y = (int) Math.floor(-(base + mm) * SCALE) - part.y;
                            assertThat(new Color(sketched.getRGB(30, y)))
                                    .as(piece.getKey() + " " + block.block().id())
                                    .isEqualTo(yarn);
                        }
                    }
                }
            }
            assertThat(met).as(piece.getKey()).isPositive();
        }
    }
}
