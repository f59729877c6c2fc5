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
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is answered without the parser is answered as the parser would have it. */
class PlainlyAskedTest {
    private static final String PANEL = "demo/saltmarsh-panel.json";

    @TempDir
    private Path own;

    private record Answer(int code, String out, String err) {}

    private interface Asked {
        int run(InputStream in, PrintStream out, PrintStream err);
    }

    private static Answer answer(Asked asked) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int code = asked.run(
                new ByteArrayInputStream(Files.readAllBytes(Path.of(PANEL))),
                new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8));
        return new Answer(code, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "--version",
                "-V",
                "--help",
                "-h",
                "help",
                "plan demo/saltmarsh-panel.json",
                "plan -",
                "plan demo/saltmarsh-panel.json demo/class/tuesday-class.json",
                "plan nowhere.json demo/saltmarsh-panel.json",
                "plan help",
                "plan plan",
                "plan demo"
            })
    void isAnsweredAlike(String line) throws IOException {
        String[] arguments = line.split(" ");
        PlainlyAsked plainly = new PlainlyAsked(arguments);
        assertThat(plainly.version() || plainly.help() || plainly.plans()).isTrue();
        Answer parsed = answer(
                (in, out, err) -> RootCommand.parsed(arguments, new RootCommand.Console(in, out, err), own, "1"));
        assertThat(answer((in, out, err) -> RootCommand.run(arguments, in, out, err, own, "1")))
                .isEqualTo(parsed);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"plan", "plan --json x", "plan x --json", "plan @x", "plan -- x", "plan -h", "-h plan", "check x"
            })
    void isLeftToTheParser(String line) {
        PlainlyAsked plainly = new PlainlyAsked(line.split(" "));
        assertThat(plainly.version() || plainly.help() || plainly.plans()).isFalse();
    }
}
