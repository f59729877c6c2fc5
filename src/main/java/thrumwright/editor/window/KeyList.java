package thrumwright.editor.window;

import java.awt.Component;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.swing.JMenu;
import javax.swing.JMenuBar;
import thrumwright.editor.text.CommandText;
import thrumwright.editor.text.CommandTexts;
import thrumwright.editor.text.KeyLine;
import thrumwright.editor.text.Texts;

/** All commands that are declared, as the menus order them; after them what is in no menu, by where its keys count. */
public final class KeyList {
    private static final String ITEM = "menu.";

    private final CommandTexts commands;
    private final Texts texts;
    private final Map<String, KeyLine> lines = new LinkedHashMap<>();

    private KeyList(CommandTexts commands, Texts texts) {
        this.commands = commands;
        this.texts = texts;
    }

    public static List<KeyLine> of(CommandTexts commands, JMenuBar bar, Texts texts) {
        KeyList list = new KeyList(commands, texts);
        for (int i = 0; i < bar.getMenuCount(); i++) {
            list.menu(bar.getMenu(i).getText(), bar.getMenu(i));
        }
        for (CommandText.Where where : CommandText.Where.values()) {
            list.rest(where);
        }
        return new ArrayList<>(list.lines.values());
    }

    private void menu(String title, JMenu menu) {
        for (Component item : menu.getMenuComponents()) {
            if (item instanceof JMenu inner) {
                menu(title, inner);
            } else if (item.getName() != null && item.getName().startsWith(ITEM)) {
                CommandText command = commands.get(item.getName().substring(ITEM.length()));
                lines.putIfAbsent(command.id(), new KeyLine(title, command));
            }
        }
    }

    private void rest(CommandText.Where where) {
        for (CommandText command : commands.all()) {
            if (command.where() == where) {
                lines.putIfAbsent(command.id(), new KeyLine(texts.name("keys.where", where), command));
            }
        }
    }
}
