package thrumwright.editor.form;

import javax.swing.Icon;

/** Something to choose, and what it is called. */
public record Choice<V>(V value, String text, Icon icon) {
    public static <V> Choice<V> of(V value, String text) {
        return new Choice<>(value, text, null);
    }

    @Override
    public String toString() {
        return text;
    }
}
