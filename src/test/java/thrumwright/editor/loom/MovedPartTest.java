package thrumwright.editor.loom;

import static org.assertj.core.api.Assertions.assertThat;
import static thrumwright.testing.WindowTest.onEventThread;

import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
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
                Graphics2D g = whole.createGraphics();
                g.setClip(stage.all());
                stage.component().paint(g);
                g.dispose();
                return null;
            });
            assertThat(differ(parts, whole)).as("picture %d", i).isLessThanOrEqualTo(SEEN);
            fewer += stage.painted() < stage.all().width * stage.all().height / 2 ? 1 : 0;
        }
        assertThat(fewer).as("pictures of which less than half was painted").isGreaterThan(15);
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
