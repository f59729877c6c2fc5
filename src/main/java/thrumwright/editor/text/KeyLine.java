package thrumwright.editor.text;

import java.awt.event.KeyEvent;
import java.util.List;
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

    /** Whether every word that was typed is the beginning of a word in it; {@code hem} isn't in “them”. */
    public boolean has(String typed) {
        List<String> all = words(String.join(" ", group, command.text(), keys(), command.tip()));
        return words(typed).stream().allMatch(word -> all.stream().anyMatch(any -> any.startsWith(word)));
    }

    private static List<String> words(String text) {
        return Stream.of(text.toLowerCase(Locale.ROOT).split("[^\\p{L}\\p{N}]+"))
                .filter(word -> !word.isEmpty())
                .toList();
    }
}
