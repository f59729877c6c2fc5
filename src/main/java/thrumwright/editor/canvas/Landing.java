package thrumwright.editor.canvas;

import java.awt.Point;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.SwingUtilities;
import thrumwright.editor.edit.Slot;

/** Where something that comes from outside can be let go: over the picture or over the list beside it. */
final class Landing {
    private final PieceCanvas canvas;
    private final LabelColumn labels;
    private final Slots onCanvas;
    private final Slots onLabels;

    Landing(PieceCanvas canvas, LabelColumn labels) {
        this.canvas = canvas;
        this.labels = labels;
        this.onCanvas = Slots.of(canvas.map());
        this.onLabels = labels.slots();
    }

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
