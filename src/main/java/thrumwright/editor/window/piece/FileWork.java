package thrumwright.editor.window.piece;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import thrumwright.editor.edit.Session;
import thrumwright.editor.files.Questions;
import thrumwright.editor.files.Stamp;
import thrumwright.editor.text.Commands;
import thrumwright.editor.text.Texts;
import thrumwright.piece.Beginnings;
import thrumwright.piece.Piece;
import thrumwright.store.ClassFile;
import thrumwright.store.FileProblem;
import thrumwright.store.PieceFile;
import thrumwright.store.SafeFile;
import thrumwright.store.StructureFile;
import thrumwright.store.Unknown;

/** The commands that have to do with files. */
public final class FileWork {
    private final EditorWindow window;
    private final Session session;
    private final Texts texts;
    private Questions questions;
    private Optional<Stamp> stamp;

    FileWork(EditorWindow window, Questions questions) {
        this.window = window;
        this.session = window.session();
        this.texts = window.room().texts();
        this.questions = questions;
        this.stamp = session.path().flatMap(Stamp::of);
    }

    public Questions questions() {
        return questions;
    }

    /** Asks somebody else. */
    public void setQuestions(Questions other) {
        questions = other;
    }

    void addTo(Commands commands) {
        commands.add("new", this::begin);
        commands.add("open", () -> questions.fileToOpen().ifPresent(this::open));
        commands.add("save", this::save);
        commands.add("save-as", this::saveAs);
        commands.add("close", this::close);
        commands.add("close-all", window.room()::closeAll);
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
        Optional<EditorWindow> already = window.room().showing(path);
        if (already.isPresent()) {
            already.get().toFront();
            return;
        }
        try {
            String text = SafeFile.read(path);
            if (StructureFile.isMeant(text)) {
                window.structures().bringIn(path);
                return;
            }
            if (ClassFile.isClass(text)) {
                openClass(ClassFile.read(text, ClassFile.sourceFor(path)), path);
                return;
            }
            PieceFile file = PieceFile.read(text);
            window.room().settings().used(path);
            take(file, Optional.of(path));
        } catch (FileProblem e) {
            if (!Files.exists(path)) {
                window.room().settings().forget(path);
            }
            window.problem(texts.say(
                    "message.not-opened", Map.of("file", String.valueOf(path.getFileName()), "why", e.getMessage())));
        }
    }

    /** Beside its piece: where that is open already, here if it is the same, else in a window of its own. */
    private void openClass(ClassFile file, Path path) {
        window.room().settings().used(path);
        Optional<Path> piece = file.piecePath(path);
        boolean same = session.piece().equals(file.set().piece());
        EditorWindow where =
                piece.flatMap(window.room()::showing).orElseGet(() -> same ? window : take(file.piece(), piece));
        where.openClass(file, path);
    }

    /**
     * Into this window if nothing was done here yet, else into one of its own.
     *
     * @return that window
     */
    private EditorWindow take(PieceFile file, Optional<Path> path) {
        boolean untouched = session.path().isEmpty()
                && !session.dirty()
                && session.history().names().isEmpty();
        if (untouched) {
            window.desk().clear();
            session.replace(file, path);
            stamp = path.flatMap(Stamp::of);
            window.messages().clear();
            window.show();
            return window;
        }
        EditorWindow other = window.room().open(new Session(file, path));
        other.show();
        return other;
    }

    /** @return whether the piece is on file now */
    boolean save() {
        if (session.path().isEmpty()) {
            return saveAs();
        }
        Path path = session.path().get();
        boolean changed = stamp.isPresent() && !stamp.equals(Stamp.of(path)) && Files.exists(path);
        return (!changed || questions.overOthersWork(path)) && write(path);
    }

    boolean saveAs() {
        return questions.fileToSave(stem(), ".json").map(this::write).orElse(false);
    }

    /** The piece's title as the name of a file. */
    public String stem() {
        String title = session.piece().title().isBlank()
                ? texts.say("untitled")
                : session.piece().title();
        return stem(title);
    }

    /** A title as the name of a file. */
    public static String stem(String title) {
        return title.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\d]+", "-").replaceAll("^-|-$", "");
    }

    private boolean write(Path path) {
        try {
            SafeFile.write(path, session.toSave());
            session.saved(path);
            stamp = Stamp.of(path);
            window.room().settings().used(path);
            window.messages().say(saved(path));
            return true;
        } catch (FileProblem e) {
            window.problem(texts.say("message.not-saved", Map.of("why", e.getMessage())));
            return false;
        }
    }

    private String saved(Path path) {
        int unfinished = window.desk().unfinished();
        String key = unfinished == 0 ? "message.saved" : "message.saved.unfinished";
        return texts.say(key, Map.of("file", path.toString(), "count", unfinished));
    }

    /** Closes the window, if the weaver doesn't want to stay with what isn't saved. */
    public void close() {
        if (!window.mayLeaveClass()) {
            return;
        }
        if (!session.dirty()) {
            window.dispose();
            return;
        }
        String title = session.piece().title().isBlank()
                ? texts.say("untitled")
                : session.piece().title();
        switch (questions.unsaved(title)) {
            case SAVE -> {
                if (save()) {
                    window.dispose();
                }
            }
            case LEAVE -> window.dispose();
            case STAY -> window.show();
        }
    }
}
