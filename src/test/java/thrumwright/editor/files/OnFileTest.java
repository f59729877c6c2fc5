package thrumwright.editor.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.EventQueue;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import thrumwright.editor.edit.DocumentSession;
import thrumwright.editor.edit.Edit;
import thrumwright.editor.edit.Session;
import thrumwright.editor.library.Library;
import thrumwright.editor.settings.Settings;
import thrumwright.editor.settings.Workplace;
import thrumwright.editor.text.Messages;
import thrumwright.output.SheetForm;
import thrumwright.store.BuiltIn;
import thrumwright.store.FileProblem;
import thrumwright.store.PieceFile;
import thrumwright.store.SafeFile;
import thrumwright.store.Structures;
import thrumwright.store.keeping.Fingerprint;
import thrumwright.store.keeping.Keeping;
import thrumwright.testing.Seeds;

/** Two programs and somebody outside at one file, in any order: nobody's work is written over without a question. */
class OnFileTest {
    private static final int DEEDS = 25;

    @TempDir
    private Path home;

    private Path file;
    private String demo;

    private int overwritten;
    private int asked;
    private int copies;

    /** One program: what it shows, and what it knows of the file. */
    private final class Program implements OnFile.Content, Questions, Messages {
        private final Random random;
        private final Session session;
        private final OnFile onFile;
        private final Path copy;
        private String known;
        private boolean mayOverwrite;

        Program(int number, Workplace place, Random random) throws FileProblem {
            this.random = random;
            this.copy = file.resolveSibling(file.getFileName() + ".copy-" + number);
            known = SafeFile.read(file);
            session = new Session(PieceFile.read(known), Optional.of(file));
            session.setBase(Optional.of(Fingerprint.of(known)));
            onFile = new OnFile(this, place, () -> this, this);
        }

        /** Claims its file, as soon as the event thread has time. */
        Program begun() throws Exception {
            EventQueue.invokeAndWait(() -> {});
            return this;
        }

        void edit() {
            String title = "Marsh " + random.nextInt(1_000_000);
            session.edit(Edit.of("Title", piece -> piece.withTitle(title)));
            onFile.changed();
        }

        void save() throws IOException {
            String before = Files.exists(file) ? Files.readString(file) : null;
            String knew = known;
            mayOverwrite = false;
            onFile.save();
            String after = Files.exists(file) ? Files.readString(file) : null;
            if (after != null && !after.equals(before)) {
                boolean others = before != null && !before.equals(knew);
                assertThat(!others || mayOverwrite)
                        .as("somebody else's work was written over unasked")
                        .isTrue();
                overwritten += others ? 1 : 0;
            }
            if (!session.path().equals(Optional.of(file))) {
                copies++;
            }
        }

        @Override
        public DocumentSession<?> session() {
            return session;
        }

        @Override
        public String title() {
            return session.piece().title();
        }

        @Override
        public OnFile.State now() {
            PieceFile now = session.toSave();
            return new OnFile.State(now.piece(), now::text);
        }

        @Override
        public OnFile.Draft draft(Path to) throws FileProblem {
            String text = session.toSave().checkedText();
            return new OnFile.Draft(text, () -> {
                known = to.equals(file) ? text : known;
                session.saved(to);
                onFile.changed();
                return "";
            });
        }

        @Override
        public boolean overOthersWork(Path of) {
            asked++;
            mayOverwrite = random.nextBoolean();
            return mayOverwrite;
        }

        @Override
        public Optional<Path> fileToSave(String suggestion, String ending, Function<Path, List<Path>> files) {
            // whoever chooses a file that is there has been asked whether it may be replaced
            mayOverwrite = random.nextInt(4) == 0;
            return Optional.of(mayOverwrite ? file : copy);
        }

        @Override
        public Optional<Path> fileToOpen() {
            return Optional.empty();
        }

        @Override
        public Optional<SheetTarget> sheetFile(String suggestion, SheetForm form, int pages) {
            return Optional.empty();
        }

        @Override
        public Closing unsaved(String of) {
            return Closing.LEAVE;
        }

        @Override
        public Recovering left(String question, boolean saved) {
            return Recovering.LATER;
        }

        @Override
        public Optional<Welcome> welcome() {
            return Optional.empty();
        }

        @Override
        public Optional<Beginning> beginning() {
            return Optional.empty();
        }

        @Override
        public void say(String sentence) {
            // nothing depends on it
        }

        @Override
        public void problem(String sentence) {
            assertThat(sentence).endsWith(".");
        }

        @Override
        public void fault(String sentence, String details) {
            throw new AssertionError(sentence + details);
        }

        @Override
        public void clear() {
            // nothing depends on it
        }
    }

    /** As a program has it. */
    private Workplace place() {
        return new Workplace(
                new Settings(Optional.empty()),
                Library.fixed(Structures.builtIn().all()),
                Locale.UK,
                Keeping.in(home.resolve("state")),
                "0");
    }

    @Test
    @Timeout(value = 15, unit = TimeUnit.MINUTES)
    void nobodysWorkIsWrittenOverUnasked() throws Exception {
        demo = BuiltIn.DEMO.text("saltmarsh-panel.json");
        int runs = Math.max(20, Seeds.of(1000));
        Workplace one = place();
        Workplace other = place();
        for (int run = 0; run < runs; run++) {
            file = Files.writeString(home.resolve("piece-" + run + ".json"), demo);
            interleaved(new Random(run), one, other);
        }
        assertThat(asked).isGreaterThan(runs / 10);
        assertThat(overwritten).isPositive();
        assertThat(copies).isPositive();
    }

    private void interleaved(Random random, Workplace one, Workplace other) throws Exception {
        List<Program> programs =
                new ArrayList<>(List.of(new Program(1, one, random).begun(), new Program(2, other, random).begun()));
        for (int i = 0; i < DEEDS; i++) {
            int who = random.nextInt(2);
            Program program = programs.get(who);
            switch (random.nextInt(7)) {
                case 0, 1 -> program.edit();
                case 2, 3 -> program.save();
                case 4 -> program.onFile.lookAgain();
                case 5 -> Files.writeString(file, demo + " ".repeat(random.nextInt(50)));
                default -> {
                    program.onFile.closed();
                    if (!Files.exists(file)) {
                        Files.writeString(file, demo);
                    }
                    programs.set(who, new Program(who, who == 0 ? one : other, random).begun());
                }
            }
        }
        programs.forEach(each -> each.onFile.closed());
    }
}
