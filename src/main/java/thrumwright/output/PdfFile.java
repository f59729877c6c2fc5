package thrumwright.output;

import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2DFontTextDrawer;
import java.awt.Font;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.util.HashMap;
import java.util.Map;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDDocumentOutline;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import thrumwright.drawing.Fonts;

/**
 * Writes laid-out pages as a PDF with embedded fonts, tagged for those who hear it read, and fit to be kept (PDF/UA-1,
 * ISO 14289-1; PDF/A-2a, ISO 19005-2); the same pages make the same bytes.
 */
public final class PdfFile {
    private PdfFile() {}

    /**
     * @param out stays open
     * @throws IOException if it can't be written to
     */
    public static void write(SheetPages pages, Fonts fonts, OutputStream out) throws IOException {
        write(pages, fonts, out, Progress.UNWATCHED);
    }

    /**
     * As {@link #write(SheetPages, Fonts, OutputStream)}; nothing is written to {@code out} before all pages are done.
     *
     * @param progress is told of every page
     * @throws Stopped if it is asked to stop
     * @throws IOException if it can't be written to
     */
    public static void write(SheetPages pages, Fonts fonts, OutputStream out, Progress progress) throws IOException {
        try (PDDocument document = new PDDocument()) {
            document.setDocumentId(1L);
            PdfDescription.describe(document, pages.title());
            PdfStructure structure = new PdfStructure(document);
            EmbeddedFonts embedded = new EmbeddedFonts(document, fonts);
            for (int i = 0; i < pages.count(); i++) {
                progress.reached(i, pages.count());
                addPage(document, pages, i, structure, embedded);
            }
            progress.reached(pages.count(), pages.count());
            document.save(out);
        }
    }

    /**
     * Several sheets as one file, each with a bookmark.
     *
     * @param title of the whole
     * @param progress is told of every sheet
     * @throws Stopped if it is asked to stop
     * @throws IOException if it can't be written to
     */
    public static void write(String title, SheetSource sheets, Fonts fonts, OutputStream out, Progress progress)
            throws IOException {
        try (PDDocument document = new PDDocument()) {
            document.setDocumentId(1L);
            PdfDescription.describe(document, title);
            PdfStructure structure = new PdfStructure(document);
            EmbeddedFonts embedded = new EmbeddedFonts(document, fonts);
            PDDocumentOutline bookmarks = new PDDocumentOutline();
            document.getDocumentCatalog().setDocumentOutline(bookmarks);
            for (int i = 0; i < sheets.count(); i++) {
                progress.reached(i, sheets.count());
                SheetPages pages = sheets.sheet(i);
                int first = document.getNumberOfPages();
                structure.open(Role.SHEET);
                for (int page = 0; page < pages.count(); page++) {
                    addPage(document, pages, page, structure, embedded);
                }
                structure.close();
                bookmarks.addLast(bookmark(pages.title(), document.getPage(first)));
            }
            progress.reached(sheets.count(), sheets.count());
            document.save(out);
        }
    }

    private static PDOutlineItem bookmark(String title, PDPage page) {
        PDOutlineItem bookmark = new PDOutlineItem();
        bookmark.setTitle(title);
        bookmark.setDestination(page);
        return bookmark;
    }

    private static void addPage(
            PDDocument document, SheetPages pages, int number, PdfStructure structure, EmbeddedFonts fonts)
            throws IOException {
        float width = (float) pages.setup().width();
        float height = (float) pages.setup().height();
        PDPage page = new PDPage(new PDRectangle(width, height));
        document.addPage(page);
        StructuredGraphics g = new StructuredGraphics(document, page, structure, fonts);
        pages.paint(g, number);
        g.finish();
    }

    /** The program's fonts and their twins in the document. */
    private static final class EmbeddedFonts extends PdfBoxGraphics2DFontTextDrawer {
        private final Map<String, PDFont> twins = new HashMap<>();

        EmbeddedFonts(PDDocument document, Fonts fonts) throws IOException {
            for (Map.Entry<Font, String> font : fonts.files().entrySet()) {
                try (InputStream in = Fonts.class.getResourceAsStream(font.getValue())) {
                    TrueTypeFont file = new TTFParser().parse(new RandomAccessReadBuffer(in));
                    // a ligature has no letters of its own: “left” would be found as “le”
                    file.setEnableGsub(false);
                    twins.put(font.getKey().getFontName(), PDType0Font.load(document, file, true));
                }
            }
        }

        @Override
        protected PDFont mapFont(Font font, IFontTextDrawerEnv env) {
            PDFont twin = twins.get(font.getFontName());
            if (twin == null) {
                throw new IllegalArgumentException(
                        "a sheet uses the program's own fonts only, not " + font.getFontName());
            }
            return twin;
        }
    }
}
