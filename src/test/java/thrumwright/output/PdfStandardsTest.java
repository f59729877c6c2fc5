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
import org.verapdf.pdfa.VeraPDFFoundry;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.ValidationResult;
import thrumwright.drawing.Fonts;
import thrumwright.drawing.Palette;
import thrumwright.measure.Length;
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
        PdfFile.write(pages, out);
        return out.toByteArray();
    }

    /** In one go through the file: what the standards ask differs, what they look at is the same. */
    private static void assertKeepsBoth(byte[] pdf) throws Exception {
        VeraPDFFoundry foundry = Foundries.defaultInstance();
        List<PDFAFlavour> standards = List.of(PDFAFlavour.PDFUA_1, PDFAFlavour.PDFA_2_A);
        try (PDFAParser parser = foundry.createParser(new ByteArrayInputStream(pdf), PDFAFlavour.PDFUA_1);
                PDFAValidator validator = foundry.createValidator(standards)) {
            List<ValidationResult> results = validator.validateAll(parser);
            assertThat(results)
                    .extracting(ValidationResult::getPDFAFlavour)
                    .containsExactlyInAnyOrderElementsOf(standards);
            results.forEach(PdfStandardsTest::assertKept);
        }
    }

    private static void assertKept(ValidationResult result) {
        assertThat(result.getTestAssertions())
                .as(result.getPDFAFlavour().toString())
                .allSatisfy(failed -> assertThat(failed.getMessage() + " " + failed.getLocation())
                        .isEmpty());
        assertThat(result.isCompliant()).isTrue();
        assertThat(result.getTotalAssertions()).isGreaterThan(1000);
    }

    static List<String> demos() {
        return BuiltIn.DEMO.names();
    }

    @ParameterizedTest
    @MethodSource("demos")
    void demoSheetsKeepTheStandards(String name) throws Exception {
        Piece demo = PieceFile.read(BuiltIn.DEMO.text(name)).piece();
        boolean whole = demos().indexOf(name) < Seeds.of(demos().size());
        assertKeepsBoth(pdf(whole ? demo : strip(demo), Paper.A4));
    }

    @ParameterizedTest
    @EnumSource(names = {"A4", "LETTER"})
    void sheetsOfAllSortsKeepTheStandards(Paper paper) throws Exception {
        RandomPieces pieces = new RandomPieces(41 + paper.ordinal());
        for (int i = 0; i < Seeds.of(3); i++) {
            byte[] pdf = pdf(narrow(pieces), paper);
            assertKeepsBoth(pdf);
        }
    }

    private static Piece narrow(RandomPieces pieces) {
        Piece piece = pieces.next();
        return piece.warp().ends() <= 40 ? piece : narrow(pieces);
    }

    /** The checker takes long over wide pieces, and their sheets hold nothing that those of narrow ones don't. */
    private static Piece strip(Piece piece) {
        return piece.withWarp(piece.warp().withWidth(Length.parse("6 cm")));
    }

    @Test
    void allSheetsOfAClassInOneFileKeepTheStandards() throws Exception {
        RandomPieces pieces = new RandomPieces(44);
        RandomClasses classes = new RandomClasses(45);
        for (int i = 0; i < Seeds.of(2); i++) {
            ClassPlan plan = ClassPlan.of(classes.next(2, narrow(pieces)));
            ClassPages pages = new ClassPages(
                    plan, PageSetup.usual(Paper.A4), SheetSection.USUAL, FONTS, Palette.onPaper(), Locale.UK);
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            PdfFile.write(pages.title(), pages, out, Progress.UNWATCHED);
            assertKeepsBoth(out.toByteArray());
        }
    }

    @Test
    void aTitleMayHoldAnySign() throws Exception {
        assertKeepsBoth(titled());
    }

    /** The checker would notice: without its structure, or without words for a drawing, that sheet doesn't keep PDF/UA. */
    @Test
    void aSheetWithoutItsStructureDoesNotPass() throws Exception {
        byte[] pdf = titled();
        byte[] bare = changed(pdf, document -> document.getDocumentCatalog().setStructureTreeRoot(null));
        byte[] mute = changed(pdf, PdfStandardsTest::forgetAlternatives);
        for (byte[] changed : List.of(bare, mute)) {
            assertThatThrownBy(() -> assertKeepsBoth(changed))
                    .isInstanceOf(AssertionError.class)
                    .hasMessageContaining(PDFAFlavour.PDFUA_1.toString());
        }
    }

    private static byte[] titled() throws IOException {
        return pdf(strip(Pieces.panel()).withTitle("Reeds & <sedge> “no. 2” %s \u0007 潮だまり"), Paper.A4);
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
