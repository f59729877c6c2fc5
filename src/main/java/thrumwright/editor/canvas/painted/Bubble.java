package thrumwright.editor.canvas.painted;

import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.geom.RoundRectangle2D;
import javax.swing.UIManager;

/** A few words beside the pointer. */
public final class Bubble {
    private Bubble() {}

    public static void paint(Graphics2D g, Showing showing, Point pointer, String words) {
        g.setFont(UIManager.getFont("semibold.font"));
        FontMetrics metrics = g.getFontMetrics();
        double width = metrics.stringWidth(words) + 16;
        double height = metrics.getHeight() + 8;
        Rectangle seen = showing.seen();
        double x = Math.max(seen.x + 2, Math.min(pointer.x + 18, seen.getMaxX() - width - 2));
        double y = Math.max(seen.y + 2, Math.min(pointer.y + 14, seen.getMaxY() - height - 2));
        g.setColor(showing.palette().ink());
        g.fill(new RoundRectangle2D.Double(x, y, width, height, 8, 8));
        g.setColor(showing.palette().paper());
        g.drawString(words, (float) x + 8, (float) y + 4 + metrics.getAscent());
    }
}
