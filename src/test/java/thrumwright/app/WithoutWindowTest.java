package thrumwright.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayOutputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import thrumwright.store.BuiltIn;
import thrumwright.store.FileProblem;

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

    @Test
    void writesNothingOver() throws Exception {
        Path there = Files.writeString(folder.resolve("saltmarsh-panel-steps.pdf"), "somebody's");
        new WithoutWindow(new PrintStream(new ByteArrayOutputStream(), true, StandardCharsets.UTF_8)).show(folder);
        assertThat(there).hasContent("somebody's");
        assertThat(folder.resolve("saltmarsh-panel-steps-2.pdf")).isNotEmptyFile();
    }

    @Test
    void showsThePlanOfAPieceAndWritesNothing() throws Exception {
        Path file = folder.resolve("wave.json");
        Files.writeString(file, BuiltIn.DEMO.text("first-wave.json"));
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        new WithoutWindow(new PrintStream(out, true, StandardCharsets.UTF_8)).plan(file);
        assertThat(out.toString(StandardCharsets.UTF_8))
                .contains("First wave")
                .contains("24 ends of Cotton twine")
                .contains("For the window");
        assertThat(folder.toFile().list()).hasSize(1);
    }

    @Test
    void showsTheListsOfAClass() throws Exception {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        new WithoutWindow(new PrintStream(out, true, StandardCharsets.UTF_8))
                .plan(Path.of("demo", "class", "tuesday-class.json"));
        assertThat(out.toString(StandardCharsets.UTF_8))
                .contains("Tuesday class at the weaving room", "Cut together", "For the window");
    }

    @Test
    void aPieceThatIsNotThereIsSaidInASentence() {
        WithoutWindow shown = new WithoutWindow(new PrintStream(OutputStream.nullOutputStream()));
        assertThatThrownBy(() -> shown.plan(folder.resolve("nowhere.json")))
                .isInstanceOf(FileProblem.class)
                .hasMessageStartingWith("There is no file ");
    }
}
