package thrumwright.editor.canvas;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Consumer;
import javax.swing.JScrollPane;
import javax.swing.JViewport;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import thrumwright.drawing.Palette;
import thrumwright.editor.canvas.seen.Zoom;
import thrumwright.editor.edit.Session;
import thrumwright.editor.text.Texts;
import thrumwright.store.FileProblem;
import thrumwright.testing.LargePieces;

/** On every kind of screen the canvas ends up as sharp as if it had been painted at once in the screen's own pixels. */
class CanvasScalesTest {
    private static final int WIDE = 720;
    private static final int TALL = 460;

    private PieceCanvas canvas;

    @ParameterizedTest(name = "{0} device pixels a pixel, {1} pixels a mm")
    @CsvSource({"1, 3", "1.25, 3", "1.5, 3", "2, 3", "1.25, 0.7", "1.5, 17", "2, 1"})
    @Timeout(300)
    void isSharp(double density, double scale) throws Exception {
        SwingUtilities.invokeAndWait(() -> open(scale));
        BufferedImage shown = image(density);
        BufferedImage atOnce = image(density);
        paintUntilSharp(shown, density);
        SwingUtilities.invokeAndWait(() -> paint(atOnce, density, canvas::print));

        Rectangle seen = new Rectangle(
                (int) (canvas.getVisibleRect().width * density), (int) (canvas.getVisibleRect().height * density));
        assertThat(sharpness(atOnce, seen)).as("something to be seen").isGreaterThan(2);
        assertThat(sharpness(shown, seen) / sharpness(atOnce, seen)).isGreaterThan(0.97);
    }

    private void open(double scale) {
        try {
            Session session = new Session(LargePieces.demo(), Optional.empty());
            canvas = new PieceCanvas(session, Texts.of(Locale.UK), Palette.onLightScreen());
        } catch (FileProblem e) {
            throw new AssertionError(e);
        }
        JScrollPane scroll = new JScrollPane(canvas);
        scroll.getViewport().setScrollMode(JViewport.SIMPLE_SCROLL_MODE);
        scroll.setSize(WIDE, TALL);
        scroll.addNotify();
        scroll.validate();
        canvas.setZoom(Zoom.of(scale));
    }

    private static BufferedImage image(double density) {
        return new BufferedImage((int) (WIDE * density), (int) (TALL * density), BufferedImage.TYPE_INT_RGB);
    }

    private void paintUntilSharp(BufferedImage image, double density) throws Exception {
        AtomicBoolean sharp = new AtomicBoolean();
        while (!sharp.get()) {
            SwingUtilities.invokeAndWait(() -> {
                paint(image, density, canvas::paint);
                sharp.set(canvas.sharp(density));
            });
            Thread.sleep(5);
        }
        SwingUtilities.invokeAndWait(() -> paint(image, density, canvas::paint));
    }

    private void paint(BufferedImage image, double density, Consumer<Graphics2D> painter) {
        Graphics2D g = image.createGraphics();
        g.scale(density, density);
        g.translate(-canvas.getVisibleRect().x, -canvas.getVisibleRect().y);
        painter.accept(g);
        g.dispose();
    }

    /** By how much a pixel differs from the next one in its row, on average, of 255. */
    private static double sharpness(BufferedImage image, Rectangle part) {
        long steps = 0;
        for (int y = part.y; y < part.y + part.height; y++) {
            for (int x = part.x + 1; x < part.x + part.width; x++) {
                steps += Math.abs(green(image, x, y) - green(image, x - 1, y));
            }
        }
        return (double) steps / part.width / part.height;
    }

    private static int green(BufferedImage image, int x, int y) {
        return image.getRGB(x, y) >> 8 & 0xFF;
    }
}
