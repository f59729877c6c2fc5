package thrumwright.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WithoutWindowTest {
    @TempDir
    Path folder;

    @Test
    void saysItsVersionAsNumbersAndNotAsAnUnfilledPlaceholder() throws Exception {
        assertThat(Version.number()).matches("\\d+\\.\\d+\\.\\d+(-SNAPSHOT)?");
    }

    @Test
    void writesTheDemosSheetAndSaysWhere() throws Exception {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        new WithoutWindow(new PrintStream(out, true, StandardCharsets.UTF_8)).show(folder);
        Path sheet = folder.resolve("saltmarsh-panel-steps.pdf");
        assertThat(Files.size(sheet)).isGreaterThan(10_000);
        assertThat(out.toString(StandardCharsets.UTF_8))
                .contains("Saltmarsh at low water")
                .contains(sheet.toString())
                .contains("For the window");
    }
}
