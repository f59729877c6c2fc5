package thrumwright.editor.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;

/** The choice that is being made for a sheet. Whoever follows it listens. For one thread only. */
public final class SheetSetup {
    private final List<Runnable> listeners = new ArrayList<>();
    private SheetChoice choice;
    private Object run;
    private SheetChoice beforeRun;

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
        if (of == null || of != run) {
            run = of;
            beforeRun = choice;
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
        run = null;
    }

    /** Takes back what was changed in a run that is still going on. */
    public void dropRun(Object of) {
        if (of != null && of == run) {
            run = null;
            set(beforeRun);
        }
    }

    public void listen(Runnable listener) {
        listeners.add(listener);
    }
}
