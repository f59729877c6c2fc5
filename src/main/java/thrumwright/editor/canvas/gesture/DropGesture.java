package thrumwright.editor.canvas.gesture;

import java.awt.Graphics2D;
import java.awt.event.MouseEvent;
import java.util.Map;
import java.util.Optional;
import thrumwright.block.Block;
import thrumwright.block.EdgeFinish;
import thrumwright.editor.canvas.painted.Showing;
import thrumwright.editor.canvas.seen.Surface;
import thrumwright.editor.edit.Edits;
import thrumwright.editor.edit.Session;
import thrumwright.editor.edit.Slot;
import thrumwright.editor.text.Texts;
import thrumwright.piece.Place;

/** Brings a new block from elsewhere; while it is held over the piece, the piece shows at once what comes of it. */
public final class DropGesture implements Gesture {
    private final Texts texts;
    private final Session session;
    private final Edits edits;
    private final Block block;
    private final Landing landing;
    private final Trial trial;
    private final EdgeScroll scroll;

    public DropGesture(Surface canvas, Landing landing, Edits edits, Block block) {
        this.texts = canvas.texts();
        this.session = canvas.session();
        this.edits = edits;
        this.block = block;
        this.landing = landing;
        this.trial = new Trial(session);
        this.scroll = new EdgeScroll(canvas, this::drag);
    }

    @Override
    public void drag(MouseEvent event) {
        landing.at(event.getPoint())
                .ifPresentOrElse(
                        where -> {
                            trial.show(where, edits.add(session.piece(), where, block));
                            scroll.held(event);
                        },
                        this::cancel);
    }

    @Override
    public void release(MouseEvent event) {
        scroll.stop();
        trial.commit();
    }

    @Override
    public void cancel() {
        scroll.stop();
        trial.end();
    }

    @Override
    public void paint(Graphics2D g, Showing showing) {
        trial.paint(g, showing);
    }

    /** What letting go would do; empty: nothing. */
    public Optional<String> says() {
        return trial.slot().map(where -> trial.refused().orElseGet(() -> into(where)));
    }

    private String into(Slot where) {
        boolean repeated = where.place() == Place.TOP && session.piece().topFollows();
        String key =
                (block instanceof EdgeFinish ? "gesture.drop.edge" : "gesture.drop") + (repeated ? ".repeated" : "");
        return texts.say(
                key,
                Map.of(
                        "block", texts.words().name(block),
                        "place", texts.words().place(where.place())));
    }
}
