package thrumwright.editor.text;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.ResourceBundle;
import java.util.TreeSet;
import javax.swing.KeyStroke;

/**
 * The commands of the window, declared in one bundle: {@code id.text}, {@code id.tip} and, where there are any,
 * {@code id.icon}, {@code id.keys} (separated by commas; {@code menu} is Ctrl, or Command on a Mac),
 * {@code id.keys.mac} (what a Mac has in their place) and {@code id.where} ({@code canvas}, {@code sheet}, {@code class} or {@code loom}). A kind of block that has a text {@code add-…} has a command
 * of that name.
 */
public final class CommandTexts {
    private static final String ADD = "add-";

    private final Locale locale;
    private final String menuKey;
    /** Read when the first is asked for. */
    private final Map<String, CommandText> byId = new LinkedHashMap<>();

    /** @param menuKey {@code ctrl} or {@code meta} */
    public CommandTexts(Locale locale, String menuKey) {
        this.locale = locale;
        this.menuKey = menuKey;
    }

    private Map<String, CommandText> byId() {
        if (byId.isEmpty()) {
            read();
        }
        return byId;
    }

    private void read() {
        ResourceBundle bundle = bundle("thrumwright.editor.commands", locale);
        for (String key : new TreeSet<>(bundle.keySet())) {
            if (key.endsWith(".text")) {
                String id = key.substring(0, key.length() - 5);
                byId.put(id, read(bundle, id, menuKey));
            }
        }
        addKinds(bundle("thrumwright.blocks", locale));
    }

    private static ResourceBundle bundle(String name, Locale locale) {
        ResourceBundle.Control exact =
                ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES);
        return ResourceBundle.getBundle(name, locale, CommandTexts.class.getClassLoader(), exact);
    }

    private void addKinds(ResourceBundle kinds) {
        for (String key : new TreeSet<>(kinds.keySet())) {
            if (key.startsWith(ADD)) {
                String name = kinds.getString("block." + key.substring(ADD.length()));
                String tip = kinds.getString(key);
                byId.put(key, new CommandText(key, name, tip, Optional.empty(), List.of(), CommandText.Where.WINDOW));
            }
        }
    }

    private static CommandText read(ResourceBundle bundle, String id, String menuKey) {
        return new CommandText(
                id,
                bundle.getString(id + ".text"),
                bundle.getString(id + ".tip"),
                optional(bundle, id + ".icon"),
                keys(declared(bundle, id, menuKey), menuKey, id),
                optional(bundle, id + ".where").map(CommandTexts::where).orElse(CommandText.Where.WINDOW));
    }

    /** A Mac takes keys for itself that are free elsewhere; where it does, others are declared for it. */
    private static String declared(ResourceBundle bundle, String id, String menuKey) {
        Optional<String> own = menuKey.equals("meta") ? optional(bundle, id + ".keys.mac") : Optional.empty();
        return own.or(() -> optional(bundle, id + ".keys")).orElse("");
    }

    private static CommandText.Where where(String name) {
        return CommandText.Where.valueOf(name.toUpperCase(Locale.ROOT));
    }

    private static Optional<String> optional(ResourceBundle bundle, String key) {
        return bundle.containsKey(key) ? Optional.of(bundle.getString(key)) : Optional.empty();
    }

    private static List<KeyStroke> keys(String list, String menuKey, String id) {
        List<KeyStroke> keys = new ArrayList<>();
        for (String each : Arrays.stream(list.split(","))
                .map(String::strip)
                .filter(text -> !text.isEmpty())
                .toList()) {
            KeyStroke key = KeyStroke.getKeyStroke(each.replace("menu", menuKey));
            if (key == null) {
                throw new IllegalStateException("“" + each + "” of the command " + id + " is no key");
            }
            keys.add(key);
        }
        return keys;
    }

    /** @throws IllegalArgumentException if the bundle has no such command */
    public CommandText get(String id) {
        CommandText text = byId().get(id);
        if (text == null) {
            throw new IllegalArgumentException("there is no command “" + id + "”");
        }
        return text;
    }

    public List<CommandText> all() {
        return List.copyOf(byId().values());
    }
}
