package thrumwright.editor.look;

import java.awt.EventQueue;
import java.awt.KeyboardFocusManager;
import java.beans.PropertyChangeEvent;
import java.beans.PropertyChangeListener;
import javax.swing.JComponent;
import javax.swing.JScrollPane;
import javax.swing.JViewport;

/** Brings whatever gets the keyboard into sight, wherever it stands in something that scrolls. */
public enum FocusInSight implements PropertyChangeListener {
    ALWAYS;

    private static final String OWNER = "permanentFocusOwner";

    /** From now on, in all windows; however often it is asked for. */
    public void install() {
        KeyboardFocusManager focus = KeyboardFocusManager.getCurrentKeyboardFocusManager();
        focus.removePropertyChangeListener(OWNER, this);
        focus.addPropertyChangeListener(OWNER, this);
    }

    @Override
    public void propertyChange(PropertyChangeEvent event) {
        if (event.getNewValue() instanceof JComponent owner) {
            // once what comes with it, such as a reason under it, is laid out
            EventQueue.invokeLater(() -> bring(owner));
        }
    }

    /** What scrolls by itself keeps its own place; it is brought into sight as a whole. */
    private static void bring(JComponent owner) {
        JComponent whole = scrolls(owner) ? (JComponent) owner.getParent().getParent() : owner;
        boolean hidden = whole.getVisibleRect().height < whole.getHeight();
        if (hidden && owner.isFocusOwner() && whole.getParent() instanceof JComponent holder) {
            // asked of its holder, since a field of one line takes it for a question about its own text
            holder.scrollRectToVisible(whole.getBounds());
        }
    }

    /** Whether it is what a scroll pane shows. */
    private static boolean scrolls(JComponent owner) {
        return owner.getParent() instanceof JViewport viewport && viewport.getParent() instanceof JScrollPane;
    }
}
