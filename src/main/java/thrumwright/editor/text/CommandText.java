package thrumwright.editor.text;

import java.util.List;
import java.util.Optional;
import javax.swing.KeyStroke;

/**
 * How a command presents itself.
 *
 * @param text on menus and buttons
 * @param tip one sentence on what it does
 * @param icon name of its picture; empty: none
 * @param keys that run it
 * @param where its keys count
 */
public record CommandText(
        String id, String text, String tip, Optional<String> icon, List<KeyStroke> keys, Where where) {
    /** Where the keys of a command count. */
    public enum Where {
        /** Everywhere in the window that edits a piece. */
        WINDOW,
        /** On its canvas only, so that fields keep them for typing. */
        CANVAS,
        /** Everywhere in the window that shows a step sheet. */
        SHEET,
        /** Everywhere in the window of a class. */
        CLASS,
        /** Everywhere in the view at the loom. */
        LOOM
    }

    public CommandText {
        keys = List.copyOf(keys);
    }
}
