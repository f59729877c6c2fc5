package thrumwright.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class NewFilesTest {
    /** A program that was cut off leaves its unfinished file; one that is at work just now keeps it. */
    @Test
    void whatWasLeftUnfinishedLongAgoIsSwept(@TempDir Path where) throws Exception {
        Path old = Files.writeString(where.resolve(".thrumwright-1.new"), "half");
        Files.setLastModifiedTime(old, FileTime.from(Instant.now().minus(Duration.ofDays(2))));
        Path fresh = Files.writeString(where.resolve(".thrumwright-2.new"), "half");
        Path others = Files.writeString(where.resolve("thrumwright.new"), "somebody's");
        Files.setLastModifiedTime(others, FileTime.from(Instant.now().minus(Duration.ofDays(2))));
        SafeFile.write(where.resolve("piece.json"), "text");
        assertThat(old).doesNotExist();
        assertThat(fresh).exists();
        assertThat(others).exists();
    }

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

    /** Of a set that belongs together nothing is replaced when one can't be. */
    @Test
    void ifOnePlaceCannotBeTakenAllHaveWhatTheyHad() throws Exception {
        Path one = Files.writeString(folder.resolve("one.txt"), "old one");
        Path two = folder.resolve("two.txt");
        Path three = folder.resolve("three.txt");
        try (NewFiles files = new NewFiles()) {
            files.add(one, out -> out.write('1'));
            files.add(two, out -> out.write('2'));
            files.add(three, out -> out.write('3'));
            Files.createDirectory(three);
            Files.writeString(three.resolve("in the way"), "");
            assertThatThrownBy(files::keep).isInstanceOf(FileProblem.class).hasMessageContaining("three.txt");
        }
        assertThat(one).hasContent("old one");
        assertThat(two).doesNotExist();
        assertThat(folder).isDirectoryNotContaining("glob:**.new");
    }
}
