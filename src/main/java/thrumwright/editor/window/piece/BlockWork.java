package thrumwright.editor.window.piece;

import java.util.List;
import java.util.function.Consumer;
import thrumwright.block.Block;
import thrumwright.editor.canvas.PieceCanvas;
import thrumwright.editor.canvas.seen.BlockSpot;
import thrumwright.editor.edit.Edit;
import thrumwright.editor.edit.Edits;
import thrumwright.editor.edit.NewBlocks;
import thrumwright.editor.edit.Selection;
import thrumwright.editor.edit.Session;
import thrumwright.editor.edit.Slot;
import thrumwright.editor.text.Commands;
import thrumwright.measure.UnitSystem;
import thrumwright.piece.End;
import thrumwright.piece.Place;

/**
 * The commands that have to do with blocks and with looking at them.
 *
 * @param doing does an edit, or says why it refuses
 */
record BlockWork(Session session, Edits edits, PieceCanvas canvas, Consumer<Edit> doing) {
    void addTo(Commands commands) {
        for (Block block : NewBlocks.all(UnitSystem.METRIC)) {
            String key = block.key();
            commands.add("add-" + key, () -> add(key), this::mayAdd);
        }
        commands.add("delete", () -> doing.accept(edits.delete(session.piece(), session.selection())), this::any);
        commands.add("up", () -> doing.accept(edits.move(session.piece(), session.selection(), 1)), this::own);
        commands.add("down", () -> doing.accept(edits.move(session.piece(), session.selection(), -1)), this::own);
        commands.add("select-all", this::selectAll);
        commands.add("select-above", () -> step(-1));
        commands.add("select-below", () -> step(1));
        commands.add("reach-above", () -> reach(1));
        commands.add("reach-below", () -> reach(-1));
        commands.add("select-highest", () -> select(0));
        commands.add("select-lowest", () -> select(canvas.map().spots().size() - 1));
        commands.add("select-none", this::giveUp);
        commands.add(
                "top-own",
                () -> doing.accept(edits.topOnItsOwn()),
                () -> session.piece().topFollows());
        commands.add(
                "top-follows",
                () -> doing.accept(edits.topFollows(session.piece())),
                () -> !session.piece().topFollows());
    }

    private boolean any() {
        return !session.selection().isEmpty();
    }

    /** Something is selected, and not in a top that follows the start. */
    private boolean own() {
        return any()
                && (session.selection().place() == Place.START
                        || !session.piece().topFollows());
    }

    private boolean mayAdd() {
        Place place = slot().own(session.piece()).place();
        return session.piece().end(place).blocks().size() < End.MOST_BLOCKS;
    }

    void add(String kind) {
        Block block = NewBlocks.ofKind(kind, session.piece().habits().units());
        doing.accept(edits.add(session.piece(), slot(), block));
    }

    private Slot slot() {
        return Slot.above(session.piece(), session.selection());
    }

    private void selectAll() {
        Place place = session.selection().place();
        session.select(new Selection(
                place,
                session.piece().end(place).blocks().stream().map(Block::id).toList()));
    }

    private void step(int by) {
        List<BlockSpot> spots = canvas.map().spots();
        int now = -1;
        for (int i = 0; i < spots.size(); i++) {
            if (session.selection().lead().filter(spots.get(i).id()::equals).isPresent()
                    && session.selection().place() == spots.get(i).place()) {
                now = i;
            }
        }
        int next = now < 0 ? (by > 0 ? 0 : spots.size() - 1) : now + by;
        select(Math.max(0, Math.min(spots.size() - 1, next)));
    }

    private void select(int index) {
        if (index >= 0 && index < canvas.map().spots().size()) {
            BlockSpot spot = canvas.map().spots().get(index);
            session.select(Selection.of(spot.place(), spot.id()));
        }
    }

    private void reach(int by) {
        session.select(session.selection().reaching(session.piece(), by));
    }

    private void giveUp() {
        if (!canvas.cancelGesture()) {
            session.select(Selection.none());
        }
    }
}
