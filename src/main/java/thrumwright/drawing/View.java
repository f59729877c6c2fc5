package thrumwright.drawing;

/**
 * Where the cloth lies on the page: x to the right, y up the warp, both in mm, become units of the page with y down.
 *
 * @param scale page units per mm, more than 0
 * @param left page x of the cloth's x = 0
 * @param base page y of the cloth's y = 0
 */
public record View(double scale, double left, double base) {
    /** @throws IllegalArgumentException unless the scale is above 0 page units per mm */
    public View {
        if (!(scale > 0)) {
            throw new IllegalArgumentException("a view needs a scale above 0");
        }
    }

    /** The page's x of a place of the cloth, mm from the first warp end, any. */
    public double x(double mm) {
        return left + mm * scale;
    }

    /** The page's y of a height of the cloth, mm, any. */
    public double y(double mm) {
        return base - mm * scale;
    }

    /** How many page units a length of the cloth takes, mm, any. */
    public double length(double mm) {
        return mm * scale;
    }

    /** The cloth's y under a page y: mm, any. */
    public double clothY(double pageY) {
        return (base - pageY) / scale;
    }

    /** The cloth's x under a page x: mm, any. */
    public double clothX(double pageX) {
        return (pageX - left) / scale;
    }

    /** The same view with the cloth's y = 0 at another height of the cloth, mm, any. */
    public View raised(double mm) {
        return new View(scale, left, y(mm));
    }
}
