package thrumwright.output.card;

import java.awt.Graphics2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thrumwright.output.page.Part;
import thrumwright.output.page.Role;
import thrumwright.output.page.Structured;
import thrumwright.sheet.card.CardLine;
import thrumwright.sheet.card.CardSaying;

/** Lines that are about no block: where the work begins, the stop line, the design. One after another, as many as fit a line. */
record CardLinesPart(List<CardLine> lines, CardStyle style) implements Part {
    private static final double PADDING = 3;

    /** A word, and before the first of a line the number of its step. */
    private record Numbered(LargeWord word, Optional<Integer> number) {}

    /** What stands in a row, and how wide that is. */
    private record Group(List<Numbered> words, double width) {}

    private NumberTag tag() {
        return new NumberTag(style);
    }

    private double width(Numbered word) {
        return word.word().width()
                + word.number()
                        .map(number -> tag().width(number) + style.space() / 2)
                        .orElse(0.0);
    }

    private Group group(CardLine line) {
        List<Numbered> words = new ArrayList<>();
        double width = 0;
        for (CardSaying part : line.parts()) {
            boolean first = words.isEmpty();
            LargeWord word = LargeWord.of(part.shown(), first ? style.name() : style.word(), part.says(), style);
            Numbered numbered = new Numbered(word, first ? line.number() : Optional.empty());
            width += width(numbered) + (first ? 0 : style.space());
            words.add(numbered);
        }
        return new Group(words, width);
    }

    /** Groups in rows; one that is too wide for a row is divided. */
    private List<List<Numbered>> rows(double width) {
        List<List<Numbered>> rows = new ArrayList<>();
        double left = 0;
        for (CardLine line : lines) {
            Group group = group(line);
            boolean whole = group.width() <= width;
            for (int i = 0; i < group.words().size(); i++) {
                Numbered word = group.words().get(i);
                double needed = whole && i == 0 ? group.width() : width(word);
                boolean fits = !rows.isEmpty() && needed <= left;
                if (!fits) {
                    rows.add(new ArrayList<>());
                    left = width;
                }
                rows.get(rows.size() - 1).add(word);
                left -= width(word) + style.space() * (i == group.words().size() - 1 ? 2 : 1);
            }
        }
        return rows;
    }

    private SmallPrint print() {
        List<String> notes =
                lines.stream().flatMap(line -> line.notes().stream()).toList();
        return new SmallPrint(Optional.empty(), notes, style);
    }

    /** How far words and notes reach to the right, points. */
    double widest(double width) {
        double words = rows(width).stream()
                .mapToDouble(row -> row.stream()
                        .mapToDouble(word -> width(word) + 2 * style.space())
                        .sum())
                .max()
                .orElse(0);
        return Math.max(words, print().widest());
    }

    private double line() {
        return Math.max(style.line(), tag().height() + 2);
    }

    private double rowsHeight(double width) {
        return rows(width).size() * line();
    }

    @Override
    public double height(double width) {
        double print = print().isEmpty() ? 0 : print().height(width);
        return rowsHeight(width) + print + 2 * PADDING;
    }

    @Override
    public void paint(Graphics2D g, double x, double y, double width) {
        double at = y + PADDING;
        for (List<Numbered> row : rows(width)) {
            row(g, row, x, at);
            at += line();
        }
        print().paint(g, x, at, width);
    }

    private void row(Graphics2D g, List<Numbered> row, double x, double y) {
        double left = x;
        double middle = y + line() / 2;
        for (Numbered word : row) {
            if (word.number().isPresent()) {
                left += style.space() * (left > x ? 1 : 0);
                int number = word.number().get();
                double right = left + tag().width(number);
                Structured.as(g, Role.ORNAMENT, () -> tag().paint(g, number, right, middle));
                left = right + style.space() / 2;
            }
            double place = left;
            g.setColor(style.palette().ink());
            LargeWord.item(g, word.word().says(), () -> word.word().paint(g, place, middle + style.large() * 0.325));
            left += word.word().width() + style.space();
        }
    }
}
