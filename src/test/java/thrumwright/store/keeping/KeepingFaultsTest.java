package thrumwright.store.keeping;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import thrumwright.store.FileProblem;
import thrumwright.store.SafeFile;
import thrumwright.testing.disk.Disk;

/** Whatever goes wrong with what the program keeps for itself, the weaver's file is old or new, whole, and a claim no lie. */
class KeepingFaultsTest {
    @TempDir
    private Path home;

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void theVersionBeforeIsKeptOrNothingIsWritten(boolean forGood) throws Exception {
        boolean reached = true;
        int at = 0;
        for (; reached; at++) {
            Path folder = Files.createDirectory(home.resolve("fault-" + at));
            Path file = Files.writeString(folder.resolve("piece.json"), "old");
            Path state = folder.resolve("state");
            Disk disk = Disk.failing(at, "No space left on device", forGood);
            try {
                new Earlier(disk.path(state)).keep(disk.path(file));
                SafeFile.write(disk.path(file), "new");
                assertThat(Files.readString(file)).isEqualTo("new");
            } catch (FileProblem e) {
                assertThat(e.getMessage()).endsWith(".");
                assertThat(Files.readString(file)).isIn("old", "new");
            }
            reached = disk.reached();
            if (Files.readString(file).equals("new")) {
                assertThat(new Earlier(state).of(file)).hasContent("old");
            }
        }
        assertThat(at).as("deeds that were made to fail").isGreaterThan(8);
    }

    @Test
    void aClaimThatFailsIsNoClaim() throws Exception {
        boolean reached = true;
        for (int at = 0; reached; at++) {
            Path folder = Files.createDirectory(home.resolve("claim-" + at));
            Path file = Files.writeString(folder.resolve("piece.json"), "old");
            Disk disk = Disk.failing(at, "Input/output error", true);
            Claims claims = new Claims(disk.path(folder.resolve("claims")));
            boolean claimed = false;
            try {
                claimed = claims.claim(disk.path(file));
            } catch (FileProblem e) {
                assertThat(e.getMessage()).endsWith(".");
            }
            reached = disk.reached();
            assertThat(Files.readString(file)).isEqualTo("old");
            assertThat(claimed || reached).as("claimed on a sound disk").isTrue();
        }
    }
}
