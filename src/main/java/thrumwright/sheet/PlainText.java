package thrumwright.sheet;

import java.util.ArrayList;
import java.util.List;
import thrumwright.measure.Phrases;

/** The step sheet as plain text, for a terminal or a letter. */
public final class PlainText {
    private static final int WIDTH = 88;
    private final Phrases phrases;
    private final StringBuilder text = new StringBuilder();

    private PlainText(Phrases phrases) {
        this.phrases = phrases;
    }

    /** The whole sheet; lines end with \n and are at most 88 characters long where words allow. */
    public static String of(StepSheet sheet, Phrases headings) {
        PlainText plain = new PlainText(headings);
        plain.write(sheet);
        return plain.text.toString();
    }

    private void write(StepSheet sheet) {
        heading(sheet.title(), '=');
        for (Fact fact : sheet.facts()) {
            wrapped(fact.name() + ": " + fact.value(), "", "    ");
        }
        if (!sheet.findings().isEmpty()) {
            heading(phrases.say("heading.findings"), '-');
            sheet.findings().forEach(finding -> wrapped(finding, "  • ", "    "));
        }
        heading(phrases.say("heading.cuts"), '-');
        wrapped(sheet.cutNote(), "  ", "  ");
        sheet.cuts().forEach(this::cut);
        heading(phrases.say("heading.yarns"), '-');
        for (YarnLine line : sheet.yarns()) {
            wrapped(
                    line.yarn().name() + ": " + line.length() + ", " + line.mass() + " (" + line.uses() + "). "
                            + line.buy(),
                    "  ",
                    "      ");
        }
        for (Chapter chapter : sheet.chapters()) {
            heading(chapter.title(), '-');
            chapter.opening().forEach(sentence -> wrapped(sentence, "", ""));
            chapter.steps().forEach(this::step);
        }
    }

    private void cut(CutLine cut) {
        wrapped(
                "☐ " + cut.count() + " × " + cut.length() + " (" + cut.widths() + " ×)  "
                        + cut.yarnAndRole() + ": "
                        + cut.use() + ", " + phrases.say("cut.step") + " " + cut.step()
                        + (cut.shared().isEmpty() ? "" : "; " + cut.shared()),
                "  ",
                "      ");
    }

    private void step(Step step) {
        text.append('\n');
        wrapped(step.number() + "  " + step.title(), "☐ ", "     ");
        if (!step.take().isEmpty()) {
            wrapped(step.take(), "     ", "     ");
        }
        step.sentences().forEach(sentence -> wrapped(sentence, "     ", "     "));
        for (RowLine row : step.rows()) {
            wrapped(row.label() + " " + row.arrow() + " " + row.text(), "     ☐ ", "         ");
        }
        if (!step.reach().isEmpty()) {
            wrapped(step.reach(), "     ", "     ");
        }
        step.cautions().forEach(caution -> wrapped(caution, "     ! ", "       "));
    }

    private void heading(String title, char line) {
        if (!text.isEmpty()) {
            text.append('\n');
        }
        text.append(title)
                .append('\n')
                .append(String.valueOf(line).repeat(title.length()))
                .append('\n');
    }

    private void wrapped(String sentence, String first, String further) {
        String indent = first;
        for (String line : lines(sentence, WIDTH - further.length())) {
            text.append(indent).append(line).append('\n');
            indent = further;
        }
    }

    /** The words of a sentence in lines of at most {@code width} characters, unless one word is longer. */
    private static List<String> lines(String sentence, int width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : sentence.split("\\s+")) {
            if (!line.isEmpty() && line.length() + 1 + word.length() > width) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.isEmpty() ? "" : " ").append(word);
        }
        lines.add(line.toString());
        return lines;
    }
}
