package thrumwright.editor.edit;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.UnaryOperator;
import thrumwright.piece.ClassMember;
import thrumwright.piece.ClassSet;
import thrumwright.piece.Piece;
import thrumwright.plan.finding.ClassPlan;
import thrumwright.store.ClassFile;

/**
 * One class being worked on: its looms, which of them is selected, its history and where it is on file. The piece is not
 * changed here: the class follows it. For one thread only.
 */
public final class ClassSession extends DocumentSession<ClassSession.ClassMoment> {
    /** The class and its selected loom at one moment. */
    record ClassMoment(ClassFile file, int selected) {}

    private final List<Runnable> listeners = new CopyOnWriteArrayList<>();
    private ClassMoment state;
    private ClassSet saved;
    private Optional<String> lost = Optional.empty();
    private ClassPlan plan;

    /** @param path where it was read from; empty for a class that is nowhere yet */
    public ClassSession(ClassFile file, Optional<Path> path) {
        super(path, (one, other) -> one.file().set().equals(other.file().set()));
        this.state = new ClassMoment(file, 0);
        this.saved = file.set();
    }

    /** A class of one loom that is like the piece's, nowhere on file yet. */
    public static ClassSession of(Piece piece) {
        ClassSet set = new ClassSet("", piece, List.of(), List.of(ClassMember.named("")));
        return new ClassSession(ClassFile.fresh(set), Optional.empty());
    }

    public ClassSet set() {
        return state.file().set();
    }

    /** The class with whatever its file held beside it. */
    public ClassFile file() {
        return state.file();
    }

    /** What follows from the class; worked out when it is first wanted. */
    public ClassPlan plan() {
        if (plan == null || plan.set() != set()) {
            plan = ClassPlan.of(set());
        }
        return plan;
    }

    /** The position of the selected loom, from 0. */
    public int selected() {
        return state.selected();
    }

    public ClassMember member() {
        return set().members().get(selected());
    }

    /** The piece is saved by itself. */
    @Override
    public boolean dirty() {
        return !(set().title().equals(saved.title())
                && set().yarns().equals(saved.yarns())
                && set().members().equals(saved.members()));
    }

    /** Why the class can't follow its piece any more; empty if it does. */
    public Optional<String> lost() {
        return lost;
    }

    public void select(int index) {
        if (index != selected() && index >= 0 && index < set().members().size()) {
            state = new ClassMoment(state.file(), index);
            tell();
        }
    }

    /**
     * Changes the class.
     *
     * @param run changes in a row with the same run are one step of the history; null: a step of its own
     * @throws IllegalArgumentException if the change refuses, with the reason for the weaver; nothing has changed then
     */
    public void edit(UnaryOperator<ClassSet> change, Object run) {
        edit(change, selected(), run);
    }

    private void edit(UnaryOperator<ClassSet> change, int select, Object run) {
        ClassSet after = change.apply(set());
        if (after.equals(set())) {
            return;
        }
        ClassMoment before = state;
        state = new ClassMoment(state.file().with(after), select);
        history.add("", run, before, state);
        tell();
    }

    /** Puts other looms in the place of these; the piece stays as it is. */
    public void take(ClassSet other) {
        ClassSet taken = new ClassSet(other.title(), set().piece(), other.yarns(), other.members());
        edit(set -> taken, Math.min(selected(), other.members().size() - 1), null);
    }

    /** Adds a loom like the piece's after the selected one, and selects it. */
    public void add() {
        int index = selected() + 1;
        edit(set -> set.withMore(index, ClassMember.named("")), index, null);
    }

    /** Whether there can be one more. */
    public boolean canAdd() {
        return set().takesMore();
    }

    /** Whether the selected loom can be taken away: the last one can't. */
    public boolean canRemove() {
        return set().members().size() > 1;
    }

    /** Takes the selected loom away. */
    public void remove() {
        int index = selected();
        int then = Math.min(index, set().members().size() - 2);
        edit(set -> set.without(index), then, null);
    }

    public boolean canUndo() {
        return history.undoName().isPresent();
    }

    public boolean canRedo() {
        return history.redoName().isPresent();
    }

    /** Goes to another state of the class, with the piece as it is now if that can be. */
    @Override
    void goTo(ClassMoment other) {
        Piece piece = set().piece();
        state = other;
        follow(piece);
    }

    /** Takes the piece as it is now; a piece that can't be woven on every loom isn't taken, and {@link #lost} says why. */
    public void follow(Piece piece) {
        try {
            if (!piece.equals(set().piece())) {
                state = new ClassMoment(state.file().with(set().withPiece(piece)), selected());
            }
            lost = Optional.empty();
        } catch (IllegalArgumentException e) {
            lost = Optional.of(e.getMessage());
        }
        tell();
    }

    /**
     * Says that the class as it is now is on file.
     *
     * @param written as it was written
     */
    public void saved(ClassFile written, Path where) {
        state = new ClassMoment(written, selected());
        saved = written.set();
        setPath(Optional.of(where));
        tell();
    }

    /** Begins anew with another class. */
    public void replace(ClassFile other, Optional<Path> where) {
        state = new ClassMoment(other, 0);
        saved = other.set();
        setPath(where);
        history.clear();
        lost = Optional.empty();
        tell();
    }

    /** @return takes the listener away again */
    public Runnable listen(Runnable listener) {
        listeners.add(listener);
        return () -> listeners.remove(listener);
    }

    private void tell() {
        listeners.forEach(Runnable::run);
    }
}
