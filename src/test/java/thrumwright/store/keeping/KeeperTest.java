package thrumwright.store.keeping;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import thrumwright.store.FileProblem;
import thrumwright.testing.Seeds;

class KeeperTest {
    @TempDir
    private Path home;

    private final List<FileProblem> troubles = Collections.synchronizedList(new ArrayList<>());

    private static Unsaved state(int number) {
        return new Unsaved(Optional.empty(), Optional.empty(), Instant.now(), String.valueOf(number));
    }

    /** As a program finds it that starts after the one that worked here has died. */
    private List<String> leftIn(Path folder) throws Exception {
        Path copy = Files.createTempDirectory(home, "after");
        try (var files = Files.list(folder)) {
            for (Path file : files.toList()) {
                Files.copy(file, copy.resolve(file.getFileName()));
            }
        }
        return new Journals(copy)
                .left().stream().map(left -> left.unsaved().text()).toList();
    }

    @Test
    void whatChangesIsOnDiskWithinASecond() throws Exception {
        Path folder = home.resolve("journals");
        Kept kept = Keeper.in(folder).begin(troubles::add);
        for (int i = 0; i < 100; i++) {
            int number = i;
            kept.changed(() -> state(number));
        }
        Thread.sleep(Duration.ofSeconds(1).toMillis());
        assertThat(leftIn(folder)).containsExactly("99");
    }

    @Test
    void theLastMomentKeepsAll() throws Exception {
        Path folder = home.resolve("journals");
        Keeper keeper = Keeper.in(folder);
        keeper.begin(troubles::add).changed(() -> state(1));
        keeper.begin(troubles::add).changed(() -> state(2));
        keeper.flush();
        assertThat(leftIn(folder)).containsExactlyInAnyOrder("1", "2");
    }

    @Test
    void whatIsSavedOrClosedIsKeptNoLonger() throws Exception {
        Path folder = home.resolve("journals");
        Keeper keeper = Keeper.in(folder);
        Kept saved = keeper.begin(troubles::add);
        Kept closed = keeper.begin(troubles::add);
        saved.changed(() -> state(1));
        closed.changed(() -> state(2));
        keeper.flush();
        saved.saved();
        closed.close();
        keeper.flush();
        assertThat(leftIn(folder)).isEmpty();
        saved.changed(() -> state(3));
        keeper.flush();
        assertThat(leftIn(folder)).containsExactly("3");
    }

    @Test
    void whatWasLeftGoesOnlyWhenWhoTookItOverIsKept() throws Exception {
        Path folder = home.resolve("journals");
        Journal died = new Journals(folder).begin();
        died.keep(state(1));
        died.abandon();
        Keeper keeper = Keeper.in(folder);
        Kept kept = keeper.begin(troubles::add);
        kept.takesOver(keeper.left().get(0));
        assertThat(leftIn(folder)).containsExactly("1");
        kept.changed(() -> state(2));
        keeper.flush();
        assertThat(leftIn(folder)).containsExactly("2");
    }

    /** Else every keeper that a program ever had would hold a thread. */
    @Test
    void theThreadThatWritesEndsWhenThereIsNothingToWriteAndComesAgain() throws Exception {
        Path folder = home.resolve("journals");
        Keeper keeper = Keeper.in(folder);
        Set<Thread> before = writers();
        Kept kept = keeper.begin(troubles::add);
        for (int i = 0; i < 2; i++) {
            int number = i;
            kept.changed(() -> state(number));
            keeper.flush();
            Set<Thread> writing = writers();
            writing.removeAll(before);
            assertThat(writing).hasSize(1);
            for (Thread thread : writing) {
                thread.join(TimeUnit.SECONDS.toMillis(30));
                assertThat(thread.isAlive()).isFalse();
            }
            assertThat(leftIn(folder)).containsExactly(Integer.toString(number));
        }
    }

    private static Set<Thread> writers() {
        return Thread.getAllStackTraces().keySet().stream()
                .filter(thread -> thread.getName().equals("journals"))
                .collect(Collectors.toSet());
    }

    @Test
    void aFolderThatCantBeWrittenIsToldOnce() throws Exception {
        Path inTheWay = Files.writeString(home.resolve("journals"), "no folder");
        Keeper keeper = Keeper.in(inTheWay);
        for (int i = 0; i < 3; i++) {
            keeper.begin(troubles::add).changed(() -> state(1));
            keeper.flush();
        }
        assertThat(troubles).hasSize(1);
    }

    @Test
    @Timeout(value = 15, unit = TimeUnit.MINUTES)
    void aKillCostsNoMoreThanASecond() throws Exception {
        Random random = new Random(13);
        for (int i = 0; i < Seeds.costly(200, 3); i++) {
            Path folder = Files.createDirectory(home.resolve("killed-" + i));
            killed(folder, random.nextInt(1_500));
        }
    }

    private void killed(Path folder, int millis) throws Exception {
        Path said = folder.resolveSibling(folder.getFileName() + ".said");
        Process other = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:TieredStopAtLevel=1",
                        "-cp",
                        System.getProperty("java.class.path"),
                        Editing.class.getName(),
                        folder.toString())
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .redirectOutput(said.toFile())
                .start();
        try {
            while (other.isAlive() && Files.size(said) == 0) {
                Thread.sleep(5);
            }
            Thread.sleep(millis);
            other.destroyForcibly().waitFor();
            List<long[]> edits = Files.readAllLines(said).stream()
                    .map(line -> line.split(" "))
                    .filter(parts -> parts.length == 3)
                    .map(parts -> new long[] {Long.parseLong(parts[0]), Long.parseLong(parts[1])})
                    .toList();
            assertThat(edits).isNotEmpty();
            long last = edits.get(edits.size() - 1)[1];
            long due = edits.stream()
                    .filter(edit -> edit[1] < last - 1_000)
                    .mapToLong(edit -> edit[0])
                    .max()
                    .orElse(-1);
            List<Journals.Left> left = new Journals(folder).left();
            long kept =
                    left.isEmpty() ? -1 : Long.parseLong(left.get(0).unsaved().text());
            assertThat(kept).as("killed after %s ms", millis).isGreaterThanOrEqualTo(due);
            assertThat(left).hasSizeLessThanOrEqualTo(1);
        } finally {
            other.destroyForcibly();
        }
    }

    /** Another program, in which somebody changes a document until it is ended. */
    static final class Editing {
        private Editing() {}

        public static void main(String[] arguments) throws InterruptedException {
            Kept kept = Keeper.in(Path.of(arguments[0])).begin(problem -> System.exit(1));
            for (int i = 0; true; i++) {
                int number = i;
                kept.changed(() -> state(number));
                System.out.println(number + " " + System.nanoTime() / 1_000_000 + " .");
                Thread.sleep(5);
            }
        }
    }
}
