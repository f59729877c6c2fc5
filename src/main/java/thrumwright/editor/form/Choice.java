package thrumwright.editor.form;

import javax.swing.Icon;

/** Something to choose, and what it is called. */
record Choice<V>(V value, String text, Icon icon) {
    static <V> Choice<V> of(V value, String text) {
        return new Choice<>(value, text, null);
    }

    @Override
    public String toString() {
        return text;
    }
}
