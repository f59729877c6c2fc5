package thrumwright.plan;

import java.util.Optional;
import thrumwright.block.Support;

/**
 * A hem as it will be when folded. A cloth of thickness T that is bent by 180° uses πT/2 of its mid-plane, half from
 * each side, and its outside stands T beyond the bend's middle; so a fold adds (1 − π/4)·T to the depth (derived).
 *
 * @param blockId the fold
 * @param foldLine height of the fold's middle above the end's lowest line, mm
 * @param cloth H: height from the fold's middle to the hem's outer edge, mm
 * @param thickness T of the cloth at the fold, mm
 * @param firstTurn H₁: depth of the part turned in first, mm; empty if turned once
 * @param sleeve what it takes, if it is to take something
 */
public record Hem(
        String blockId,
        double foldLine,
        double cloth,
        double thickness,
        Optional<Double> firstTurn,
        Optional<Sleeve> sleeve) {
    /** What a fold adds to the depth, as a share of the thickness that is bent. */
    public static final double BEND = 1 - Math.PI / 4;

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

        static double barDepth(double bar) {
            return (Math.PI * bar + EASE) / 2;
        }

        static double slatDepth(double wide, double thick) {
            return wide + thick + EASE / 2;
        }

        static double stripDepth(double strip) {
            return strip + 2 * STRIP_EDGE;
        }

        /** Whether it slides in between the layers. */
        public boolean slidesIn() {
            return !(support instanceof Support.Strip);
        }
    }

    /**
     * Finished depth from the turned edge, mm. A hem turned twice bends two layers at the outer fold, and its first
     * turn stands out by a bend of one layer.
     */
    public double depth() {
        return firstTurn.map(turn -> cloth - turn + BEND * 3 * thickness).orElse(cloth + BEND * thickness);
    }

    /** Whether there is something to fold, and the first turn, if any, leaves some of it. */
    public boolean folds() {
        return cloth > 0 && firstTurn.map(turn -> turn < cloth).orElse(true);
    }

    /** What the front gains by the fold, mm. */
    public double gain() {
        return BEND * thickness * (layers() - 1);
    }

    /** 2, or 3 for a hem turned twice. */
    public int layers() {
        return firstTurn.isPresent() ? 3 : 2;
    }

    /** Thickness of the piece at the hem, mm. */
    public double stacked() {
        return layers() * thickness;
    }
}
