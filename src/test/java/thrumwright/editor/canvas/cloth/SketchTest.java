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

/** What stands in for the cloth while it is painted has every block where the painted cloth has it. */
class SketchTest {
    private static final double SCALE = 4;

    /** Light and shade on yarns, and the gaps between them, of 255. */
    private static final double LIKE = 90;

    @Test
    void everyBlockIsWhereItIsPainted() {
        for (Map.Entry<String, Piece> piece : BoardPieces.all().entrySet()) {
            PiecePicture picture = PiecePicture.of(Plan.of(piece.getValue()));
            ClothScene scene = new ClothScene(picture, Palette.onLightScreen(), Axes.whole(SCALE), 1);
            Rectangle part = new Rectangle(0, (int) (-picture.height() * SCALE), 60, (int) (picture.height() * SCALE));
            BufferedImage painted = scene.paint(part, null);
            BufferedImage sketched = new BufferedImage(part.width, part.height, BufferedImage.TYPE_INT_RGB);
            Graphics2D g = sketched.createGraphics();
            g.translate(-part.x, -part.y);
            new Sketch(scene).draw(g, part);
            g.dispose();
            int met = 0;
            for (Place place : Place.values()) {
                for (BlockPlan block : picture.plan().end(place).blocks()) {
                    int top = part.height - (int) ((picture.base(place) + block.top()) * SCALE) + 1;
                    int high = (int) (block.height() * SCALE) - 2;
                    if (block.yarn().isPresent() && high >= 8) {
                        met++;
                        assertThat(apart(mean(painted, top, high), mean(sketched, top, high)))
                                .as(piece.getKey() + " " + block.block().id())
                                .isLessThan(LIKE);
                    }
                }
            }
            assertThat(met).as(piece.getKey()).isGreaterThan(piece.getKey().equals("closed") ? 0 : 1);
        }
    }

    private static double[] mean(BufferedImage image, int top, int high) {
        double[] sum = new double[3];
        for (int y = top; y < top + high; y++) {
            for (int x = 0; x < image.getWidth(); x++) {
                Color colour = new Color(image.getRGB(x, y));
                sum[0] += colour.getRed();
                sum[1] += colour.getGreen();
                sum[2] += colour.getBlue();
            }
        }
        int count = high * image.getWidth();
        return new double[] {sum[0] / count, sum[1] / count, sum[2] / count};
    }

    private static double apart(double[] one, double[] other) {
        return Math.abs(one[0] - other[0]) + Math.abs(one[1] - other[1]) + Math.abs(one[2] - other[2]);
    }
}
