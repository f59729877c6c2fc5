package thrumwright.editor.canvas.seen;

/**
 * How large the piece is shown.
 *
 * @param scale pixels per mm, where it is {@link Fit#FREE}
 */
public record Zoom(Fit fit, double scale) {
    /** The least and the greatest scale, pixels per mm. */
    public static final double LEAST = 0.2;

    public static final double MOST = 60;

    private static final double STEP = Math.pow(2, 0.25);

    /** How the scale is found. */
    public enum Fit {
        /** The whole piece fits the window. */
        PIECE,
        /** The whole width fits. */
        WIDTH,
        /** The height of one end fits. */
        END,
        /** As chosen. */
        FREE
    }

    public static Zoom fitting(Fit fit) {
        return new Zoom(fit, 1);
    }

    /** @param scale pixels per mm, any; the nearest there can be is taken */
    public static Zoom of(double scale) {
        return new Zoom(Fit.FREE, Math.max(LEAST, Math.min(MOST, scale)));
    }

    /**
     * Closer or farther.
     *
     * @param scale pixels per mm, more than 0
     * @param steps above 0: closer; four make it twice as large
     */
    public static Zoom from(double scale, double steps) {
        return of(scale * Math.pow(STEP, steps));
    }
}
