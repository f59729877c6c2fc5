package thrumwright.output.card;

import java.awt.Font;
import java.awt.Graphics2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thrumwright.output.page.Role;
import thrumwright.output.page.Structured;
import thrumwright.output.part.TickMarks;
import thrumwright.sheet.card.CardCut;
import thrumwright.yarn.Yarn;

/**
 * What is read from close by: what to cut, with a dot in the yarn's colour and its letter, and notes.
 *
 * @param cut empty where nothing is cut
 */
record SmallPrint(Optional<CardCut> cut, List<String> notes, CardStyle style) {
    private static final double DOT = 10;
    private static final double BETWEEN = 6;

    boolean isEmpty() {
        return cut.isEmpty() && notes.isEmpty();
    }

    private double indent() {
        return cut.flatMap(CardCut::yarn).isPresent() ? 2 * DOT + 1 : 0;
    }

    /** A paragraph. */
    private record Text(String text, Font font) {}

    /** What to cut, and what is noted. */
    private List<Text> parts() {
        List<Text> parts = new ArrayList<>();
        cut.ifPresent(one -> parts.add(new Text(one.what() + ": " + one.length(), style.strong())));
        if (!notes.isEmpty()) {
            parts.add(new Text(String.join(" ", notes), style.small()));
        }
        return parts;
    }

    private double indent(int part) {
        return part == 0 ? indent() : 0;
    }

    /** Whether the notes find room behind what is to cut. */
    private boolean inOneLine(double width) {
        List<Text> parts = parts();
        return parts.size() == 2 && indent() + wide(parts.get(0)) + BETWEEN + wide(parts.get(1)) <= width;
    }

    private double wide(Text part) {
        return style.width(part.text(), part.font()) + 0.5;
    }

    double height(double width) {
        if (inOneLine(width)) {
            return style.smallLine();
        }
        double height = 0;
        List<Text> parts = parts();
        for (int i = 0; i < parts.size(); i++) {
            height += lines(parts.get(i), width - indent(i));
        }
        return height;
    }

    /** Whether it has room in a gap without tearing any line. */
    boolean fits(double width, double height) {
        return inOneLine(width)
                ? style.smallLine() < height
                : widest() <= width && height(width) < height && height(width) <= parts().size() * style.smallLine();
    }

    /** How far it reaches to the right where nothing makes it break, points. */
    double widest() {
        List<Text> parts = parts();
        double widest = 0;
        for (int i = 0; i < parts.size(); i++) {
            widest = Math.max(widest, indent(i) + wide(parts.get(i)));
        }
        return widest;
    }

    private double lines(Text part, double width) {
        return style.widths().lines(part.text(), part.font(), width).size() * style.smallLine();
    }

    void paint(Graphics2D g, double x, double y, double width) {
        cut.flatMap(CardCut::yarn).ifPresent(yarn -> dot(g, yarn, x, y));
        List<Text> parts = parts();
        if (inOneLine(width)) {
            double left = indent() + wide(parts.get(0));
            paint(g, parts.get(0), x + indent(), y, width - indent());
            paint(g, parts.get(1), x + left + BETWEEN, y, width - left - BETWEEN);
            return;
        }
        double at = y;
        for (int i = 0; i < parts.size(); i++) {
            paint(g, parts.get(i), x + indent(i), at, width - indent(i));
            at += lines(parts.get(i), width - indent(i));
        }
    }

    private void paint(Graphics2D g, Text part, double x, double y, double width) {
        LargeWord.item(g, part.text(), () -> {
            double baseline = y + part.font().getSize2D() * 0.9;
            g.setFont(part.font());
            g.setColor(style.palette().ink());
            for (String line : style.widths().lines(part.text(), part.font(), width)) {
                g.drawString(line, (float) x, (float) baseline);
                baseline += style.smallLine();
            }
        });
    }

    private void dot(Graphics2D g, Yarn yarn, double x, double y) {
        TickMarks.dot(g, x, y + 0.5, DOT - 1, yarn.colour(), style.palette());
        String letter = cut.orElseThrow().letter();
        Structured.as(g, Role.ORNAMENT, () -> {
            g.setFont(style.strong());
            g.setColor(style.palette().ink());
            g.drawString(
                    letter, (float) (x + DOT + 1), (float) (y + style.strong().getSize2D() * 0.9));
        });
    }
}
