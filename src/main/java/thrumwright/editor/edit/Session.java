package thrumwright.editor.edit;

import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;
import thrumwright.piece.Piece;
import thrumwright.plan.Plan;
import thrumwright.plan.Planned;
import thrumwright.plan.finding.Findings;
import thrumwright.store.PieceFile;

/**
 * One piece being worked on: the piece, what is selected, its history and where it is on file. Whoever shows it listens
 * to its changes. For one thread only.
 */
public final class Session extends DocumentSession<Moment> {
    private final List<Consumer<Change>> listeners = new CopyOnWriteArrayList<>();
    private PieceFile file;
    private Moment now;
    private Optional<Piece> preview = Optional.empty();
    private Planned planned;
    private Findings findings;

    /** @param path where it was read from; empty for a piece that is nowhere yet */
    public Session(PieceFile file, Optional<Path> path) {
        super(path, (one, other) -> one.piece().equals(other.piece()));
        this.file = Objects.requireNonNull(file);
        this.now = new Moment(file.piece(), Selection.none());
    }

    /** The piece as it is, without what is only tried. */
    public Piece piece() {
        return now.piece();
    }

    /** What is to be shown: the piece, or what a gesture would make of it. */
    public Piece shown() {
        return preview.orElse(piece());
    }

    /** Whether what is shown is only what a gesture would make of the piece; another trial is likely to come very soon. */
    public boolean isTrying() {
        return preview.isPresent();
    }

    /** The plan of what is to be shown; worked out when it is first wanted. */
    public Plan plan() {
        if (planned == null || planned.plan().piece() != shown()) {
            planned = planned == null ? Planned.of(shown()) : planned.next(shown());
            findings = null;
        }
        return planned.plan();
    }

    /** What the weaver should know of that plan; looked for when it is first wanted. */
    public Findings findings() {
        Plan now = plan();
        if (findings == null) {
            findings = Findings.of(now);
        }
        return findings;
    }

    public Selection selection() {
        return now.selection();
    }

    @Override
    public boolean dirty() {
        return piece() != file.piece() && !piece().equals(file.piece());
    }

    /**
     * Whether the piece was as it is on file where so many steps of the history were done.
     *
     * @param count 0 to the number of steps
     */
    public boolean isOnFile(int count) {
        return path().isPresent()
                && history.at(count).map(Moment::piece).orElse(piece()).equals(file.piece());
    }

    /** The piece with whatever its file held beside it, for writing. */
    public PieceFile toSave() {
        return file.with(piece());
    }

    /** Says that the piece as it is now is on file. */
    public void saved(Path where) {
        file = file.with(piece());
        setPath(Optional.of(where));
        tell(Change.FILE);
    }

    /** Begins anew with another piece. */
    public void replace(PieceFile other, Optional<Path> where) {
        file = other;
        setPath(where);
        history.clear();
        preview = Optional.empty();
        now = new Moment(other.piece(), Selection.none());
        tell(Change.PIECE);
        tell(Change.FILE);
    }

    /** @throws IllegalArgumentException if the edit refuses; nothing has changed then */
    public void edit(Edit edit) {
        edit(edit, null);
    }

    /**
     * Changes the piece.
     *
     * @param run edits in a row with the same run are one step of the history; null: a step of its own
     * @throws IllegalArgumentException if the edit refuses; nothing has changed then
     */
    public void edit(Edit edit, Object run) {
        Piece changed = edit.change().apply(piece());
        Piece after = TickEdits.kept(
                changed, history.before(run).map(Moment::piece).orElse(changed).ticks());
        boolean tried = preview.isPresent();
        preview = Optional.empty();
        if (after.equals(piece())) {
            if (tried) {
                tell(Change.PIECE);
            }
            edit.selects().ifPresent(this::select);
            return;
        }
        Moment before = now;
        now = new Moment(after, edit.selects().orElse(selection()).within(after));
        history.add(edit.name(), run, before, now);
        tell(Change.PIECE);
    }

    /**
     * Shows what an edit would do, without doing it.
     *
     * @return why the edit refuses, if it does; the piece is shown as it is then
     */
    public Optional<String> preview(Edit edit) {
        Optional<String> refused = Optional.empty();
        try {
            preview = Optional.of(edit.change().apply(piece()));
        } catch (IllegalArgumentException e) {
            preview = Optional.empty();
            refused = Optional.of(String.valueOf(e.getMessage()));
        }
        tell(Change.PIECE);
        return refused;
    }

    /** Shows the piece as it is again. */
    public void endPreview() {
        if (preview.isPresent()) {
            preview = Optional.empty();
            tell(Change.PIECE);
        }
    }

    @Override
    void goTo(Moment moment) {
        preview = Optional.empty();
        now = moment;
        tell(Change.PIECE);
    }

    /** Selects as many of those blocks as there are. */
    public void select(Selection other) {
        Selection there = other.within(shown());
        if (!there.equals(selection())) {
            now = new Moment(piece(), there);
            tell(Change.SELECTION);
        }
    }

    /** @return takes the listener away again */
    public Runnable listen(Consumer<Change> listener) {
        listeners.add(listener);
        return () -> listeners.remove(listener);
    }

    private void tell(Change change) {
        listeners.forEach(listener -> listener.accept(change));
    }
}
