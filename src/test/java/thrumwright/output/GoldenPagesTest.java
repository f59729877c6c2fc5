package thrumwright.output;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import javax.imageio.ImageIO;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import thrumwright.drawing.Fonts;
import thrumwright.drawing.Palette;
import thrumwright.plan.Plan;
import thrumwright.store.BuiltIn;
import thrumwright.store.FileProblem;
import thrumwright.store.PieceFile;

/**
 * Pages as pictures against pictures that somebody looked at and liked. Run with {@code -Dgolden.accept=true} to take the
 * new ones; look at them before you commit. What differs is drawn into {@code target/golden}.
 */
class GoldenPagesTest {
    private static final double DPI = 50;
    /** Fonts are smoothed a little differently from one Java to another. */
    private static final int SAME_SHADE = 56;

    private static final double MAY_DIFFER = 0.01;
    private static final Path GOLDEN = Path.of("src/test/resources/thrumwright/output/golden");

    @ParameterizedTest
    @CsvSource({
        "saltmarsh-panel, 0",
        "saltmarsh-panel, 2",
        "saltmarsh-panel, 4",
        "reed-bed-fringe, 2",
        "reed-bed-fringe, 5",
        "spring-tide-on-a-bar, 6",
        "first-wave, 1",
        "eelgrass-window, 2"
    })
    void thePageLooksAsItDid(String piece, int number) throws IOException, FileProblem {
        Plan plan = Plan.of(PieceFile.read(BuiltIn.DEMO.text(piece + ".json")).piece());
        SheetPages pages = SheetLayout.of(plan, PageSetup.usual(Paper.A4), Fonts.load(), Palette.onPaper(), Locale.UK);
        BufferedImage page = PngFile.picture(pages, number, DPI);
        Path golden = GOLDEN.resolve(piece + "-" + (number + 1) + ".png");
        if (Boolean.getBoolean("golden.accept")) {
            Files.createDirectories(GOLDEN);
            ImageIO.write(page, "png", golden.toFile());
        }
        BufferedImage liked = ImageIO.read(golden.toFile());
        assertThat(page.getWidth()).isEqualTo(liked.getWidth());
        assertThat(page.getHeight()).isEqualTo(liked.getHeight());
        assertThat(differing(page, liked, golden.getFileName().toString())).isLessThan(MAY_DIFFER);
    }

    /** The share of pixels that differ by more than a shade. */
    private static double differing(BufferedImage page, BufferedImage liked, String name) throws IOException {
        BufferedImage difference = new BufferedImage(page.getWidth(), page.getHeight(), BufferedImage.TYPE_INT_RGB);
        int differing = 0;
        for (int y = 0; y < page.getHeight(); y++) {
            for (int x = 0; x < page.getWidth(); x++) {
                boolean same = shade(page.getRGB(x, y), liked.getRGB(x, y)) <= SAME_SHADE;
                differing += same ? 0 : 1;
                difference.setRGB(x, y, same ? 0xffffff : 0xcc0000);
            }
        }
        if (differing > 0) {
            File folder = Files.createDirectories(Path.of("target/golden")).toFile();
            ImageIO.write(difference, "png", new File(folder, name));
        }
        return (double) differing / page.getWidth() / page.getHeight();
    }

    private static int shade(int one, int other) {
        int most = 0;
        for (int shift = 0; shift <= 16; shift += 8) {
            most = Math.max(most, Math.abs((one >> shift & 0xff) - (other >> shift & 0xff)));
        }
        return most;
    }
}
