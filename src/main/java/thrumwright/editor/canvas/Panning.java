package thrumwright.editor.canvas;

import java.awt.Cursor;
import java.awt.event.ActionEvent;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import javax.swing.AbstractAction;
import javax.swing.JComponent;
import javax.swing.KeyStroke;

/** While the space bar is held, a press of the mouse moves the view, whatever it falls on. */
final class Panning {
    private final JComponent canvas;
    private boolean on;

    Panning(JComponent canvas) {
        this.canvas = canvas;
        bind("SPACE", "pan", true);
        bind("released SPACE", "pan-no-more", false);
        canvas.addFocusListener(new FocusAdapter() {
            @Override
            public void focusLost(FocusEvent event) {
                set(false);
            }
        });
    }

    boolean isOn() {
        return on;
    }

    private void set(boolean held) {
        on = held;
        canvas.setCursor(held ? Cursor.getPredefinedCursor(Cursor.MOVE_CURSOR) : Cursor.getDefaultCursor());
    }

    private void bind(String key, String name, boolean held) {
        canvas.getInputMap(JComponent.WHEN_FOCUSED).put(KeyStroke.getKeyStroke(key), name);
        canvas.getActionMap().put(name, new AbstractAction() {
            private static final long serialVersionUID = 1L;

            @Override
            public void actionPerformed(ActionEvent event) {
                set(held);
            }
        });
    }
}
