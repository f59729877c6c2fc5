package thrumwright.editor.canvas.gesture;

import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.event.MouseEvent;
import java.util.Map;
import thrumwright.block.Block;
import thrumwright.editor.canvas.painted.Bubble;
import thrumwright.editor.canvas.painted.Showing;
import thrumwright.editor.canvas.seen.BlockSpot;
import thrumwright.editor.canvas.seen.Surface;
import thrumwright.editor.edit.Amounts;
import thrumwright.editor.edit.Edit;
import thrumwright.editor.edit.Edits;
import thrumwright.editor.edit.Selection;
import thrumwright.editor.edit.Session;

/** Pulls the upper edge of a block: its amount follows in whole picks or rows, with the number beside the pointer. */
final class AmountGesture implements Gesture {
    private final Surface canvas;
    private final Session session;
    private final Edits edits;
    private final BlockSpot taken;
    private final Pull pull;
    private final double scale;
    private Block changed;

    AmountGesture(Surface canvas, Edits edits, BlockSpot taken, Point from) {
        this.canvas = canvas;
        this.session = canvas.session();
        this.edits = edits;
        this.taken = taken;
        this.pull = new Pull(from);
        this.changed = taken.plan().block();
        this.scale = canvas.map().scale();
    }

    private Edit edit() {
        return edits.amount(taken.place(), taken.plan().block(), changed);
    }

    @Override
    public void drag(MouseEvent event) {
        pull.to(event);
        if (!pull.isMeant()) {
            return;
        }
        double height = taken.plan().height() + pull.up() / scale;
        Block next = Amounts.ofHeight(taken.plan().block(), height, session.piece(), taken.place());
        if (!next.equals(changed)) {
            changed = next;
            session.preview(edit());
        }
    }

    @Override
    public void release(MouseEvent event) {
        if (changed.equals(taken.plan().block())) {
            session.endPreview();
            click(event);
        } else {
            session.edit(edit());
        }
    }

    /** A press that never pulled is a click on whatever lies there. */
    private void click(MouseEvent event) {
        if (!pull.isMeant()) {
            canvas.map().at(event.getY()).ifPresent(spot -> session.select(Selection.of(spot.place(), spot.id())));
        }
    }

    @Override
    public void cancel() {
        session.endPreview();
    }

    @Override
    public void paint(Graphics2D g, Showing showing) {
        String height = session.plan()
                .end(taken.place())
                .block(taken.id())
                .map(plan -> session.shown().shown().height(plan.height()))
                .orElse("");
        String says = canvas.texts().say("gesture.amount", Map.of("amount", Amounts.text(changed), "height", height));
        Bubble.paint(g, showing, pull.pointer(), says);
    }
}
