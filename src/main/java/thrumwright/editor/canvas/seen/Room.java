package thrumwright.editor.canvas.seen;

import java.awt.Dimension;

/**
 * The room that a piece is shown in.
 *
 * @param width of the window, pixels
 * @param height of the window, pixels
 * @param canvasWidth of the whole canvas, pixels; the window shows a part of it
 * @param canvasHeight of the whole canvas, pixels
 * @param left what the window keeps free of the picture at its left, pixels
 * @param right what it keeps free at its right, pixels
 * @param scrolls whether the window can be moved over the canvas
 * @param density device pixels per pixel of the canvas, more than 0
 */
public record Room(
        int width,
        int height,
        int canvasWidth,
        int canvasHeight,
        int left,
        int right,
        boolean scrolls,
        double density) {
    Dimension canvas() {
        return new Dimension(canvasWidth, canvasHeight);
    }

    /** Whether the window is as large as there. */
    boolean sameWindow(Room other) {
        return width == other.width && height == other.height;
    }

    /** What the window has for the picture, pixels, 1 or more. */
    double between() {
        return Math.max(1, width - left - right);
    }

    /** On the border of two device pixels, so that what has been painted stays good when the canvas moves. */
    double onPixel(double place) {
        return Math.round(place * density) / density;
    }
}
