package thrumwright.sheet;

/** How the warp is put on, as plain text. */
public final class WarpingText {
    private WarpingText() {}

    /** Lines that end with \n and are at most 80 characters long. */
    public static String of(WarpingSheet sheet) {
        TextLines lines = new TextLines();
        lines.heading(sheet.title(), '=');
        sheet.facts().forEach(fact -> lines.wrapped(fact.name() + ": " + fact.value(), "", "    "));
        lines.wrapped(sheet.counted(), "", "    ");
        for (WarpingSheet.WarpStep step : sheet.steps()) {
            lines.empty();
            lines.wrapped(step.number() + "  " + step.title(), "☐ ", "     ");
            lines.wrapped(step.text(), "     ", "     ");
        }
        lines.empty();
        sheet.cautions().forEach(caution -> lines.wrapped(caution, "! ", "  "));
        return lines.text();
    }
}
