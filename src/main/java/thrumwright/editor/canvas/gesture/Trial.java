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
    private Optional<Tried> tried = Optional.empty();

    /** An edit at a place, and why it can't be done there. */
    private record Tried(Slot slot, Edit edit, Optional<String> refused) {}

    Trial(Session session) {
        this.session = session;
    }

    /** Shows what an edit does; one that refuses shows nothing new and says why. */
    void show(Slot where, Edit edit) {
        if (tried.filter(one -> one.slot().equals(where)).isEmpty()) {
            tried = Optional.of(new Tried(where, edit, session.preview(edit)));
        }
    }

    /** Shows the piece as it is. */
    void end() {
        tried = Optional.empty();
        session.endPreview();
    }

    /** Makes it so, if there is anything to be made so. */
    void commit() {
        edit().ifPresentOrElse(session::edit, session::endPreview);
        tried = Optional.empty();
    }

    private Optional<Edit> edit() {
        return tried.filter(one -> one.refused().isEmpty()).map(Tried::edit);
    }

    /** Where it is tried. */
    Optional<Slot> slot() {
        return tried.map(Tried::slot);
    }

    /** Why it can't be done here. */
    Optional<String> refused() {
        return tried.flatMap(Tried::refused);
    }

    void paint(Graphics2D g, Showing showing) {
        Selection there =
                edit().map(edit -> edit.selects().orElse(session.selection())).orElse(Selection.none());
        boolean both = session.piece().topFollows();
        for (BlockSpot spot : showing.map().spots()) {
            if (there.has(both ? Place.START : spot.place(), spot.id())) {
                new CanvasMarks(g, showing).tried(spot);
            }
        }
    }
}
