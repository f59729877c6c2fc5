package thrumwright.output;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
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
        PdfFile.write(pages, fonts, bytes);
        try (PDDocument document = Loader.loadPDF(bytes.toByteArray())) {
            PDViewerPreferences preferences = document.getDocumentCatalog().getViewerPreferences();
            assertThat(preferences.getPrintScaling()).isEqualTo("None");
            int last = document.getNumberOfPages() - 1;
            BufferedImage page = new PDFRenderer(document).renderImageWithDPI(last, (float) DPI, ImageType.GRAY);
            assertThat(longestLine(page) / DPI * 25.4).isCloseTo(100, within(0.05));
        }
    }

    /** The longest unbroken dark run along a row of the page's upper third, in pixels. */
    private static int longestLine(BufferedImage page) {
        int longest = 0;
        int[] row = new int[page.getWidth()];
        for (int y = 0; y < page.getHeight() / 3; y++) {
            page.getRaster().getSamples(0, y, page.getWidth(), 1, 0, row);
            int run = 0;
            for (int grey : row) {
                run = grey < 128 ? run + 1 : 0;
                longest = Math.max(longest, run);
            }
        }
        return longest;
    }
}
