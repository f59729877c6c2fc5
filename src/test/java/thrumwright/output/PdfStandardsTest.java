package thrumwright.output;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.ValidationResult;
import thrumwright.drawing.Fonts;
import thrumwright.drawing.Palette;
import thrumwright.output.page.PageSetup;
import thrumwright.output.page.Paper;
import thrumwright.output.page.Progress;
import thrumwright.output.page.SheetPages;
import thrumwright.output.pdf.PdfFile;
import thrumwright.piece.Piece;
import thrumwright.plan.Plan;
import thrumwright.plan.finding.ClassPlan;
import thrumwright.store.BuiltIn;
import thrumwright.store.PieceFile;
import thrumwright.testing.Pieces;
import thrumwright.testing.RandomClasses;
import thrumwright.testing.RandomPieces;
import thrumwright.testing.Seeds;

/** Sheets keep PDF/UA-1 (ISO 14289-1) and PDF/A-2a (ISO 19005-2), as far as a machine can tell. */
class PdfStandardsTest {
    private static final Fonts FONTS = Fonts.load();

    @BeforeAll
    static void prepareTheChecker() {
        VeraGreenfieldFoundryProvider.initialise();
    }

    private static byte[] pdf(Piece piece, Paper paper) throws IOException {
        SheetPages pages = SheetLayout.of(Plan.of(piece), PageSetup.usual(paper), FONTS, Palette.onPaper(), Locale.UK);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        PdfFile.write(pages, FONTS, out);
        return out.toByteArray();
    }

    private static void assertKeeps(byte[] pdf, PDFAFlavour standard) throws Exception {
        try (PDFAParser parser = Foundries.defaultInstance().createParser(new ByteArrayInputStream(pdf), standard);
                PDFAValidator validator = Foundries.defaultInstance().createValidator(standard, false)) {
            ValidationResult result = validator.validate(parser);
            assertThat(result.getTestAssertions())
                    .as(standard.toString())
                    .allSatisfy(failed -> assertThat(failed.getMessage() + " " + failed.getLocation())
                            .isEmpty());
            assertThat(result.isCompliant()).isTrue();
            assertThat(result.getTotalAssertions()).isGreaterThan(1000);
        }
    }

    static List<String> demos() {
        return BuiltIn.DEMO.names();
    }

    @ParameterizedTest
    @MethodSource("demos")
    void demoSheetsKeepTheStandards(String name) throws Exception {
        byte[] pdf = pdf(PieceFile.read(BuiltIn.DEMO.text(name)).piece(), Paper.A4);
        assertKeeps(pdf, PDFAFlavour.PDFUA_1);
        assertKeeps(pdf, PDFAFlavour.PDFA_2_A);
    }

    @ParameterizedTest
    @EnumSource(names = {"A4", "LETTER"})
    void sheetsOfAllSortsKeepTheStandards(Paper paper) throws Exception {
        RandomPieces pieces = new RandomPieces(41 + paper.ordinal());
        for (int i = 0; i < Seeds.of(3); i++) {
            byte[] pdf = pdf(narrow(pieces), paper);
            assertKeeps(pdf, PDFAFlavour.PDFUA_1);
            assertKeeps(pdf, PDFAFlavour.PDFA_2_A);
        }
    }

    /** The checker takes long over wide pieces, and they hold nothing that narrow ones don't. */
    private static Piece narrow(RandomPieces pieces) {
        Piece piece = pieces.next();
        return piece.warp().ends() <= 100 ? piece : narrow(pieces);
    }

    @Test
    void allSheetsOfAClassInOneFileKeepTheStandards() throws Exception {
        RandomPieces pieces = new RandomPieces(44);
        RandomClasses classes = new RandomClasses(45);
        for (int i = 0; i < Seeds.of(2); i++) {
            ClassPlan plan = ClassPlan.of(classes.next(2, narrow(pieces)));
            ClassPages pages = new ClassPages(plan, PageSetup.usual(Paper.A4), FONTS, Palette.onPaper(), Locale.UK);
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            PdfFile.write(pages.title(), pages, FONTS, out, Progress.UNWATCHED);
            assertKeeps(out.toByteArray(), PDFAFlavour.PDFUA_1);
            assertKeeps(out.toByteArray(), PDFAFlavour.PDFA_2_A);
        }
    }

    @Test
    void aTitleMayHoldAnySign() throws Exception {
        Piece piece = Pieces.panel().withTitle("Reeds & <sedge> “no. 2” %s \u0007 潮だまり");
        assertKeeps(pdf(piece, Paper.A4), PDFAFlavour.PDFUA_1);
        assertKeeps(pdf(piece, Paper.A4), PDFAFlavour.PDFA_2_A);
    }

    /** The checker would notice: without its structure, or without words for a drawing, a sheet doesn't keep PDF/UA. */
    @Test
    void aSheetWithoutItsStructureDoesNotPass() throws Exception {
        byte[] pdf = pdf(Pieces.panel(), Paper.A4);
        byte[] bare = changed(pdf, document -> document.getDocumentCatalog().setStructureTreeRoot(null));
        byte[] mute = changed(pdf, PdfStandardsTest::forgetAlternatives);
        for (byte[] changed : List.of(bare, mute)) {
            assertThatThrownBy(() -> assertKeeps(changed, PDFAFlavour.PDFUA_1)).isInstanceOf(AssertionError.class);
        }
    }

    private static void forgetAlternatives(PDDocument document) {
        PdfReading.elements(document).forEach(element -> element.setAlternateDescription(null));
    }

    private static byte[] changed(byte[] pdf, Consumer<PDDocument> change) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            change.accept(document);
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            document.save(out);
            return out.toByteArray();
        }
    }
}
