package thrumwright.output.page;

import java.awt.Graphics2D;

/** Something that takes up a stretch of a page and isn't divided. */
public interface Part {
    /** In points, for a given width. */
    double height(double width);

    /** Paints into exactly the place that {@link #height} asked for. */
    void paint(Graphics2D g, double x, double y, double width);
}
