package thrumwright.output.html;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;
import thrumwright.drawing.Fonts;
import thrumwright.drawing.Palette;
import thrumwright.measure.Length;
import thrumwright.piece.LoomKind;
import thrumwright.piece.LoomKinds;
import thrumwright.piece.Piece;
import thrumwright.plan.Plan;
import thrumwright.sheet.Step;
import thrumwright.sheet.StepSheet;
import thrumwright.sheet.WarpingSheet;
import thrumwright.store.BuiltIn;
import thrumwright.store.PieceFile;
import thrumwright.testing.Pieces;
import thrumwright.testing.RandomPieces;
import thrumwright.testing.Seeds;

class HtmlFileTest {
    private final Fonts fonts = Fonts.load();

    private String html(Piece piece) {
        return HtmlFile.of(Plan.of(piece), false, Optional.empty(), fonts, Palette.onPaper(), Locale.UK);
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

    /** With it, how the warp is put on stands before what is cut, drawn and in words; without it nothing of it. */
    @Test
    void theWarpingIsSaidWhereItIsAskedFor() throws Exception {
        for (LoomKind kind : LoomKinds.all(Pieces.panel())) {
            Plan plan = Plan.of(Pieces.panel()
                    .withLoom(
                            kind.key().equals("bar-to-bar")
                                    ? Pieces.panel().loom()
                                    : Pieces.panel()
                                            .loom()
                                            .withWarpPerEnd(Optional.of(Length.parse("1.8 m")))
                                            .withKind(kind)));
            WarpingSheet warping = WarpingSheet.of(plan, Locale.UK);
            Document document = parsed(HtmlFile.of(plan, true, Optional.empty(), fonts, Palette.onPaper(), Locale.UK));
            assertThat(texts(document, "h2")).containsSubsequence(warping.title(), "Cut first");
            assertThat(texts(document, "p"))
                    .containsSubsequence(warping.steps().stream()
                            .map(WarpingSheet.WarpStep::text)
                            .toList())
                    .containsAll(warping.cautions());
            assertThat(all(document, "svg"))
                    .extracting(svg -> svg.getAttribute("aria-label"))
                    .contains(warping.way(), warping.counted());
        }
        assertThat(texts(parsed(html(Pieces.panel())), "h2")).noneMatch(title -> title.startsWith("Warping"));
    }

    @Test
    void everyDrawingIsWithinThePageAndHasItsWords() throws Exception {
        Piece piece = Pieces.panel();
        Document document = parsed(html(piece));
        List<String> says = StepSheet.of(Plan.of(piece), Locale.UK).steps().stream()
                .flatMap(step -> step.picture().map(Step.Picture::says).stream())
                .toList();
        List<Element> drawings = all(document, "svg");
        assertThat(drawings.stream().map(drawing -> drawing.getAttribute("aria-label")))
                .doesNotContain("")
                .containsSubsequence(says);
        assertThat(drawings)
                .allSatisfy(drawing -> assertThat(drawing.getAttribute("role")).isEqualTo("img"));
        assertThat(all(document, "img")).isEmpty();
    }

    /** What is used has been drawn, before, once. */
    @Test
    void everyDrawingUsesOnlyWhatIsOnThePage() throws Exception {
        Document document = parsed(html(Pieces.panel()));
        List<String> ids = new ArrayList<>();
        for (String name : List.of("path", "g", "clipPath")) {
            all(document, name).stream()
                    .map(element -> element.getAttribute("id"))
                    .filter(id -> !id.isEmpty())
                    .forEach(ids::add);
        }
        assertThat(ids).doesNotHaveDuplicates().hasSizeGreaterThan(500);
        assertThat(all(document, "use").stream()
                        .map(use -> use.getAttribute("href").substring(1)))
                .hasSizeGreaterThan(2000)
                .isSubsetOf(ids);
    }

    /** A drawing in SVG is many times as small as a picture, and the worked panel's whole page weighs 374 KB. */
    @Test
    void theDemoPanelWeighsLittle() throws Exception {
        String html =
                html(PieceFile.read(BuiltIn.DEMO.text("saltmarsh-panel.json")).piece());
        assertThat(html.getBytes(StandardCharsets.UTF_8).length).isLessThan(400_000);
    }

    @Test
    void needsNothingFromElsewhere() {
        String html = html(Pieces.panel());
        assertThat(html).doesNotContain("://", "@import", " src=", "data:").contains("default-src 'none'");
        assertThat(html.replace("href=\"#", "").replace("url(#", "")).doesNotContain("href", "url(");
    }

    /** The browser is allowed to run exactly the lines that keep the ticks, and no name gets among them. */
    @Test
    void onlyTheLinesThatKeepTicksMayRun() throws Exception {
        String evil = "</script><script>alert(1)</script>\"><img onerror=alert(1)>";
        String html = html(Pieces.panel().withTitle(evil));
        String script = html.substring(html.indexOf("<script>") + 8, html.indexOf("</script>"));
        byte[] sum = MessageDigest.getInstance("SHA-256").digest(script.getBytes(StandardCharsets.UTF_8));
        assertThat(html).contains("script-src 'sha256-" + Base64.getEncoder().encodeToString(sum) + "'");
        assertThat(html.split("<script", -1)).hasSize(2);
        assertThat(html).doesNotContain("<img");
        assertThat(script).doesNotContain("alert");
    }

    /** Ticks of an old plan aren't taken for those of a new one. */
    @Test
    void ticksAreKeptUnderAMarkOfThePlan() throws Exception {
        Piece piece = Pieces.panel();
        String wide = ticks(piece.withWarp(piece.warp().withWidth(Length.parse("31 cm"))));
        assertThat(ticks(piece)).isEqualTo(ticks(piece)).isNotEqualTo(wide).startsWith(piece.title() + " ");
    }

    private String ticks(Piece piece) throws Exception {
        return all(parsed(html(piece)), "main").get(0).getAttribute("data-ticks");
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
