package thrumwright.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import thrumwright.testing.disk.Crash;
import thrumwright.testing.disk.Disk;
import thrumwright.testing.disk.Loss;

/** Whatever goes wrong while a file is written, the old one or the new one is there, whole. */
class SafeFileFaultsTest {
    private static final String OLD = "the old piece";
    private static final String NEW = "the new piece, which is longer";

    @TempDir
    private Path home;

    private Path file() throws IOException {
        return Files.writeString(home.resolve("reed-bed.json"), OLD);
    }

    private List<Path> lying() throws IOException {
        try (Stream<Path> files = Files.list(home)) {
            return files.toList();
        }
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void aDeedThatFailsLeavesOldOrNew(boolean forGood) throws IOException {
        int at = 0;
        boolean reached = true;
        while (reached) {
            Path file = file();
            Disk disk = Disk.failing(at, at % 2 == 0 ? "Input/output error" : "No space left on device", forGood);
            boolean written = writes(disk, file);
            reached = disk.reached();
            assertThat(Files.readString(file))
                    .as("deed %s of %s", at, disk.deeds())
                    .isIn(OLD, NEW);
            if (written) {
                assertThat(Files.readString(file)).as("said to be written").isEqualTo(NEW);
            }
            for (Path left : lying()) {
                Files.delete(left);
            }
            at++;
        }
        assertThat(at).as("deeds that were made to fail").isGreaterThan(4);
    }

    private static boolean writes(Disk disk, Path file) {
        try {
            SafeFile.write(disk.path(file), NEW);
            return true;
        } catch (FileProblem e) {
            assertThat(e).hasMessageMatching("(?s)[A-Z/].*\\.");
            return false;
        }
    }

    @ParameterizedTest
    @EnumSource(Loss.class)
    void aCrashLeavesOldOrNew(Loss loss) throws IOException {
        int at = 0;
        boolean reached = true;
        while (reached) {
            Path file = file();
            Disk disk = Disk.crashing(at);
            boolean written = survives(disk, file);
            reached = disk.reached();
            disk.after(loss);
            assertThat(Files.readString(file))
                    .as("deed %s of %s", at, disk.deeds())
                    .isIn(OLD, NEW);
            if (written) {
                assertThat(Files.readString(file)).as("said to be written").isEqualTo(NEW);
            }
            for (Path left : lying()) {
                Files.delete(left);
            }
            at++;
        }
        assertThat(at).isGreaterThan(4);
    }

    private static boolean survives(Disk disk, Path file) {
        try {
            SafeFile.write(disk.path(file), NEW);
            return true;
        } catch (Crash e) {
            return false;
        } catch (FileProblem e) {
            throw new AssertionError("nothing but the power failed", e);
        }
    }

    @Test
    void nothingIsLeftBesideAFileThatWasWritten() throws Exception {
        Path file = file();
        Disk disk = Disk.sound();
        SafeFile.write(disk.path(file), NEW);
        assertThat(lying()).containsExactly(file);
        assertThat(disk.deeds()).anyMatch(deed -> deed.startsWith("force"));
    }
}
