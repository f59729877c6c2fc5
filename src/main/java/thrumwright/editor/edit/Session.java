package thrumwright.editor.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thrumwright.piece.Piece;
import thrumwright.plan.Plan;

/**
 * A piece that is open: its state, its history, and what was saved of it. Tells its listeners of every change. The plan
 * is derived when it is asked for. To be used from one thread.
 */
public final class Session {
    private final History history = new History();
    private final List<Runnable> listeners = new ArrayList<>();
    private State state;
    private Piece saved;
    private Plan plan;

    /** @param saved what is on file; a piece that was never saved is compared with how it began */
    public Session(Piece piece, Piece saved) {
        this.state = new State(piece, Optional.empty());
        this.saved = saved;
    }

    public void listen(Runnable listener) {
        listeners.add(listener);
    }

    public Piece piece() {
        return state.piece();
    }

    public Optional<Chosen> chosen() {
        return state.chosen();
    }

    public Plan plan() {
        if (plan == null || plan.piece() != state.piece()) {
            plan = Plan.of(state.piece());
        }
        return plan;
    }

    /** Whether the piece differs from what was saved. */
    public boolean isDirty() {
        return !state.piece().equals(saved);
    }

    /** To be called once the piece is safely on file. */
    public void saved(Piece onFile) {
        saved = onFile;
        tell();
    }

    /** Chooses a block, or nothing; that is no edit. */
    public void choose(Optional<Chosen> chosen) {
        State next = new State(state.piece(), chosen).checked();
        if (!next.equals(state)) {
            state = next;
            tell();
        }
    }

    /**
     * Does an edit. One that changes nothing leaves no trace.
     *
     * @throws IllegalArgumentException if the piece can't be so; nothing has changed then
     */
    public void apply(Edit edit) {
        State next = edit.change().apply(state).checked();
        if (next.piece().equals(state.piece())) {
            choose(next.chosen());
            return;
        }
        history.add(new History.Done(edit.name(), state, next));
        state = next;
        tell();
    }

    /** What undo would take back, if anything. */
    public Optional<String> undoable() {
        return history.undoable().map(History.Done::name);
    }

    /** What redo would bring again, if anything. */
    public Optional<String> redoable() {
        return history.redoable().map(History.Done::name);
    }

    public void undo() {
        if (history.undoable().isPresent()) {
            state = history.undo();
            tell();
        }
    }

    public void redo() {
        if (history.redoable().isPresent()) {
            state = history.redo();
            tell();
        }
    }

    /** Names of all that was done, the first first, including what is undone at the moment. */
    public List<String> history() {
        return history.names();
    }

    /** How many of {@link #history} are done at the moment. */
    public int historyPosition() {
        return history.position();
    }

    /** Undoes or redoes until so many changes are done. */
    public void jump(int position) {
        int wanted = Math.max(0, Math.min(position, history.names().size()));
        while (history.position() > wanted) {
            state = history.undo();
        }
        while (history.position() < wanted) {
            state = history.redo();
        }
        tell();
    }

    private void tell() {
        List.copyOf(listeners).forEach(Runnable::run);
    }
}
