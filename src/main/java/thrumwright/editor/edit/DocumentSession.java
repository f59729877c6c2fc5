package thrumwright.editor.edit;

import java.nio.file.Path;
import java.util.Objects;
import java.util.Optional;
import java.util.function.BiPredicate;
import thrumwright.store.keeping.Fingerprint;

/**
 * A document being worked on, a piece or a class: its history and where it is on file.
 *
 * @param <S> what the document is at one moment, with what is selected in it
 */
public abstract sealed class DocumentSession<S> permits Session, ClassSession {
    final History<S> history;
    private Optional<Path> path;
    private Optional<Fingerprint> base = Optional.empty();

    /** @param same whether two moments differ by no more than what is selected */
    DocumentSession(Optional<Path> path, BiPredicate<S, S> same) {
        this.path = path;
        this.history = new History<>(same);
    }

    public History<S> history() {
        return history;
    }

    /** Where it is on file; empty if it is nowhere yet. */
    public Optional<Path> path() {
        return path;
    }

    void setPath(Optional<Path> where) {
        path = Objects.requireNonNull(where);
    }

    /** What its file held when it was read or written last; empty if nobody said. */
    public Optional<Fingerprint> base() {
        return base;
    }

    /** Says what the file held from which it was read, or to which it was written. */
    public void setBase(Optional<Fingerprint> held) {
        base = Objects.requireNonNull(held);
    }

    /** Whether the document differs from what was saved. */
    public abstract boolean dirty();

    /** Shows the document as it was at that moment. */
    abstract void goTo(S moment);

    /** The next edit is a step of its own. */
    public void endRun() {
        history.endRun();
    }

    /** Takes back what was done in a run that is still going on. */
    public void dropRun(Object run) {
        history.drop(run).ifPresent(this::goTo);
    }

    public void undo() {
        history.undo().ifPresent(this::goTo);
    }

    public void redo() {
        history.redo().ifPresent(this::goTo);
    }

    /** To where so many steps of the history are done. */
    public void jump(int count) {
        history.jump(count).ifPresent(this::goTo);
    }
}
