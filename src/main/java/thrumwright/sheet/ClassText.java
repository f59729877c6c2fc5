package thrumwright.sheet;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import thrumwright.measure.Phrases;

/** The lists of a class as plain text, for a terminal or a letter. */
public final class ClassText {
    private static final String INDENT = "  ";
    private static final String FURTHER = "      ";

    private final Phrases phrases;
    private final TextLines lines = new TextLines();

    private ClassText(Phrases phrases) {
        this.phrases = phrases;
    }

    /** All lists; lines end with \n and are at most 80 characters long. */
    public static String of(ClassSheet sheet, Locale locale) {
        ClassText text = new ClassText(Phrases.of("thrumwright.sheet.class", locale));
        text.write(sheet);
        return text.lines.text();
    }

    private void write(ClassSheet sheet) {
        lines.heading(sheet.title(), '=');
        sheet.facts().forEach(fact -> lines.wrapped(fact.name() + ": " + fact.value(), "", "    "));
        if (!sheet.findings().isEmpty()) {
            heading("heading.findings");
            sheet.findings().forEach(finding -> lines.wrapped(finding, "  • ", "    "));
        }
        heading("heading.shopping");
        lines.wrapped(sheet.shoppingNote(), INDENT, INDENT);
        sheet.shopping().forEach(line -> lines.wrapped("☐ " + line.text(), INDENT, FURTHER));
        heading("heading.cuts");
        lines.wrapped(sheet.cutNote(), INDENT, INDENT);
        sheet.cuts().forEach(this::cuts);
        heading("heading.looms");
        sheet.looms().forEach(loom -> loom(sheet.columns(), loom));
    }

    private void cuts(ClassSheet.Cuts cuts) {
        lines.empty();
        lines.wrapped(cuts.heading(), INDENT, INDENT);
        for (ClassSheet.Line line : cuts.lines()) {
            lines.wrapped("☐ " + line.count() + " × " + line.length() + ", " + line.whom(), INDENT, FURTHER);
        }
    }

    /** The number and the name, then what differs. */
    private void loom(List<String> columns, List<String> cells) {
        StringBuilder text = new StringBuilder(cells.get(0)).append("  ").append(cells.get(1));
        for (int i = 2; i < cells.size(); i++) {
            Map<String, String> values = Map.of("column", columns.get(i), "value", cells.get(i));
            text.append(i == 2 ? ": " : "; ").append(phrases.say("looms.cell", values));
        }
        lines.wrapped(text.toString(), INDENT, FURTHER);
    }

    private void heading(String key) {
        lines.heading(phrases.say(key), '-');
    }
}
