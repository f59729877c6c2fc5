package thrumwright.commandline;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class MemoryTest {
    @TempDir
    private Path own;

    /** No trace for nobody, and no exit code that says that the piece has a problem. */
    @Test
    void whenItRunsOutASentenceSaysSo() {
        ByteArrayOutputStream said = new ByteArrayOutputStream();
        InputStream endless = new InputStream() {
            @Override
            public int read() {
                throw new OutOfMemoryError("Java heap space");
            }
        };
        int code = RootCommand.run(
                new String[] {"check", "-"},
                endless,
                new PrintStream(new ByteArrayOutputStream(), true, StandardCharsets.UTF_8),
                new PrintStream(said, true, StandardCharsets.UTF_8),
                own,
                "0");
        assertThat(code).isEqualTo(RootCommand.NO_MEMORY);
        assertThat(said.toString(StandardCharsets.UTF_8)).contains("memory").doesNotContain("OutOfMemoryError");
    }
}
