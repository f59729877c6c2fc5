package thrumwright.editor.loom;

import java.util.function.BooleanSupplier;
import java.util.function.UnaryOperator;
import javax.swing.Timer;

/** Lets a picture move on, sixty times a second while it is wanted; when nothing moves, it does nothing. */
final class Motion {
    /** From one picture to the next, ms. */
    private static final int FRAME = 16;

    private static final double NANOS = 1e9;

    private final Timer timer = new Timer(FRAME, event -> moveOn());
    private final BooleanSupplier seen;
    private final Moved moved;
    private Pace pace;
    private long before;

    /** Is told when there is more to be seen. */
    @FunctionalInterface
    interface Moved {
        /**
         * @param before share of the row that was to be seen, 0 to 1
         * @param now what is to be seen; less where it begins again
         */
        void from(double before, double now);
    }

    /**
     * @param seen whether there is anything to be seen that can move
     * @param moved paints what moves
     */
    Motion(boolean moving, BooleanSupplier seen, Moved moved) {
        this.pace = Pace.usual(moving);
        this.seen = seen;
        this.moved = moved;
        timer.setCoalesce(true);
    }

    Pace pace() {
        return pace;
    }

    void set(UnaryOperator<Pace> change) {
        pace = change.apply(pace);
        moveOrRest();
    }

    /** Whether a timer runs. */
    boolean busy() {
        return timer.isRunning();
    }

    void moveOrRest() {
        boolean wanted = pace.going() && seen.getAsBoolean();
        if (wanted && !timer.isRunning()) {
            before = System.nanoTime();
            timer.start();
        } else if (!wanted) {
            timer.stop();
        }
    }

    private void moveOn() {
        long now = System.nanoTime();
        double laid = pace.shown();
        pace = pace.after((now - before) / NANOS);
        before = now;
        if (laid != pace.shown()) {
            moved.from(laid, pace.shown());
        }
    }
}
