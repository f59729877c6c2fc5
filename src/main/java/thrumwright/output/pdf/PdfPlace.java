package thrumwright.output.pdf;

/**
 * Where the origin has been moved to. Every outline is told from its own beginning, so that the same outline is the same
 * text; and a step that comes again is told with the same digits, so that a row of yarn packs into next to nothing.
 */
final class PdfPlace {
    /** Points: half a hundredth, in which all is told, but for a little. */
    private static final double NEAR = 0.0045;

    private double x;
    private double y;
    private double stepX;
    private double stepY;

    /** In points. */
    PdfPlace(double x, double y) {
        this.x = x;
        this.y = y;
    }

    PdfPlace copy() {
        PdfPlace copy = new PdfPlace(x, y);
        copy.stepX = stepX;
        copy.stepY = stepY;
        return copy;
    }

    double x() {
        return x;
    }

    double y() {
        return y;
    }

    /**
     * Moves the origin to a place, points.
     *
     * @param again whether the next step is to be the same
     */
    void move(PdfBytes out, double toX, double toY, boolean again) {
        double dx = toX - x;
        double dy = toY - y;
        if (near(dx, 0) && near(dy, 0)) {
            return;
        }
        if (!(near(dx, stepX) && near(dy, stepY))) {
            stepX = again ? PdfBytes.finely(dx) : PdfBytes.coarsely(dx);
            stepY = again ? PdfBytes.finely(dy) : PdfBytes.coarsely(dy);
        }
        out.add("1 0 0 1 ").fine(stepX).fine(stepY).add("cm\n");
        x += stepX;
        y += stepY;
    }

    /** Whether another place is one step of the same kind away from a place that lies one step away. */
    static boolean again(double from, double over, double to) {
        return near(to - over, over - from);
    }

    private static boolean near(double a, double b) {
        return Math.abs(a - b) < NEAR;
    }

    /** Follows something whose origin went from one place to another. */
    void follow(double fromX, double fromY, PdfPlace to) {
        x += to.x - fromX;
        y += to.y - fromY;
        stepX = to.stepX;
        stepY = to.stepY;
    }
}
