package thrumwright.editor.canvas;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.geom.Rectangle2D;
import thrumwright.editor.canvas.CanvasMap.Spot;

/** What the canvas shows over the cloth: what is selected. Never printed. */
final class CanvasMarks {
    private final Graphics2D g;
    private final PieceCanvas canvas;

    CanvasMarks(Graphics2D g, PieceCanvas canvas) {
        this.g = g;
        this.canvas = canvas;
    }

    void paint(Rectangle part) {
        for (Spot spot : canvas.map().spots()) {
            if (canvas.session().selection().has(spot.place(), spot.id())
                    && spot.top() - 10 <= part.getMaxY()
                    && spot.bottom() + 10 >= part.getMinY()) {
                selected(spot);
            }
        }
    }

    /** Two outlines, so that it shows on any yarn. */
    private void selected(Spot spot) {
        Rectangle2D field = canvas.field(spot);
        Color accent = canvas.accent();
        g.setColor(new Color(accent.getRed(), accent.getGreen(), accent.getBlue(), 28));
        g.fill(field);
        g.setColor(canvas.palette().paper());
        g.setStroke(new BasicStroke(canvas.selectionStroke().getLineWidth() + 2));
        g.draw(field);
        g.setColor(accent);
        g.setStroke(canvas.selectionStroke());
        g.draw(field);
    }
}
