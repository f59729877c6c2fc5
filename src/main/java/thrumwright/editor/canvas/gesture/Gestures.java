package thrumwright.editor.canvas.gesture;

import java.awt.event.MouseEvent;
import java.util.Optional;
import thrumwright.editor.canvas.seen.BlockSpot;
import thrumwright.editor.canvas.seen.Surface;

/** What a press of the mouse begins. */
public interface Gestures {
    Optional<Gesture> begin(Surface canvas, MouseEvent event, Optional<BlockSpot> spot);

    /** A press on a block's label beside the canvas. */
    default Optional<Gesture> onLabel(Surface canvas, MouseEvent event, BlockSpot spot, Gaps gaps) {
        return Optional.empty();
    }
}
