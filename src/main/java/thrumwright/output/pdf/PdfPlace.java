package thrumwright.output.pdf;

/**
 * Where the origin has been moved to, and by which step. Every outline is told from its own beginning, so that the same
 * outline is the same text; and a step that comes again is told with the same digits, so that a row of yarn packs into next
 * to nothing. All in points.
 */
record PdfPlace(double x, double y, double stepX, double stepY) {
    /** Half a hundredth, in which all is told, but for a little. */
    private static final double NEAR = 0.0045;

    PdfPlace(double x, double y) {
        this(x, y, 0, 0);
    }

    /**
     * Moves the origin on.
     *
     * @param again whether the next step is to be the same
     */
    PdfPlace move(PdfBytes out, double toX, double toY, boolean again) {
        double dx = toX - x;
        double dy = toY - y;
        if (near(dx, 0) && near(dy, 0)) {
            return this;
        }
        boolean same = near(dx, stepX) && near(dy, stepY);
        double acrossX = same ? stepX : again ? PdfBytes.finely(dx) : PdfBytes.coarsely(dx);
        double acrossY = same ? stepY : again ? PdfBytes.finely(dy) : PdfBytes.coarsely(dy);
        out.add("1 0 0 1 ").fine(acrossX).fine(acrossY).add("cm\n");
        return new PdfPlace(x + acrossX, y + acrossY, acrossX, acrossY);
    }

    /** Whether another place is one step of the same kind away from a place that lies one step away. */
    static boolean again(double from, double over, double to) {
        return near(to - over, over - from);
    }

    private static boolean near(double a, double b) {
        return Math.abs(a - b) < NEAR;
    }

    /** After something whose origin went from one place to another. */
    PdfPlace after(PdfPlace from, PdfPlace to) {
        return new PdfPlace(x + to.x - from.x, y + to.y - from.y, to.stepX, to.stepY);
    }
}
