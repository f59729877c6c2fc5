package thrumwright.output.part;

import java.awt.Graphics2D;
import thrumwright.drawing.Palette;
import thrumwright.output.page.Part;
import thrumwright.output.page.Structured;
import thrumwright.output.page.TextPart;
import thrumwright.output.page.Type;
import thrumwright.sheet.YarnLine;

/**
 * What one yarn comes to.
 *
 * @param letter of the yarn on the cards; blank where it has none
 */
public record YarnPart(YarnLine line, String letter, Type type, Palette palette) implements Part {
    private Part text() {
        return new TextPart((letter + " " + line.text()).strip(), type.body(), palette.ink());
    }

    @Override
    public double height(double width) {
        return text().height(width - 18) + 2;
    }

    @Override
    public void paint(Graphics2D g, double x, double y, double width) {
        line.yarn().ifPresent(yarn -> TickMarks.dot(g, x + 1, y + 3, 10, yarn.colour(), palette));
        Structured.item(text()).paint(g, x + 18, y, width - 18);
    }
}
