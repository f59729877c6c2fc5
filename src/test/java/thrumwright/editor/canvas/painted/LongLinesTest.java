package thrumwright.editor.canvas.painted;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.SplittableRandom;
import java.util.function.Consumer;
import java.util.random.RandomGenerator;
import org.junit.jupiter.api.Test;
import thrumwright.editor.look.Smooth;
import thrumwright.testing.Seeds;

/** What goes to a screen as fills looks as Java draws it into a picture. */
class LongLinesTest {
    private static final double[] SCALES = {1, 1.25, 1.5, 2};
    private static final int SIDE = 160;
    /** Of 255: nobody sees that. */
    private static final int HARDLY = 3;

    private final RandomGenerator random = new SplittableRandom(1919);

    @Test
    void boxes() {
        for (int i = 0; i < Seeds.of(400, 40); i++) {
            Rectangle2D box = new Rectangle2D.Double(at(), at(), 10 + at(), 10 + at());
            double thick = random.nextInt(1, 4);
            same(g -> LongLines.draw(g, box, thick), g -> LongLines.byFills(g, box, thick));
        }
    }

    @Test
    void uprightLines() {
        for (int i = 0; i < Seeds.of(400, 40); i++) {
            double x = at();
            double from = at();
            double to = at() + 20;
            double thick = random.nextInt(1, 4);
            same(g -> LongLines.upright(g, x, from, to, thick), g -> LongLines.uprightByFills(g, x, from, to, thick));
        }
    }

    private double at() {
        return random.nextDouble(1, 30);
    }

    private void same(Consumer<Graphics2D> drawn, Consumer<Graphics2D> filled) {
        double scale = SCALES[random.nextInt(SCALES.length)];
        BufferedImage one = picture(scale, drawn);
        BufferedImage other = picture(scale, filled);
        int marked = 0;
        for (int y = 0; y < SIDE; y++) {
            for (int x = 0; x < SIDE; x++) {
                int wanted = one.getRGB(x, y) & 0xff;
                assertThat(Math.abs(wanted - (other.getRGB(x, y) & 0xff)))
                        .as("at " + x + ", " + y + " by " + scale)
                        .isLessThanOrEqualTo(HARDLY);
                marked += wanted < 255 ? 1 : 0;
            }
        }
        assertThat(marked).isPositive();
    }

    private static BufferedImage picture(double scale, Consumer<Graphics2D> painter) {
        BufferedImage image = new BufferedImage(SIDE, SIDE, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setColor(Color.WHITE);
        g.fillRect(0, 0, SIDE, SIDE);
        g.scale(scale, scale);
        Smooth.both(g);
        g.setColor(Color.BLACK);
        painter.accept(g);
        g.dispose();
        return image;
    }
}
