package thrumwright.commandline;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Locale;
import java.util.ResourceBundle;
import org.junit.jupiter.api.Test;

/** What stands in the bundle of the help is said by some command's help, and nothing else is. */
class UsageTest {
    private static String help(String... arguments) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        PrintStream stream = new PrintStream(out, true, StandardCharsets.UTF_8);
        assertThat(RootCommand.run(arguments, InputStream.nullInputStream(), stream, stream, Path.of("nowhere"), "1"))
                .isEqualTo(RootCommand.DONE);
        return plain(out.toString(StandardCharsets.UTF_8));
    }

    private static String plain(String text) {
        return text.replaceAll("\\s+", " ");
    }

    @Test
    void whatStandsInTheBundleIsSaid() {
        StringBuilder said = new StringBuilder(help("--help"));
        for (String command : new String[] {"plan", "sheet", "loom", "check", "structures", "begin", "samples"}) {
            said.append(help(command, "--help"));
        }
        ResourceBundle usage = ResourceBundle.getBundle(RootCommand.USAGE, Locale.ROOT);
        assertThat(usage.keySet()).hasSizeGreaterThan(25).allSatisfy(key -> {
            String text =
                    plain(usage.getString(key)).replaceAll(" ?[“]?\\$.*", "").replaceAll("^.*default$", "");
            assertThat(said).as(key).contains(text);
        });
    }

    @Test
    void everyOptionSaysWhatItIsFor() {
        for (String command : new String[] {"plan", "sheet", "loom", "check", "structures", "begin", "samples"}) {
            assertThat(help(command, "--help").split(" (?=--(?!to)|-o,)"))
                    .allSatisfy(option -> assertThat(option).matches(".*[.…].*"));
        }
    }
}
