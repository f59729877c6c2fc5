package thrumwright.editor.canvas;

import java.awt.event.MouseEvent;
import java.util.Optional;
import thrumwright.editor.canvas.CanvasMap.Spot;
import thrumwright.editor.edit.Edits;
import thrumwright.editor.edit.Selection;

/** Which gesture a press of the mouse begins. */
public final class Gesturing implements PieceCanvas.Gestures {
    private final Edits edits;
    private final Runnable takeOver;

    /** @param takeOver commits the field that is being typed in */
    public Gesturing(Edits edits, Runnable takeOver) {
        this.edits = edits;
        this.takeOver = takeOver;
    }

    @Override
    public Optional<Gesture> begin(PieceCanvas canvas, MouseEvent event, Optional<Spot> spot) {
        takeOver.run();
        if (spot.isEmpty()) {
            canvas.session().select(Selection.none());
            return Optional.empty();
        }
        canvas.session().select(Selections.clicked(canvas.session(), spot.get(), event));
        return Optional.empty();
    }
}
