package thrumwright.editor.look;

import java.awt.Component;
import java.awt.Dimension;
import java.awt.Insets;
import java.awt.Rectangle;
import java.awt.Toolkit;
import java.awt.Window;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JPanel;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;

/**
 * A dialog that waits for an answer; Escape closes it without one.
 *
 * @param <A> what the answer is
 */
public final class Modal<A> {
    /** After so many times it is laid out as it wants to be. */
    private static final int TIMES = 3;

    private final JDialog dialog;
    private Optional<A> answer = Optional.empty();

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
        pack();
        fit(content.getMinimumSize());
        dialog.setLocationRelativeTo(dialog.getOwner());
    }

    /** Sentences that wrap know their height only once they have their width, and so does what they stand in. */
    private void pack() {
        for (int i = 0; i < TIMES; i++) {
            dialog.pack();
            dialog.validate();
            dialog.getContentPane().invalidate();
        }
        dialog.validate();
    }

    /** As large as it wants to be, but on a small screen no larger than that. */
    private void fit(Dimension content) {
        Dimension wanted = dialog.getSize();
        Insets frame = dialog.getInsets();
        Rectangle screen = dialog.getGraphicsConfiguration().getBounds();
        Insets taken = Toolkit.getDefaultToolkit().getScreenInsets(dialog.getGraphicsConfiguration());
        int width = Math.min(wanted.width, screen.width - taken.left - taken.right);
        int height = Math.min(wanted.height, screen.height - taken.top - taken.bottom);
        dialog.setMinimumSize(new Dimension(
                Math.min(width, content.width + frame.left + frame.right),
                Math.min(height, content.height + frame.top + frame.bottom)));
        dialog.setSize(width, height);
    }

    /** Returns when it is closed; empty if the weaver gave it up. */
    public Optional<A> ask() {
        dialog.setVisible(true);
        return answer;
    }

    public void answer(A given) {
        answer = Optional.of(given);
        close();
    }

    public void close() {
        dialog.dispose();
    }

    public Component component() {
        return dialog;
    }
}
