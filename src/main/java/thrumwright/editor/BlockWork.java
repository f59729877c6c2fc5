package thrumwright.editor;

import java.util.List;
import thrumwright.block.Block;
import thrumwright.editor.canvas.CanvasMap.Spot;
import thrumwright.editor.canvas.PieceCanvas;
import thrumwright.editor.canvas.Zoom;
import thrumwright.editor.edit.Edits;
import thrumwright.editor.edit.NewBlocks;
import thrumwright.editor.edit.Selection;
import thrumwright.editor.edit.Session;
import thrumwright.editor.text.Commands;
import thrumwright.measure.UnitSystem;
import thrumwright.piece.Place;
import thrumwright.plan.Words;

/** The commands that have to do with blocks and with looking at them. */
final class BlockWork {
    /** Pixels per mm where a millimetre on the screen is one, at 96 dots to the inch. */
    private static final double TRUE_SIZE = 96 / 25.4;

    private final Session session;
    private final Edits edits;
    private final PieceCanvas canvas;

    BlockWork(Session session, Edits edits, PieceCanvas canvas) {
        this.session = session;
        this.edits = edits;
        this.canvas = canvas;
    }

    void addTo(Commands commands) {
        for (Block block : NewBlocks.all(UnitSystem.METRIC)) {
            String key = Words.key(block);
            commands.add("add-" + key, () -> add(key), this::mayAdd);
        }
        commands.add("delete", () -> session.edit(edits.delete(session.piece(), session.selection())), this::any);
        commands.add("up", () -> session.edit(edits.move(session.piece(), session.selection(), 1)), this::own);
        commands.add("down", () -> session.edit(edits.move(session.piece(), session.selection(), -1)), this::own);
        commands.add("duplicate", this::duplicate, this::own);
        commands.add("select-all", this::selectAll);
        commands.add("select-above", () -> step(-1));
        commands.add("select-below", () -> step(1));
        commands.add("select-highest", () -> select(0));
        commands.add("select-lowest", () -> select(canvas.map().spots().size() - 1));
        commands.add("select-none", this::giveUp);
        commands.add("closer", () -> canvas.setZoom(Zoom.from(canvas.scale(), 1)));
        commands.add("farther", () -> canvas.setZoom(Zoom.from(canvas.scale(), -1)));
        commands.add("fit-piece", () -> canvas.setZoom(Zoom.fitting(Zoom.Kind.PIECE)));
        commands.add("fit-width", () -> canvas.setZoom(Zoom.fitting(Zoom.Kind.WIDTH)));
        commands.add("fit-start", () -> canvas.showEnd(Place.START));
        commands.add("fit-top", () -> canvas.showEnd(Place.TOP));
        commands.add("true-size", () -> canvas.setZoom(Zoom.of(TRUE_SIZE)));
        commands.add(
                "top-own",
                () -> session.edit(edits.topOnItsOwn()),
                () -> session.piece().topFollows());
        commands.add(
                "top-follows",
                () -> session.edit(edits.topFollows(session.piece())),
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

    private Place placeToAdd() {
        Place place = session.selection().place();
        return place == Place.TOP && session.piece().topFollows() ? Place.START : place;
    }

    private boolean mayAdd() {
        return session.piece().end(placeToAdd()).blocks().size() < thrumwright.piece.End.MOST_BLOCKS;
    }

    /** Above the selected block; on top of the end where none is selected. */
    private int indexToAdd(Place place) {
        return session.selection()
                .lead()
                .filter(id -> session.selection().place() == place)
                .map(id -> session.piece().end(place).indexOf(id) + 1)
                .orElse(session.piece().end(place).blocks().size());
    }

    void add(String kind) {
        Place place = placeToAdd();
        Block block = NewBlocks.ofKind(kind, session.piece().habits().units());
        session.edit(edits.add(session.piece(), place, indexToAdd(place), block));
    }

    private void duplicate() {
        Selection selection = session.selection();
        List<Block> blocks = selection.blocksIn(session.piece());
        session.edit(edits.paste(
                session.piece(), selection.place(), indexToAdd(selection.place()), blocks, "edit.duplicate"));
    }

    private void selectAll() {
        Place place = session.selection().place();
        session.select(new Selection(
                place,
                session.piece().end(place).blocks().stream().map(Block::id).toList()));
    }

    private void step(int by) {
        List<Spot> spots = canvas.map().spots();
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
            Spot spot = canvas.map().spots().get(index);
            session.select(Selection.of(spot.place(), spot.id()));
        }
    }

    private void giveUp() {
        if (!canvas.cancelGesture()) {
            session.select(Selection.none());
        }
    }
}
