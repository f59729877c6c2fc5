package thrumwright.editor.help;

import java.awt.Component;
import java.awt.Window;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * A place in the docs.
 *
 * @param anchor on the page; empty: its beginning
 */
public record HelpTopic(HelpPage page, String anchor) {
    /** Where help begins. */
    public static final HelpTopic CONTENTS = new HelpTopic(HelpPage.CONTENTS, "");

    /** What tells of each window, by its name. */
    private static final Map<String, HelpTopic> WINDOWS = windows();

    private static final String FIELD = "field.";
    private static final String FINDING = "finding.";

    /**
     * What tells about the field or finding that has the keyboard; else about a kind of block; else about the window.
     *
     * @param focus null if nothing has it
     * @param block the kind of the block at hand (see {@code Block.key})
     */
    public static HelpTopic of(Component focus, Optional<String> block) {
        for (Component at = focus; at != null; at = at.getParent()) {
            String name = String.valueOf(at.getName());
            if (name.startsWith(FIELD)) {
                return field(name.substring(FIELD.length()));
            } else if (name.startsWith(FINDING)) {
                return finding(name.substring(FINDING.length()));
            }
        }
        return block.map(HelpTopic::block).orElseGet(() -> window(focus));
    }

    private static HelpTopic window(Component focus) {
        for (Component at = focus; at != null; at = at.getParent()) {
            Optional<HelpTopic> topic = ofWindow(String.valueOf(at.getName()));
            if (at instanceof Window && topic.isPresent()) {
                return topic.get();
            }
        }
        return CONTENTS;
    }

    /** What tells of a window or dialog; empty if nothing does. */
    static Optional<HelpTopic> ofWindow(String name) {
        return Optional.ofNullable(WINDOWS.get(name));
    }

    private static Map<String, HelpTopic> windows() {
        Map<String, HelpTopic> topics = new HashMap<>();
        String window = "editor.md";
        put(topics, window, "the-sheet", "sheet");
        put(topics, window, "a-class", "class", "showing", "standings");
        put(topics, window, "at-the-loom", "loomWindow");
        put(topics, window, "keys", "keysWindow");
        put(topics, window, "starting", "welcome", "begin");
        put(topics, window, "colours", "colour", "picture");
        put(topics, window, "structures", "useStructure", "describeStructure");
        put(topics, window, "settings", "settings", "screen");
        put(topics, "howto/measure.md", "", "measured");
        put(topics, "howto/samples.md", "", "samples");
        put(topics, "install.md", "", "about");
        return topics;
    }

    private static void put(Map<String, HelpTopic> topics, String page, String anchor, String... windows) {
        for (String window : windows) {
            topics.put(window, new HelpTopic(new HelpPage(page), anchor));
        }
    }

    /** What a link on its page leads to; empty if that doesn't travel along. */
    public Optional<HelpTopic> linked(String link) {
        String[] parts = link.split("#", 2);
        String there = parts.length > 1 ? parts[1] : "";
        return parts[0].isEmpty()
                ? Optional.of(new HelpTopic(page, there))
                : page.linked(parts[0]).map(other -> new HelpTopic(other, there));
    }

    /** Of several fields alike each has a number behind its name, and they are told of once. */
    static HelpTopic field(String key) {
        return new HelpTopic(new HelpPage("reference/fields.md"), key.replaceFirst("\\.\\d+$", ""));
    }

    static HelpTopic finding(String code) {
        String key = code.toLowerCase(Locale.ROOT).replace('_', '-');
        return new HelpTopic(new HelpPage("reference/findings.md"), key);
    }

    static HelpTopic block(String key) {
        return new HelpTopic(new HelpPage("reference/blocks.md"), key);
    }
}
