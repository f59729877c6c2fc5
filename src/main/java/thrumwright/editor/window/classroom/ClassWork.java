package thrumwright.editor.window.classroom;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.IntSupplier;
import thrumwright.editor.edit.ClassSession;
import thrumwright.editor.edit.Session;
import thrumwright.editor.files.Questions;
import thrumwright.editor.files.Stamp;
import thrumwright.editor.text.Texts;
import thrumwright.editor.window.JobBar;
import thrumwright.editor.window.MessageBar;
import thrumwright.editor.window.piece.EditorWindow;
import thrumwright.editor.window.piece.FileWork;
import thrumwright.editor.window.sheet.SheetExport;
import thrumwright.output.ClassSheets;
import thrumwright.output.SheetForm;
import thrumwright.sheet.ClassSheet;
import thrumwright.store.ClassFile;
import thrumwright.store.FileProblem;
import thrumwright.store.SafeFile;

/** The commands of a class that have to do with files. */
public final class ClassWork {
    private final EditorWindow editor;
    private final ClassSession session;
    private final MessageBar messages;
    private final IntSupplier unfinished;
    private final Texts texts;
    private Optional<Stamp> stamp;

    /** @param unfinished how many fields hold something that can't be taken */
    ClassWork(EditorWindow editor, ClassSession session, MessageBar messages, IntSupplier unfinished) {
        this.editor = editor;
        this.session = session;
        this.messages = messages;
        this.unfinished = unfinished;
        this.texts = editor.room().texts();
        this.stamp = session.path().flatMap(Stamp::of);
    }

    private Questions questions() {
        return editor.files().questions();
    }

    void open() {
        questions().fileToOpen().ifPresent(editor.files()::open);
    }

    /** Another class takes the place of this one, unless the teacher stays with what isn't saved. */
    public void take(ClassFile file, Path path) {
        if (mayLeave()) {
            session.replace(file, Optional.of(path));
            stamp = Stamp.of(path);
            messages.clear();
        }
    }

    /** @return whether the class is on file now */
    boolean save() {
        if (session.path().isEmpty()) {
            return saveAs();
        }
        Path path = session.path().get();
        boolean changed = stamp.isPresent() && !stamp.equals(Stamp.of(path)) && Files.exists(path);
        return (!changed || questions().overOthersWork(path)) && write(path);
    }

    boolean saveAs() {
        return questions().fileToSave(stem(), ".json").map(this::write).orElse(false);
    }

    private String stem() {
        return FileWork.stem(ClassSheet.title(session.set(), Locale.UK));
    }

    private boolean write(Path path) {
        try {
            ClassFile file = withItsPiece(path);
            SafeFile.write(path, file.checkedText());
            session.saved(file, path);
            stamp = Stamp.of(path);
            editor.room().settings().used(path);
            String key = unfinished.getAsInt() > 0
                    ? "message.saved.unfinished"
                    : file.pieceName().isPresent() ? "message.class.saved" : "message.class.saved-whole";
            messages.say(texts.say(key, Map.of("file", path.toString(), "count", unfinished.getAsInt())));
            return true;
        } catch (FileProblem e) {
            messages.problem(texts.say("message.not-saved", Map.of("why", e.getMessage())));
            return false;
        }
    }

    /** A piece that is on file as it is, is named; otherwise the class keeps it itself, so that nothing is lost. */
    private ClassFile withItsPiece(Path path) {
        Session piece = editor.session();
        boolean onFile = piece.path().isPresent()
                && !piece.dirty()
                && piece.piece().equals(session.set().piece());
        return onFile
                ? session.file().withPieceIn(named(piece.path().get(), path))
                : session.file().withPieceInside();
    }

    /** As seen from the class's file, the same on every system; on another disk, where that can't be said, in full. */
    private static String named(Path piece, Path from) {
        Path whole = piece.toAbsolutePath().normalize();
        Path folder = from.toAbsolutePath().normalize().resolveSibling("");
        boolean together = Objects.equals(whole.getRoot(), folder.getRoot());
        return (together ? folder.relativize(whole) : whole).toString().replace('\\', '/');
    }

    /** @param each whether every loom gets a file of its own */
    void export(JobBar jobs, boolean each) {
        ClassSheets sheets = new ClassSheets(
                session.plan(), editor.sheetLook(), () -> editor.room().fonts(), Locale.UK);
        questions()
                .fileToSave(stem(), SheetForm.PDF.ending(), path -> each ? files(sheets, path) : List.of(path))
                .ifPresent(path ->
                        new SheetExport(texts, editor.room().fonts(), jobs, messages).write(sheets, each, path));
    }

    private static List<Path> files(ClassSheets sheets, Path path) {
        return sheets.names(SheetForm.PDF, String.valueOf(path.getFileName())).stream()
                .map(path::resolveSibling)
                .toList();
    }

    /** Whether the class may be left: it is saved, or the teacher doesn't mind. */
    public boolean mayLeave() {
        if (!session.dirty()) {
            return true;
        }
        return switch (questions().unsaved(ClassSheet.title(session.set(), Locale.UK))) {
            case SAVE -> save();
            case LEAVE -> true;
            case STAY -> false;
        };
    }
}
