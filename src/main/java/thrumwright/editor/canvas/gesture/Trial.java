package thrumwright.editor.canvas.gesture;

import java.awt.Graphics2D;
import java.util.Optional;
import thrumwright.editor.canvas.painted.CanvasMarks;
import thrumwright.editor.canvas.painted.Showing;
import thrumwright.editor.canvas.seen.BlockSpot;
import thrumwright.editor.edit.Edit;
import thrumwright.editor.edit.Selection;
import thrumwright.editor.edit.Session;
import thrumwright.editor.edit.Slot;
import thrumwright.piece.Place;

/** What a gesture is trying out: the blocks in another place, shown at once, with a frame round them there. */
final class Trial {
    private final Session session;
    private Optional<Slot> slot = Optional.empty();
    private Optional<Edit> edit = Optional.empty();
    private Optional<String> refused = Optional.empty();

    Trial(Session session) {
        this.session = session;
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

    void paint(Graphics2D g, Showing showing) {
        Selection there =
                edit.map(tried -> tried.selects().orElse(session.selection())).orElse(Selection.none());
        boolean both = session.piece().topFollows();
        for (BlockSpot spot : showing.map().spots()) {
            if (there.has(both ? Place.START : spot.place(), spot.id())) {
                new CanvasMarks(g, showing).tried(spot);
            }
        }
    }
}
