package thrumwright.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class NewFilesTest {
    @TempDir
    Path folder;

    @Test
    void allTakeTheirPlacesTogether() throws FileProblem, IOException {
        Path one = folder.resolve("one.txt");
        Path two = folder.resolve("two.txt");
        Files.writeString(one, "old");
        try (NewFiles files = new NewFiles()) {
            files.add(one, out -> out.write('1'));
            files.add(two, out -> out.write('2'));
            assertThat(one).hasContent("old");
            assertThat(two).doesNotExist();
            assertThat(files.keep()).isEqualTo(2);
        }
        assertThat(one).hasContent("1");
        assertThat(two).hasContent("2");
        assertThat(folder).isDirectoryNotContaining("glob:**.new");
    }

    @Test
    void whatCannotBeMadeLeavesEverythingAsItWas() throws FileProblem, IOException {
        Path one = folder.resolve("one.txt");
        IOException stopped = new IOException("stopped");
        try (NewFiles files = new NewFiles()) {
            files.add(one, out -> out.write('1'));
            assertThatThrownBy(() -> files.add(folder.resolve("two.txt"), out -> {
                        out.write('2');
                        throw stopped;
                    }))
                    .isSameAs(stopped);
        }
        assertThat(folder).isEmptyDirectory();
    }
}
