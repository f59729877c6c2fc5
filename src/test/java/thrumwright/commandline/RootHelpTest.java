package thrumwright.commandline;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import picocli.CommandLine.Help.Ansi;

/**
 * The help that is laid out beforehand is the parser's to the byte. {@code -Dgolden.accept=true} lays it out anew after a
 * change of commands or their sentences.
 */
class RootHelpTest {
    private static final Path KEPT = Path.of("src/main/resources/thrumwright/commandline", RootHelp.LAID_OUT);

    private static String parsers(Ansi look) {
        return RootCommand.all("1").getUsageMessage(look);
    }

    @Test
    void isWhatTheParserSays() throws IOException {
        if (Boolean.getBoolean("golden.accept")) {
            Files.writeString(KEPT, parsers(Ansi.ON).replace('\u001B', RootHelp.SHOWN_ESCAPE));
        }
        assertThat(Files.readString(KEPT)).isEqualTo(parsers(Ansi.ON).replace('\u001B', RootHelp.SHOWN_ESCAPE));
        assertThat(RootHelp.text(true)).isEqualTo(parsers(Ansi.ON));
        assertThat(RootHelp.text(false)).isEqualTo(parsers(Ansi.OFF)).doesNotContain("\u001B");
    }
}
