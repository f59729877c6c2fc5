package thrumwright.editor.canvas.seen;

/**
 * What lies outside the cloth at one of its edges: bare warp up to a bar, air up to a post. Little is shown as it is; of
 * much what lies next to the cloth and what lies farthest away, and the rest is broken out.
 *
 * @param length mm; below 0 where the end doesn't fit its loom
 * @param next how much of it is always shown next to the cloth, mm, 0 or more
 * @param far how much of it is shown farthest away, pixels, 0 or more
 * @param scale pixels per mm, more than 0
 */
record Outside(double length, double next, double far, double scale) {
    /** What is left out takes so much, pixels. */
    static final double GAP = 6;

    /** Breaking out less than that isn't worth it, pixels. */
    private static final double WORTH = 4;

    boolean broken() {
        return (length - next) * scale > GAP + far + WORTH;
    }

    /** All of it, pixels, 0 or more. */
    double pixels() {
        return broken() ? next * scale + GAP + far : Math.max(0, length * scale);
    }

    /** By how much the farthest comes nearer since something is left out, pixels. */
    double nearer() {
        return broken() ? length * scale - pixels() : 0;
    }

    /** Where what is shown farthest away begins, mm from the cloth. */
    double farFrom() {
        return length - far / scale;
    }
}
