package thrumwright.editor.window.piece;

import java.awt.Component;
import java.awt.GraphicsConfiguration;
import java.awt.KeyboardFocusManager;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.IntSupplier;
import javax.swing.JFrame;
import javax.swing.JMenuBar;
import thrumwright.block.Block;
import thrumwright.drawing.Palette;
import thrumwright.editor.edit.ClassSession;
import thrumwright.editor.help.HelpTopic;
import thrumwright.editor.look.WhenWanted;
import thrumwright.editor.loom.LoomWindow;
import thrumwright.editor.text.CommandTexts;
import thrumwright.editor.text.Commands;
import thrumwright.editor.text.Messages;
import thrumwright.editor.text.Texts;
import thrumwright.editor.window.AboutDialog;
import thrumwright.editor.window.HelpDesk;
import thrumwright.editor.window.KeyList;
import thrumwright.editor.window.KeysWindow;
import thrumwright.editor.window.MainWindow;
import thrumwright.editor.window.MessageBar;
import thrumwright.editor.window.SettingsDialog;
import thrumwright.editor.window.classroom.ClassWindow;
import thrumwright.editor.window.sheet.SheetSettings;
import thrumwright.editor.window.sheet.SheetWindow;
import thrumwright.output.SheetLook;
import thrumwright.output.html.LoomPage;
import thrumwright.store.ClassFile;
import thrumwright.store.FileProblem;
import thrumwright.store.SafeFile;
import thrumwright.store.keeping.Fingerprint;

/**
 * The windows beside that of a piece: its step sheet, the view at the loom, its class and the list of keys, each made when it is first wanted. What
 * went wrong is told in the one where the weaver is.
 */
final class SideWindows implements Messages {
    private final MainWindow editor;
    private final MessageBar messages;
    private final HelpDesk desk;
    private final WhenWanted<SheetWindow> sheet = new WhenWanted<>();
    private final WhenWanted<KeysWindow> keys = new WhenWanted<>();
    private final WhenWanted<LoomWindow> loom = new WhenWanted<>();
    private final WhenWanted<ClassWindow> classWindow = new WhenWanted<>();

    /** @param messages of the piece's own window */
    SideWindows(MainWindow editor, MessageBar messages, HelpDesk desk) {
        this.editor = editor;
        this.desk = desk;
        this.messages = messages;
    }

    /**
     * @param frame of the piece, whose menus order the keys
     * @param windows how many there are of pieces
     */
    void addTo(Commands commands, JFrame frame, IntSupplier windows) {
        commands.add("sheet", () -> sheet().show());
        commands.add("print", () -> sheet().showAnd("sheet-print"));
        commands.add("export", () -> sheet().showAnd("sheet-export"));
        commands.add("cards", () -> sheet().cards());
        commands.add("loom", () -> loom(frame.getGraphicsConfiguration()).show());
        commands.add("loom-page", this::writeLoomPage);
        commands.add("class", () -> classWindow().show());
        commands.add("about", () -> new AboutDialog(frame, editor.room()).show());
        commands.add("settings", () -> new SettingsDialog(frame, editor.room(), commands.get("measure-screen")).show());
        commands.add("help", this::help);
        desk.serve(frame);
        commands.add("keys", () -> keys(frame.getJMenuBar(), windows.getAsInt()).show());
    }

    SheetWindow sheet() {
        return sheet.get(() -> new SheetWindow(editor));
    }

    private KeysWindow keys(JMenuBar menus, int windows) {
        Texts texts = editor.room().texts();
        CommandTexts declared = new CommandTexts(texts.locale(), Commands.menuKey());
        return keys.get(() -> new KeysWindow(editor.room(), KeyList.of(declared, menus, texts), windows));
    }

    /** About the field or finding that has the keyboard, or the kind of block that is selected. */
    private void help() {
        Component focus = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
        Optional<String> block =
                editor.session().selection().leadIn(editor.session().shown()).map(Block::key);
        desk.show(HelpTopic.of(focus, block));
    }

    private void writeLoomPage() {
        Texts texts = editor.room().texts();
        editor.questions().fileToSave(editor.stem() + "-loom", ".html").ifPresent(path -> {
            try {
                String page = LoomPage.of(editor.session().plan(), Palette.onPaper(), texts.locale());
                SafeFile.write(path, page);
                say(texts.say("message.loom-page", Map.of("file", path.toString())));
            } catch (FileProblem problem) {
                problem(texts.say("message.no-sheet", Map.of("why", problem.getMessage())));
            }
        });
    }

    private LoomWindow loom(GraphicsConfiguration screen) {
        return loom.get(() -> new LoomWindow(editor.session(), editor.room(), screen, LocalDateTime::now));
    }

    SheetLook sheetLook() {
        return sheet.made()
                .map(made -> made.setup().choice())
                .orElseGet(() -> new SheetSettings(
                                editor.room().settings(),
                                Locale.getDefault(),
                                editor.session().piece().habits().units())
                        .choice())
                .look();
    }

    /** With one loom at first. */
    ClassWindow classWindow() {
        return classWindow.get(
                () -> new ClassWindow(editor, ClassSession.of(editor.session().piece())));
    }

    void openClass(ClassFile file, Path path, Fingerprint held) {
        classWindow.made().ifPresent(made -> made.work().take(file, path, held));
        ClassWindow window = classWindow.get(() -> {
            ClassSession session = new ClassSession(file, Optional.of(path));
            session.setBase(Optional.of(held));
            return new ClassWindow(editor, session);
        });
        window.session().follow(editor.session().piece());
        window.show();
        window.tellUnknown(file.unknown().notices());
    }

    boolean mayLeaveClass() {
        return classWindow.made().map(made -> made.work().mayLeave()).orElse(true);
    }

    @Override
    public void say(String sentence) {
        messages.say(sentence);
    }

    @Override
    public void problem(String sentence) {
        sheet.made()
                .filter(made -> made.frame().isActive())
                .<Consumer<String>>map(made -> made::problem)
                .or(() -> classWindow
                        .made()
                        .filter(made -> made.frame().isActive())
                        .map(made -> made::problem))
                .orElse(messages::problem)
                .accept(sentence);
    }

    @Override
    public void fault(String sentence, String details) {
        messages.fault(sentence, details);
    }

    @Override
    public void clear() {
        messages.clear();
    }

    void dispose() {
        keys.made().ifPresent(KeysWindow::dispose);
        sheet.made().ifPresent(SheetWindow::dispose);
        classWindow.made().ifPresent(ClassWindow::dispose);
        loom.made().ifPresent(LoomWindow::dispose);
    }
}
