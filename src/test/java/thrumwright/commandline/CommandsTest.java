package thrumwright.commandline;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import thrumwright.measure.UnitSystem;
import thrumwright.piece.Beginnings;
import thrumwright.piece.LoomKind;
import thrumwright.piece.LoomKinds;
import thrumwright.plan.Plan;
import thrumwright.plan.finding.Findings;
import thrumwright.plan.finding.Severity;
import thrumwright.store.BuiltIn;
import thrumwright.store.FileProblem;
import thrumwright.store.PieceFile;

class CommandsTest {
    @TempDir
    Path folder;

    private record Answer(int code, String out, String err) {}

    private Answer ask(String in, String... arguments) {
        return ask(new ByteArrayInputStream(in.getBytes(StandardCharsets.UTF_8)), arguments);
    }

    private Answer ask(InputStream in, String... arguments) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int code = RootCommand.run(
                arguments,
                in,
                new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8),
                folder.resolve("own"),
                "1.2.3");
        return new Answer(code, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    private Path demo(int index) throws IOException {
        String name = BuiltIn.DEMO.names().get(index);
        Path file = folder.resolve(name);
        Files.writeString(file, BuiltIn.DEMO.text(name));
        return file;
    }

    @Test
    void saysItsVersionAndHelps() {
        assertThat(ask("", "--version").out().strip()).isEqualTo("Thrumwright 1.2.3");
        Answer help = ask("", "--help");
        assertThat(help.code()).isZero();
        assertThat(help.out()).contains("plan", "sheet", "check", "structures", "begin", "Exit codes");
    }

    @Test
    void showsAPlanInWordsAndAsJson() throws IOException {
        String file = demo(0).toString();
        assertThat(ask("", "plan", file).out()).contains("Saltmarsh at low water", "Stiff band", "195 cm");
        Answer json = ask("", "plan", "--json", file);
        assertThat(json.code()).isZero();
        assertThat(json.out())
                .contains("\"thrumwrightPlan\": 1", "\"exact\": 1112.837679", "\"depth\": 14.388717")
                .endsWith("}\n");
    }

    @Test
    void everyFieldOfTheJsonIsInTheDocs() throws IOException {
        String docs = Files.readString(Path.of("docs", "commandline.md"));
        Set<String> fields = new TreeSet<>();
        for (String name : BuiltIn.DEMO.names()) {
            String json = ask(BuiltIn.DEMO.text(name), "plan", "--json", "-").out();
            Pattern.compile("\"(\\w+)\":").matcher(json).results().forEach(found -> fields.add(found.group(1)));
        }
        assertThat(fields)
                .hasSizeGreaterThan(40)
                .allSatisfy(field -> assertThat(docs).contains("`" + field + "`"));
    }

    /** The demo piece has an even warp: from the right a pick over the left edge end goes under the right one. */
    @Test
    void aRowOfTheJsonSaysHowItMeetsTheOutermostEndWhereItBegins() throws IOException {
        String json = ask("", "plan", "--json", demo(0).toString()).out().replaceAll("\\s+", " ");
        assertThat(json)
                .contains("\"from\": \"left\", \"meets\": \"over\", \"shed\": \"over first\"")
                .contains("\"from\": \"right\", \"meets\": \"over\", \"shed\": \"under first\"")
                .doesNotContain("\"from\": \"right\", \"meets\": \"over\", \"shed\": \"over first\"");
    }

    @Test
    void aFaultOfTheProgramItselfIsToldAndHasACodeOfItsOwn() {
        InputStream faulty = new InputStream() {
            @Override
            public int read() {
                throw new IllegalStateException("a thread slipped");
            }
        };
        Answer answer = ask(faulty, "plan", "-");
        assertThat(answer.code()).isEqualTo(RootCommand.OWN_FAULT);
        assertThat(answer.err())
                .startsWith("Something went wrong inside the program")
                .contains("a thread slipped");
        assertThat(answer.err().lines()).hasSize(2);
    }

    @Test
    void readsThePieceFromTheStandardInput() {
        Answer answer = ask(BuiltIn.DEMO.text(BuiltIn.DEMO.names().get(0)), "check", "-");
        assertThat(answer).isEqualTo(new Answer(0, "", ""));
    }

    @Test
    void theExitCodeTellsWhatWasFound() {
        String tall = BuiltIn.DEMO
                .text(BuiltIn.DEMO.names().get(0))
                .replace("\"height\": \"32 cm\"", "\"height\": \"62 cm\"");
        Answer answer = ask(tall, "check", "-");
        assertThat(answer.code()).isEqualTo(RootCommand.PROBLEM_FOUND);
        assertThat(answer.out()).startsWith("problem: The piece is ").endsWith(".\n");
    }

    @Test
    void cautionsCountWhenAsked() {
        String without =
                BuiltIn.DEMO.text(BuiltIn.DEMO.names().get(0)).replace("\"for\": \"stiff\"", "\"for\": \"plain\"");
        assertThat(ask(without, "check", "-").code()).isZero();
        assertThat(ask(without, "check", "--strict", "-").code()).isEqualTo(RootCommand.PROBLEM_FOUND);
    }

    @Test
    void badFilesAreRefusedInOneSentence() {
        Answer answer = ask("{\"thrumwright\": 1}", "plan", "-");
        assertThat(answer.code()).isEqualTo(RootCommand.FILE_TROUBLE);
        assertThat(answer.out()).isEmpty();
        assertThat(answer.err())
                .startsWith("The standard input: Line 1, column 1")
                .doesNotContain("at thrumwright");
        assertThat(ask("", "plan", folder.resolve("nowhere.json").toString()).err())
                .startsWith("There is no file ");
    }

    @Test
    void severalStructuresAreTriedOnOneWarp() {
        String file = folder.resolve("samples.thrum").toString();
        assertThat(ask("", "samples", "folded-hem", "knotted-fringe", "--units", "inches", "-o", file)
                        .code())
                .isZero();
        assertThat(ask("", "check", file).code()).isZero();
        assertThat(ask("", "sheet", file, "--as", "text").out()).contains("Cut below sample 2", "Sample warp: 2 edges");
        assertThat(ask("", "samples", "folded-hem", "closed-warp").err()).startsWith("“Closed warp");
        assertThat(ask("", "samples", "folded-hem", "plied-fringe", "--on", file, "--width", "6 in")
                        .out())
                .contains("\"6 in\"");
        assertThat(ask("", "samples", "folded-hem", "plied-fringe", "--width", "wide")
                        .code())
                .isEqualTo(RootCommand.ASKED_WRONGLY);
    }

    @Test
    void anotherTextIsToldFromAPieceThatLacksSomething() {
        assertThat(ask("The class begins at ten.", "check", "-").err())
                .startsWith("The standard input: Line 1, column 1: this isn’t a file of Thrumwright");
        assertThat(ask("{\"title\": ", "check", "-").err()).contains("this is not JSON");
    }

    @Test
    void inputThatIsNoTextOrWithoutEndIsRefused() {
        byte[] noText = {(byte) 0xff, '{', '}'};
        assertThat(ask(new ByteArrayInputStream(noText), "check", "-"))
                .isEqualTo(new Answer(
                        RootCommand.FILE_TROUBLE,
                        "",
                        "The standard input isn’t a file of Thrumwright, which is text; it may be a picture or a sheet. (Line 1 isn’t text in UTF-8.)"
                                + System.lineSeparator()));
        InputStream endless = new InputStream() {
            @Override
            public int read() {
                return ' ';
            }
        };
        assertThat(ask(endless, "check", "-").err()).contains("far too long");
    }

    @ParameterizedTest
    @ValueSource(strings = {"sing", "plan", "sheet - --distance 9", "begin no-such-structure", "sheet a b"})
    void askedWronglyIsCodeTwo(String line) {
        Answer answer = ask("", line.split(" "));
        assertThat(answer.code()).isEqualTo(RootCommand.ASKED_WRONGLY);
        assertThat(answer.err()).isNotBlank().doesNotContain("at thrumwright");
    }

    @Test
    void writesASheetAsTextPdfPngSvgAndHtml() throws IOException {
        String file = demo(1).toString();
        assertThat(ask("", "sheet", file).out()).contains("Reed bed in the wind", "☐ 1 Ordering cord", "½", "×");
        Path pdf = folder.resolve("sheet.pdf");
        assertThat(ask("", "sheet", file, "-o", pdf.toString(), "--paper", "letter")
                        .code())
                .isZero();
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            assertThat(document.getPage(0).getMediaBox().getWidth()).isEqualTo(612f);
        }
        Path png = folder.resolve("page.png");
        assertThat(ask("", "sheet", file, "-o", png.toString(), "--dpi", "40").code())
                .isZero();
        assertThat(folder.resolve("page-1.png")).isNotEmptyFile();
        Path svg = folder.resolve("page.svg");
        assertThat(ask("", "sheet", file, "-o", svg.toString()).code()).isZero();
        assertThat(folder.resolve("page-2.svg")).content().contains("<svg", "viewBox");
        assertThat(ask("", "sheet", file, "--as", "html").out())
                .startsWith("<!DOCTYPE html>")
                .contains("<h1>Reed bed in the wind</h1>")
                .endsWith("</html>\n");
    }

    @Test
    void whatGoesOnPagesCanBeChosen() throws IOException {
        Path png = folder.resolve("part.png");
        String file = Path.of("demo", "saltmarsh-panel.json").toString();
        assertThat(ask("", "sheet", file, "-o", png.toString(), "--dpi", "30", "--parts", "Cards,cuts")
                        .code())
                .isZero();
        assertThat(folder.resolve("part-3.png")).isNotEmptyFile();
        assertThat(folder.resolve("part-4.png")).doesNotExist();
        Answer refused = ask("", "sheet", file, "-o", png.toString(), "--parts", "cards,poster");
        assertThat(refused.code()).isEqualTo(RootCommand.ASKED_WRONGLY);
        assertThat(refused.err())
                .startsWith("“poster” is no part of a sheet. There are: warping, cuts, cards, booklet, record.");
    }

    @Test
    void listsStructuresAndTellsMoreOfOne() {
        assertThat(ask("", "structures").out()).contains("folded-hem", "Twined edge with plaited fringe");
        assertThat(ask("", "structures", "bar-sleeve").out()).contains("Source:", "Hem fold");
    }

    @Test
    void ownStructuresStandBesideTheBuiltInOnes() throws IOException {
        Files.createDirectories(folder.resolve("own"));
        String own =
                BuiltIn.STRUCTURES.text("folded-hem.json").replace("\"id\": \"folded-hem\"", "\"id\": \"our-hem\"");
        Files.writeString(folder.resolve("own").resolve("our-hem.json"), own);
        Files.writeString(folder.resolve("own").resolve("broken.json"), "{");
        Answer answer = ask("", "structures");
        assertThat(answer.out()).contains("our-hem", "folded-hem");
        assertThat(answer.err()).startsWith("broken.json: Line 1");
    }

    /** Somebody who writes a structure by hand tries it, begins a piece with it, and is told where a mistake is. */
    @Test
    void aStructureInAFileIsTriedOnANewPiece() throws IOException {
        String text = BuiltIn.STRUCTURES.text("bar-sleeve.json").replace("\"bar-sleeve\"", "\"creek-sleeve\"");
        Path file = Files.writeString(folder.resolve("creek.json"), text.replace("Sleeve for a bar", "Creek sleeve"));
        String name = file.toString();
        Answer check = ask("", "check", name);
        assertThat(check.code()).isZero();
        assertThat(check.out()).doesNotContain("problem");
        assertThat(ask("", "sheet", name, "--as", "TEXT").out()).contains("Creek sleeve", "Leave both sides open");
        assertThat(ask("", "structures", name).out())
                .contains("Creek sleeve", "How hard: some practice", "Good for: hang from a bar, ", "Hem fold");
        assertThat(ask("", "begin", name, "--title", "Creek").out()).contains("\"title\": \"Creek\"", "\"bar\"");

        Files.writeString(file, text.replace("\"15 mm\"", "\"15 furlongs\""));
        Answer wrong = ask("", "check", name);
        assertThat(wrong.code()).isEqualTo(RootCommand.FILE_TROUBLE);
        assertThat(wrong.err()).contains("Line ", ", column ", "blocks › block 7 “fold” › bar", "furlongs");
        assertThat(ask("", "begin", folder.resolve("nowhere.json").toString()).code())
                .isEqualTo(RootCommand.FILE_TROUBLE);
    }

    @Test
    void structuresAreListedInTwoColumns() {
        assertThat(ask("", "structures").out().lines())
                .allMatch(line -> line.matches("[a-z0-9-]+ {2,}[^ ].*"))
                .extracting(line ->
                        line.length() - line.replaceFirst("^[a-z0-9-]+ +", "").length())
                .containsOnly("hem-with-countered-twining".length() + 2);
    }

    @Test
    void beginsAPieceFromEveryStructureWithoutAProblem() throws FileProblem {
        for (String name : BuiltIn.STRUCTURES.names()) {
            for (String units : new String[] {"metric", "inches"}) {
                Answer answer = ask("", "begin", name.replace(".json", ""), "--units", units);
                assertThat(answer.code()).isZero();
                Plan plan = Plan.of(PieceFile.read(answer.out()).piece());
                assertThat(Findings.of(plan).has(Severity.PROBLEM))
                        .as(name + Findings.of(plan))
                        .isFalse();
                assertThat(Findings.of(plan).has(Severity.CAUTION))
                        .as(name + Findings.of(plan))
                        .isFalse();
            }
        }
    }

    /** From nothing to what hangs by the loom. */
    @Test
    void aPieceOnEveryKindOfLoomGoesAllTheWayToItsSheets() throws IOException {
        for (LoomKind kind : LoomKinds.all(Beginnings.empty(UnitSystem.METRIC))) {
            for (String units : new String[] {"metric", "inches"}) {
                String name = kind.key() + "-" + units;
                String piece = folder.resolve(name + ".thrum").toString();
                Answer begun = ask("", "begin", "folded-hem", "--loom", kind.key(), "--units", units, "-o", piece);
                assertThat(begun.code()).as(name + begun.err()).isZero();
                assertThat(ask("", "check", piece).code()).as(name).isZero();
                // the paper is the same in both units
                for (String form : units.equals("metric") ? List.of(".txt", ".html", ".pdf") : List.of(".txt")) {
                    Path sheet = folder.resolve(name + form);
                    Answer written = ask("", "sheet", piece, "--parts", "warping,cards,cuts", "-o", sheet.toString());
                    assertThat(written.code()).as(name + written.err()).isZero();
                    assertThat(sheet).isNotEmptyFile();
                }
                assertThat(Files.readString(folder.resolve(name + ".txt")))
                        .as(name)
                        .contains("Tension, and its test")
                        .contains("Hem fold");
            }
        }
        Answer unknown = ask("", "begin", "folded-hem", "--loom", "treadle");
        assertThat(unknown.code()).isEqualTo(2);
        assertThat(unknown.err()).contains("There is no kind of loom “treadle”").contains("joining-bar");
    }

    @Test
    void leavesAFileThatIsThereAlone() throws IOException {
        Path file = demo(0);
        byte[] before = Files.readAllBytes(file);
        assertThat(ask("", "begin", "folded-hem", "-o", file.toString()).code()).isEqualTo(RootCommand.ASKED_WRONGLY);
        assertThat(Files.readAllBytes(file)).isEqualTo(before);
    }
}
