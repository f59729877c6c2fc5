package thrumwright.store.keeping;

import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import java.util.function.Supplier;
import thrumwright.store.FileProblem;

/** What is kept of one open document while it isn't saved. Any thread may tell of changes. */
public final class Kept {
    private final Keeper keeper;
    private final Consumer<FileProblem> trouble;
    private final AtomicReference<Supplier<Unsaved>> latest = new AtomicReference<>();
    private final AtomicReference<String> instead = new AtomicReference<>();
    /** Only for the thread that writes. */
    private Optional<Journal> journal = Optional.empty();

    Kept(Keeper keeper, Consumer<FileProblem> trouble) {
        this.keeper = keeper;
        this.trouble = trouble;
    }

    /**
     * The document is another than what is on file.
     *
     * @param state as it is now, to be worked out on a thread of its own
     */
    public void changed(Supplier<Unsaved> state) {
        if (latest.getAndSet(state) == null) {
            keeper.soon(this::write);
        }
    }

    /** Goes on with what was left by a program before; that goes once this document is kept itself, or saved. */
    public void takesOver(Journals.Left left) {
        instead.set(left.id());
    }

    /** The document is on file as it is. */
    public void saved() {
        latest.set(null);
        keeper.now(this::clear);
    }

    /** The document is closed, saved or given up. */
    public void close() {
        latest.set(null);
        keeper.now(this::end);
        keeper.closed(this);
    }

    void write() {
        Supplier<Unsaved> state = latest.getAndSet(null);
        if (state == null) {
            return;
        }
        try {
            if (journal.isEmpty()) {
                journal = Optional.of(keeper.journal());
            }
            journal.get().keep(state.get());
            forgetBefore();
        } catch (FileProblem e) {
            keeper.tell(trouble, e);
        }
    }

    private void clear() {
        try {
            if (journal.isPresent()) {
                journal.get().clear();
            }
            forgetBefore();
        } catch (FileProblem e) {
            keeper.tell(trouble, e);
        }
    }

    private void end() {
        clear();
        try {
            if (journal.isPresent()) {
                journal.get().close();
            }
        } catch (FileProblem e) {
            keeper.tell(trouble, e);
        }
    }

    private void forgetBefore() throws FileProblem {
        String id = instead.getAndSet(null);
        if (id != null) {
            keeper.forget(id);
        }
    }
}
