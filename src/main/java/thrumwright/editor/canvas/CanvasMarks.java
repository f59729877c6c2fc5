package thrumwright.editor.canvas;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.geom.Rectangle2D;
import thrumwright.editor.canvas.CanvasMap.Spot;
import thrumwright.editor.look.Ground;
import thrumwright.piece.Place;

/** What the canvas shows over the cloth: what is selected. Never printed. */
final class CanvasMarks {
    /** How far an outline lies from what is selected, pixels. */
    private static final double ROUND = 2;

    private final Graphics2D g;
    private final PieceCanvas canvas;

    CanvasMarks(Graphics2D g, PieceCanvas canvas) {
        this.g = g;
        this.canvas = canvas;
    }

    void paint(Rectangle part) {
        Rectangle2D run = null;
        Place place = null;
        for (Spot spot : canvas.map().spots()) {
            boolean selected = canvas.session().selection().has(spot.place(), spot.id());
            if (run != null && !(selected && spot.place() == place)) {
                selected(run, part);
                run = null;
            }
            if (selected) {
                Rectangle2D field = canvas.field(spot);
                run = run == null ? field : run.createUnion(field);
                place = spot.place();
            }
        }
        if (run != null) {
            selected(run, part);
        }
    }

    /** Two outlines, so that it shows on any yarn; round the blocks, so that even thin ones can be seen within. */
    private void selected(Rectangle2D run, Rectangle part) {
        Rectangle2D field = new Rectangle2D.Double(
                run.getX() - ROUND, run.getY() - ROUND, run.getWidth() + 2 * ROUND, run.getHeight() + 2 * ROUND);
        if (!field.intersects(part)) {
            return;
        }
        Color accent = canvas.accent();
        Ground.fill(g, field, new Color(accent.getRed(), accent.getGreen(), accent.getBlue(), 28));
        g.setColor(canvas.palette().paper());
        g.setStroke(new BasicStroke(canvas.selectionStroke().getLineWidth() + 2));
        g.draw(field);
        g.setColor(accent);
        g.setStroke(canvas.selectionStroke());
        g.draw(field);
    }
}
