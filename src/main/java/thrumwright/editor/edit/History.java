package thrumwright.editor.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiPredicate;

/**
 * Everything that was done to a document, each step with the moment before and after it; without limit.
 *
 * @param <S> what the document is at one moment
 */
public final class History<S> {
    private record NamedStep<S>(String name, Object run, S before, S after) {}

    private final List<NamedStep<S>> steps = new ArrayList<>();
    private final BiPredicate<S, S> same;
    /** Names that were met lately, by their hash: the same is mostly done many times over. */
    private final String[] known = new String[1024];

    private int done;

    /** @param same whether nothing was done between two moments */
    History(BiPredicate<S, S> same) {
        this.same = same;
    }

    /** Forgets everything. */
    void clear() {
        steps.clear();
        done = 0;
    }

    /**
     * Notes a step; what was undone before it is forgotten.
     *
     * @param run steps in a row with the same run, such as the letters typed in one field, count as one; null: a step of
     *     its own
     */
    void add(String name, Object run, S before, S after) {
        steps.subList(done, steps.size()).clear();
        NamedStep<S> last = done == 0 ? null : steps.get(done - 1);
        if (run == null || last == null || last.run() != run) {
            steps.add(new NamedStep<>(shared(name), run, before, after));
        } else if (same.test(last.before(), after)) {
            steps.remove(done - 1);
        } else {
            steps.set(done - 1, new NamedStep<>(shared(name), run, last.before(), after));
        }
        done = steps.size();
    }

    /** The very name that an earlier step has, if one was called so lately: a hundred thousand names take room. */
    private String shared(String name) {
        int hash = name.hashCode();
        int place = (hash ^ hash >>> 10 ^ hash >>> 20) & known.length - 1;
        if (!name.equals(known[place])) {
            known[place] = name;
        }
        return known[place];
    }

    /** The next step is one of its own, whatever its run. */
    void endRun() {
        if (done > 0 && steps.get(done - 1).run() != null) {
            NamedStep<S> last = steps.get(done - 1);
            steps.set(done - 1, new NamedStep<>(last.name(), null, last.before(), last.after()));
        }
    }

    /** Takes the last step away again if it belongs to that run: the moment before it. */
    Optional<S> drop(Object run) {
        if (done == 0 || steps.get(done - 1).run() != run) {
            return Optional.empty();
        }
        done--;
        return Optional.of(steps.remove(done).before());
    }

    /** The document before a run that is still going on; empty if the last step isn't of that run. */
    Optional<S> before(Object run) {
        return run == null || done == 0 || steps.get(done - 1).run() != run
                ? Optional.empty()
                : Optional.of(steps.get(done - 1).before());
    }

    /** One step back; empty at the beginning. */
    Optional<S> undo() {
        return done == 0 ? Optional.empty() : Optional.of(steps.get(--done).before());
    }

    /** One step on again; empty at the end. */
    Optional<S> redo() {
        return done == steps.size()
                ? Optional.empty()
                : Optional.of(steps.get(done++).after());
    }

    /**
     * To where so many steps are done.
     *
     * @param count 0 to the number of steps
     */
    Optional<S> jump(int count) {
        if (count < 0 || count > steps.size()) {
            throw new IllegalArgumentException("the history has " + steps.size() + " steps");
        }
        if (count == done) {
            return Optional.empty();
        }
        boolean back = count < done;
        done = count;
        return Optional.of(
                back ? steps.get(count).before() : steps.get(count - 1).after());
    }

    /** The document where so many steps were done; empty if nothing was done to it yet. */
    Optional<S> at(int count) {
        if (steps.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(
                count < steps.size()
                        ? steps.get(count).before()
                        : steps.get(count - 1).after());
    }

    /** The names of all steps, done or undone, from the first. */
    public List<String> names() {
        return steps.stream().map(NamedStep::name).toList();
    }

    /** How many of the steps are done. */
    public int done() {
        return done;
    }

    public Optional<String> undoName() {
        return done == 0 ? Optional.empty() : Optional.of(steps.get(done - 1).name());
    }

    public Optional<String> redoName() {
        return done == steps.size()
                ? Optional.empty()
                : Optional.of(steps.get(done).name());
    }
}
