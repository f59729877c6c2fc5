package thrumwright.editor.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.EventQueue;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.function.Function;
import thrumwright.editor.edit.DocumentSession;
import thrumwright.editor.edit.Edit;
import thrumwright.editor.edit.Session;
import thrumwright.editor.library.Library;
import thrumwright.editor.settings.Settings;
import thrumwright.editor.settings.Workplace;
import thrumwright.editor.text.Messages;
import thrumwright.output.SheetForm;
import thrumwright.store.FileProblem;
import thrumwright.store.PieceFile;
import thrumwright.store.SafeFile;
import thrumwright.store.Structures;
import thrumwright.store.keeping.Fingerprint;
import thrumwright.store.keeping.Keeping;

/** A program with a piece open, without its window: what it shows, and what it knows of the file; who is asked answers by chance. */
final class ProgramAtFile implements OnFile.Content, Questions, Messages {
    private final Path file;
    private final Random random;
    private final Session session;
    private final OnFile onFile;
    private final Path copy;
    private String known;
    private boolean mayOverwrite;

    ProgramAtFile(Path file, int number, Workplace place, Random random) throws FileProblem {
        this.file = file;
        this.random = random;
        this.copy = file.resolveSibling(file.getFileName() + ".copy-" + number);
        known = SafeFile.read(file);
        session = new Session(PieceFile.read(known), Optional.of(file));
        session.setBase(Optional.of(Fingerprint.of(known)));
        onFile = new OnFile(this, place, () -> this, this);
    }

    /** Claims its file, as soon as the event thread has time. */
    ProgramAtFile begun() throws Exception {
        EventQueue.invokeAndWait(() -> {});
        return this;
    }

    void edit() {
        String title = "Marsh " + random.nextInt(1_000_000);
        session.edit(Edit.of("Title", piece -> piece.withTitle(title)));
        onFile.changed();
    }

    /**
     * What saving did.
     *
     * @param knew what the program had last seen in the file
     * @param asked whether somebody said that what is in the file may be written over
     * @param wrote what it wrote there, if it did
     * @param copied whether the document lies under another name now
     */
    record Saving(String knew, boolean asked, Optional<String> wrote, boolean copied) {}

    Saving save() {
        String knew = known;
        known = null;
        mayOverwrite = false;
        onFile.save();
        Optional<String> wrote = Optional.ofNullable(known);
        known = wrote.orElse(knew);
        return new Saving(knew, mayOverwrite, wrote, !session.path().equals(Optional.of(file)));
    }

    void look() {
        onFile.lookAgain();
    }

    void close() {
        onFile.closed();
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

    /** As a program has it. */
    static Workplace place(Path state) {
        return new Workplace(
                new Settings(Optional.empty()),
                Library.fixed(Structures.builtIn().all()),
                Locale.UK,
                Keeping.in(state),
                "0");
    }
}
