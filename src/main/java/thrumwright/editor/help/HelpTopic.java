package thrumwright.editor.help;

import java.awt.Component;
import java.util.Locale;
import java.util.Optional;

/**
 * A place in the docs.
 *
 * @param anchor on the page; empty: its beginning
 */
public record HelpTopic(HelpPage page, String anchor) {
    /** Where help begins. */
    public static final HelpTopic CONTENTS = new HelpTopic(HelpPage.CONTENTS, "");

    private static final String FIELD = "field.";
    private static final String FINDING = "finding.";

    /**
     * What tells about the field or finding that has the keyboard; else about a kind of block.
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
        return block.map(HelpTopic::block).orElse(CONTENTS);
    }

    /** What a link on its page leads to; empty if that doesn't travel along. */
    public Optional<HelpTopic> linked(String link) {
        String[] parts = link.split("#", 2);
        String there = parts.length > 1 ? parts[1] : "";
        return parts[0].isEmpty()
                ? Optional.of(new HelpTopic(page, there))
                : page.linked(parts[0]).map(other -> new HelpTopic(other, there));
    }

    static HelpTopic field(String key) {
        return new HelpTopic(new HelpPage("reference/fields.md"), key);
    }

    static HelpTopic finding(String code) {
        String key = code.toLowerCase(Locale.ROOT).replace('_', '-');
        return new HelpTopic(new HelpPage("reference/findings.md"), key);
    }

    static HelpTopic block(String key) {
        return new HelpTopic(new HelpPage("reference/blocks.md"), key);
    }
}
