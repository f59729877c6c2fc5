package thrumwright.output.part;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import thrumwright.drawing.Palette;
import thrumwright.output.page.Part;
import thrumwright.output.page.TextPart;
import thrumwright.output.page.Type;

/** A dashed line along which the lists below may be cut off. */
public record TearPart(String words, Type type, Palette palette) implements Part {
    @Override
    public double height(double width) {
        return 24;
    }

    @Override
    public void paint(Graphics2D g, double x, double y, double width) {
        double wide = TextPart.width(words, type.small());
        double line = y + 12;
        g.setColor(palette.faint());
        g.setStroke(new BasicStroke(0.8f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, new float[] {4, 3}, 0));
        g.draw(new Line2D.Double(x, line, x + (width - wide) / 2 - 8, line));
        g.draw(new Line2D.Double(x + (width + wide) / 2 + 8, line, x + width, line));
        new TextPart(words, type.small(), palette.faint()).paint(g, x + (width - wide) / 2, y + 5, wide + 1);
    }
}
