package thrumwright.output;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import thrumwright.drawing.Fonts;
import thrumwright.drawing.Palette;
import thrumwright.measure.Length;
import thrumwright.output.page.PageSetup;
import thrumwright.output.page.Paper;
import thrumwright.output.page.Progress;
import thrumwright.output.page.SheetPages;
import thrumwright.output.page.Stopped;
import thrumwright.output.pdf.PdfFile;
import thrumwright.piece.ClassMember;
import thrumwright.piece.ClassSet;
import thrumwright.plan.finding.ClassPlan;
import thrumwright.sheet.ClassSheet;
import thrumwright.store.ClassFile;
import thrumwright.store.FileProblem;
import thrumwright.testing.Pieces;
import thrumwright.testing.RandomClasses;
import thrumwright.testing.Seeds;

class ClassPagesTest {
    private static final Fonts FONTS = Fonts.load();

    private static ClassPages pages(ClassPlan plan, PageSetup setup) {
        return new ClassPages(plan, setup, SheetSection.USUAL, FONTS, Palette.onPaper(), Locale.UK);
    }

    private static ClassPages pages(ClassSet set) {
        return pages(ClassPlan.of(set), PageSetup.usual(Paper.A4));
    }

    private static byte[] pdf(ClassPages pages) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        PdfFile.write(pages.title(), pages, out, Progress.UNWATCHED);
        return out.toByteArray();
    }

    private static ClassSet demo() throws FileProblem {
        return ClassFile.read(Path.of("demo", "class", "tuesday-class.json")).set();
    }

    /** A class of two on a narrow warp, one of them without a name. */
    private static ClassSet small() {
        Length narrow = Length.parse("5 cm");
        return new ClassSet(
                "Tuesday",
                Pieces.panel(),
                List.of(),
                List.of(
                        ClassMember.named("Zoë").withWidth(Optional.of(narrow)),
                        ClassMember.named(" ").withWidth(Optional.of(narrow))));
    }

    @ParameterizedTest
    @EnumSource(Paper.class)
    void nothingInTheListsOverlapsOrLeavesThePage(Paper paper) {
        RandomClasses classes = new RandomClasses(51 + paper.ordinal());
        for (int i = 0; i < Seeds.of(40); i++) {
            ClassSet set = classes.next(i % 8 == 0 ? 30 : 5);
            PageSetup setup = new PageSetup(
                    paper,
                    i % 2 == 0,
                    classes.random().nextDouble(5, 40),
                    classes.random().nextDouble(0.4, 2));
            LayoutChecks.assertNothingOverlapsOrLeavesThePage(
                    pages(ClassPlan.of(set), setup).sheet(0));
        }
    }

    @Test
    void thePartsOfTheListsPaintWhereTheyAre() {
        RandomClasses classes = new RandomClasses(52);
        for (int i = 0; i < Seeds.of(12, 4); i++) {
            LayoutChecks.assertPartsPaintWhereTheyAre(
                    pages(classes.next(i == 0 ? 30 : 6)).sheet(0));
        }
    }

    /** The longest names that there can be, of the widest letter, without a place to break. */
    @ParameterizedTest
    @ValueSource(ints = {1, 30, ClassSet.MOST_MEMBERS})
    void theLongestNamesFindRoom(int members) {
        List<ClassMember> all = new ArrayList<>();
        for (int i = 0; i < members; i++) {
            all.add(ClassMember.named("W".repeat(ClassMember.LONGEST_NAME))
                    .withLoom(Optional.of("M".repeat(ClassMember.LONGEST_NAME - 1) + i % 2))
                    .withPosts(i == 0 ? Optional.of(ClassMember.OwnPosts.NONE) : Optional.empty()));
        }
        ClassPlan plan =
                ClassPlan.of(new ClassSet("W".repeat(ClassMember.LONGEST_NAME), Pieces.panel(), List.of(), all));
        for (boolean landscape : new boolean[] {false, true}) {
            SheetPages lists =
                    pages(plan, new PageSetup(Paper.LETTER, landscape, 40, 1)).sheet(0);
            LayoutChecks.assertNothingOverlapsOrLeavesThePage(lists);
            if (members < 100) {
                LayoutChecks.assertPartsPaintWhereTheyAre(lists);
            }
        }
    }

    @Test
    void everySheetBearsItsNameAndCountsItsOwnPages() throws FileProblem {
        ClassPages pages = pages(demo());
        assertThat(pages.count()).isEqualTo(10);
        assertThat(IntStream.range(0, 10).mapToObj(pages::sheet).map(SheetPages::title))
                .startsWith("Tuesday class at the weaving room", "Saltmarsh at low water · Asta")
                .endsWith(
                        "Saltmarsh at low water · Goran",
                        "Saltmarsh at low water · loom 8",
                        "Booklet · Tuesday class at the weaving room");
        LayoutChecks.assertNothingOverlapsOrLeavesThePage(pages.sheet(6));
    }

    @Test
    void oneFileHoldsEverySheetUnderItsBookmark() throws IOException {
        ClassSet set = small();
        ClassPages pages = pages(set);
        try (PDDocument document = Loader.loadPDF(pdf(pages))) {
            List<String> bookmarks = new ArrayList<>();
            int expected = 0;
            for (PDOutlineItem item :
                    document.getDocumentCatalog().getDocumentOutline().children()) {
                SheetPages sheet = pages.sheet(bookmarks.size());
                bookmarks.add(item.getTitle());
                assertThat(document.getPages().indexOf(item.findDestinationPage(document)))
                        .isEqualTo(expected);
                PDFTextStripper stripper = new PDFTextStripper();
                stripper.setStartPage(expected + 1);
                stripper.setEndPage(expected + sheet.count());
                assertThat(stripper.getText(document))
                        .contains("1 / " + sheet.count(), sheet.count() + " / " + sheet.count());
                expected += sheet.count();
            }
            assertThat(bookmarks)
                    .containsExactly("Tuesday", "Worked panel · Zoë", "Worked panel · loom 2", "Booklet · Tuesday");
            assertThat(document.getNumberOfPages()).isEqualTo(expected);
            assertThat(document.getDocumentInformation().getTitle()).isEqualTo("Tuesday");
        }
    }

    @Test
    void theListsAreHeardWholeAndInOrder() throws IOException {
        ClassSet set = small();
        ClassSheet sheet = ClassSheet.of(ClassPlan.of(set), Locale.UK);
        List<String> expected = new ArrayList<>();
        expected.add("H1 Tuesday");
        sheet.shopping().forEach(line -> expected.add("LBody " + line.text()));
        for (ClassSheet.Cuts cuts : sheet.cuts()) {
            expected.add("H3 " + cuts.heading());
            cuts.lines().forEach(line -> expected.add("TD " + line.whom()));
        }
        sheet.looms().forEach(loom -> expected.add("TD " + loom.get(1)));
        expected.add("H1 Worked panel");
        expected.add("LBody Zoë");
        expected.add("H1 Worked panel");
        try (PDDocument document = Loader.loadPDF(pdf(pages(set)))) {
            List<PdfReading.Said> said = PdfReading.of(document);
            assertThat(said.stream().map(each -> each.type() + " " + each.text()))
                    .containsSubsequence(expected);
            assertThat(said).allMatch(each -> each.within().subList(0, 2).equals(List.of("Document", "Part")));
        }
    }

    @Test
    void theSameClassMakesTheSameBytes() throws IOException {
        assertThat(pdf(pages(small()))).isEqualTo(pdf(pages(small())));
    }

    @Test
    void theWorkTellsHowFarItIsAndCanBeStopped() {
        List<Integer> told = new ArrayList<>();
        Progress impatient = new Progress() {
            @Override
            public void done(int sheets, int all) {
                assertThat(all).isEqualTo(4);
                told.add(sheets);
            }

            @Override
            public boolean stopping() {
                return told.size() == 2;
            }
        };
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ClassPages pages = pages(small());
        assertThatThrownBy(() -> PdfFile.write("", pages, out, impatient)).isInstanceOf(Stopped.class);
        assertThat(told).containsExactly(0, 1);
        assertThat(out.toString(StandardCharsets.ISO_8859_1)).doesNotContain("%%EOF");
    }

    @Test
    void filesOfAClassHaveSafeNamesThatNeverCollide() {
        RandomClasses classes = new RandomClasses(77);
        for (int i = 0; i < Seeds.of(50); i++) {
            List<String> names = FileNames.of(classes.next(12), "sheets", ".pdf");
            assertThat(names).hasSize(14).allMatch(name -> name.matches("sheets-\\d\\d(-[a-z0-9]+)*\\.pdf"));
            assertThat(new HashSet<>(names)).hasSize(14);
        }
        assertThat(FileNames.plain("Zoë O’Brien / ../etc")).isEqualTo("zoe-o-brien-etc");
        assertThat(FileNames.plain("Ångström")).isEqualTo("angstrom");
        assertThat(FileNames.plain("潮")).isEmpty();
        assertThat(FileNames.plain("a".repeat(80))).hasSize(40);
    }
}
