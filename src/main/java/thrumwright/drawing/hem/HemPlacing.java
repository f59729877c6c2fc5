package thrumwright.drawing.hem;

/**
 * Where a hem that is seen from the side lies on the page.
 *
 * @param scale page units per mm, above 0
 * @param middle page x of the front layer's mid-plane
 * @param foldY page y of the bend
 * @param down whether the fold is below
 */
record HemPlacing(double scale, double middle, double foldY, boolean down) {
    double x(double z) {
        return middle + z * scale;
    }

    double y(double up) {
        return foldY + (down ? -1 : 1) * up * scale;
    }
}
