package thrumwright.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import thrumwright.measure.Phrase;

class OwnershipTest {
    @Test
    void anotherNameThatKeepsTheVersionBeforeIsTold(@TempDir Path folder) throws Exception {
        Path file = Files.writeString(folder.resolve("piece.json"), "old");
        assumeThat(Ownership.of(file)).isPresent();
        Path other = Files.createLink(folder.resolve("other.json"), file);
        Ownership before = Ownership.of(file).orElseThrow();
        SafeFile.write(file, "new");
        assertThat(before.changed(file))
                .extracting(Phrase::toString)
                .containsExactly(
                        "The file had other names too (hard links): they keep the version before, and only this "
                                + "name has the new one.");
        assertThat(other).hasContent("old");
        Ownership after = Ownership.of(file).orElseThrow();
        SafeFile.write(file, "newer");
        assertThat(after.changed(file)).isEmpty();
    }

    @Test
    void anotherOwnerIsTold() {
        assertThat(new Ownership(1, "asta", "looms").changed(new Ownership(1, "birk", "birk")))
                .extracting(Phrase::toString)
                .containsExactly(
                        "The system didn't let the file keep its owner and group, which were asta and looms; it "
                                + "is now birk's.");
    }

    @Test
    void whereThereIsNoFileThereIsNothingToKeep(@TempDir Path folder) {
        assertThat(Ownership.of(folder.resolve("none.json"))).isEmpty();
    }
}
