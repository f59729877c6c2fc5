package thrumwright.editor.text;

import java.awt.event.KeyEvent;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.swing.KeyStroke;

/**
 * A command in the list of keys.
 *
 * @param group the menu where it is found, or where its keys count
 */
public record KeyLine(String group, CommandText command) {
    /** All keys that run it, as menus show them; empty if there is none. */
    public String keys() {
        return command.keys().stream().map(KeyLine::shown).distinct().collect(Collectors.joining(", "));
    }

    private static String shown(KeyStroke key) {
        String held = KeyEvent.getModifiersExText(key.getModifiers());
        String name = KeyEvent.getKeyText(key.getKeyCode());
        return held.isEmpty() ? name : held + "+" + name;
    }

    /** Whether every word that was typed stands somewhere in it. */
    public boolean has(String typed) {
        String all =
                String.join(" ", group, command.text(), keys(), command.tip()).toLowerCase(Locale.ROOT);
        return Stream.of(typed.toLowerCase(Locale.ROOT).strip().split("\\s+")).allMatch(all::contains);
    }
}
