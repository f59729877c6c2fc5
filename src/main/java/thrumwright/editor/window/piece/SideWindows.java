package thrumwright.editor.window.piece;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.function.IntSupplier;
import javax.swing.JFrame;
import javax.swing.JMenuBar;
import thrumwright.editor.edit.ClassSession;
import thrumwright.editor.text.CommandTexts;
import thrumwright.editor.text.Commands;
import thrumwright.editor.text.Messages;
import thrumwright.editor.text.Texts;
import thrumwright.editor.window.KeyList;
import thrumwright.editor.window.KeysWindow;
import thrumwright.editor.window.MainWindow;
import thrumwright.editor.window.MessageBar;
import thrumwright.editor.window.classroom.ClassWindow;
import thrumwright.editor.window.sheet.SheetSettings;
import thrumwright.editor.window.sheet.SheetWindow;
import thrumwright.output.SheetLook;
import thrumwright.store.ClassFile;
import thrumwright.store.keeping.Fingerprint;

/**
 * The windows beside that of a piece: its step sheet, its class and the list of keys, each made when it is first wanted. What
 * went wrong is told in the one where the weaver is.
 */
final class SideWindows implements Messages {
    private final MainWindow editor;
    private final MessageBar messages;
    private SheetWindow sheet;
    private KeysWindow keys;
    private ClassWindow classWindow;

    /** @param messages of the piece's own window */
    SideWindows(MainWindow editor, MessageBar messages) {
        this.editor = editor;
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
        commands.add("class", () -> classWindow().show());
        commands.add("keys", () -> keys(frame.getJMenuBar(), windows.getAsInt()).show());
    }

    SheetWindow sheet() {
        if (sheet == null) {
            sheet = new SheetWindow(editor);
        }
        return sheet;
    }

    private KeysWindow keys(JMenuBar menus, int windows) {
        if (keys == null) {
            Texts texts = editor.room().texts();
            CommandTexts declared = new CommandTexts(texts.locale(), Commands.menuKey());
            keys = new KeysWindow(editor.room(), KeyList.of(declared, menus, texts), windows);
        }
        return keys;
    }

    SheetLook sheetLook() {
        return (sheet != null
                        ? sheet.setup().choice()
                        : new SheetSettings(editor.room().settings(), Locale.getDefault()).choice())
                .look();
    }

    /** With one loom at first. */
    ClassWindow classWindow() {
        if (classWindow == null) {
            classWindow =
                    new ClassWindow(editor, ClassSession.of(editor.session().piece()));
        }
        return classWindow;
    }

    void openClass(ClassFile file, Path path, Fingerprint held) {
        if (classWindow == null) {
            ClassSession session = new ClassSession(file, Optional.of(path));
            session.setBase(Optional.of(held));
            classWindow = new ClassWindow(editor, session);
        } else {
            classWindow.work().take(file, path, held);
        }
        classWindow.session().follow(editor.session().piece());
        classWindow.show();
    }

    boolean mayLeaveClass() {
        return classWindow == null || classWindow.work().mayLeave();
    }

    @Override
    public void say(String sentence) {
        messages.say(sentence);
    }

    @Override
    public void problem(String sentence) {
        if (sheet != null && sheet.frame().isActive()) {
            sheet.problem(sentence);
        } else if (classWindow != null && classWindow.frame().isActive()) {
            classWindow.problem(sentence);
        } else {
            messages.problem(sentence);
        }
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
        if (keys != null) {
            keys.dispose();
        }
        if (sheet != null) {
            sheet.dispose();
        }
        if (classWindow != null) {
            classWindow.dispose();
        }
    }
}
