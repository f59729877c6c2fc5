package thrumwright.editor.loom;

import static org.assertj.core.api.Assertions.assertThat;
import static thrumwright.testing.WindowTest.onEventThread;

import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.util.Locale;
import javax.swing.JComponent;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import thrumwright.block.Block;
import thrumwright.drawing.Fonts;
import thrumwright.drawing.Palette;
import thrumwright.editor.edit.NewBlocks;
import thrumwright.measure.Phrases;
import thrumwright.measure.UnitSystem;
import thrumwright.store.BuiltIn;
import thrumwright.store.PieceFile;

/** Painting only what has changed leaves the picture that painting all of it makes. */
class MovedPartTest {
    private static final Dimension SIZE = new Dimension(640, 480);

    /** Curves that are cut off at the edge of what is painted are smoothed a little otherwise; of 255. */
    private static final int SEEN = 12;

    @ParameterizedTest
    @CsvSource({"saltmarsh-panel, start/ordering", "saltmarsh-panel, start/soumak", "first-wave, start/waste"})
    void partsMakeTheWhole(String piece, String step) throws Exception {
        LoomStage stage = onEventThread(() -> {
            LoomStage made = new LoomStage(PieceFile.read(BuiltIn.DEMO.text(piece + ".json")), SIZE);
            made.weaveTo(step);
            return made;
        });
        BufferedImage parts = new BufferedImage(SIZE.width, SIZE.height, BufferedImage.TYPE_INT_RGB);
        BufferedImage whole = new BufferedImage(SIZE.width, SIZE.height, BufferedImage.TYPE_INT_RGB);
        int fewer = 0;
        for (int i = 0; i < 24; i++) {
            onEventThread(() -> {
                stage.frame(parts, 0.19);
                paint(stage.component(), whole, stage.all());
                return null;
            });
            assertThat(differ(parts, whole)).as("picture %d", i).isLessThanOrEqualTo(SEEN);
            fewer += stage.painted() < stage.all().width * stage.all().height / 2 ? 1 : 0;
        }
        assertThat(fewer).as("pictures of which less than half was painted").isGreaterThan(15);
    }

    /** Every kind of block as it is shown to a class, right and wrong beside each other. */
    @Test
    void partsOfWhatIsShownMakeTheWhole() {
        LoomType type = new LoomType(Fonts.load(), 96 / 25.4, 1);
        int met = 0;
        for (Block block : NewBlocks.all(UnitSystem.METRIC)) {
            ShownKind kind = ShownKind.of(block);
            if (kind.movable()) {
                met++;
                assertThat(onEventThread(() -> shown(kind, type)))
                        .as(block.key())
                        .isLessThanOrEqualTo(SEEN);
            }
        }
        assertThat(met).isGreaterThan(7);
    }

    /** The most by which a colour differs in some pictures of a kind. */
    private static int shown(ShownKind kind, LoomType type) {
        Phrases phrases = Phrases.of("thrumwright.sheet.steps", Locale.UK);
        ShowingView view = new ShowingView(kind, () -> type, Palette::onDarkScreen, phrases, false);
        view.setSize(SIZE);
        BufferedImage parts = new BufferedImage(SIZE.width, SIZE.height, BufferedImage.TYPE_INT_RGB);
        BufferedImage whole = new BufferedImage(SIZE.width, SIZE.height, BufferedImage.TYPE_INT_RGB);
        int most = 0;
        double before = 0;
        for (double laid : new double[] {0.03, 0.2, 0.24, 0.31, 0.49, 0.53, 0.77, 0.9, 0.99}) {
            view.motion().set(pace -> new Pace(laid, 1, false));
            for (Rectangle part : view.changed(before, laid)) {
                paint(view, parts, part);
            }
            paint(view, whole, new Rectangle(SIZE));
            if (before == 0) {
                paint(view, parts, new Rectangle(SIZE));
            }
            most = Math.max(most, differ(parts, whole));
            before = laid;
        }
        return most;
    }

    private static void paint(JComponent view, BufferedImage image, Rectangle part) {
        Graphics2D g = image.createGraphics();
        g.setClip(part);
        view.paint(g);
        g.dispose();
    }

    /** The most by which a colour of any pixel differs, of 255. */
    private static int differ(BufferedImage one, BufferedImage other) {
        int[] a = ((DataBufferInt) one.getRaster().getDataBuffer()).getData();
        int[] b = ((DataBufferInt) other.getRaster().getDataBuffer()).getData();
        int most = 0;
        for (int i = 0; i < a.length; i++) {
            for (int bits = 0; bits < 24; bits += 8) {
                most = Math.max(most, Math.abs((a[i] >> bits & 255) - (b[i] >> bits & 255)));
            }
        }
        return most;
    }
}
