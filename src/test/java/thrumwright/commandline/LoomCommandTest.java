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

/** The page for a phone or tablet, from the command line. */
class LoomCommandTest {
    private static final String PIECE = "demo/first-wave.json";

    @TempDir
    private Path folder;

    private record Answer(int code, String out, String err) {}

    private Answer loom(String... arguments) {
        String[] all = new String[arguments.length + 1];
        all[0] = "loom";
        System.arraycopy(arguments, 0, all, 1, arguments.length);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int code = RootCommand.run(
                all,
                InputStream.nullInputStream(),
                new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8),
                folder.resolve("own"),
                "0");
        return new Answer(code, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    @Test
    void thePageIsWrittenAndNothingIsWrittenOverUnasked() throws IOException {
        Path file = folder.resolve("wave.html");
        String page = loom(PIECE).out();
        assertThat(page)
                .contains("<section class=\"step\"", "data-key=\"start/")
                .endsWith("</html>\n");
        assertThat(loom(PIECE, "-o", file.toString()).err()).contains("wave.html");
        assertThat(file).hasContent(page);

        Files.writeString(file, "somebody's");
        Answer refused = loom(PIECE, "-o", file.toString());
        assertThat(refused.code()).isEqualTo(RootCommand.ASKED_WRONGLY);
        assertThat(refused.err()).contains("wave.html is there already", "--force");
        assertThat(file).hasContent("somebody's");
        assertThat(loom(PIECE, "--force", "--quiet", "-o", file.toString())).isEqualTo(new Answer(0, "", ""));
        assertThat(file).hasContent(page);
    }

    @Test
    void whatIsNoPieceIsRefusedInASentence() throws IOException {
        Path damaged = Files.writeString(folder.resolve("damaged.thrum"), "{");
        Answer unread = loom(damaged.toString());
        assertThat(unread.code()).isEqualTo(RootCommand.FILE_TROUBLE);
        assertThat(unread.err()).startsWith(damaged + ": Line 1");
        assertThat(unread.out()).isEmpty();

        String some = "demo/class/tuesday-class.json";
        Answer refused = loom(some);
        assertThat(refused.code()).isEqualTo(RootCommand.ASKED_WRONGLY);
        assertThat(refused.err()).contains("“" + some + "” is a class; give the piece that it weaves.");
        assertThat(refused.out()).isEmpty();
    }
}
