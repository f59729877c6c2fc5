package thrumwright.editor.canvas.painted;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import thrumwright.editor.canvas.seen.BlockSpot;
import thrumwright.editor.look.Ground;
import thrumwright.piece.Place;

/** Frames over the cloth: round what is selected and round what is tried out. Never printed. */
public record CanvasMarks(Graphics2D g, Showing showing) {
    /** How far a frame lies from what is selected or tried, pixels. */
    private static final double SELECTED = 2;

    private static final double TRIED = 3;

    /** One frame round selected blocks that lie next to each other. */
    void selected() {
        Rectangle2D run = null;
        Place place = null;
        for (BlockSpot spot : showing.map().spots()) {
            boolean selected = showing.selection().has(spot.place(), spot.id());
            if (run != null && !(selected && spot.place() == place)) {
                selected(run);
                run = null;
            }
            if (selected) {
                Rectangle2D field = showing.map().field(spot);
                run = run == null ? field : run.createUnion(field);
                place = spot.place();
            }
        }
        if (run != null) {
            selected(run);
        }
    }

    /** Two outlines, so that it shows on any yarn. */
    private void selected(Rectangle2D run) {
        Rectangle2D field = round(run, SELECTED);
        if (!field.intersects(showing.seen())) {
            return;
        }
        Color accent = showing.accent();
        Ground.fill(g, field, new Color(accent.getRed(), accent.getGreen(), accent.getBlue(), 28));
        double thick = showing.focused() ? 2.5 : 1.5;
        g.setColor(showing.palette().paper());
        LongLines.draw(g, field, thick + 2);
        g.setColor(accent);
        LongLines.draw(g, field, thick);
    }

    /** A block that a gesture has put somewhere. */
    public void tried(BlockSpot spot) {
        Rectangle2D field = round(showing.map().field(spot), TRIED);
        g.setColor(showing.palette().paper());
        LongLines.draw(g, field, 4);
        g.setColor(showing.accent());
        float[] dashes = {7, 3};
        g.setStroke(new BasicStroke(2.5f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, dashes, 0));
        g.draw(field);
    }

    /** Round the blocks, so that even thin ones can be seen within. */
    private static Rectangle2D round(Rectangle2D field, double by) {
        return new Rectangle2D.Double(
                field.getX() - by, field.getY() - by, field.getWidth() + 2 * by, field.getHeight() + 2 * by);
    }
}
