package thrumwright.editor;

import static org.assertj.core.api.Assertions.assertThat;
import static thrumwright.testing.WindowTest.onEventThread;

import java.awt.EventQueue;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import javax.swing.ActionMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import thrumwright.editor.edit.Edit;
import thrumwright.editor.files.Questions.Recovering;
import thrumwright.editor.settings.Settings;
import thrumwright.editor.window.piece.EditorWindow;
import thrumwright.store.BuiltIn;
import thrumwright.store.FileProblem;
import thrumwright.store.PieceFile;
import thrumwright.store.keeping.Journals;
import thrumwright.store.keeping.Keeping;
import thrumwright.testing.PureJavaScreen;
import thrumwright.testing.Seeds;

/** A program with its window is killed at random moments while somebody works in it, also while it recovers. */
class KillsIT {
    private static final String TITLE = "Edit ";

    /** What was done in the last of it may be lost, ms. */
    private static final long MAY_BE_LOST = 1_000;

    @TempDir
    private Path home;

    /** An edit that was made, and when, ms. */
    private record Made(long number, long millis) {}

    @Test
    @Timeout(value = 3, unit = TimeUnit.HOURS)
    void aKillCostsNoMoreThanASecond() throws Exception {
        Random random = new Random(17);
        for (int i = 0; i < Seeds.costly(200, 2); i += 2) {
            Path state = Files.createDirectory(home.resolve("state-" + i));
            Path file =
                    Files.writeString(home.resolve("piece-" + i + ".json"), BuiltIn.DEMO.text("saltmarsh-panel.json"));
            long first = killed(state, file, random.nextInt(2_500), 0);
            killed(state, file, random.nextInt(600), first);
            assertThat(file).hasContent(BuiltIn.DEMO.text("saltmarsh-panel.json"));
        }
    }

    /** Kills it some time after it has begun; gives what is kept then, which is no less than what was there before. */
    private long killed(Path state, Path file, int millis, long before) throws Exception {
        Path said = state.resolveSibling(state.getFileName() + "-" + before + ".said");
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        ManagementFactory.getRuntimeMXBean().getInputArguments().stream()
                .filter(flag -> flag.startsWith("-D") || flag.startsWith("--add"))
                .forEach(command::add);
        command.addAll(List.of("-XX:TieredStopAtLevel=1", "-cp", System.getProperty("java.class.path")));
        command.addAll(List.of(Working.class.getName(), state.toString(), file.toString()));
        Process other = new ProcessBuilder(command)
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .redirectOutput(said.toFile())
                .start();
        try {
            while (other.isAlive() && Files.size(said) == 0) {
                Thread.sleep(5);
            }
            Thread.sleep(millis);
            assertThat(other.isAlive()).isTrue();
            other.destroyForcibly().waitFor();
            long due = Math.max(before, due(said));
            List<Journals.Left> left = new Journals(state.resolve("journals")).left();
            long kept = 0;
            for (Journals.Left each : left) {
                kept = Math.max(
                        kept,
                        number(PieceFile.read(each.unsaved().text()).piece().title()));
            }
            assertThat(kept).as("killed after %s ms, %s", millis, said).isGreaterThanOrEqualTo(due);
            return kept;
        } finally {
            other.destroyForcibly();
        }
    }

    /** The last edit that must be kept. */
    private static long due(Path said) throws Exception {
        List<Made> made = Files.readAllLines(said).stream()
                .map(line -> line.split(" "))
                .filter(parts -> parts.length == 3)
                .map(parts -> new Made(Long.parseLong(parts[0]), Long.parseLong(parts[1])))
                .toList();
        if (made.isEmpty()) {
            return 0;
        }
        long last = made.get(made.size() - 1).millis();
        return made.stream()
                .filter(edit -> edit.millis() < last - MAY_BE_LOST)
                .mapToLong(Made::number)
                .max()
                .orElse(0);
    }

    private static long number(String title) {
        return title.startsWith(TITLE) ? Long.parseLong(title.substring(TITLE.length())) : 0;
    }

    /** The program: takes over what was left and goes on, until it is ended. */
    static final class Working {
        private Working() {}

        public static void main(String[] arguments) throws Exception {
            new PureJavaScreen().launcherSessionOpened(null);
            EditorWindow window = onEventThread(() -> start(Path.of(arguments[0]), Path.of(arguments[1])));
            System.out.println("begun");
            EventQueue.invokeAndWait(window::recover);
            long before = onEventThread(() -> number(window.session().piece().title()));
            for (long i = before + 1; true; i++) {
                long number = i;
                EventQueue.invokeAndWait(() -> work(window, number));
                System.out.println(number + " " + System.nanoTime() / 1_000_000 + " .");
                Thread.sleep(20);
            }
        }

        private static EditorWindow start(Path state, Path file) throws FileProblem {
            Workroom room = new Workroom(new Settings(Optional.empty()), Rooms.LIBRARY, Locale.UK, Keeping.in(state));
            EditorWindow window = room.open(Optional.of(file));
            Answers answers = new Answers();
            answers.recovering = Recovering.UNSAVED;
            window.files().setQuestions(answers);
            window.show();
            return window;
        }

        /** An edit, and now and then one that is taken back and done again. */
        private static void work(EditorWindow window, long number) {
            window.session().edit(Edit.of("Title", piece -> piece.withTitle(TITLE + number)));
            ActionMap commands = window.frame().getRootPane().getActionMap();
            if (number % 3 == 0) {
                commands.get("undo").actionPerformed(null);
                commands.get("redo").actionPerformed(null);
            }
        }
    }
}
