package thrumwright.editor.canvas;

import java.awt.Dimension;
import java.awt.Point;
import java.awt.Rectangle;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JViewport;

/** Moves the window over the canvas; nothing, as long as the canvas lies in no viewport. */
record Scrolling(JComponent canvas) {
    private Optional<JViewport> viewport() {
        return canvas.getParent() instanceof JViewport viewport ? Optional.of(viewport) : Optional.empty();
    }

    boolean isPossible() {
        return viewport().isPresent();
    }

    /** Size of the window, pixels. */
    Dimension window() {
        return viewport().map(JViewport::getExtentSize).orElseGet(canvas::getSize);
    }

    /** Lays everything out anew, so that the canvas has the size that it wants. */
    void settle() {
        viewport().ifPresent(viewport -> viewport.getParent().validate());
    }

    /** Whether the window shows the canvas in its full height. */
    boolean showsFullHeight() {
        return canvas.getHeight() <= window().height;
    }

    /** Moves the window's upper left corner there, as far as the canvas goes. */
    void to(double left, double top) {
        Dimension window = window();
        viewport()
                .ifPresent(viewport -> viewport.setViewPosition(new Point(
                        inside(left, canvas.getWidth() - window.width),
                        inside(top, canvas.getHeight() - window.height))));
    }

    /** Moves the window's upper edge there, as far as the canvas goes. */
    void toHeight(double top) {
        to(-canvas.getX(), top);
    }

    private static int inside(double place, int most) {
        return Math.max(0, Math.min((int) Math.round(place), most));
    }

    /**
     * Moves the window so that a height comes to its middle.
     *
     * @param left where its left edge is wanted, pixels of the canvas
     * @param middle pixels of the canvas
     */
    void toMiddle(int left, double middle, int width) {
        Rectangle seen = canvas.getVisibleRect();
        canvas.scrollRectToVisible(new Rectangle(left, (int) middle - seen.height / 2, width, seen.height));
    }

    /** The middle of what is seen. */
    Point middle() {
        Rectangle seen = canvas.getVisibleRect();
        return new Point((int) seen.getCenterX(), (int) seen.getCenterY());
    }
}
