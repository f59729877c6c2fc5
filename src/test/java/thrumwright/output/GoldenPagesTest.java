package thrumwright.output;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import thrumwright.drawing.Fonts;
import thrumwright.drawing.Palette;
import thrumwright.output.page.PageSetup;
import thrumwright.output.page.Paper;
import thrumwright.output.page.PngFile;
import thrumwright.output.page.SheetPages;
import thrumwright.plan.Plan;
import thrumwright.store.BuiltIn;
import thrumwright.store.FileProblem;
import thrumwright.store.PieceFile;
import thrumwright.testing.Golden;

/** Pages as pictures, by {@link Golden}. */
class GoldenPagesTest {
    private static final double DPI = 50;
    private static final Path GOLDEN = Path.of("src/test/resources/thrumwright/output/golden");

    @ParameterizedTest
    @CsvSource({
        "saltmarsh-panel, 0",
        "saltmarsh-panel, 1",
        "saltmarsh-panel, 2",
        "saltmarsh-panel, 3",
        "saltmarsh-panel, 4",
        "saltmarsh-panel, 6",
        "reed-bed-fringe, 0",
        "reed-bed-fringe, 1",
        "reed-bed-fringe, 5",
        "spring-tide-on-a-bar, 5",
        "first-wave, 3",
        "eelgrass-window, 3"
    })
    void thePageLooksAsItDid(String piece, int number) throws IOException, FileProblem {
        Plan plan = Plan.of(PieceFile.read(BuiltIn.DEMO.text(piece + ".json")).piece());
        SheetPages pages = SheetLayout.of(plan, PageSetup.usual(Paper.A4), Fonts.load(), Palette.onPaper(), Locale.UK);
        BufferedImage page = PngFile.picture(pages, number, DPI);
        Path golden = GOLDEN.resolve(piece + "-" + (number + 1) + ".png");
        Golden.looksAsItDid(page, golden);
    }
}
