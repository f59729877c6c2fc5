package thrumwright.output;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineNode;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import thrumwright.drawing.Fonts;
import thrumwright.measure.Length;
import thrumwright.output.page.PageSetup;
import thrumwright.output.page.Paper;
import thrumwright.output.page.SheetPages;
import thrumwright.output.pdf.PdfFile;
import thrumwright.piece.Piece;
import thrumwright.plan.Plan;
import thrumwright.sheet.StepSheet;
import thrumwright.testing.Pieces;

/** Date, mark and bookmarks of a PDF. */
class ImprintTest {
    private static final Fonts FONTS = Fonts.load();
    private static final ZonedDateTime WRITTEN = ZonedDateTime.parse("2026-03-07T09:30:00Z");

    private static byte[] pdf(Piece piece, ZonedDateTime when) throws IOException {
        SheetLook look = new SheetLook(PageSetup.usual(Paper.A4), true).written(when);
        SheetPages pages = look.layOut(Plan.of(piece), FONTS, Locale.UK);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        PdfFile.write(pages, out);
        return out.toByteArray();
    }

    private static String mark(Piece piece) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf(piece, WRITTEN))) {
            String text = new PDFTextStripper().getText(document);
            assertThat(text).contains("7 Mar 2026 · mark ");
            return text.replaceAll("(?s).*?7 Mar 2026 · mark (\\w{5}).*", "$1");
        }
    }

    @Test
    void theMarkChangesWithThePlanOnly() throws IOException {
        Piece piece = Pieces.panel();
        Piece wider = piece.withWarp(piece.warp().withWidth(Length.parse("31 cm")));
        assertThat(mark(piece)).matches("[0-9A-Z]{5}").isEqualTo(mark(piece)).isNotEqualTo(mark(wider));
    }

    @Test
    void theSameDateMakesTheSameBytes() throws IOException {
        byte[] first = pdf(Pieces.panel(), WRITTEN);
        assertThat(pdf(Pieces.panel(), WRITTEN)).isEqualTo(first);
        assertThat(pdf(Pieces.panel(), WRITTEN.plusDays(1))).isNotEqualTo(first);
    }

    @Test
    void thePdfSaysWhenItWasWritten() throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf(Pieces.panel(), WRITTEN))) {
            assertThat(document.getDocumentInformation().getCreationDate().toInstant())
                    .isEqualTo(WRITTEN.toInstant());
            assertThat(document.getDocumentCatalog().getViewerPreferences().displayDocTitle())
                    .isTrue();
        }
    }

    @Test
    void theEnvironmentMayGiveTheDate() {
        assertThat(WrittenAt.now("1772875800")).isEqualTo(ZonedDateTime.parse("2026-03-07T09:30:00Z[Z]"));
        assertThat(WrittenAt.now("soon")).isAfter(WRITTEN);
        assertThat(WrittenAt.now(null)).isAfter(WRITTEN);
    }

    @Test
    void chaptersAndStepsHaveBookmarks() throws IOException {
        StepSheet sheet = StepSheet.of(Plan.of(Pieces.panel()), Locale.UK);
        try (PDDocument document = Loader.loadPDF(pdf(Pieces.panel(), WRITTEN))) {
            List<String> titles = new ArrayList<>();
            collect(document.getDocumentCatalog().getDocumentOutline(), titles, document);
            assertThat(titles)
                    .containsSubsequence(
                            "Cut first",
                            "Start Worked panel",
                            "1 Ordering cord",
                            "Top Worked panel",
                            "How it is worked");
            // one for each block on the cards; in the booklet those of a kind stand together
            assertThat(titles).containsSubsequence(onCards(sheet));
        }
    }

    private static List<String> onCards(StepSheet sheet) {
        return sheet.chapters().stream()
                .filter(chapter -> chapter.place().isPresent())
                .flatMap(chapter -> chapter.steps().stream())
                .filter(step -> step.picture().isPresent())
                .map(step -> step.number() + " " + step.title())
                .toList();
    }

    private static void collect(PDOutlineNode node, List<String> titles, PDDocument document) throws IOException {
        for (PDOutlineItem item : node.children()) {
            titles.add(item.getTitle());
            assertThat(document.getPages().indexOf(item.findDestinationPage(document)))
                    .isNotNegative();
            collect(item, titles, document);
        }
    }
}
