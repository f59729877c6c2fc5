package thrumwright.editor.look;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.formdev.flatlaf.FlatLightLaf;
import com.formdev.flatlaf.extras.FlatSVGIcon;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import javax.swing.Icon;
import javax.swing.UIManager;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Icons are drawn as a whole reader of SVG draws them. */
class LineIconTest {
    private static final Path FOLDER = Path.of("src/main/resources/thrumwright/editor/icons");

    @BeforeAll
    static void look() {
        FlatLightLaf.setup();
    }

    static List<String> icons() throws IOException {
        try (Stream<Path> files = Files.list(FOLDER)) {
            return files.map(file -> file.getFileName().toString().replace(".svg", ""))
                    .filter(name -> !name.startsWith("thrumwright"))
                    .sorted()
                    .toList();
        }
    }

    private static FlatSVGIcon whole(String name) {
        FlatSVGIcon icon = new FlatSVGIcon("thrumwright/editor/icons/" + name + ".svg", 18, 18);
        icon.setColorFilter(new FlatSVGIcon.ColorFilter(any -> UIManager.getColor("Label.foreground")));
        return icon;
    }

    private static BufferedImage drawn(Icon icon, double larger) {
        BufferedImage image = new BufferedImage((int) (20 * larger), (int) (20 * larger), BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setColor(Color.WHITE);
        g.fillRect(0, 0, image.getWidth(), image.getHeight());
        g.scale(larger, larger);
        icon.paintIcon(null, g, 1, 1);
        g.dispose();
        return image;
    }

    /** How far the two pictures differ at most in a pixel's green, of 255. */
    private static int difference(BufferedImage one, BufferedImage other) {
        int most = 0;
        for (int y = 0; y < one.getHeight(); y++) {
            for (int x = 0; x < one.getWidth(); x++) {
                int green = one.getRGB(x, y) >> 8 & 0xff;
                most = Math.max(most, Math.abs(green - (other.getRGB(x, y) >> 8 & 0xff)));
            }
        }
        return most;
    }

    @ParameterizedTest
    @MethodSource("icons")
    void looksAsAWholeReaderDrawsIt(String name) {
        for (double larger : new double[] {1, 1.5, 2}) {
            BufferedImage ours = drawn(Icons.of(name), larger);
            assertThat(difference(ours, drawn(whole(name), larger))).as(name).isLessThan(16);
            assertThat(difference(
                            ours, new BufferedImage(ours.getWidth(), ours.getHeight(), BufferedImage.TYPE_INT_RGB)))
                    .isGreaterThan(100);
        }
    }

    @Test
    void isPalerWhereItsButtonCantBePressed() {
        Icon pale = ((LineIcon) Icons.of("open")).getDisabledIcon();
        assertThat(difference(drawn(pale, 1), drawn(whole("open").getDisabledIcon(), 1)))
                .isLessThan(16);
        assertThat(difference(drawn(pale, 1), drawn(Icons.of("open"), 1))).isGreaterThan(40);
    }

    @Test
    void numbersMayStandCloseTogether() {
        List<Path2D> lines = SvgPath.read("<path d=\"M2,14l2.500-5H17V4z\"/><path d=\"m1-1 2 3\"/>");
        assertThat(lines).hasSize(2);
        assertThat(lines.get(0).getBounds2D()).isEqualTo(new Rectangle2D.Double(2, 4, 15, 10));
        assertThat(lines.get(1).getBounds2D()).isEqualTo(new Rectangle2D.Double(1, -1, 2, 3));
    }

    @Test
    void whatItCantDrawIsSaid() {
        assertThatThrownBy(() -> SvgPath.read("<path d=\"M2 14a4 4 0 0 1 0 8\"/>"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("a in M2 14a4");
    }
}
