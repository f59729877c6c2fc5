package thrumwright.editor.window.classroom;

import java.awt.Component;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.IntSupplier;
import java.util.stream.IntStream;
import thrumwright.editor.edit.ClassSession;
import thrumwright.editor.edit.Session;
import thrumwright.editor.files.OnFile;
import thrumwright.editor.text.Commands;
import thrumwright.editor.text.Messages;
import thrumwright.editor.text.Texts;
import thrumwright.editor.window.JobBar;
import thrumwright.editor.window.MainWindow;
import thrumwright.editor.window.sheet.SheetExport;
import thrumwright.output.ClassSheets;
import thrumwright.output.SheetForm;
import thrumwright.output.WrittenAt;
import thrumwright.sheet.ClassSheet;
import thrumwright.sheet.MemberNames;
import thrumwright.store.ClassFile;
import thrumwright.store.FileProblem;
import thrumwright.store.PieceFile;
import thrumwright.store.SafeFile;
import thrumwright.store.Unknown;
import thrumwright.store.keeping.Fingerprint;
import thrumwright.store.keeping.Journals;

/** The commands of a class that have to do with files. */
public final class ClassWork implements OnFile.Content {
    private final MainWindow editor;
    private final ClassSession session;
    private final Messages messages;
    private final IntSupplier unfinished;
    private final Texts texts;
    private final OnFile onFile;

    /** @param unfinished how many fields hold something that can't be taken */
    ClassWork(MainWindow editor, ClassSession session, Messages messages, IntSupplier unfinished) {
        this.editor = editor;
        this.session = session;
        this.messages = messages;
        this.unfinished = unfinished;
        this.texts = editor.room().texts();
        this.onFile = new OnFile(this, editor.room(), editor::questions, messages);
        session.listen(onFile::changed);
    }

    void addTo(Commands commands) {
        commands.add("class-open", () -> editor.questions().fileToOpen().ifPresent(editor::open));
        commands.add("class-save", onFile::save);
        commands.add("class-save-as", onFile::saveAs);
        commands.add("class-earlier", this::takeEarlier, () -> onFile.earlier().isPresent());
    }

    /** As a step that undo takes back, with the piece as it is now; nothing is on file until it is saved. */
    private void takeEarlier() {
        onFile.earlier().ifPresent(path -> {
            try {
                session.take(earlier(path).set());
                messages.say(texts.say("message.class.earlier"));
            } catch (FileProblem | IllegalArgumentException e) {
                messages.problem(texts.say("message.not-earlier", Map.of("why", e.getMessage())));
            }
        });
    }

    private ClassFile earlier(Path path) throws FileProblem {
        String piece = new PieceFile(session.set().piece(), Unknown.none()).text();
        return ClassFile.read(SafeFile.read(path), name -> piece);
    }

    /** Another class takes the place of this one, unless the teacher stays with what isn't saved. */
    public void take(ClassFile file, Path path, Fingerprint held) {
        if (mayLeave()) {
            session.setBase(Optional.of(held));
            session.replace(file, Optional.of(path));
            messages.clear();
        }
    }

    @Override
    public ClassSession session() {
        return session;
    }

    @Override
    public OnFile.State now() {
        ClassFile now = session.file().withPieceInside();
        return new OnFile.State(session.file(), now::text);
    }

    @Override
    public String title() {
        return ClassSheet.title(session.set(), Locale.UK);
    }

    @Override
    public OnFile.Draft draft(Path path) throws FileProblem {
        ClassFile file = withItsPiece(path);
        return new OnFile.Draft(file.checkedText(), () -> written(file, path));
    }

    private String written(ClassFile file, Path path) {
        session.saved(file, path);
        String key = unfinished.getAsInt() > 0
                ? "message.saved.unfinished"
                : file.pieceName().isPresent() ? "message.class.saved" : "message.class.saved-whole";
        return texts.say(key, Map.of("file", path.toString(), "count", unfinished.getAsInt()));
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
                session.plan(),
                editor.sheetLook().written(WrittenAt.now()),
                () -> editor.room().fonts(),
                Locale.UK);
        editor.questions()
                .fileToSave(onFile.stem(), SheetForm.PDF.ending(), path -> each ? files(sheets, path) : List.of(path))
                .ifPresent(path ->
                        new SheetExport(texts, editor.room().fonts(), jobs, messages).write(sheets, each, path));
    }

    private static List<Path> files(ClassSheets sheets, Path path) {
        return sheets.names(SheetForm.PDF, String.valueOf(path.getFileName())).stream()
                .map(path::resolveSibling)
                .toList();
    }

    /** Who stands where, by the pieces in a folder, one of which is pointed at. */
    void standings(Component parent) {
        editor.questions()
                .fileToOpen()
                .map(Path::toAbsolutePath)
                .map(Path::getParent)
                .ifPresent(folder -> {
                    try {
                        MemberNames names = MemberNames.of(session.set(), Locale.UK);
                        List<String> members = IntStream.range(
                                        0, session.set().members().size())
                                .mapToObj(names::name)
                                .toList();
                        new StandingsDialog(parent, texts, Standings.in(folder, members, Locale.UK)).show();
                    } catch (FileProblem problem) {
                        messages.problem(problem.getMessage());
                    }
                });
    }

    /** Goes on with what a program left that ended before it was saved. */
    public void takeOver(Journals.Left left) {
        onFile.takeOver(left);
    }

    /** Somebody comes back to this window. */
    void lookAgain() {
        onFile.lookAgain();
    }

    /** The class is open no longer. */
    void closed() {
        onFile.closed();
    }

    /** Whether the class may be left: it is saved, or the teacher doesn't mind. */
    public boolean mayLeave() {
        return onFile.mayLeave(() -> {});
    }
}
