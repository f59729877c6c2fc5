package thrumwright.output;

import java.awt.Graphics2D;
import thrumwright.drawing.Palette;
import thrumwright.sheet.YarnLine;

/** What one yarn comes to. */
record YarnPart(YarnLine line, Type type, Palette palette) implements Part {
    static String text(YarnLine line) {
        return line.yarn().name() + ": " + line.length() + ", " + line.mass() + " (" + line.uses() + "). " + line.buy();
    }

    private Part text() {
        return new TextPart(text(line), type.body(), palette.ink());
    }

    @Override
    public double height(double width) {
        return text().height(width - 18) + 2;
    }

    @Override
    public void paint(Graphics2D g, double x, double y, double width) {
        Ticks.dot(g, x + 1, y + 3, 10, line.yarn().colour(), palette);
        Structured.item(text()).paint(g, x + 18, y, width - 18);
    }
}
