package thrumwright.commandline;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import thrumwright.store.BuiltIn;

/** A class instead of a piece, on the command line. */
class ClassCommandsTest {
    /** Two looms for a narrow piece: little to write. */
    private static final String CLASS = """
            {"thrumwrightClass": 1, "title": "Saturday", "piece": "first-wave.json",
             "members": [{"name": "Asta"}, {"loom": "Guest loom", "posts": "none"}]}
            """;

    @TempDir
    Path folder;

    private String file;

    private record Answer(int code, String out, String err) {}

    @BeforeEach
    void aClassBesideItsPiece() throws IOException {
        Files.writeString(folder.resolve("first-wave.json"), BuiltIn.DEMO.text("first-wave.json"));
        file = Files.writeString(folder.resolve("saturday.json"), CLASS).toString();
    }

    private Answer ask(String in, String... arguments) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int code = RootCommand.run(
                arguments,
                new ByteArrayInputStream(in.getBytes(StandardCharsets.UTF_8)),
                new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8),
                folder.resolve("own"),
                "1.2.3");
        return new Answer(code, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    private List<String> written() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(each -> each.getFileName().toString())
                    .filter(name -> name.startsWith("out"))
                    .sorted()
                    .toList();
        }
    }

    @Test
    void planShowsTheCommonLists() {
        Answer answer = ask("", "plan", file);
        assertThat(answer.code()).isZero();
        assertThat(answer.out()).startsWith("Saturday\n").contains("Shopping list", "Cut together", "Guest loom");
    }

    @Test
    void planAsJsonHasTheSumsAndEveryLoomsPlan() throws IOException {
        Answer answer = ask("", "plan", "--json", "demo/class/tuesday-class.json");
        assertThat(answer.code()).isZero();
        assertThat(answer.out())
                .startsWith("{\n  \"thrumwrightClassPlan\": 1,\n  \"title\": \"Tuesday class at the weaving room\"")
                .contains("\"name\": \"Delphine\"", "\"stock\": 120000.0", "\"thrumwrightPlan\": 1");
        String docs = Files.readString(Path.of("docs", "commandline.md"));
        Set<String> fields = new TreeSet<>();
        Pattern.compile("\"(\\w+)\":").matcher(answer.out()).results().forEach(found -> fields.add(found.group(1)));
        assertThat(fields)
                .hasSizeGreaterThan(40)
                .allSatisfy(field -> assertThat(docs).contains("`" + field + "`"));
    }

    @Test
    void checkNamesThoseWhomAFindingIsAbout() {
        Answer answer = ask("", "check", "demo/class/tuesday-class.json");
        assertThat(answer.code()).isEqualTo(RootCommand.PROBLEM_FOUND);
        assertThat(answer.out())
                .startsWith("problem: There isn't enough Undyed cotton 12/6: ")
                .contains("note: Eskil: Ordering cord in the start: this loom has no posts");
        Answer fine = ask("", "check", "--strict", file.replace("saturday", "first-wave"));
        assertThat(fine.code()).isZero();
    }

    @Test
    void sheetWritesAllInOneDocument() throws IOException {
        Path pdf = folder.resolve("out.pdf");
        assertThat(ask("", "sheet", file, "-o", pdf.toString()).code()).isZero();
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            assertThat(document.getDocumentInformation().getTitle()).isEqualTo("Saturday");
            assertThat(document.getDocumentCatalog().getDocumentOutline().children())
                    .hasSize(4);
        }
        assertThat(ask("", "sheet", file).out())
                .startsWith("Saturday\n")
                .containsSubsequence("Cut together", "Name: Asta", "Name: ____");
        String html = ask("", "sheet", file, "--as", "html").out();
        assertThat(html.replaceAll("base64,[^\"]*", "").replaceAll("(?s)<svg.*?</svg>", ""))
                .startsWith("<!DOCTYPE html>")
                .containsSubsequence("<h1>Saturday</h1>", "Cut together", "<dd>Asta</dd>", "<dd>____", "</html>\n");
        assertThat(written()).containsExactly("out.pdf");
    }

    @Test
    void sheetWritesAFileForEachLoom() throws IOException {
        String to = folder.resolve("out").toString();
        Answer answer = ask("", "sheet", file, "--each", "-o", to + ".pdf", "--paper", "letter");
        assertThat(answer.code()).isZero();
        assertThat(written()).containsExactly("out-0-lists.pdf", "out-1-asta.pdf", "out-2.pdf", "out-3-booklet.pdf");
        try (PDDocument document =
                Loader.loadPDF(folder.resolve("out-1-asta.pdf").toFile())) {
            assertThat(document.getPage(0).getMediaBox().getWidth()).isEqualTo(612f);
            assertThat(document.getDocumentInformation().getTitle()).isEqualTo("First wave · Asta");
        }
        assertThat(ask("", "sheet", file, "--each", "-o", to + ".txt").code()).isZero();
        assertThat(folder.resolve("out-1-asta.txt")).content().contains("Name: Asta");
        assertThat(folder.resolve("out-0-lists.txt")).content().startsWith("Saturday\n");
        assertThat(ask("", "sheet", file, "--each", "-o", to + ".html").code()).isZero();
        assertThat(folder.resolve("out-0-lists.html"))
                .content()
                .contains("<h1>Saturday</h1>")
                .endsWith("</html>\n");
    }

    @Test
    void pagesOfAllSheetsAreNumberedThrough() throws IOException {
        String to = folder.resolve("out.png").toString();
        assertThat(ask("", "sheet", file, "-o", to, "--dpi", "30").code()).isZero();
        int together = written().size();
        assertThat(written()).contains("out-1.png", "out-" + together + ".png");
        assertThat(ask("", "sheet", file, "--each", "-o", to, "--dpi", "30").code())
                .isZero();
        assertThat(written())
                .contains("out-0-lists-1.png", "out-1-asta-1.png", "out-2-1.png")
                .hasSize(2 * together);
    }

    @Test
    void askedWronglyIsCodeTwo() {
        assertThat(ask("", "sheet", file, "--each").code()).isEqualTo(RootCommand.ASKED_WRONGLY);
        Answer piece = ask(BuiltIn.DEMO.text("first-wave.json"), "sheet", "-", "--each");
        assertThat(piece.code()).isEqualTo(RootCommand.ASKED_WRONGLY);
        assertThat(piece.err()).startsWith("- is one piece; --each is for a class.");
    }

    @Test
    void aClassThatIsWrongIsRefusedInOneSentence() {
        Answer answer = ask(CLASS.replace("first-wave", "no-wave"), "check", "-");
        assertThat(answer.code()).isEqualTo(RootCommand.FILE_TROUBLE);
        assertThat(answer.err())
                .startsWith("The standard input: Line 1, column ")
                .contains("There is no file no-wave.json.");
    }
}
