package thrumwright.editor.loom;

import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.font.FontRenderContext;
import java.awt.font.LineBreakMeasurer;
import java.awt.font.TextAttribute;
import java.awt.font.TextLayout;
import java.text.AttributedString;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Texts broken between words to a width, one below the other. */
final class LoomLines {
    /** Smoothed and unhinted, so that a line is as wide wherever it is drawn. */
    private static final FontRenderContext SMOOTH = new FontRenderContext(null, true, true);
    /** Room between two texts, as a share of the height of a line. */
    private static final double APART = 0.16;

    private final float width;
    private final List<Line> lines = new ArrayList<>();
    private double height;

    private record Line(TextLayout text, double top) {}

    /** @param width pixels, more than 0 */
    LoomLines(double width) {
        this.width = (float) width;
    }

    LoomLines add(String text, Font font) {
        if (text.isEmpty()) {
            return this;
        }
        AttributedString marked = new AttributedString(text, Map.of(TextAttribute.FONT, font));
        LineBreakMeasurer breaks = new LineBreakMeasurer(marked.getIterator(), SMOOTH);
        height += lines.isEmpty() ? 0 : APART * font.getSize2D();
        while (breaks.getPosition() < text.length()) {
            TextLayout line = breaks.nextLayout(width);
            lines.add(new Line(line, height));
            height += line.getAscent() + line.getDescent();
        }
        return this;
    }

    LoomLines add(List<String> texts, Font font) {
        texts.forEach(text -> add(text, font));
        return this;
    }

    /** Of all lines, pixels, 0 or more. */
    double height() {
        return height;
    }

    int count() {
        return lines.size();
    }

    /** Width of a text in one line, pixels. */
    static double width(String text, Font font) {
        return text.isEmpty() ? 0 : new TextLayout(text, font, SMOOTH).getAdvance();
    }

    void draw(Graphics2D g, double x, double y) {
        for (Line line : lines) {
            line.text().draw(g, (float) x, (float) (y + line.top() + line.text().getAscent()));
        }
    }
}
