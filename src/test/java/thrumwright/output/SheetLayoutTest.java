package thrumwright.output;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.font.FontRenderContext;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import thrumwright.drawing.Fonts;
import thrumwright.drawing.Palette;
import thrumwright.output.page.PageSetup;
import thrumwright.output.page.Paper;
import thrumwright.output.page.PngFile;
import thrumwright.output.page.SheetPages;
import thrumwright.output.page.Type;
import thrumwright.output.pdf.PdfFile;
import thrumwright.plan.Plan;
import thrumwright.sheet.Booklet;
import thrumwright.sheet.BookletEntry;
import thrumwright.sheet.CutGroup;
import thrumwright.sheet.Step;
import thrumwright.sheet.StepSheet;
import thrumwright.testing.Pieces;
import thrumwright.testing.RandomPieces;
import thrumwright.testing.Seeds;

class SheetLayoutTest {
    private final Fonts fonts = Fonts.load();

    /** 20 minutes of arc at 1 m are 5.818 mm (NUREG-0700 rev. 2, 1.3.1-4). */
    @ParameterizedTest
    @CsvSource({"1, 20, 5.818", "1, 16, 4.654", "2, 20, 11.635"})
    void capitalsStandAsHighAsTheDistanceAsks(double metres, double minutes, double mm) {
        assertThat(Type.capitalHeight(metres, minutes)).isCloseTo(mm, within(0.001));
    }

    /** The size of the type is worked out from the real height of the font's capitals. */
    @Test
    void theFontsCapitalsAreAsHighAsAssumed() {
        double high = fonts.semibold()
                .deriveFont(1000f)
                .createGlyphVector(new FontRenderContext(null, true, true), "H")
                .getVisualBounds()
                .getHeight();
        assertThat(high / 1000).isCloseTo(Type.CAPITAL, within(0.005));
    }

    /** A4 210 × 297 mm (ISO 216); Letter 215.9 × 279.4 mm (ANSI). */
    @Test
    void papersHaveTheirSizes() {
        assertThat(Paper.A4.width()).isCloseTo(595.276, within(0.001));
        assertThat(Paper.A4.height()).isCloseTo(841.890, within(0.001));
        assertThat(Paper.LETTER.width()).isCloseTo(612, within(1e-9));
        assertThat(Paper.LETTER.height()).isCloseTo(792, within(1e-9));
    }

    /** “10 ← under right edge” to be read from 2 m is wider than a sheet with wide margins. */
    @Test
    void aRowThatIsTooWideForThePageTakesTwoLines() {
        PageSetup setup = new PageSetup(Paper.A4, false, 25, 2);
        SheetPages pages = SheetLayout.of(Plan.of(Pieces.panel()), setup, fonts, Palette.onPaper(), Locale.UK);

        LayoutChecks.assertNothingOverlapsOrLeavesThePage(pages);
        LayoutChecks.assertInkLiesFree(pages);
    }

    @ParameterizedTest
    @EnumSource(Paper.class)
    void nothingOverlapsOrLeavesThePage(Paper paper) {
        RandomPieces pieces = new RandomPieces(31);
        for (int i = 0; i < Seeds.of(60); i++) {
            Plan plan = Plan.of(pieces.next());
            double distance = pieces.random().nextDouble(0.4, 2);
            PageSetup setup = new PageSetup(paper, i % 2 == 0, pieces.random().nextDouble(5, 30), distance);
            SheetPages pages = SheetLayout.of(plan, setup, fonts, Palette.onPaper(), Locale.UK);
            LayoutChecks.assertNothingOverlapsOrLeavesThePage(pages);
        }
    }

    /** Whatever a piece is like, its pages can be painted. */
    @Test
    void everyPageCanBePainted() {
        RandomPieces pieces = new RandomPieces(777);
        for (int i = 0; i < Seeds.of(60); i++) {
            SheetPages pages = SheetLayout.of(
                    Plan.of(pieces.next()), PageSetup.usual(Paper.A4), fonts, Palette.onPaper(), Locale.UK);
            for (int page = 0; page < pages.count(); page++) {
                assertThat(PngFile.picture(pages, page, 20).getWidth()).isEqualTo(165);
            }
        }
    }

    /** What a part paints stays in the place that it asked for. */
    @Test
    void partsPaintWhereTheyAre() {
        RandomPieces pieces = new RandomPieces(32);
        for (int i = 0; i < Seeds.of(6, 2); i++) {
            SheetPages pages = SheetLayout.of(
                    Plan.of(pieces.next()), PageSetup.usual(Paper.A4), fonts, Palette.onPaper(), Locale.UK);
            LayoutChecks.assertPartsPaintWhereTheyAre(pages);
        }
    }

    /** Every step once in the booklet, with all that its kind has to say; and all cuts. */
    @Test
    void thePdfSaysWhatTheSheetSays() throws IOException {
        Plan plan = Plan.of(Pieces.panel());
        StepSheet sheet = StepSheet.of(plan, Locale.UK);
        Booklet booklet = Booklet.of(sheet, Locale.UK);
        List<Integer> steps = new ArrayList<>();
        try (PDDocument document = Loader.loadPDF(pdf(plan))) {
            String text = new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
            int at = 0;
            for (BookletEntry entry : booklet.entries()) {
                for (BookletEntry.Head head : entry.heads()) {
                    at = text.indexOf(head.numbers() + " " + head.title(), at);
                    assertThat(at).as("%s in its order", head.title()).isNotNegative();
                    steps.addAll(head.steps());
                }
                entry.sentences().forEach(sentence -> assertThat(text).contains(sentence));
                entry.cautions().forEach(caution -> assertThat(text).contains(caution));
            }
            CutGroup.of(sheet.cuts())
                    .forEach(cut -> assertThat(text).contains(cut.first().widths() + " × "));
            for (PDPage page : document.getPages()) {
                assertThat(page.getMediaBox().getWidth()).isCloseTo((float) Paper.A4.width(), within(0.01f));
            }
        }
        assertThat(steps)
                .containsExactlyInAnyOrderElementsOf(
                        sheet.steps().stream().map(Step::number).toList());
    }

    @Test
    void theSamePieceMakesTheSameBytes() throws IOException {
        assertThat(pdf(Plan.of(Pieces.panel()))).isEqualTo(pdf(Plan.of(Pieces.panel())));
    }

    private byte[] pdf(Plan plan) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        PdfFile.write(SheetLayout.of(plan, PageSetup.usual(Paper.A4), fonts, Palette.onPaper(), Locale.UK), out);
        return out.toByteArray();
    }
}
