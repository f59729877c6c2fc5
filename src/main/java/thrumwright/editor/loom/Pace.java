package thrumwright.editor.loom;

import java.util.List;

/**
 * How a move goes on: how much of a row's yarn is laid in, and how fast. Nothing moves by itself here.
 *
 * @param laid share of the row's yarn, 0 to 1; beyond 1 it rests with the whole row laid in before it begins again
 * @param speed 1 as usual
 * @param going whether it goes on by itself
 */
record Pace(double laid, double speed, boolean going) {
    /** A row takes so many seconds at the usual speed. */
    private static final double SECONDS = 7;
    /** How long the whole row is seen, as a share of that. */
    private static final double REST = 0.25;

    private static final double STEP = Math.sqrt(2);
    private static final double SLOWEST = 1.0 / 8;
    private static final double FASTEST = 8;

    static Pace usual(boolean going) {
        return new Pace(going ? 0 : 1, 1, going);
    }

    /** What is seen: 0 to 1. */
    double shown() {
        return Math.min(1, laid);
    }

    /** After some seconds, 0 or more. */
    Pace after(double seconds) {
        if (!going) {
            return this;
        }
        double on = laid + seconds * speed / SECONDS;
        return new Pace(on >= 1 + REST ? 0 : on, speed, true);
    }

    /** From the beginning of a row; at once whole where nothing moves. */
    Pace anew() {
        return new Pace(going ? 0 : 1, speed, going);
    }

    Pace faster() {
        return new Pace(laid, Math.min(FASTEST, speed * STEP), going);
    }

    Pace slower() {
        return new Pace(laid, Math.max(SLOWEST, speed / STEP), going);
    }

    /** Going on where it stopped, or stopped where it is. */
    Pace turned() {
        return new Pace(going ? shown() : laid >= 1 ? 0 : laid, speed, !going);
    }

    /**
     * Stopped at the next crossing; after the last one at the first.
     *
     * @param crossings shares of the row's yarn, the last is 1
     */
    Pace crossed(List<Double> crossings) {
        double next = crossings.stream()
                .filter(each -> each > laid + 1e-6)
                .findFirst()
                .orElse(crossings.get(0));
        return new Pace(next, speed, false);
    }
}
