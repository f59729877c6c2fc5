package thrumwright.output;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.util.List;
import java.util.Locale;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import thrumwright.drawing.Fonts;
import thrumwright.output.page.PageSetup;
import thrumwright.output.page.Paper;
import thrumwright.output.page.Progress;
import thrumwright.piece.Piece;
import thrumwright.plan.Plan;
import thrumwright.testing.Pieces;
import thrumwright.yarn.Yarn;

/** Whatever stands in a name, what is written is well-formed. */
class OddNamesTest {
    private static final String ODD = "a\u0000b\u0007c\u001bd\ufffee\uffff f \ud800 g \udc00\ud83c\udf0a <&>\"]]>";

    static List<SheetForm> readAsXml() {
        return List.of(SheetForm.SVG, SheetForm.HTML);
    }

    private static Plan plan() {
        Piece piece = Pieces.panel();
        List<Yarn> yarns = piece.yarns().stream().map(OddNamesTest::odd).toList();
        return Plan.of(piece.withYarns(yarns).withTitle(ODD).withNote(ODD));
    }

    private static Yarn odd(Yarn yarn) {
        return new Yarn(yarn.id(), ODD, yarn.colour(), yarn.fibre(), yarn.thickness(), yarn.firmness());
    }

    private static byte[] written(SheetForm form) throws Exception {
        ByteArrayOutputStream[] all = {null};
        SheetLook look = new SheetLook(PageSetup.usual(Paper.A4), true);
        new SheetFiles(plan(), look, Fonts::load, Locale.UK)
                .<RuntimeException>write(form, "sheet", 72, Progress.UNWATCHED, (name, content) -> {
                    all[0] = new ByteArrayOutputStream();
                    content.writeTo(all[0]);
                });
        return all[0].toByteArray();
    }

    @ParameterizedTest
    @MethodSource("readAsXml")
    void whatIsXmlCanBeReadAsXml(SheetForm form) throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
        assertThat(factory.newDocumentBuilder().parse(new ByteArrayInputStream(written(form))))
                .isNotNull();
    }

    @Test
    void theMetadataOfAPdfCanBeReadAsXml() throws Exception {
        try (PDDocument document = Loader.loadPDF(written(SheetForm.PDF))) {
            byte[] metadata = document.getDocumentCatalog().getMetadata().toByteArray();
            assertThat(DocumentBuilderFactory.newInstance()
                            .newDocumentBuilder()
                            .parse(new ByteArrayInputStream(metadata)))
                    .isNotNull();
        }
    }

    @ParameterizedTest
    @CsvSource({
        "con, piece-con",
        "NUL, piece-nul",
        "COM1, piece-com1",
        "a:b, a-b",
        "'Trailing. ', trailing",
        "'', piece",
        "'...', piece",
        "'../../etc/passwd', etc-passwd",
        "Åsa’s Überwurf, åsa-s-überwurf",
        "Concrete, concrete"
    })
    void aTitleAsTheNameOfAFileIsSafeOnEverySystem(String title, String stem) {
        assertThat(FileNames.stem(title)).isEqualTo(stem);
    }

    @Test
    void aLongTitleIsCutBetweenWholeCharacters() {
        String stem = FileNames.stem("\ud840\udc00".repeat(300));
        assertThat(stem.codePointCount(0, stem.length())).isEqualTo(40);
        assertThat(stem.codePoints()).allMatch(Character::isLetter);
    }
}
