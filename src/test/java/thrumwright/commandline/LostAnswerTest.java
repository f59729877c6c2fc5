package thrumwright.commandline;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** An answer that doesn't arrive is no success: the device may be full, closed, or a pipe that nobody reads any more. */
class LostAnswerTest {
    @TempDir
    private Path own;

    private static final class Full extends OutputStream {
        @Override
        public void write(int one) throws IOException {
            throw new IOException("No space left on device");
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "plan demo/saltmarsh-panel.json",
                "plan --json demo/saltmarsh-panel.json",
                "sheet demo/saltmarsh-panel.json --as TEXT --to -",
                "sheet demo/saltmarsh-panel.json --as PDF --to -",
                "check demo/spring-tide-on-a-bar.json",
                "structures",
                "structures knotted-fringe",
                "begin knotted-fringe --to -",
                "--help",
                "--version"
            })
    void isNoSuccess(String arguments) {
        ByteArrayOutputStream said = new ByteArrayOutputStream();
        int code = RootCommand.run(
                arguments.split(" "),
                InputStream.nullInputStream(),
                new PrintStream(new Full(), true, StandardCharsets.UTF_8),
                new PrintStream(said, true, StandardCharsets.UTF_8),
                own,
                "0");
        assertThat(code).isEqualTo(RootCommand.FILE_TROUBLE);
        assertThat(said.toString(StandardCharsets.UTF_8))
                .contains("standard output")
                .doesNotContain("inside the program");
    }
}
