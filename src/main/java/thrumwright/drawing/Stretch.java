package thrumwright.drawing;

/**
 * A piece of yarn that lies wholly in front of the warp or wholly behind it, seen from the front.
 *
 * @param front whether it lies in front
 * @param order where along its yarn it lies, 0 to 1: what is worked later lies on top
 * @param x across the width, mm
 * @param y up the warp from the block's lower edge, mm
 * @param width how thick the yarn shows there, mm
 */
record Stretch(boolean front, double order, double[] x, double[] y, double[] width) {
    double lowX() {
        return Math.min(x[0], x[x.length - 1]);
    }

    double highX() {
        return Math.max(x[0], x[x.length - 1]);
    }
}
