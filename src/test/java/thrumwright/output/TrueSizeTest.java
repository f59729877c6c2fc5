package thrumwright.output;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import thrumwright.drawing.Fonts;
import thrumwright.drawing.Palette;
import thrumwright.output.page.PageSetup;
import thrumwright.output.page.Paper;
import thrumwright.output.page.PngFile;
import thrumwright.output.page.SheetPages;
import thrumwright.output.pdf.PdfFile;
import thrumwright.plan.Plan;
import thrumwright.testing.Pieces;

/** What is to be held against the loom is as large on paper as it says. */
class TrueSizeTest {
    private static final double DPI = 600;

    @ParameterizedTest
    @EnumSource(Paper.class)
    void theCheckLineIsTenCentimetresLong(Paper paper) throws IOException {
        Fonts fonts = Fonts.load();
        Plan plan = Plan.of(Pieces.panel());
        SheetPages pages = SheetLayout.of(plan, PageSetup.usual(paper), fonts, Palette.onPaper(), Locale.UK);
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        PdfFile.write(pages, bytes);
        try (PDDocument document = Loader.loadPDF(bytes.toByteArray())) {
            PDViewerPreferences preferences = document.getDocumentCatalog().getViewerPreferences();
            assertThat(preferences.getPrintScaling()).isEqualTo("None");
            BufferedImage page = new PDFRenderer(document).renderImageWithDPI(0, (float) DPI, ImageType.GRAY);
            assertThat(lines(page)).anyMatch(line -> Math.abs(line / DPI * 25.4 - 100) < 0.05);
        }
        BufferedImage picture = PngFile.picture(pages, 0, SheetFiles.USUAL_DPI);
        assertThat(lines(picture)).anyMatch(line -> Math.abs(line * 25.4 / SheetFiles.USUAL_DPI - 100) < 0.35);
    }

    /** The longest unbroken dark run along each row of the page's lower two thirds, in pixels. */
    private static List<Integer> lines(BufferedImage page) {
        BufferedImage grey = new BufferedImage(page.getWidth(), page.getHeight(), BufferedImage.TYPE_BYTE_GRAY);
        grey.createGraphics().drawImage(page, 0, 0, null);
        List<Integer> lines = new ArrayList<>();
        int[] row = new int[page.getWidth()];
        for (int y = page.getHeight() / 3; y < page.getHeight(); y++) {
            grey.getRaster().getSamples(0, y, page.getWidth(), 1, 0, row);
            int longest = 0;
            int run = 0;
            for (int shade : row) {
                run = shade < 128 ? run + 1 : 0;
                longest = Math.max(longest, run);
            }
            lines.add(longest);
        }
        return lines;
    }
}
