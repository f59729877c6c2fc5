package thrumwright.editor.window;

import java.awt.Component;
import java.awt.Graphics;
import java.awt.KeyboardFocusManager;
import java.awt.Toolkit;
import java.awt.datatransfer.StringSelection;
import java.awt.event.ActionEvent;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import javax.swing.JButton;
import javax.swing.JLayeredPane;
import javax.swing.JPanel;
import javax.swing.JRootPane;
import javax.swing.SwingUtilities;
import javax.swing.Timer;
import javax.swing.UIManager;
import net.miginfocom.swing.MigLayout;
import thrumwright.editor.look.Pixels;
import thrumwright.editor.look.Prose;
import thrumwright.editor.look.UnheardPicture;
import thrumwright.editor.text.Messages;
import thrumwright.editor.text.Texts;
import thrumwright.editor.view.Mark;
import thrumwright.plan.finding.Severity;

/**
 * A sentence over the foot of a window: what happened to a file, or what was refused. It moves nothing, takes no keyboard,
 * and goes by itself when there was time to read it; only what went wrong inside the program stays until it is closed.
 */
public final class MessageBar implements Messages {
    /** Time to find a message, and to read each of its letters, ms. */
    private static final int FOUND = 8_000;

    private static final int LETTER = 60;

    private final Sheet panel = new Sheet();
    private final UnheardPicture mark = new UnheardPicture(new Mark(Severity.PROBLEM));
    private final Prose sentence = new Prose("");
    private final JButton copy;
    private final Timer gone = new Timer(FOUND, this::goes);
    private String details = "";
    private Component before;

    public MessageBar(Texts texts) {
        panel.setName("messages");
        sentence.setName("message");
        copy = button(
                texts.say("message.copy"),
                "messageCopy",
                () -> Toolkit.getDefaultToolkit().getSystemClipboard().setContents(new StringSelection(details), null));
        panel.add(mark, "aligny top, hidemode 3");
        panel.add(sentence, "wmin 60");
        panel.add(copy, "aligny top, hidemode 3");
        panel.add(button(texts.say("message.away"), "messageAway", this::clear), "aligny top");
        panel.setVisible(false);
        gone.setRepeats(false);
    }

    /** A click leaves the keyboard where it is. */
    private static JButton button(String text, String name, Runnable run) {
        JButton button = new JButton(text);
        button.setName(name);
        button.setRequestFocusEnabled(false);
        button.addActionListener(event -> run.run());
        return button;
    }

    /** Lies over the foot of a window from now on. */
    public void lieOver(JRootPane root) {
        JLayeredPane layers = root.getLayeredPane();
        layers.add(panel, JLayeredPane.MODAL_LAYER);
        ComponentAdapter resized = new ComponentAdapter() {
            @Override
            public void componentResized(ComponentEvent event) {
                place();
            }
        };
        layers.addComponentListener(resized);
        sentence.addComponentListener(resized);
    }

    /** As wide as the window and as high as the sentence is. */
    private void place() {
        if (panel.getParent() != null) {
            int width = panel.getParent().getWidth();
            panel.setSize(width, panel.getHeight());
            panel.validate();
            int height = panel.getPreferredSize().height;
            panel.setBounds(0, panel.getParent().getHeight() - height, width, height);
            panel.validate();
        }
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
        show(text, true);
        details = toCopy;
        copy.setVisible(true);
        place();
    }

    private void show(String text, boolean refused) {
        gone.stop();
        before = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
        copy.setVisible(false);
        mark.setVisible(refused);
        sentence.setText(text);
        sentence.in(refused ? "Thrumwright.reason" : "Label.foreground");
        sentence.getAccessibleContext().setAccessibleName(text);
        panel.refused = refused;
        panel.setVisible(true);
        place();
    }

    private void waitFor(String text) {
        gone.setInitialDelay(FOUND + LETTER * text.length());
        gone.restart();
    }

    /** Not while somebody points at it or has the keyboard in it. */
    private void goes(ActionEvent event) {
        if (panel.getMousePosition(true) != null || hasKeyboard()) {
            gone.restart();
        } else {
            clear();
        }
    }

    private boolean hasKeyboard() {
        Component owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
        return owner != null && SwingUtilities.isDescendingFrom(owner, panel);
    }

    /** The keyboard goes back to where it was. */
    @Override
    public void clear() {
        gone.stop();
        boolean had = panel.isVisible() && hasKeyboard();
        panel.setVisible(false);
        if (had && before != null) {
            before.requestFocusInWindow();
        }
    }

    /** What it stands on, in the colours of the look as it is. */
    private static final class Sheet extends JPanel {
        private static final long serialVersionUID = 1L;
        private boolean refused;

        Sheet() {
            super(new MigLayout("insets 8 12 6 8, fillx", "[]8[grow, fill, 60::][][]"));
        }

        @Override
        protected void paintComponent(Graphics g) {
            g.setColor(UIManager.getColor(refused ? "Panel.background" : "Thrumwright.selectedBackground"));
            g.fillRect(0, 0, getWidth(), getHeight());
            g.setColor(UIManager.getColor(refused ? "Thrumwright.reason" : "Thrumwright.selected"));
            g.fillRect(0, 0, getWidth(), Pixels.of(2));
        }
    }
}
