package thrumwright.editor.window.piece;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import thrumwright.editor.edit.Session;
import thrumwright.editor.files.OnFile;
import thrumwright.editor.files.Questions;
import thrumwright.editor.settings.Workplace;
import thrumwright.editor.text.Commands;
import thrumwright.editor.text.Messages;
import thrumwright.editor.text.Texts;
import thrumwright.piece.Beginnings;
import thrumwright.piece.Piece;
import thrumwright.store.ClassFile;
import thrumwright.store.FileProblem;
import thrumwright.store.FileSort;
import thrumwright.store.PieceFile;
import thrumwright.store.SafeFile;
import thrumwright.store.Unknown;

/** The commands that have to do with files. */
public final class FileWork implements OnFile.Content {
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
        commands.add("close", this::close);
        commands.add("close-all", windows::closeAll);
    }

    private void begin() {
        questions.beginning().ifPresent(beginning -> {
            Piece piece = beginning
                    .structure()
                    .map(structure ->
                            Beginnings.with(structure, beginning.units()).withTitle(structure.name()))
                    .orElseGet(() -> Beginnings.empty(beginning.units()));
            take(new PieceFile(piece, Unknown.none()), Optional.empty());
        });
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

    private void open(String text, Path path) throws FileProblem {
        switch (FileSort.of(text)) {
            case STRUCTURE -> window.bringIn(path);
            case CLASS -> openClass(ClassFile.read(text, ClassFile.sourceFor(path)), path);
            case PIECE -> {
                PieceFile file = PieceFile.read(text);
                place.settings().used(path);
                take(file, Optional.of(path));
            }
        }
    }

    /** Beside its piece: where that is open already, here if it is the same, else in a window of its own. */
    private void openClass(ClassFile file, Path path) {
        place.settings().used(path);
        Optional<Path> piece = file.piecePath(path);
        boolean same = session.piece().equals(file.set().piece());
        PieceWindow where = piece.flatMap(windows::showing).orElseGet(() -> same ? window : take(file.piece(), piece));
        where.openClass(file, path);
    }

    /**
     * Into this window if nothing was done here yet, else into one of its own.
     *
     * @return that window
     */
    private PieceWindow take(PieceFile file, Optional<Path> path) {
        boolean untouched = session.path().isEmpty()
                && !session.dirty()
                && session.history().names().isEmpty();
        if (untouched) {
            window.forgetTyping();
            session.replace(file, path);
            onFile.read();
            messages.clear();
            window.show();
            return window;
        }
        PieceWindow other = windows.open(new Session(file, path));
        other.show();
        return other;
    }

    /** The piece's title as the name of a file. */
    String stem() {
        return onFile.stem();
    }

    @Override
    public Optional<Path> path() {
        return session.path();
    }

    @Override
    public boolean dirty() {
        return session.dirty();
    }

    @Override
    public String title() {
        return session.piece().title().isBlank()
                ? texts.say("untitled")
                : session.piece().title();
    }

    @Override
    public String write(Path path) throws FileProblem {
        SafeFile.write(path, session.toSave());
        session.saved(path);
        int unfinished = window.unfinished();
        String key = unfinished == 0 ? "message.saved" : "message.saved.unfinished";
        return texts.say(key, Map.of("file", path.toString(), "count", unfinished));
    }

    /** Closes the window, if the weaver doesn't want to stay with what isn't saved. */
    public void close() {
        if (window.mayLeaveClass() && onFile.mayLeave(window::show)) {
            window.dispose();
        }
    }
}
