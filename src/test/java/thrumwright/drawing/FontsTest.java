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

    /** One copy of each, however often the program starts and however it ends; a damaged one is put right. */
    @Test
    void fontsAreKeptOnce() throws Exception {
        Fonts first = Fonts.keptIn(folder.resolve("fonts"));
        assertThat(lying()).hasSize(4);
        Files.writeString(lying().get(0), "damaged");
        Fonts second = Fonts.keptIn(folder.resolve("fonts"));
        assertThat(lying()).hasSize(4);
        assertThat(second.bold().getFontName()).isEqualTo(first.bold().getFontName());
        assertThat(first.regular().getFontName())
                .isEqualTo(Fonts.load().regular().getFontName());
    }

    @Test
    void whereNothingCanBeKeptTheyAreThereAllTheSame() throws Exception {
        Path file = Files.writeString(folder.resolve("no-folder"), "");
        assertThat(Fonts.keptIn(file.resolve("fonts")).regular().canDisplay('a'))
                .isTrue();
    }
}
