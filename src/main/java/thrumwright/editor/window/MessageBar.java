package thrumwright.editor.window;

import java.awt.BorderLayout;
import java.awt.Toolkit;
import java.awt.datatransfer.StringSelection;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.UIManager;
import thrumwright.editor.look.Pixels;
import thrumwright.editor.look.Prose;
import thrumwright.editor.text.Messages;
import thrumwright.editor.text.Texts;

/** A sentence above the piece, until it is put away: what happened to a file, or what went wrong. */
public final class MessageBar implements Messages {
    private final JPanel panel = new JPanel(new BorderLayout(8, 0));
    private final Prose sentence = new Prose("");
    private final JButton copy;
    private String details = "";

    public MessageBar(Texts texts) {
        panel.setBorder(BorderFactory.createEmptyBorder(Pixels.of(6), Pixels.of(12), Pixels.of(6), Pixels.of(8)));
        sentence.setName("message");
        JButton away = new JButton(texts.say("message.away"));
        away.setName("messageAway");
        away.addActionListener(event -> clear());
        panel.add(sentence);
        JPanel side = new JPanel(new BorderLayout());
        side.setOpaque(false);
        copy = new JButton(texts.say("message.copy"));
        copy.setName("messageCopy");
        copy.addActionListener(event ->
                Toolkit.getDefaultToolkit().getSystemClipboard().setContents(new StringSelection(details), null));
        JPanel buttons = new JPanel(new BorderLayout(Pixels.of(8), 0));
        buttons.setOpaque(false);
        buttons.add(copy, BorderLayout.WEST);
        buttons.add(away, BorderLayout.EAST);
        side.add(buttons, BorderLayout.NORTH);
        panel.add(side, BorderLayout.EAST);
        panel.setVisible(false);
    }

    public JPanel component() {
        return panel;
    }

    @Override
    public void say(String text) {
        show(text, "Label.foreground");
    }

    @Override
    public void problem(String text) {
        show(text, "Thrumwright.reason");
    }

    @Override
    public void fault(String text, String toCopy) {
        problem(text);
        details = toCopy;
        copy.setVisible(true);
    }

    private void show(String text, String colour) {
        copy.setVisible(false);
        sentence.setText(text);
        sentence.setForeground(UIManager.getColor(colour));
        sentence.getAccessibleContext().setAccessibleName(text);
        panel.setBackground(UIManager.getColor("Thrumwright.selectedBackground"));
        panel.setVisible(true);
        panel.revalidate();
    }

    @Override
    public void clear() {
        panel.setVisible(false);
    }
}
