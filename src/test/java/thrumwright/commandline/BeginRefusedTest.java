package thrumwright.commandline;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is begun can be read again, and takes nobody's place. */
class BeginRefusedTest {
    @TempDir
    private Path home;

    private final ByteArrayOutputStream said = new ByteArrayOutputStream();

    private int begin(Path file, String title) {
        return RootCommand.run(
                new String[] {"begin", "knotted-fringe", "--to", file.toString(), "--title", title},
                InputStream.nullInputStream(),
                new PrintStream(new ByteArrayOutputStream(), true, StandardCharsets.UTF_8),
                new PrintStream(said, true, StandardCharsets.UTF_8),
                home.resolve("own"),
                "0");
    }

    @Test
    void aTitleThatCouldntBeReadAgain() {
        Path file = home.resolve("begun.json");
        assertThat(begin(file, "a".repeat(10_001))).isEqualTo(RootCommand.FILE_TROUBLE);
        assertThat(said.toString(StandardCharsets.UTF_8)).contains("can't be kept");
        assertThat(file).doesNotExist();
    }

    @Test
    void aFileThatIsThere() throws Exception {
        Path file = Files.writeString(home.resolve("begun.json"), "somebody's");
        assertThat(begin(file, "Reed bed")).isEqualTo(RootCommand.ASKED_WRONGLY);
        assertThat(file).hasContent("somebody's");
        Path other = home.resolve("other.json");
        assertThat(begin(other, "Reed bed")).isEqualTo(RootCommand.DONE);
        assertThat(other).content().contains("Reed bed");
    }
}
