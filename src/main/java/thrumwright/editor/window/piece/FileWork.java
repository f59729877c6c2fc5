package thrumwright.editor.window.piece;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import thrumwright.editor.edit.Change;
import thrumwright.editor.edit.Edit;
import thrumwright.editor.edit.Session;
import thrumwright.editor.files.Beginning;
import thrumwright.editor.files.OnFile;
import thrumwright.editor.files.Questions;
import thrumwright.editor.files.ReadClass;
import thrumwright.editor.settings.Workplace;
import thrumwright.editor.text.Commands;
import thrumwright.editor.text.Messages;
import thrumwright.editor.text.Texts;
import thrumwright.measure.Phrase;
import thrumwright.piece.Beginnings;
import thrumwright.piece.Piece;
import thrumwright.store.ClassFile;
import thrumwright.store.FileProblem;
import thrumwright.store.FileSort;
import thrumwright.store.PieceFile;
import thrumwright.store.SafeFile;
import thrumwright.store.Unknown;
import thrumwright.store.keeping.Fingerprint;
import thrumwright.store.keeping.Journals;

/** The commands that have to do with files. */
public final class FileWork implements OnFile.Content {
    /** As many as can be read in one line. */
    private static final int MOST_TOLD = 3;

    private final PieceWindow window;
    private final OtherWindows windows;
    private final Session session;
    private final Workplace place;
    private final Texts texts;
    private final Messages messages;
    private final OnFile onFile;
    private Questions questions;

    FileWork(PieceWindow window, OtherWindows windows, Workplace place, Messages messages, Questions questions) {
        this.window = window;
        this.windows = windows;
        this.session = window.session();
        this.place = place;
        this.texts = place.texts();
        this.messages = messages;
        this.questions = questions;
        this.onFile = new OnFile(this, place, this::questions, messages);
        session.listen(change -> {
            if (change != Change.SELECTION) {
                onFile.changed();
            }
        });
    }

    Questions questions() {
        return questions;
    }

    /** Asks somebody else. */
    public void setQuestions(Questions other) {
        questions = other;
    }

    void addTo(Commands commands) {
        commands.add("new", this::begin);
        commands.add("open", () -> questions.fileToOpen().ifPresent(this::open));
        commands.add("save", onFile::save);
        commands.add("save-as", onFile::saveAs);
        commands.add("earlier", this::takeEarlier, () -> onFile.earlier().isPresent());
        commands.add("close", this::close);
        commands.add("close-all", windows::closeAll);
    }

    void begin() {
        questions.beginning().ifPresent(this::begin);
    }

    /** A new piece, nowhere on file yet. */
    void begin(Piece piece) {
        take(new PieceFile(piece, Unknown.none()), Optional.empty(), Optional.empty());
    }

    void begin(Beginning beginning) {
        Piece piece = beginning
                .structure()
                .map(structure -> Beginnings.with(structure, beginning.units()).withTitle(structure.name()))
                .orElseGet(() -> Beginnings.empty(beginning.units()));
        begin(beginning.own().on(piece));
    }

    /** A piece in a window, a class beside its piece; a structure goes into the library. */
    public void open(Path path) {
        Optional<PieceWindow> already = windows.showing(path);
        if (already.isPresent()) {
            already.get().toFront();
            return;
        }
        try {
            open(SafeFile.read(path), path);
        } catch (FileProblem e) {
            if (!Files.exists(path)) {
                place.settings().forget(path);
            }
            messages.problem(texts.say(
                    "message.not-opened", Map.of("file", String.valueOf(path.getFileName()), "why", e.getMessage())));
        }
    }

    /** As an edit, so that undo brings back what was there, and nothing is on file until it is saved. */
    private void takeEarlier() {
        onFile.earlier().ifPresent(path -> {
            try {
                Piece before = PieceFile.read(SafeFile.read(path)).piece();
                window.forgetTyping();
                session.edit(Edit.of(texts.say("earlier.edit"), piece -> before));
                messages.say(texts.say("message.earlier"));
            } catch (FileProblem e) {
                messages.problem(texts.say("message.not-earlier", Map.of("why", e.getMessage())));
            }
        });
    }

    private void open(String text, Path path) throws FileProblem {
        switch (FileSort.of(text)) {
            case STRUCTURE -> window.bringIn(path);
            case CLASS -> openClass(text, path);
            case PIECE -> {
                PieceFile file = PieceFile.read(text);
                place.settings().used(path);
                take(file, Optional.of(path), Optional.of(Fingerprint.of(text)));
            }
        }
    }

    /** Beside its piece: where that is open already, here if it is the same, else in a window of its own. */
    private void openClass(String text, Path path) throws FileProblem {
        ReadClass read = ReadClass.of(text, path);
        ClassFile file = read.file();
        place.settings().used(path);
        Optional<Path> piece = file.piecePath(path);
        boolean same = session.piece().equals(file.set().piece());
        PieceWindow where = piece.flatMap(windows::showing)
                .orElseGet(() -> same ? window : take(file.piece(), piece, read.pieceHeld()));
        where.openClass(file, path, read.held());
    }

    /**
     * Into this window if nothing was done here yet, else into one of its own.
     *
     * @return that window
     */
    PieceWindow take(PieceFile file, Optional<Path> path, Optional<Fingerprint> held) {
        if (untouched()) {
            window.forgetTyping();
            session.setBase(held);
            session.replace(file, path);
            messages.clear();
            tellUnknown();
            window.show();
            return window;
        }
        Session begun = new Session(file, path);
        begun.setBase(held);
        PieceWindow other = windows.open(begun);
        other.show();
        return other;
    }

    /** Whether nothing was done in this window yet. */
    boolean untouched() {
        return session.path().isEmpty()
                && !session.dirty()
                && session.history().names().isEmpty();
    }

    /** The piece's title as the name of a file. */
    String stem() {
        return onFile.stem();
    }

    @Override
    public Session session() {
        return session;
    }

    @Override
    public OnFile.State now() {
        PieceFile now = session.toSave();
        return new OnFile.State(now.piece(), now::text);
    }

    @Override
    public String title() {
        return session.piece().title().isBlank()
                ? texts.say("untitled")
                : session.piece().title();
    }

    @Override
    public OnFile.Draft draft(Path path) throws FileProblem {
        return new OnFile.Draft(session.toSave().checkedText(), () -> written(path));
    }

    private String written(Path path) {
        session.saved(path);
        int unfinished = window.unfinished();
        String key = unfinished == 0 ? "message.saved" : "message.saved.unfinished";
        return texts.say(key, Map.of("file", path.toString(), "count", unfinished)) + kept();
    }

    /** Keeps loom and yarns for the next piece; what is said if they can't be. */
    private String kept() {
        try {
            place.cupboard().keep(session.piece());
            return "";
        } catch (FileProblem e) {
            return " " + texts.say("message.not-kept", Map.of("why", e.getMessage()));
        }
    }

    /** Goes on with what a program left that ended before it was saved. */
    public void takeOver(Journals.Left left) {
        onFile.takeOver(left);
    }

    /** The window in which something is gone on with: where it is open already and saved, else one for it. */
    PieceWindow toGoOn(PieceFile saved, Optional<Path> path, Optional<Fingerprint> held) {
        return path.flatMap(windows::showing)
                .filter(open -> !open.session().dirty())
                .orElseGet(() -> take(saved, path, held));
    }

    /** Tells which fields of the file say nothing. */
    void tellUnknown() {
        List<Phrase> notices = session.toSave().unknown().notices();
        if (!notices.isEmpty()) {
            messages.problem(
                    notices.stream().limit(MOST_TOLD).map(Phrase::toString).collect(Collectors.joining(" ")));
        }
    }

    /** Somebody comes back to this window. */
    void lookAgain() {
        onFile.lookAgain();
    }

    /** The window is no longer there. */
    void closed() {
        onFile.closed();
    }

    /** Closes the window, if the weaver doesn't want to stay with what isn't saved. */
    public void close() {
        if (window.mayLeaveClass() && onFile.mayLeave(window::show)) {
            window.dispose();
        }
    }
}
