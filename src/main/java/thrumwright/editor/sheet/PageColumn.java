package thrumwright.editor.sheet;

import java.awt.Dimension;
import java.awt.Rectangle;

/**
 * Where pages lie when they are shown one below the other.
 *
 * @param count how many there are
 * @param width of a page, points
 * @param height of a page, points
 * @param scale pixels in a point
 * @param room width that there is for them, pixels; narrower pages stand in its middle
 */
record PageColumn(int count, double width, double height, double scale, int room) {
    /** Around pages, pixels. */
    static final int GAP = 14;

    /** The scale at which pages fit a window. */
    static double fitting(PageZoom zoom, double width, double height, Dimension window) {
        double across = Math.max(0.05, (window.width - 2 * GAP) / width);
        double down = Math.max(0.05, (window.height - 2 * GAP) / height);
        return switch (zoom.kind()) {
            case WHOLE -> Math.min(across, down);
            case WIDTH -> across;
            case FREE -> zoom.scale();
        };
    }

    private int pageWidth() {
        return (int) Math.max(1, Math.floor(width * scale));
    }

    private int pageHeight() {
        return (int) Math.max(1, Math.floor(height * scale));
    }

    /** From the top of one page to the top of the next, pixels. */
    int pitch() {
        return pageHeight() + GAP;
    }

    Rectangle page(int number) {
        int left = Math.max(GAP, (room - pageWidth()) / 2);
        return new Rectangle(left, GAP + number * pitch(), pageWidth(), pageHeight());
    }

    Dimension size() {
        return new Dimension(pageWidth() + 2 * GAP, GAP + count * pitch());
    }

    /** The page at some height, or the one next to it. */
    int pageAt(double y) {
        return (int) Math.max(0, Math.min(count - 1, Math.floor((y - GAP / 2.0) / pitch())));
    }

    /** Where some height lies, in pages from the top of the first: 2.5 is the middle of the third. */
    double inPages(double y) {
        return (y - GAP) / pitch();
    }

    /** The height of such a place. */
    double height(double inPages) {
        return GAP + inPages * pitch();
    }
}
