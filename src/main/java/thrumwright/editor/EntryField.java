package thrumwright.editor;

import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.KeyEvent;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.AbstractAction;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JTextField;
import javax.swing.KeyStroke;

/**
 * A field in which something is typed. Enter or leaving it takes the value over. What can't be taken stays as it was
 * typed, the field is marked and the reason stands below it; Escape brings the last good value back.
 */
final class EntryField extends JTextField {
    private static final long serialVersionUID = 1L;

    private final JLabel reason = new JLabel();
    private final transient Consumer<String> taker;
    private String shown = "";

    /** @param taker takes the text over, or refuses with an IllegalArgumentException that says why */
    EntryField(String name, Consumer<String> taker) {
        super(14);
        this.taker = taker;
        setName(name);
        reason.setName(name + ".reason");
        reason.setVisible(false);
        reason.putClientProperty("FlatLaf.styleClass", "small");
        addActionListener(event -> take());
        addFocusListener(new FocusAdapter() {
            @Override
            public void focusLost(FocusEvent event) {
                take();
            }
        });
        getInputMap(JComponent.WHEN_FOCUSED).put(KeyStroke.getKeyStroke(KeyEvent.VK_ESCAPE, 0), "back");
        getActionMap().put("back", new AbstractAction() {
            private static final long serialVersionUID = 1L;

            @Override
            public void actionPerformed(java.awt.event.ActionEvent event) {
                setText(shown);
                mark(Optional.empty());
            }
        });
    }

    /** Where the reason stands if the value can't be taken. */
    JLabel reason() {
        return reason;
    }

    /** Shows the value as it now is, unless something is typed that couldn't be taken. */
    void show(String value) {
        boolean pending = reason.isVisible() && value.equals(shown);
        if (pending) {
            return;
        }
        shown = value;
        mark(Optional.empty());
        if (!getText().equals(value)) {
            setText(value);
            setCaretPosition(0);
        }
    }

    /** Takes over what is typed, if it can be. */
    void take() {
        if (getText().equals(shown)) {
            mark(Optional.empty());
            return;
        }
        try {
            taker.accept(getText());
            mark(Optional.empty());
        } catch (IllegalArgumentException refusal) {
            mark(Optional.of(refusal.getMessage()));
        }
    }

    private void mark(Optional<String> why) {
        putClientProperty("JComponent.outline", why.isPresent() ? "error" : null);
        reason.setText(
                why.map(text -> Html.lines(210, "⚠ " + Html.escaped(text))).orElse(""));
        reason.setVisible(why.isPresent());
        getAccessibleContext().setAccessibleDescription(why.orElse(null));
    }
}
