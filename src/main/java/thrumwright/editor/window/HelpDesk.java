package thrumwright.editor.window;

import java.awt.Component;
import java.awt.EventQueue;
import java.awt.KeyEventPostProcessor;
import java.awt.KeyboardFocusManager;
import java.awt.event.HierarchyEvent;
import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.JFrame;
import thrumwright.editor.help.HelpTopic;
import thrumwright.editor.settings.Workplace;

/** The one window with the docs, and the key that opens it wherever the weaver is, in a dialog too. */
public final class HelpDesk {
    private final Workplace room;
    private final List<JFrame> served = new ArrayList<>();
    private final KeyEventPostProcessor key = this::typed;
    private Optional<HelpWindow> window = Optional.empty();

    public HelpDesk(Workplace room) {
        this.room = room;
    }

    /** The key is heard in all windows as long as one of those that are served is there, and so is the docs' window. */
    public void serve(JFrame frame) {
        frame.addHierarchyListener(event -> {
            if ((event.getChangeFlags() & HierarchyEvent.DISPLAYABILITY_CHANGED) != 0) {
                shownOrNot(frame);
            }
        });
    }

    private void shownOrNot(JFrame frame) {
        KeyboardFocusManager keyboard = KeyboardFocusManager.getCurrentKeyboardFocusManager();
        keyboard.removeKeyEventPostProcessor(key);
        served.remove(frame);
        if (frame.isDisplayable()) {
            served.add(frame);
        }
        if (served.isEmpty()) {
            window.ifPresent(HelpWindow::dispose);
            window = Optional.empty();
        } else {
            keyboard.addKeyEventPostProcessor(key);
        }
    }

    /** What nobody else has taken. */
    private boolean typed(KeyEvent event) {
        boolean asked = event.getID() == KeyEvent.KEY_PRESSED
                && event.getKeyCode() == KeyEvent.VK_F1
                && event.getModifiersEx() == 0;
        if (!asked || event.isConsumed()) {
            return false;
        }
        event.consume();
        Component focus = event.getComponent();
        EventQueue.invokeLater(() -> show(HelpTopic.of(focus, Optional.empty())));
        return true;
    }

    /** Opens the docs at a place. */
    public void show(HelpTopic topic) {
        if (window.isEmpty()) {
            window = Optional.of(new HelpWindow(room));
        }
        window.get().show(topic);
    }
}
