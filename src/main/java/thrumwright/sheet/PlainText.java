package thrumwright.sheet;

import thrumwright.measure.Phrases;

/** The step sheet as plain text, for a terminal or a letter. */
public final class PlainText {
    private final Phrases phrases;
    private final TextLines lines = new TextLines();

    private PlainText(Phrases phrases) {
        this.phrases = phrases;
    }

    /** The whole sheet; lines end with \n and are at most 80 characters long. */
    public static String of(StepSheet sheet, Phrases headings) {
        return head(sheet) + work(sheet, headings);
    }

    /** The title, and the facts, among which is whose sheet it is. */
    static String head(StepSheet sheet) {
        TextLines lines = new TextLines();
        lines.heading(sheet.title(), '=');
        for (Fact fact : sheet.facts()) {
            lines.wrapped(fact.name() + ": " + fact.value(), "", "    ");
        }
        return lines.text();
    }

    /** All that follows, the same for all who have the same plan. */
    static String work(StepSheet sheet, Phrases headings) {
        PlainText plain = new PlainText(headings);
        plain.write(sheet);
        return "\n" + plain.lines.text();
    }

    private void write(StepSheet sheet) {
        if (!sheet.findings().isEmpty()) {
            lines.heading(phrases.say("heading.findings"), '-');
            sheet.findings().forEach(finding -> lines.wrapped(finding, "  • ", "    "));
        }
        lines.heading(phrases.say("heading.cuts"), '-');
        lines.wrapped(sheet.cutNote(), "  ", "  ");
        sheet.cuts().forEach(this::cut);
        lines.heading(phrases.say("heading.yarns"), '-');
        lines.wrapped(sheet.yarnNote(), "  ", "  ");
        for (YarnLine line : sheet.yarns()) {
            lines.wrapped(line.text(), "  ", "      ");
        }
        for (Chapter chapter : sheet.chapters()) {
            lines.heading(chapter.title(), '-');
            chapter.opening().forEach(sentence -> lines.wrapped(sentence, "", ""));
            chapter.steps().forEach(this::step);
        }
    }

    private void cut(CutLine cut) {
        lines.wrapped(
                "☐ " + cut.count() + " × " + cut.length() + (cut.times().isEmpty() ? "  " : " (" + cut.times() + ")  ")
                        + cut.whatAndRole() + ": "
                        + cut.use() + ", " + phrases.say("cut.step") + " " + cut.step()
                        + (cut.shared().isEmpty() ? "" : "; " + cut.shared()),
                "  ",
                "      ");
    }

    private void step(Step step) {
        lines.empty();
        lines.wrapped(step.number() + "  " + step.title(), "☐ ", "     ");
        if (!step.take().isEmpty()) {
            lines.wrapped(step.take(), "     ", "     ");
        }
        step.sentences().forEach(sentence -> lines.wrapped(sentence, "     ", "     "));
        for (RowLine row : step.rows()) {
            lines.wrapped(row.label() + " " + row.arrow() + " " + row.text(), "     ☐ ", "         ");
        }
        if (!step.reach().isEmpty()) {
            lines.wrapped(step.reach(), "     ", "     ");
        }
        step.cautions().forEach(caution -> lines.wrapped(caution, "     ! ", "       "));
    }
}
