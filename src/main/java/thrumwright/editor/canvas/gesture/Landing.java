package thrumwright.editor.canvas.gesture;

import java.awt.Point;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.SwingUtilities;
import thrumwright.editor.edit.Slot;

/**
 * Where something that comes from outside can be let go: over the picture or over the list beside it.
 *
 * @param onCanvas by the heights at which the pointer meets them on the canvas
 * @param onLabels by the heights at which it meets them on the list
 */
public record Landing(JComponent canvas, Gaps onCanvas, JComponent labels, Gaps onLabels) {
    /** @param point on the canvas, which may be beside it */
    Optional<Slot> at(Point point) {
        if (over(canvas, point)) {
            return Optional.of(onCanvas.at(point.y));
        }
        Point there = SwingUtilities.convertPoint(canvas, point, labels);
        return over(labels, there) ? Optional.of(onLabels.at(there.y)) : Optional.empty();
    }

    private static boolean over(JComponent component, Point point) {
        return component.getVisibleRect().contains(point);
    }
}
