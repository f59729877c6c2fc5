package thrumwright.output.html;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Locale;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;
import thrumwright.drawing.Fonts;
import thrumwright.drawing.Palette;
import thrumwright.piece.Piece;
import thrumwright.plan.Plan;
import thrumwright.sheet.Step;
import thrumwright.sheet.StepSheet;
import thrumwright.testing.Pieces;
import thrumwright.testing.RandomPieces;
import thrumwright.testing.Seeds;

class HtmlFileTest {
    private final Fonts fonts = Fonts.load();

    private String html(Piece piece) {
        return HtmlFile.of(Plan.of(piece), fonts, Palette.onPaper(), Locale.UK);
    }

    private Document parsed(String html) throws Exception {
        return DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new ByteArrayInputStream(html.getBytes(StandardCharsets.UTF_8)));
    }

    private static List<Element> all(Document document, String name) {
        NodeList nodes = document.getElementsByTagName(name);
        List<Element> elements = new ArrayList<>();
        for (int i = 0; i < nodes.getLength(); i++) {
            elements.add((Element) nodes.item(i));
        }
        return elements;
    }

    private static List<String> texts(Document document, String name) {
        return all(document, name).stream().map(Node::getTextContent).toList();
    }

    @Test
    void saysAllThatTheSheetSaysInOrder() throws Exception {
        RandomPieces pieces = new RandomPieces(51);
        for (int i = 0; i < Seeds.of(4, 2); i++) {
            Piece piece = pieces.next();
            StepSheet sheet = StepSheet.of(Plan.of(piece), Locale.UK);
            Document document = parsed(html(piece));
            assertThat(texts(document, "h1")).containsExactly(sheet.title());
            assertThat(texts(document, "h3"))
                    .containsExactlyElementsOf(sheet.steps().stream()
                            .map(step -> step.number() + " " + step.title())
                            .toList());
            List<String> sentences = sheet.steps().stream()
                    .flatMap(step -> step.sentences().stream())
                    .toList();
            assertThat(texts(document, "p")).containsSubsequence(sentences);
            assertThat(texts(document, "tr")).hasSize(sheet.cuts().size() + 1);
        }
    }

    @Test
    void everyDrawingIsWithinThePageAndHasItsWords() throws Exception {
        Piece piece = Pieces.panel();
        Document document = parsed(html(piece));
        List<String> says = StepSheet.of(Plan.of(piece), Locale.UK).steps().stream()
                .flatMap(step -> step.picture().map(Step.Picture::says).stream())
                .toList();
        assertThat(all(document, "img").stream().map(image -> image.getAttribute("alt")))
                .doesNotContain("")
                .containsSubsequence(says);
        String begin = "data:image/png;base64,";
        for (Element image : all(document, "img")) {
            assertThat(image.getAttribute("src")).startsWith(begin);
            byte[] png = Base64.getDecoder().decode(image.getAttribute("src").substring(begin.length()));
            assertThat(ImageIO.read(new ByteArrayInputStream(png)).getWidth())
                    .isEqualTo(Integer.parseInt(image.getAttribute("width")) * 3 / 2);
        }
    }

    @Test
    void needsNothingFromElsewhere() {
        // the letters of a picture may spell anything
        String words = html(Pieces.panel()).replaceAll("base64,[A-Za-z0-9+/=\\s]+", "base64,");
        assertThat(words).contains("base64,").doesNotContain("http", "href", "<script", "url(", "@import");
    }

    @Test
    void titlesMayHoldAnySign() throws Exception {
        String title = "Reeds & <sedge> \"no. 2\" %s";
        assertThat(texts(parsed(html(Pieces.panel().withTitle(title))), "title"))
                .containsExactly(title);
    }

    @Test
    void theSamePieceMakesTheSameText() {
        assertThat(html(Pieces.panel())).isEqualTo(html(Pieces.panel()));
    }
}
