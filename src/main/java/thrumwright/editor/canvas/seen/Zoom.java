package thrumwright.editor.canvas.seen;

/**
 * How large the piece is shown, and what is left out of it.
 *
 * @param scale pixels per mm, where it is {@link Fit#FREE}
 */
public record Zoom(Fit fit, double scale, Breaks breaks) {
    /** The least and the greatest scale, pixels per mm. */
    public static final double LEAST = 0.04;

    public static final double MOST = 60;

    private static final double STEP = Math.pow(2, 0.25);

    /** What is left out. */
    public enum Breaks {
        /** Nothing but of the design. */
        NONE,
        /** Bare warp between the ends and the bars. */
        WARP,
        /** And the middle, between both selvedges. */
        MIDDLE
    }

    /** How the scale is found. */
    public enum Fit {
        /** At first sight: the loom, or both selvedges where so little of the window would be cloth. */
        FIRST(Breaks.WARP),
        /** The loom from bar to bar, in its whole width. */
        LOOM(Breaks.WARP),
        /** Both selvedges close up, in the whole height. */
        SELVEDGES(Breaks.MIDDLE),
        /** Both selvedges, and both ends whole, however fine the warp is. */
        ENDS(Breaks.MIDDLE),
        /** The height of one end. */
        END(Breaks.MIDDLE),
        /** The whole piece from bar to bar, with no warp left out. */
        PIECE(Breaks.NONE),
        /** As chosen. */
        FREE(Breaks.WARP);

        private final Breaks breaks;

        Fit(Breaks breaks) {
            this.breaks = breaks;
        }
    }

    public static Zoom fitting(Fit fit) {
        return new Zoom(fit, 1, fit.breaks);
    }

    /** @param scale pixels per mm, any; the nearest there can be is taken */
    public static Zoom of(double scale) {
        return new Zoom(Fit.FREE, within(scale), Breaks.WARP);
    }

    static double within(double scale) {
        return Math.max(LEAST, Math.min(MOST, scale));
    }

    /** Whether both ends are to be seen. */
    public boolean isWhole() {
        return fit != Fit.FREE && fit != Fit.END;
    }

    /**
     * Closer or farther; what is left out stays so.
     *
     * @param from pixels per mm now, more than 0
     * @param steps above 0: closer; four make it twice as large
     */
    public Zoom by(double from, double steps) {
        return new Zoom(Fit.FREE, within(from * Math.pow(STEP, steps)), breaks);
    }
}
