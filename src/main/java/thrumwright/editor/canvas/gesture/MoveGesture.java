package thrumwright.editor.canvas.gesture;

import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.event.MouseEvent;
import java.util.Map;
import thrumwright.editor.canvas.painted.Bubble;
import thrumwright.editor.canvas.painted.Showing;
import thrumwright.editor.canvas.seen.BlockSpot;
import thrumwright.editor.canvas.seen.Surface;
import thrumwright.editor.edit.Edits;
import thrumwright.editor.edit.Selection;
import thrumwright.editor.edit.Session;
import thrumwright.editor.edit.Slot;

/** Drags the selected blocks to another place in their end or the other one; the piece shows at once what comes of it. */
final class MoveGesture implements Gesture {
    private final Surface canvas;
    private final Session session;
    private final Edits edits;
    private final BlockSpot taken;
    private final Pull pull;
    private final Selection moved;
    private final Gaps gaps;
    private final Trial trial;
    private final boolean onCanvas;
    private final EdgeScroll scroll;

    /**
     * Where blocks were taken hold of.
     *
     * @param gaps the places to drop at, by the heights at which the pointer meets them
     * @param onCanvas whether the canvas moves along at its edges; not below a list that has rows of its own
     */
    record Grip(Gaps gaps, boolean onCanvas) {}

    MoveGesture(Surface canvas, Edits edits, Grip grip, BlockSpot taken, Point from) {
        this.canvas = canvas;
        this.session = canvas.session();
        this.edits = edits;
        this.taken = taken;
        this.pull = new Pull(from);
        this.moved = session.selection();
        this.gaps = grip.gaps().without(moved::has);
        this.onCanvas = grip.onCanvas();
        this.trial = new Trial(session);
        this.scroll = new EdgeScroll(canvas, this::drag);
    }

    @Override
    public void drag(MouseEvent event) {
        pull.to(event);
        if (pull.isMeant()) {
            Slot slot = gaps.at(pull.pointer().y);
            trial.show(slot, edits.moveTo(session.piece(), moved, slot));
            if (onCanvas) {
                scroll.held(event);
            }
        }
    }

    @Override
    public void release(MouseEvent event) {
        scroll.stop();
        if (pull.isMeant()) {
            trial.commit();
        } else {
            session.select(Selection.of(taken.place(), taken.id()));
        }
    }

    @Override
    public void cancel() {
        scroll.stop();
        pull.giveUp();
        trial.end();
    }

    @Override
    public void paint(Graphics2D g, Showing showing) {
        if (pull.isMeant()) {
            trial.paint(g, showing);
            Bubble.paint(g, showing, pull.pointer(), trial.refused().orElseGet(this::what));
        }
    }

    private String what() {
        int count = moved.ids().size();
        return count == 1
                ? canvas.texts().words().name(taken.plan().block())
                : canvas.texts().say("edit.blocks", Map.of("count", count));
    }
}
