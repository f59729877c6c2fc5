package thrumwright.output.page;

import java.awt.Graphics2D;

/** Something that takes up a stretch of a page and isn't divided. */
public interface Part {
    /** In points, 0 or more, for a given width in points. */
    double height(double width);

    /**
     * Paints into exactly the place that {@link #height} asked for.
     *
     * @param x of the upper left corner, points, 0 or more
     * @param y of the upper left corner, points, 0 or more
     * @param width points, more than 0
     */
    void paint(Graphics2D g, double x, double y, double width);
}
