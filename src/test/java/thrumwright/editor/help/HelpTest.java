package thrumwright.editor.help;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.ResourceBundle;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.swing.JPanel;
import javax.swing.JTextField;
import org.junit.jupiter.api.Test;
import thrumwright.block.Block;
import thrumwright.editor.edit.NewBlocks;
import thrumwright.editor.text.Texts;
import thrumwright.measure.UnitSystem;
import thrumwright.plan.finding.Finding;
import thrumwright.plan.finding.Severity;

/** The docs are in the program, whole, and tell of every block, finding and field that there is. */
class HelpTest {
    private static final Path DOCS = Path.of("docs");
    private static final Pattern LEADS = Pattern.compile("(?:href|src)=\"([^\"]+)\"");

    private static List<Path> documents() throws IOException {
        try (Stream<Path> files = Files.walk(DOCS)) {
            return files.filter(file -> file.toString().endsWith(".md")).toList();
        }
    }

    private static String reference(String page) throws IOException {
        return Files.readString(DOCS.resolve("reference").resolve(page));
    }

    /** What stands from an anchor to the next one. */
    private static String told(String text, String anchor) {
        int from = text.indexOf("<a id=\"" + anchor + "\"></a>");
        int to = text.indexOf("<a id=", from + 1);
        return from < 0 ? "" : text.substring(from, to < 0 ? text.length() : to);
    }

    @Test
    void everyDocumentIsInTheProgramAndInItsContents() throws IOException {
        TreeSet<String> files = new TreeSet<>();
        for (Path file : documents()) {
            files.add(DOCS.relativize(file).toString().replace('\\', '/'));
        }
        assertThat(HelpPage.all()).extracting(HelpPage::file).containsExactlyInAnyOrderElementsOf(files);
        assertThat(HelpPage.all()).extracting(HelpPage::title).doesNotHaveDuplicates();
    }

    @Test
    void everyLinkAndPictureOfEveryPageIsThere() {
        int met = 0;
        List<String> lost = new ArrayList<>();
        for (HelpPage page : HelpPage.all()) {
            Matcher lead = LEADS.matcher(page.html(600));
            while (lead.find()) {
                met++;
                String to = lead.group(1);
                boolean there = to.startsWith("#")
                        || HelpPage.class.getResource("/thrumwright/help"
                                        + URI.create("/" + page.file()).resolve(to.split("#")[0]))
                                != null;
                if (!there && !to.startsWith("../")) {
                    lost.add(page.file() + ": " + to);
                }
            }
        }
        assertThat(lost).isEmpty();
        assertThat(met).isGreaterThan(60);
    }

    /** Nothing of the marks that a page is written with is left when it is shown. */
    @Test
    void pagesAreShownWithoutTheirMarks() {
        for (HelpPage page : HelpPage.all()) {
            String words =
                    page.html(600).replaceAll("(?s)<(code|pre)>.*?</\\1>", "").replaceAll("<[^>]*>", "");
            assertThat(words).as(page.file()).doesNotContain("**", "](", "```", "&lt;a ", "|---");
        }
    }

    @Test
    void whatIsElsewhereIsNeitherLinkedNorFetched() {
        String html = Markdown.html(
                "![x](https://example.org/x.png) [here](https://example.org) <script>x()</script>\n\n"
                        + "<img src=\"https://example.org/x.png\"> [there](file:///etc/passwd)",
                picture -> "");
        assertThat(html).doesNotContain("<img", "<a ", "<script").contains("here", "there");
    }

    @Test
    void everyKindOfBlockIsToldOfWithPictureAndFormula() throws IOException {
        String text = reference("blocks.md");
        Texts texts = Texts.of(Locale.UK);
        List<String> lacking = new ArrayList<>();
        for (Block block : NewBlocks.all(UnitSystem.METRIC)) {
            String told = told(text, block.key());
            boolean whole = told.contains("## " + texts.words().kind(block))
                    && told.contains(texts.say("about." + block.key()))
                    && told.contains("pictures/blocks/" + block.key() + ".png")
                    && told.strip().lines().filter(line -> !line.isBlank()).count() >= 5
                    && Files.exists(DOCS.resolve("pictures/blocks/" + block.key() + ".png"));
            if (!whole) {
                lacking.add(block.key());
            }
        }
        assertThat(lacking).as("no whole section in docs/reference/blocks.md").isEmpty();
    }

    @Test
    void everyKindOfLoomIsToldOf() throws IOException {
        String text = reference("looms.md");
        ResourceBundle texts = ResourceBundle.getBundle("thrumwright.editor.texts", Locale.ROOT);
        List<String> lacking = new ArrayList<>();
        for (String key : texts.keySet()) {
            if (key.matches("loom-kind\\.[a-z-]+\\.is")) {
                String kind = key.substring("loom-kind.".length(), key.length() - ".is".length());
                String told = told(text, kind);
                if (!told.contains(texts.getString(key))
                        || told.strip().lines().filter(line -> !line.isBlank()).count() < 4) {
                    lacking.add(kind);
                }
            }
        }
        assertThat(lacking).as("no whole section in docs/reference/looms.md").isEmpty();
    }

    @Test
    void everyFindingIsToldOfWithWhatToDo() throws IOException {
        String text = reference("findings.md");
        Map<Severity, String> weights = Map.of(
                Severity.PROBLEM,
                "*A problem.*",
                Severity.CAUTION,
                "*To take care of.*",
                Severity.NOTE,
                "*To be known.*");
        List<String> lacking = new ArrayList<>();
        for (Finding.Code code : Finding.Code.values()) {
            String told = told(text, HelpTopic.finding(code.name()).anchor());
            if (!told.contains("**What to do.**") || !told.contains(weights.get(code.severity()))) {
                lacking.add(code.name());
            }
        }
        assertThat(lacking).as("no whole section in docs/reference/findings.md").isEmpty();
    }

    @Test
    void everyFieldIsToldOfAsItsTipSays() throws IOException {
        String text = reference("fields.md");
        Map<String, String> lacking = new TreeMap<>();
        for (String bundle : List.of("thrumwright.editor.texts", "thrumwright.blocks")) {
            ResourceBundle texts = ResourceBundle.getBundle(bundle, Locale.ROOT);
            for (String key : texts.keySet()) {
                if (key.startsWith("field.") && key.endsWith(".tip")) {
                    String field = key.substring("field.".length(), key.length() - ".tip".length());
                    String line = "| <a id=\"" + field + "\"></a>" + texts.getString("field." + field) + " | "
                            + texts.getString(key) + " |";
                    if (!text.contains(line)) {
                        lacking.put(field, line);
                    }
                }
            }
        }
        assertThat(lacking).as("not in docs/reference/fields.md").isEmpty();
    }

    @Test
    void theFieldTheFindingAndTheBlockAtHandAreFound() {
        JTextField field = new JTextField();
        field.setName("field.block.amount");
        JPanel row = new JPanel();
        row.setName("finding.TOO_THICK");
        JPanel inner = new JPanel();
        row.add(inner);
        assertThat(HelpTopic.of(field, Optional.of("twining"))).isEqualTo(HelpTopic.field("block.amount"));
        JTextField third = new JTextField();
        third.setName("field.yarn.strands.3");
        assertThat(HelpTopic.of(third, Optional.empty())).isEqualTo(HelpTopic.field("yarn.strands"));
        assertThat(HelpTopic.of(inner, Optional.empty()).anchor()).isEqualTo("too-thick");
        assertThat(HelpTopic.of(new JPanel(), Optional.of("twining"))).isEqualTo(HelpTopic.block("twining"));
        assertThat(HelpTopic.of(null, Optional.empty())).isEqualTo(HelpTopic.CONTENTS);
        HelpTopic there =
                HelpTopic.field("x").linked("../method.md#the-taut-cord").orElseThrow();
        assertThat(there.page().html(600)).contains("<a name=\"" + there.anchor() + "\">");
        assertThat(HelpTopic.CONTENTS.linked("https://example.org")).isEmpty();
    }

    private static final Pattern NAMED =
            Pattern.compile("new Modal<>\\(\\w+, \"(\\w+)\"|frame\\.setName\\(\"(\\w+)\"\\)");

    /** By the names that windows and dialogs are given in the source. */
    @Test
    void everyWindowAndDialogHasItsPage() throws IOException {
        Map<String, HelpTopic> met = new TreeMap<>();
        try (Stream<Path> files = Files.walk(Path.of("src/main/java/thrumwright/editor"))) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Matcher name = NAMED.matcher(Files.readString(file));
                while (name.find()) {
                    String window = name.group(1) == null ? name.group(2) : name.group(1);
                    met.put(window, HelpTopic.ofWindow(window).orElse(HelpTopic.CONTENTS));
                }
            }
        }
        met.keySet().removeAll(List.of("editor", "helpWindow"));
        assertThat(met).hasSizeGreaterThanOrEqualTo(15);
        met.forEach((window, topic) -> {
            assertThat(topic).as(window).isNotEqualTo(HelpTopic.CONTENTS);
            assertThat(topic.page().html(600))
                    .as(window)
                    .contains(topic.anchor().isEmpty() ? "<h1>" : "name=\"" + topic.anchor() + "\"");
        });
    }
}
