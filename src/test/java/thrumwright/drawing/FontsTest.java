package thrumwright.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FontsTest {
    @TempDir
    private Path folder;

    private List<Path> lying() throws Exception {
        try (Stream<Path> files = Files.list(folder.resolve("fonts"))) {
            return files.sorted().toList();
        }
    }

    /** One copy of each that is wanted, however often the program starts and however it ends; a damaged one is put right. */
    @Test
    void fontsAreKeptOnce() throws Exception {
        Fonts first = Fonts.keptIn(folder.resolve("fonts"));
        assertThat(first.regular().getFontName())
                .isEqualTo(Fonts.load().regular().getFontName());
        assertThat(lying()).hasSize(1);
        assertThat(first.all()).hasSize(4);
        assertThat(lying()).hasSize(4);
        Path bold = lying().get(0);
        long size = Files.size(bold);
        Files.writeString(bold, "damaged");

        Fonts second = Fonts.keptIn(folder.resolve("fonts"));

        assertThat(second.bold().getFontName()).isEqualTo(first.bold().getFontName());
        assertThat(bold).hasSize(size);
        assertThat(second.all()).hasSize(4);
        assertThat(lying()).hasSize(4);
    }

    @Test
    void whereNothingCanBeKeptTheyAreThereAllTheSame() throws Exception {
        Path file = Files.writeString(folder.resolve("no-folder"), "");
        assertThat(Fonts.keptIn(file.resolve("fonts")).regular().canDisplay('a'))
                .isTrue();
    }
}
