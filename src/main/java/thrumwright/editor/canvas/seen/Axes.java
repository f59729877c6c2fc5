package thrumwright.editor.canvas.seen;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import thrumwright.drawing.View;

/**
 * Which parts of the piece are shown and where they lie from the cloth's corner, where the first warp end meets the
 * start's lowest line.
 *
 * @param across mm right of the first warp end
 * @param up mm above the start's lowest line, as in the picture
 */
public record Axes(Axis across, Axis up) {
    /** A part that is shown in one: where it lies, pixels, and how the cloth lies under it. */
    public record Panel(Rectangle2D box, View view) {}

    /** All in one, at a scale in pixels per mm, more than 0. */
    public static Axes whole(double scale) {
        return new Axes(Axis.whole(scale), Axis.whole(-scale));
    }

    /** The same as equality, without what Java puts together for a record that is first asked for that. */
    public boolean same(Axes other) {
        return across.same(other.across) && up.same(other.up);
    }

    /** Pixels per mm, more than 0. */
    public double scale() {
        return across.scale();
    }

    /** All parts; what lies between them is left out. */
    public List<Panel> panels() {
        List<Panel> panels = new ArrayList<>();
        for (Axis.Span column : across.spans()) {
            for (Axis.Span row : up.spans()) {
                View view = new View(scale(), column.zero(), row.zero());
                double left = view.x(column.from());
                double top = view.y(row.to());
                panels.add(new Panel(
                        new Rectangle2D.Double(left, top, view.x(column.to()) - left, view.y(row.from()) - top), view));
            }
        }
        return panels;
    }
}
