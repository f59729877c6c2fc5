package thrumwright.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

class FileSortTest {
    @Test
    void oursEndLikeOursInLettersOfAnySize() {
        assertThat(FileSort.isOurs("marsh.thrum")).isTrue();
        assertThat(FileSort.isOurs("MARSH.THRUM")).isTrue();
        assertThat(FileSort.isOurs("tuesday.ThrumClass")).isTrue();
        assertThat(FileSort.isOurs("edge.thrumstructure")).isTrue();
        assertThat(FileSort.isOurs("older.JSON")).isTrue();
        assertThat(FileSort.isOurs("marsh.thrums")).isFalse();
        assertThat(FileSort.isOurs("thrum")).isFalse();
    }

    @Test
    void aStemHasNoEndingOfOurs() {
        assertThat(FileSort.stem("a.b.thrumclass")).isEqualTo("a.b");
        assertThat(FileSort.stem("A.JSON")).isEqualTo("A");
        assertThat(FileSort.stem("sheet.pdf")).isEqualTo("sheet.pdf");
    }

    /** What is double-clicked is told by its ending: each system is given those that are here, and no other. */
    @Test
    void everySystemIsToldTheseEndings() throws IOException {
        Path told = Path.of("src", "package");
        for (FileSort sort : FileSort.values()) {
            String ending = sort.ending();
            assertThat(Files.readString(told.resolve("files.properties"))).contains("\n" + ending.substring(1) + "=");
            assertThat(Files.readString(told.resolve("linux").resolve("thrumwright.xml")))
                    .contains("<glob pattern=\"*" + ending + "\"/>")
                    .doesNotContain("*.json");
            assertThat(Files.readString(Path.of("docs", "files.md"))).contains("`" + ending + "`");
        }
    }
}
