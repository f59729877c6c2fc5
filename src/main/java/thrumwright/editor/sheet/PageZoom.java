package thrumwright.editor.sheet;

/**
 * How large pages are shown.
 *
 * @param scale pixels in a point, where the kind is {@link Kind#FREE}
 */
public record PageZoom(Kind kind, double scale) {
    /** The least and the greatest scale, pixels in a point. */
    private static final double LEAST = 1.0 / 6;

    private static final double MOST = 8;
    private static final double STEP = Math.pow(2, 0.25);

    /** How the scale is found. */
    public enum Kind {
        /** A whole page fits the window. */
        WHOLE,
        /** A page's width fits. */
        WIDTH,
        /** As chosen. */
        FREE
    }

    public static PageZoom fitting(Kind kind) {
        return new PageZoom(kind, 1);
    }

    /** @param scale pixels in a point; the nearest from 1/6 to 8 is taken */
    public static PageZoom of(double scale) {
        return new PageZoom(Kind.FREE, Math.max(LEAST, Math.min(MOST, scale)));
    }

    /**
     * @param scale pixels in a point, more than 0
     * @param steps above 0: closer; four make it twice as large
     */
    public static PageZoom from(double scale, double steps) {
        return of(scale * Math.pow(STEP, steps));
    }
}
