package thrumwright.editor.look;

import java.awt.Component;
import java.awt.Window;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JPanel;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;

/** A dialog that waits for an answer; Escape closes it without one. */
public final class Modal {
    private final JDialog dialog;

    /** @param parent a window, or something in one */
    public Modal(Component parent, String name, String title) {
        Window owner = parent instanceof Window window ? window : SwingUtilities.getWindowAncestor(parent);
        this.dialog = new JDialog(owner, title, JDialog.ModalityType.APPLICATION_MODAL);
        dialog.setName(name);
    }

    /** @param usual pressed by Enter */
    public void fill(JPanel content, JButton usual) {
        dialog.setContentPane(content);
        dialog.getRootPane().setDefaultButton(usual);
        dialog.getRootPane()
                .registerKeyboardAction(
                        event -> close(), KeyStroke.getKeyStroke("ESCAPE"), JComponent.WHEN_IN_FOCUSED_WINDOW);
        dialog.pack();
        dialog.setMinimumSize(dialog.getSize());
        dialog.setLocationRelativeTo(dialog.getOwner());
    }

    /** Returns when it is closed. */
    public void show() {
        dialog.setVisible(true);
    }

    public void close() {
        dialog.dispose();
    }

    public Component component() {
        return dialog;
    }
}
