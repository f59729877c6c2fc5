package thrumwright.editor.canvas.gesture;

import java.awt.event.MouseEvent;
import java.util.Optional;
import javax.swing.SwingUtilities;
import thrumwright.editor.canvas.seen.BlockSpot;
import thrumwright.editor.canvas.seen.Surface;
import thrumwright.editor.edit.Edits;
import thrumwright.editor.edit.Selection;
import thrumwright.editor.edit.Session;

/**
 * Which gesture a press of the mouse begins.
 *
 * @param takeOver commits the field that is being typed in
 * @param amountAsked opens the field for the selected block's amount
 */
public record Gesturing(Edits edits, Runnable takeOver, Runnable amountAsked) {
    Optional<Gesture> begin(Surface canvas, MouseEvent event, Optional<BlockSpot> spot) {
        takeOver.run();
        if (canvas.panning() || SwingUtilities.isMiddleMouseButton(event)) {
            return Optional.of(new PanGesture(canvas, event.getLocationOnScreen()));
        }
        if (event.getClickCount() == 2 && spot.isPresent()) {
            amountAsked.run();
            return Optional.empty();
        }
        Optional<BlockSpot> edge = Hover.edge(canvas.map(), canvas.session(), event.getY());
        if (edge.isPresent() && plain(event)) {
            return Optional.of(new AmountGesture(canvas, edits, edge.get(), event.getPoint()));
        }
        return spot.isEmpty()
                ? onNothing(canvas, event)
                : onBlock(canvas, event, spot.get(), new MoveGesture.Grip(Gaps.of(canvas.map()), true));
    }

    /** A press on a block's label beside the canvas. */
    Optional<Gesture> onLabel(Surface canvas, MouseEvent event, BlockSpot spot, Gaps gaps) {
        takeOver.run();
        if (event.getClickCount() == 2) {
            amountAsked.run();
            return Optional.empty();
        }
        return onBlock(canvas, event, spot, new MoveGesture.Grip(gaps, false));
    }

    private static Optional<Gesture> onNothing(Surface canvas, MouseEvent event) {
        canvas.session().select(Selection.none());
        return Optional.of(new PanGesture(canvas, event.getLocationOnScreen()));
    }

    /** A block that is selected already stays so, since the weaver may be about to drag all that are. */
    private Optional<Gesture> onBlock(Surface canvas, MouseEvent event, BlockSpot spot, MoveGesture.Grip grip) {
        Session session = canvas.session();
        boolean plain = plain(event);
        if (!plain || !session.selection().has(spot.place(), spot.id())) {
            session.select(Selections.clicked(session, spot, event));
        }
        return plain ? Optional.of(new MoveGesture(canvas, edits, grip, spot, event.getPoint())) : Optional.empty();
    }

    /** With a key held a press selects, also where an edge could be pulled. */
    private static boolean plain(MouseEvent event) {
        return event.getModifiersEx() == MouseEvent.BUTTON1_DOWN_MASK;
    }
}
