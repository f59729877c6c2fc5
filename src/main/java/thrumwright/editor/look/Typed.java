package thrumwright.editor.look;

import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;
import javax.swing.text.JTextComponent;

/** Tells of every change of a text, by key or otherwise. */
public final class Typed implements DocumentListener {
    private final Runnable told;

    private Typed(Runnable told) {
        this.told = told;
    }

    /** @param told runs within the change, so it must not change the text */
    public static void in(JTextComponent text, Runnable told) {
        text.getDocument().addDocumentListener(new Typed(told));
    }

    @Override
    public void insertUpdate(DocumentEvent event) {
        told.run();
    }

    @Override
    public void removeUpdate(DocumentEvent event) {
        told.run();
    }

    @Override
    public void changedUpdate(DocumentEvent event) {
        // Only attributes change so, and plain text has none.
    }
}
