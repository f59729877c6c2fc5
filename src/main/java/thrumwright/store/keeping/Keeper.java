package thrumwright.store.keeping;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.ScheduledThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Consumer;
import thrumwright.store.FileProblem;

/**
 * Keeps on disk what isn't saved in any window, beside whoever works there: one thread writes, and of many changes in a row
 * only the last.
 */
public final class Keeper {
    /** Between a change and its being written; what comes meanwhile is written with it. */
    private static final Duration PAUSE = Duration.ofMillis(250);

    /** So long the thread that writes waits for more; longer than the pause, so that it stays while somebody works. */
    private static final Duration IDLE = Duration.ofSeconds(1);

    private static final Duration PATIENCE = Duration.ofSeconds(5);

    private final Optional<Journals> journals;
    private final Set<Kept> open = ConcurrentHashMap.newKeySet();
    private final AtomicBoolean told = new AtomicBoolean();
    private final ScheduledExecutorService writer = writer();

    private Keeper(Optional<Journals> journals) {
        this.journals = journals;
    }

    /** Its thread ends when there is nothing to write, so that nobody need end it who has had a keeper. */
    private static ScheduledExecutorService writer() {
        ScheduledThreadPoolExecutor one = new ScheduledThreadPoolExecutor(1, work -> {
            Thread thread = new Thread(work, "journals");
            thread.setDaemon(true);
            return thread;
        });
        one.setKeepAliveTime(IDLE.toMillis(), TimeUnit.MILLISECONDS);
        one.allowCoreThreadTimeOut(true);
        return one;
    }

    /** @param folder which need not be there yet */
    public static Keeper in(Path folder) {
        return new Keeper(Optional.of(new Journals(folder)));
    }

    /** Keeps nothing. */
    public static Keeper nowhere() {
        return new Keeper(Optional.empty());
    }

    /**
     * For one more open document.
     *
     * @param trouble is told, on a thread of its own, why nothing can be kept; only one document tells, and only once
     */
    public Kept begin(Consumer<FileProblem> trouble) {
        Kept kept = new Kept(this, Objects.requireNonNull(trouble));
        open.add(kept);
        return kept;
    }

    /**
     * What programs left that ended before it was saved, the latest first; what nobody came back for is taken away.
     *
     * @throws FileProblem if it can't be looked at
     */
    public List<Journals.Left> left() throws FileProblem {
        if (journals.isEmpty()) {
            return List.of();
        }
        journals.get().sweep(Instant.now());
        return journals.get().left();
    }

    /**
     * Takes away what was left.
     *
     * @throws FileProblem if that can't be done
     */
    public void forget(Journals.Left left) throws FileProblem {
        if (journals.isPresent()) {
            journals.get().forget(left.id());
        }
    }

    /** Returns when all that was changed until now is on disk, or can't be; for the last moment of the program. */
    public void flush() {
        try {
            writer.submit(() -> open.forEach(Kept::write)).get(PATIENCE.toMillis(), TimeUnit.MILLISECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        } catch (ExecutionException | TimeoutException e) {
            throw new IllegalStateException("what isn't saved was not kept to the end", e);
        }
    }

    Journal journal() throws FileProblem {
        return journals.orElseThrow().begin();
    }

    void forget(String id) throws FileProblem {
        journals.orElseThrow().forget(id);
    }

    void soon(Runnable work) {
        if (journals.isPresent()) {
            writer.schedule(work, PAUSE.toMillis(), TimeUnit.MILLISECONDS);
        }
    }

    void now(Runnable work) {
        if (journals.isPresent()) {
            writer.execute(work);
        }
    }

    void closed(Kept kept) {
        open.remove(kept);
    }

    void tell(Consumer<FileProblem> trouble, FileProblem problem) {
        if (!told.getAndSet(true)) {
            trouble.accept(problem);
        }
    }
}
