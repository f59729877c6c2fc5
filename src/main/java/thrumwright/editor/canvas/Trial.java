package thrumwright.editor.canvas;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.Optional;
import thrumwright.editor.canvas.CanvasMap.Spot;
import thrumwright.editor.edit.Edit;
import thrumwright.editor.edit.Selection;
import thrumwright.editor.edit.Session;
import thrumwright.editor.edit.Slot;
import thrumwright.piece.Place;

/** What a gesture is trying out: the blocks in another place, shown at once, with a frame round them there. */
final class Trial {
    /** How far the frame lies from the block, pixels. */
    private static final double ROUND = 3;

    private final PieceCanvas canvas;
    private final Session session;
    private Optional<Slot> slot = Optional.empty();
    private Optional<Edit> edit = Optional.empty();
    private Optional<String> refused = Optional.empty();

    Trial(PieceCanvas canvas) {
        this.canvas = canvas;
        this.session = canvas.session();
    }

    /** Shows what an edit does; one that refuses shows nothing new and says why. */
    void show(Slot where, Edit tried) {
        if (slot.filter(where::equals).isPresent()) {
            return;
        }
        slot = Optional.of(where);
        refused = session.preview(tried);
        edit = refused.isEmpty() ? Optional.of(tried) : Optional.empty();
    }

    /** Shows the piece as it is. */
    void end() {
        slot = Optional.empty();
        edit = Optional.empty();
        refused = Optional.empty();
        session.endPreview();
    }

    /** Makes it so, if there is anything to be made so. */
    void commit() {
        edit.ifPresentOrElse(session::edit, session::endPreview);
        slot = Optional.empty();
        edit = Optional.empty();
    }

    /** Why it can't be done here. */
    Optional<String> refused() {
        return refused;
    }

    void paint(Graphics2D g) {
        Selection there =
                edit.map(tried -> tried.selects().orElse(session.selection())).orElse(Selection.none());
        boolean both = session.piece().topFollows();
        for (Spot spot : canvas.map().spots()) {
            if (there.has(both ? Place.START : spot.place(), spot.id())) {
                frame(g, canvas.field(spot));
            }
        }
    }

    /** Round the block, so that even a thin one can be seen within; two lines, so that it shows on any yarn. */
    private void frame(Graphics2D g, Rectangle2D field) {
        Rectangle2D round = new Rectangle2D.Double(
                field.getX() - ROUND,
                field.getY() - ROUND,
                field.getWidth() + 2 * ROUND,
                field.getHeight() + 2 * ROUND);
        g.setColor(canvas.palette().paper());
        g.setStroke(new BasicStroke(4));
        g.draw(round);
        g.setColor(canvas.accent());
        g.setStroke(new BasicStroke(2.5f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, new float[] {7, 3}, 0));
        g.draw(round);
    }
}
