package thrumwright.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;

class MainTest {
    @Test
    void saysItsVersionAsNumbersAndNotAsAnUnfilledPlaceholder() throws Exception {
        assertThat(Version.number()).matches("\\d+\\.\\d+\\.\\d+(-SNAPSHOT)?");
    }

    @Test
    void answersVersionOnTheCommandLine() throws Exception {
        StringWriter out = new StringWriter();

        int exit = new CommandLine(new Main()).setOut(new PrintWriter(out)).execute("--version");

        assertThat(exit).isZero();
        assertThat(out.toString().strip()).isEqualTo("Thrumwright " + Version.number());
    }
}
