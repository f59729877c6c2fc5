package thrumwright.editor.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** The choice that is being made for a sheet. Whoever follows it listens. For one thread only. */
public final class SheetSetup {
    private final List<Runnable> listeners = new ArrayList<>();
    private SheetChoice choice;
    private Optional<Run> run = Optional.empty();

    /** Changes that can be taken back together, and the choice before them. */
    private record Run(Object of, SheetChoice before) {}

    public SheetSetup(SheetChoice choice) {
        this.choice = choice;
    }

    public SheetChoice choice() {
        return choice;
    }

    /**
     * Makes another choice.
     *
     * @param of changes in a row with the same run can be taken back together; null: none
     * @throws IllegalArgumentException if the change refuses; nothing has changed then
     */
    public void change(UnaryOperator<SheetChoice> change, Object of) {
        SheetChoice after = change.apply(choice);
        if (run.filter(now -> now.of() == of).isEmpty()) {
            run = Optional.ofNullable(of).map(begun -> new Run(begun, choice));
        }
        set(after);
    }

    private void set(SheetChoice other) {
        if (!other.equals(choice)) {
            choice = other;
            List.copyOf(listeners).forEach(Runnable::run);
        }
    }

    /** The next change begins another run. */
    public void endRun() {
        run = Optional.empty();
    }

    /** Takes back what was changed in a run that is still going on. */
    public void dropRun(Object of) {
        run.filter(now -> now.of() == of).ifPresent(now -> {
            run = Optional.empty();
            set(now.before());
        });
    }

    public void listen(Runnable listener) {
        listeners.add(listener);
    }
}
