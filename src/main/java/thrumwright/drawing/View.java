package thrumwright.drawing;

/**
 * Where the cloth lies on the page: x to the right, y up the warp, both in mm, become units of the page with y down.
 *
 * @param scale page units per mm, more than 0
 * @param left page x of the cloth's x = 0
 * @param base page y of the cloth's y = 0
 */
public record View(double scale, double left, double base) {
    public View {
        if (!(scale > 0)) {
            throw new IllegalArgumentException("a view needs a scale above 0");
        }
    }

    public double x(double mm) {
        return left + mm * scale;
    }

    public double y(double mm) {
        return base - mm * scale;
    }

    public double length(double mm) {
        return mm * scale;
    }

    /** The cloth's y under a page y. */
    public double clothY(double pageY) {
        return (base - pageY) / scale;
    }

    /** The cloth's x under a page x. */
    public double clothX(double pageX) {
        return (pageX - left) / scale;
    }

    /** The same view with the cloth's y = 0 at another height of the cloth. */
    public View raised(double mm) {
        return new View(scale, left, y(mm));
    }
}
