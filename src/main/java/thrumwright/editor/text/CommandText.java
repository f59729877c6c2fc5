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
 * @param onCanvas whether its keys count on the canvas only, so that fields keep them for typing
 */
public record CommandText(
        String id, String text, String tip, Optional<String> icon, List<KeyStroke> keys, boolean onCanvas) {
    public CommandText {
        keys = List.copyOf(keys);
    }
}
