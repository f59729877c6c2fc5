package thrumwright.editor.canvas.gesture;

import java.awt.Graphics2D;
import java.awt.event.MouseEvent;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.SwingUtilities;
import thrumwright.editor.canvas.painted.Showing;
import thrumwright.editor.canvas.seen.BlockSpot;
import thrumwright.editor.canvas.seen.Surface;
import thrumwright.editor.edit.Selection;
import thrumwright.piece.Piece;

/** Leads the gesture that is under way, if one is: chosen at the press, ended by the release, given up by Escape. */
public final class Tracker {
    private final Surface surface;
    private final Runnable begun;
    private final Runnable ended;
    private Optional<Gesturing> gestures = Optional.empty();
    private Consumer<MouseEvent> menuAsked = event -> {};
    private Optional<UnderWay> underWay = Optional.empty();

    /** A gesture, and the piece as it was when it began. */
    private record UnderWay(Gesture gesture, Piece before) {}

    /**
     * @param begun told when a gesture may have begun
     * @param ended told when one may have ended
     */
    public Tracker(Surface surface, Runnable begun, Runnable ended) {
        this.surface = surface;
        this.begun = begun;
        this.ended = ended;
    }

    public void setGestures(Gesturing other) {
        gestures = Optional.of(other);
    }

    public void setMenuAsked(Consumer<MouseEvent> asked) {
        menuAsked = asked;
    }

    /** A press on the canvas. */
    void press(MouseEvent event, Optional<BlockSpot> spot) {
        cancel();
        begun(gestures.flatMap(all -> all.begin(surface, event, spot)));
    }

    /** A press on a block's label; the place of the event is on the canvas. */
    public void pressLabel(MouseEvent event, BlockSpot spot, Gaps gaps) {
        surface.requestFocusInWindow();
        if (event.isPopupTrigger()) {
            popup(event, Optional.of(spot));
        } else if (SwingUtilities.isLeftMouseButton(event)) {
            gestures.flatMap(all -> all.onLabel(surface, event, spot, gaps)).ifPresent(this::begin);
        }
    }

    /** Lets a gesture begin that sets out beside the canvas. */
    public void begin(Gesture other) {
        cancel();
        begun(Optional.of(other));
    }

    private void begun(Optional<Gesture> other) {
        Piece before = surface.session().piece();
        underWay = other.map(gesture -> new UnderWay(gesture, before));
        begun.run();
    }

    private Optional<Gesture> gesture() {
        return underWay.map(UnderWay::gesture);
    }

    /** Whether anything is held. */
    public boolean isHolding() {
        return underWay.isPresent();
    }

    /** Whether that gesture is still under way. */
    public boolean isUnderWay(Gesture other) {
        return gesture().filter(other::equals).isPresent();
    }

    /** The mouse moves on while it holds something. */
    public void drag(MouseEvent event) {
        gesture().ifPresent(current -> {
            current.drag(event);
            surface.repaint();
        });
    }

    /** The mouse lets go; nothing, if the gesture was given up meanwhile. */
    public void release(MouseEvent event) {
        Optional<Gesture> done = gesture();
        underWay = Optional.empty();
        done.ifPresent(current -> current.release(event));
        ended.run();
        surface.repaint();
    }

    /** Gives a gesture up, if one is under way. */
    public boolean cancel() {
        boolean was = isHolding();
        gesture().ifPresent(Gesture::cancel);
        underWay = Optional.empty();
        ended.run();
        surface.repaint();
        return was;
    }

    /** A key has changed the piece meanwhile: what is held isn't there any more, or elsewhere. */
    public void giveUpWhatIsOutdated() {
        if (underWay.filter(held -> held.before() != surface.session().piece()).isPresent()) {
            cancel();
        }
    }

    /** Asks for the menu of what is pointed at; so it is selected first, and beside all blocks nothing is. */
    public void popup(MouseEvent event, Optional<BlockSpot> spot) {
        Selection now = surface.session().selection();
        Selection pointed = spot.map(
                        there -> now.has(there.place(), there.id()) ? now : Selection.of(there.place(), there.id()))
                .orElse(Selection.none());
        surface.session().select(pointed);
        menuAsked.accept(event);
    }

    public void paint(Graphics2D g, Showing showing) {
        gesture().ifPresent(current -> current.paint(g, showing));
    }
}
