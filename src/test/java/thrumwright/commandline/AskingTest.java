package thrumwright.commandline;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import thrumwright.store.FileProblem;
import thrumwright.store.StructureFile;

/** What is asked in whichever way gets a plain answer. */
class AskingTest {
    private static final String PIECE = "demo/first-wave.json";

    @TempDir
    private Path folder;

    private record Answer(int code, String out, String err) {}

    private Answer ask(String... arguments) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int code = RootCommand.run(
                arguments,
                InputStream.nullInputStream(),
                new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8),
                folder.resolve("own"),
                "0");
        return new Answer(code, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    private String inFolder(String name) {
        return folder.resolve(name).toString();
    }

    /** A sentence that says what would be right and a line on where more stands, not the whole help. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "sheet demo/first-wave.json --distance 1m7 | --distance: “1m7” is not a length; write it like “12 mm”",
                "sheet demo/first-wave.json --distance 9 | --distance: The sheet hangs 0.4 to 2 m away",
                "sheet demo/first-wave.json --margin 300 | --margin: Margins are 5 to 40 mm wide, or ¼ to 1½ in.",
                "sheet demo/first-wave.json --margin -3 | less than nothing",
                "sheet demo/first-wave.json --dpi fine | --dpi: “fine” is not a whole number.",
                "sheet demo/first-wave.json --paper A9 | --paper: “A9” is none of a4, letter, a3, tabloid.",
                "sheet demo/first-wave.json --to | --to must be followed by NAME.",
                "sheet demo/first-wave.json --to a --to b | --to is given twice",
                "sheet demo/first-wave.json -o a.docx | a.docx ends with “.docx”; a sheet ends with one of .pdf,",
                "sheet | FILE is missing.",
                "check demo/first-wave.json --stric | no option “--stric”. Do you mean “--strict”?",
                "chek demo/first-wave.json | Do you mean “check”?",
                "begin folded-hen | Do you mean “folded-hem”?",
                "begin folded-hem -o piece.pdf | piece.pdf ends with “.pdf”; a piece's file ends with “.thrum”.",
                "samples folded-hem plied-fringe -o edges.pdf | edges.pdf ends with “.pdf”; a piece's file ends with “.thrum”.",
                "loom demo/first-wave.json -o page.pdf | page.pdf ends with “.pdf”; the page ends with “.html”.",
                "structures folded-hem more | no use for “more”"
            })
    void mistakesAreNamed(String line, String sentence) {
        Answer answer = ask(line.strip().split(" "));
        assertThat(answer.code()).isEqualTo(RootCommand.ASKED_WRONGLY);
        assertThat(answer.err()).contains(sentence.strip());
        assertThat(answer.err().lines()).hasSize(2).last().asString().contains("--help” tells");
        assertThat(answer.out()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"1,5", "1.5", "150 cm", "150cm", "1500 mm", "4 ft 11 in"})
    void lengthsAreTypedAsEverywhere(String distance) {
        String pdf = inFolder("sheet.pdf");
        assertThat(ask("sheet", PIECE, "--distance", distance, "--margin", "½ in", "-o", pdf))
                .isEqualTo(new Answer(0, "", "Written: " + pdf + System.lineSeparator()));
    }

    @Test
    void capitalEndingsAreAsGood() throws IOException {
        String own = Files.copy(Path.of(PIECE), folder.resolve("WAVE.THRUM")).toString();
        assertThat(ask("check", own).code()).isZero();
        assertThat(ask("sheet", own, "-o", inFolder("WAVE.PDF")).code()).isZero();
        assertThat(folder.resolve("WAVE.PDF"))
                .content(StandardCharsets.ISO_8859_1)
                .startsWith("%PDF-");
    }

    @Test
    void nothingThatIsThereIsWrittenOverUnasked() throws IOException {
        Path last = Files.writeString(folder.resolve("page-2.svg"), "somebody's");
        String name = inFolder("page.svg");
        Answer answer = ask("sheet", PIECE, "-o", name);
        assertThat(answer.code()).isEqualTo(RootCommand.ASKED_WRONGLY);
        assertThat(answer.err()).contains("page-2.svg is there already", "--force");
        assertThat(folder.toFile().list()).containsExactly("page-2.svg");
        assertThat(last).hasContent("somebody's");
        assertThat(ask("sheet", PIECE, "--force", "--quiet", "-o", name)).isEqualTo(new Answer(0, "", ""));
        assertThat(last).content().contains("<svg");
    }

    @Test
    void aPieceIsBegunInAnothersPlaceIfThatIsAsked() throws IOException {
        Path file = Files.writeString(folder.resolve("begun.thrum"), "somebody's");
        assertThat(ask("begin", "folded-hem", "-o", file.toString()).code()).isEqualTo(RootCommand.ASKED_WRONGLY);
        assertThat(ask("begin", "folded-hem", "--force", "-o", file.toString()).code())
                .isZero();
        assertThat(file).content().startsWith("{");
    }

    /** One that can't be read doesn't keep the others from their turn, and every sentence says whose it is. */
    @Test
    void severalFilesAreCheckedInTurn() throws IOException {
        String damaged = Files.writeString(folder.resolve("damaged.thrum"), "{").toString();
        Answer answer = ask("check", damaged, PIECE, "demo/spring-tide-on-a-bar.json");
        assertThat(answer.code()).isEqualTo(RootCommand.FILE_TROUBLE);
        assertThat(answer.err().lines()).singleElement().asString().startsWith(damaged + ": Line 1");
        assertThat(answer.out().lines())
                .isNotEmpty()
                .allMatch(line -> line.startsWith("demo/first-wave.json: ")
                        || line.startsWith("demo/spring-tide-on-a-bar.json: "));
        assertThat(ask("plan", PIECE, "demo/saltmarsh-panel.json").out())
                .contains("First wave", "Saltmarsh at low water");
        assertThat(ask("plan", "--json", PIECE, PIECE).out()).startsWith("[").endsWith("]\n");
    }

    @Test
    void whatIsFoundCanBeReadByOtherPrograms() {
        assertThat(ask("check", "--json", PIECE).out())
                .contains("\"thrumwrightCheck\": 1", "\"file\": \"demo/first-wave.json\"", "\"severity\": \"note\"");
        assertThat(ask("check", "--json", "demo/class/tuesday-class.json").out())
                .contains("\"looms\"");
        assertThat(ask("check", "--quiet", PIECE)).isEqualTo(new Answer(0, "", ""));
    }

    @Test
    void structuresCanBeReadByOtherPrograms() throws FileProblem {
        assertThat(ask("structures", "--json").out())
                .contains("\"thrumwrightStructures\": 1", "\"id\": \"folded-hem\"", "\"goodFor\"");
        String one = ask("structures", "--json", "folded-hem").out();
        assertThat(StructureFile.read(one).structure().id()).isEqualTo("folded-hem");
    }

    @Test
    void helpIsACommandTooAndTheLineNamesTheFile() {
        assertThat(ask("help").out()).isEqualTo(ask("--help").out()).contains("thrumwright [FILE]");
        assertThat(ask("help", "sheet").out()).isEqualTo(ask("sheet", "--help").out());
    }

    @Test
    void longWorkIsToldOnOneLineThatGoes() {
        ByteArrayOutputStream told = new ByteArrayOutputStream();
        long[] now = {0};
        TerminalProgress progress =
                new TerminalProgress(new PrintStream(told, true, StandardCharsets.UTF_8), () -> now[0]);
        progress.done(0, 20);
        assertThat(told.size()).isZero();
        now[0] = 2_000;
        progress.done(9, 20);
        progress.done(20, 20);
        assertThat(told.toString(StandardCharsets.UTF_8)).matches("\r {40}\rpage 9 of 20\r {40}\r");
    }
}
