package thrumwright.editor.canvas;

/**
 * How large the piece is shown.
 *
 * @param scale pixels per mm, where the kind is {@link Kind#FREE}
 */
public record Zoom(Kind kind, double scale) {
    /** The least and the greatest scale, pixels per mm. */
    public static final double LEAST = 0.2;

    public static final double MOST = 60;

    private static final double STEP = Math.pow(2, 0.25);

    /** How the scale is found. */
    public enum Kind {
        /** The whole piece fits the window. */
        PIECE,
        /** The whole width fits. */
        WIDTH,
        /** The height of one end fits. */
        END,
        /** As chosen. */
        FREE
    }

    public static Zoom fitting(Kind kind) {
        return new Zoom(kind, 1);
    }

    public static Zoom of(double scale) {
        return new Zoom(Kind.FREE, Math.max(LEAST, Math.min(MOST, scale)));
    }

    /** @param steps above 0: closer; four make it twice as large */
    public static Zoom from(double scale, double steps) {
        return of(scale * Math.pow(STEP, steps));
    }
}
