package thrumwright.editor.window;

import java.awt.Graphics;
import java.awt.Toolkit;
import java.awt.datatransfer.StringSelection;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import javax.swing.JButton;
import javax.swing.JLayeredPane;
import javax.swing.JPanel;
import javax.swing.JRootPane;
import javax.swing.UIManager;
import net.miginfocom.swing.MigLayout;
import thrumwright.editor.look.Pixels;
import thrumwright.editor.look.Prose;
import thrumwright.editor.look.UnheardPicture;
import thrumwright.editor.text.Texts;
import thrumwright.editor.view.Mark;
import thrumwright.plan.finding.Severity;

/** What a message of a window stands on, in the colours of the look as it is: a mark, the sentence and what can be done. */
final class MessageSheet extends JPanel {
    private static final long serialVersionUID = 1L;

    private final UnheardPicture mark = new UnheardPicture(new Mark(Severity.PROBLEM));
    private final Prose sentence = new Prose("");
    private final JButton copy;
    private String details = "";
    private boolean refused;

    /** @param away takes the message away */
    MessageSheet(Texts texts, Runnable away) {
        super(new MigLayout("insets 8 12 6 8, fillx", "[]8[grow, fill, 60::][][]"));
        setName("messages");
        sentence.setName("message");
        copy = button(
                texts.say("message.copy"),
                "messageCopy",
                () -> Toolkit.getDefaultToolkit().getSystemClipboard().setContents(new StringSelection(details), null));
        add(mark, "aligny top, hidemode 3");
        add(sentence, "wmin 60");
        add(copy, "aligny top, hidemode 3");
        add(button(texts.say("message.away"), "messageAway", away), "aligny top");
        setVisible(false);
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
    MessageSheet over(JRootPane root) {
        JLayeredPane layers = root.getLayeredPane();
        layers.add(this, JLayeredPane.MODAL_LAYER);
        ComponentAdapter resized = new ComponentAdapter() {
            @Override
            public void componentResized(ComponentEvent event) {
                place();
            }
        };
        layers.addComponentListener(resized);
        sentence.addComponentListener(resized);
        return this;
    }

    /** As wide as the window and as high as the sentence is. */
    private void place() {
        int width = getParent().getWidth();
        setSize(width, getHeight());
        validate();
        int height = getPreferredSize().height;
        setBounds(0, getParent().getHeight() - height, width, height);
        validate();
    }

    /** @param not whether something was refused */
    void show(String text, boolean not) {
        refused = not;
        copy.setVisible(false);
        mark.setVisible(not);
        sentence.setText(text);
        sentence.in(not ? "Thrumwright.reason" : "Label.foreground");
        sentence.getAccessibleContext().setAccessibleName(text);
        setVisible(true);
        place();
    }

    void offer(String toCopy) {
        details = toCopy;
        copy.setVisible(true);
        place();
    }

    @Override
    protected void paintComponent(Graphics g) {
        g.setColor(UIManager.getColor(refused ? "Panel.background" : "Thrumwright.selectedBackground"));
        g.fillRect(0, 0, getWidth(), getHeight());
        g.setColor(UIManager.getColor(refused ? "Thrumwright.reason" : "Thrumwright.selected"));
        g.fillRect(0, 0, getWidth(), Pixels.of(2));
    }
}
