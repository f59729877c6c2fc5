package thrumwright.block;

import java.util.Optional;

/**
 * A yarn on a warp: all that a block's geometry needs to know.
 *
 * @param ends number N of warp ends, 2 or more
 * @param spacing s from one end's middle to the next, mm, more than 0
 * @param warp diameter D_w of a warp end, mm
 * @param relaxed diameter d of the yarn, mm
 * @param beaten thickness t of the yarn in the packed cloth, mm
 * @param posts the loom's posts, if it has any
 */
public record Setting(int ends, double spacing, double warp, double relaxed, double beaten, Optional<Posts> posts) {
    public Setting {
        if (ends < 2 || !(spacing > 0) || !(warp > 0) || !(relaxed > 0) || !(beaten > 0)) {
            throw new IllegalArgumentException("a setting needs two warp ends and sizes above 0");
        }
    }

    /** The same yarn on a warp with another number of ends. */
    public Setting withEnds(int other) {
        return new Setting(other, spacing, warp, relaxed, beaten, posts);
    }

    /** D = D_w + t: twice the radius of the yarn's middle line on a warp end, mm, more than 0. */
    public double gauge() {
        return warp + beaten;
    }

    /** Radius of the yarn's middle line on a warp end, mm, more than 0. */
    public double radius() {
        return gauge() / 2;
    }

    /** Whether warp and yarn together are as thick as the space there is: D ≥ s. */
    public boolean jammed() {
        return gauge() >= spacing;
    }

    /** The radius that still fits between the ends: that of the jam where the yarn is too thick. */
    double weavingRadius() {
        return Math.min(gauge(), spacing) / 2;
    }

    /** θ: how far the yarn wraps round an end each way from its top, in radians; sin θ = D/s. */
    public double wrapAngle() {
        return Math.asin(Math.min(1, gauge() / spacing));
    }

    /**
     * ℓ: length of a plain pick over one space, mm, more than 0: D(θ + cot θ); at the jam s·π/2. Peirce's geometry for a straight warp
     * (F. T. Peirce, J. Textile Inst. 28 (1937) T45).
     */
    public double space() {
        double angle = wrapAngle();
        return 2 * weavingRadius() * (angle + 1 / Math.tan(angle));
    }

    /** Yarn in so many plain picks over the whole warp, mm, more than 0: n(N−1)ℓ + (n−1)·turn(t). */
    public double plain(int picks) {
        return (double) picks * (ends - 1) * space() + (picks - 1) * turn(beaten);
    }

    /**
     * Half way round the edge end while climbing, mm, more than 0.
     *
     * @param climb mm, up or down
     */
    public double turn(double climb) {
        return Math.hypot(Math.PI * gauge() / 2, climb);
    }

    /** From the left edge end's middle to the last one's, mm, more than 0. */
    public double span() {
        return (ends - 1) * spacing;
    }
}
