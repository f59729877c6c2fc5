package thrumwright.plan;

import java.util.Optional;
import thrumwright.block.Support;

/**
 * A hem as it will be when folded. A cloth of thickness T that is bent by 180° uses πT/2 of its mid-plane, half from
 * each side, and its outside stands T beyond the bend's middle; so a fold adds (1 − π/4)·T to the depth (derived).
 *
 * @param blockId the fold
 * @param foldLine height of the fold's middle above the end's lowest line, mm
 * @param cloth H: height from the fold's middle to the hem's outer edge, mm; may be 0 under a band
 * @param thickness T of the cloth at the fold, mm
 * @param firstTurn H₁: depth of the part turned in first, mm; empty if turned once
 * @param mitre its corners, if they are turned in
 * @param band what it is faced with, if a band is sewn over it
 * @param sleeve what it takes, if it is to take something
 */
public record Hem(
        String blockId,
        double foldLine,
        double cloth,
        double thickness,
        Optional<Double> firstTurn,
        Optional<Mitre> mitre,
        Optional<SewnBand> band,
        Optional<Sleeve> sleeve) {
    /** What a fold adds to the depth, as a share of the thickness that is bent. */
    public static final double BEND = 1 - Math.PI / 4;

    /** What sums of heights differ by through rounding alone, mm. */
    private static final double HAIR = 1e-6;

    /**
     * What the hem is to take. A round bar b goes in if twice the depth is at least πb and half an inch of ease
     * (quilt-guild and conservation guidance on hanging sleeves); a slat b × h if the depth is at least b + h and half that
     * ease (derived); behind a hook-and-loop strip the hem reaches 5 mm beyond it above and below (CCI Notes 13/4).
     *
     * @param depth finished hem depth that it needs, mm
     */
    public record Sleeve(Support support, double depth) {
        /** Room for a bar to slide, mm. */
        public static final double EASE = 12;
        /** Hem beyond a strip on either side, mm. */
        public static final double STRIP_EDGE = 5;

        static Sleeve of(Support support) {
            if (support instanceof Support.RoundBar bar) {
                return new Sleeve(support, barDepth(bar.diameter().mm()));
            } else if (support instanceof Support.Slat slat) {
                return new Sleeve(
                        support, slatDepth(slat.width().mm(), slat.thickness().mm()));
            }
            return new Sleeve(support, stripDepth(support.size().mm()));
        }

        /** For a bar so thick, mm, more than 0. */
        public static double barDepth(double bar) {
            return (Math.PI * bar + EASE) / 2;
        }

        /** For a slat so wide and so thick, mm, more than 0. */
        public static double slatDepth(double wide, double thick) {
            return wide + thick + EASE / 2;
        }

        /** For a strip so wide, mm, more than 0. */
        public static double stripDepth(double strip) {
            return strip + 2 * STRIP_EDGE;
        }

        /** Whether it slides in between the layers. */
        public boolean slidesIn() {
            return !(support instanceof Support.Strip);
        }
    }

    /**
     * Finished depth from the turned edge, mm, 0 or more. A hem turned twice bends two layers at the outer fold, and its first
     * turn stands out by a bend of one layer. A band reaches farther than what it covers.
     */
    public double depth() {
        return band.map(SewnBand::depth)
                .or(() -> firstTurn.map(turn -> cloth - turn + BEND * 3 * thickness))
                .orElse(turned(cloth, thickness));
    }

    /** How far cloth that is folded back once reaches from the turned edge, mm: H + (1 − π/4)T. */
    static double turned(double cloth, double thickness) {
        return cloth + BEND * thickness;
    }

    /** Depth that is open for a bar or a strip, mm, 0 or more: a band is sewn along both its edges. */
    public double room() {
        return band.map(SewnBand::width).orElse(depth());
    }

    /**
     * Whether there is something to fold, and the first turn, if any, leaves some of it. Under a band it may be the warp ends
     * alone.
     */
    public boolean folds() {
        return band.isPresent() || cloth - firstTurn.orElse(0.0) > HAIR;
    }

    /** What the front gains by the fold, mm, 0 or more. */
    public double gain() {
        return BEND * thickness * bends();
    }

    /** Layers of cloth that bend at the outer fold. */
    public int bends() {
        return firstTurn.isPresent() ? 2 : 1;
    }

    /** 2; 3 for a hem turned twice or under a band. */
    public int layers() {
        return firstTurn.isPresent() || band.isPresent() ? 3 : 2;
    }

    /** Thickness of the piece at the hem, mm, more than 0; at mitred corners there is one layer more. */
    public double stacked() {
        return (bends() + 1) * thickness + band.map(SewnBand::thickness).orElse(0.0);
    }
}
