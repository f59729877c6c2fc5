package thrumwright.editor.view;

import java.awt.Component;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import javax.swing.Icon;
import javax.swing.UIManager;
import thrumwright.editor.look.Pixels;
import thrumwright.editor.look.Smooth;
import thrumwright.plan.finding.Severity;

/** A shape for each weight, so that colour isn't the only sign: a square, a triangle, a dot. */
public record Mark(Severity severity) implements Icon {
    private static final int SIZE = 12;

    @Override
    public void paintIcon(Component c, Graphics graphics, int x, int y) {
        Graphics2D g = (Graphics2D) graphics.create();
        Smooth.lines(g);
        g.translate(x, y);
        g.scale(Pixels.of(1f), Pixels.of(1f));
        g.translate(0, 3);
        g.setColor(UIManager.getColor(colour(severity)));
        switch (severity) {
            case PROBLEM -> g.fill(new Rectangle2D.Double(1, 1, 10, 10));
            case CAUTION -> {
                Path2D triangle = new Path2D.Double();
                triangle.moveTo(6, 0);
                triangle.lineTo(12, 11);
                triangle.lineTo(0, 11);
                triangle.closePath();
                g.fill(triangle);
            }
            case NOTE -> g.fill(new Ellipse2D.Double(2, 2, 8, 8));
        }
        g.dispose();
    }

    /** Its name among the colours of the look. */
    static String colour(Severity severity) {
        return switch (severity) {
            case PROBLEM -> "Thrumwright.reason";
            case CAUTION -> "Thrumwright.caution";
            case NOTE -> "Thrumwright.quiet";
        };
    }

    @Override
    public int getIconWidth() {
        return Pixels.of(SIZE);
    }

    @Override
    public int getIconHeight() {
        return Pixels.of(SIZE + 3);
    }
}
