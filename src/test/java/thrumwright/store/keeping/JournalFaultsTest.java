package thrumwright.store.keeping;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import thrumwright.store.FileProblem;
import thrumwright.testing.disk.Crash;
import thrumwright.testing.disk.Disk;
import thrumwright.testing.disk.Loss;

/** Whatever goes wrong while a journal is kept, the last state that it took is left, or the one after it. */
class JournalFaultsTest {
    private static final int STATES = 3;

    @TempDir
    private Path home;

    private static Unsaved state(int number) {
        return new Unsaved(Optional.empty(), Optional.empty(), Instant.EPOCH.plusSeconds(number), "state " + number);
    }

    /** How far somebody came whose edits are kept one by one. */
    private static final class Run {
        private final List<Integer> kept = new ArrayList<>();

        void edit(Path folder) throws FileProblem, IOException {
            Journal journal = new Journals(folder).begin();
            try {
                for (int i = 0; i < STATES; i++) {
                    journal.keep(state(i));
                    kept.add(i);
                }
            } finally {
                journal.abandon();
            }
        }

        int last() {
            return kept.isEmpty() ? -1 : kept.get(kept.size() - 1);
        }
    }

    private void assertLeft(Path folder, Run run, Disk disk) throws FileProblem {
        List<Unsaved> left =
                new Journals(folder).left().stream().map(Journals.Left::unsaved).toList();
        if (left.isEmpty()) {
            assertThat(run.last()).as("after %s", disk.deeds()).isEqualTo(-1);
        } else {
            assertThat(left).as("after %s", disk.deeds()).hasSize(1);
            assertThat(left.get(0)).isIn(state(Math.max(0, run.last())), state(run.last() + 1));
        }
    }

    @ParameterizedTest
    @EnumSource(Loss.class)
    void aCrashCostsNothingThatWasKept(Loss loss) throws Exception {
        boolean reached = true;
        for (int at = 0; reached; at++) {
            Path folder = Files.createDirectory(home.resolve("crash-" + at));
            Disk disk = Disk.crashing(at);
            Run run = new Run();
            try {
                run.edit(disk.path(folder));
            } catch (Crash e) {
                disk.after(loss);
            }
            reached = disk.reached();
            assertLeft(folder, run, disk);
        }
    }

    @Test
    void aDiskThatFailsCostsNothingThatWasKept() throws Exception {
        boolean reached = true;
        for (int at = 0; reached; at++) {
            Path folder = Files.createDirectory(home.resolve("fault-" + at));
            Disk disk = Disk.failing(at, "Input/output error", true);
            Run run = new Run();
            try {
                run.edit(disk.path(folder));
                assertThat(run.last()).isEqualTo(STATES - 1);
            } catch (FileProblem e) {
                assertThat(e.getMessage()).endsWith(".");
            }
            reached = disk.reached();
            assertLeft(folder, run, disk);
        }
    }
}
