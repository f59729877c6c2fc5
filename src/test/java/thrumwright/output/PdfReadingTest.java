package thrumwright.output;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import thrumwright.drawing.Fonts;
import thrumwright.drawing.Palette;
import thrumwright.output.page.PageSetup;
import thrumwright.output.page.Paper;
import thrumwright.output.page.SheetPages;
import thrumwright.output.pdf.PdfFile;
import thrumwright.plan.EndPlan;
import thrumwright.plan.Plan;
import thrumwright.sheet.Booklet;
import thrumwright.sheet.BookletEntry;
import thrumwright.sheet.CutGroup;
import thrumwright.sheet.StageWords;
import thrumwright.sheet.StepSheet;
import thrumwright.testing.Pieces;
import thrumwright.testing.RandomPieces;
import thrumwright.testing.Seeds;

/** Someone who hears the sheet read hears all of it, in order. */
class PdfReadingTest {
    private final Fonts fonts = Fonts.load();

    private List<PdfReading.Said> read(Plan plan) throws IOException {
        SheetPages pages = SheetLayout.of(plan, PageSetup.usual(Paper.A4), fonts, Palette.onPaper(), Locale.UK);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        PdfFile.write(pages, out);
        try (PDDocument document = Loader.loadPDF(out.toByteArray())) {
            return PdfReading.of(document);
        }
    }

    private static List<String> texts(List<PdfReading.Said> said, String type) {
        return said.stream()
                .filter(each -> each.type().equals(type))
                .map(PdfReading.Said::text)
                .toList();
    }

    private static String head(BookletEntry entry) {
        return entry.heads().stream()
                .map(head -> head.numbers() + " " + head.title())
                .collect(Collectors.joining(" · "));
    }

    @Test
    void titleListsAndKindsAreHeadings() throws IOException {
        Plan plan = Plan.of(Pieces.panel());
        StepSheet sheet = StepSheet.of(plan, Locale.UK);
        List<PdfReading.Said> said = read(plan);
        assertThat(texts(said, "H1")).startsWith(sheet.title());
        assertThat(texts(said, "H2"))
                .containsSubsequence("Cut first", "Yarn in all", "Gauge strips", "How it is worked");
        assertThat(texts(said, "H3"))
                .containsSubsequence(Booklet.of(sheet, Locale.UK).entries().stream()
                        .map(PdfReadingTest::head)
                        .toList());
    }

    @Test
    void everySentenceIsOneParagraphAndEveryDrawingHasItsWordsInOrder() throws IOException {
        RandomPieces pieces = new RandomPieces(43);
        for (int i = 0; i < Seeds.of(10, 3); i++) {
            Plan plan = Plan.of(pieces.next());
            List<String> expected = new ArrayList<>();
            for (BookletEntry entry :
                    Booklet.of(StepSheet.of(plan, Locale.UK), Locale.UK).entries()) {
                expected.add("H3 " + head(entry));
                entry.pictures().stream().limit(1).forEach(picture -> {
                    EndPlan end = plan.end(picture.place());
                    new StageWords(plan, Locale.UK)
                            .says(end, end.block(picture.blockId()).orElseThrow())
                            .forEach(says -> expected.add("Figure " + says));
                });
                entry.sentences().forEach(sentence -> expected.add("P " + sentence));
            }
            List<String> heard = read(plan).stream()
                    .map(said -> said.type() + " " + said.text())
                    .toList();
            assertThat(heard).containsSubsequence(expected);
        }
    }

    /** Letters that the fonts lack can't be read from the page, so they are told beside it. */
    @Test
    void foreignLettersAreHeardAllTheSame() throws IOException {
        String title = "潮だまり";
        assertThat(texts(read(Plan.of(Pieces.panel().withTitle(title))), "H1")).startsWith(title);
    }

    @Test
    void listsAndTablesAreWhole() throws IOException {
        Plan plan = Plan.of(Pieces.panel());
        StepSheet sheet = StepSheet.of(plan, Locale.UK);
        List<PdfReading.Said> said = read(plan);
        assertThat(texts(said, "TH")).hasSize(5);
        assertThat(texts(said, "TD")).hasSize(5 * CutGroup.of(sheet.cuts()).size());
        assertThat(texts(said, "Lbl"))
                .containsExactlyElementsOf(
                        sheet.facts().stream().map(fact -> fact.name()).toList());
        assertThat(said)
                .filteredOn(each -> each.type().equals("TD"))
                .allSatisfy(each -> assertThat(each.within()).containsExactly("Document", "Table", "TR"));
    }

    @Test
    void runningTitlesAndPageNumbersAreNotRead() throws IOException {
        Plan plan = Plan.of(Pieces.panel());
        assertThat(read(plan)).noneMatch(said -> said.text().matches("\\d+ / \\d+"));
        assertThat(read(plan).stream()
                        .filter(said -> said.text().equals(plan.piece().title())))
                .hasSize(1);
    }
}
