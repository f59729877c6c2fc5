package thrumwright.editor.window;

import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.awt.event.ActionEvent;
import javax.swing.JRootPane;
import javax.swing.SwingUtilities;
import javax.swing.Timer;
import thrumwright.editor.look.WhenWanted;
import thrumwright.editor.text.Messages;
import thrumwright.editor.text.Texts;

/**
 * A sentence over the foot of a window: what happened to a file, or what was refused. It moves nothing, takes no keyboard,
 * and goes by itself when there was time to read it; only what went wrong inside the program stays until it is closed.
 */
public final class MessageBar implements Messages {
    /** Time to find a message, and to read each of its letters, ms. */
    private static final int FOUND = 8_000;

    private static final int LETTER = 60;

    private final Texts texts;
    private final JRootPane root;
    private final WhenWanted<MessageSheet> sheet = new WhenWanted<>();
    private final Timer gone = new Timer(FOUND, this::goes);
    private Component before;

    /** @param root of the window over whose foot messages lie */
    public MessageBar(Texts texts, JRootPane root) {
        this.texts = texts;
        this.root = root;
        gone.setRepeats(false);
    }

    @Override
    public void say(String text) {
        show(text, false);
        waitFor(text);
    }

    @Override
    public void problem(String text) {
        show(text, true);
        waitFor(text);
    }

    @Override
    public void fault(String text, String toCopy) {
        show(text, true).offer(toCopy);
    }

    private MessageSheet show(String text, boolean refused) {
        gone.stop();
        before = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
        MessageSheet shown = sheet.get(() -> new MessageSheet(texts, this::clear).over(root));
        shown.show(text, refused);
        return shown;
    }

    private void waitFor(String text) {
        gone.setInitialDelay(FOUND + LETTER * text.length());
        gone.restart();
    }

    /** Not while somebody points at it or has the keyboard in it. */
    private void goes(ActionEvent event) {
        boolean pointedAt =
                sheet.made().filter(made -> made.getMousePosition(true) != null).isPresent();
        if (pointedAt || hasKeyboard()) {
            gone.restart();
        } else {
            clear();
        }
    }

    private boolean hasKeyboard() {
        Component owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
        return owner != null
                && sheet.made()
                        .filter(made -> SwingUtilities.isDescendingFrom(owner, made))
                        .isPresent();
    }

    /** The keyboard goes back to where it was. */
    @Override
    public void clear() {
        gone.stop();
        boolean had = hasKeyboard();
        sheet.made().ifPresent(made -> made.setVisible(false));
        if (had && before != null) {
            before.requestFocusInWindow();
        }
    }
}
