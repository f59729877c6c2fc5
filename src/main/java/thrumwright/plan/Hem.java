package thrumwright.plan;

import java.util.Optional;

/**
 * A hem as it will be when folded. A cloth of thickness T that is bent by 180° uses πT/2 of its mid-plane, half from
 * each side, and its outside stands T beyond the bend's middle; so a fold adds (1 − π/4)·T to the depth (derived).
 *
 * @param blockId the fold
 * @param foldLine height of the fold's middle above the end's lowest line, mm
 * @param cloth H: height from the fold's middle to the hem's outer edge, mm
 * @param thickness T of the cloth at the fold, mm
 * @param firstTurn H₁: depth of the part turned in first, mm; empty if turned once
 * @param sleeve what it takes, if it is to take a bar
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
     * A bar in the hem: it goes in if twice the depth is at least πb and half an inch of ease (quilt-guild and
     * conservation guidance on hanging sleeves).
     *
     * @param bar b: diameter, mm
     * @param depth finished hem depth that it needs, mm
     */
    public record Sleeve(double bar, double depth) {
        /** Room for the bar to slide, mm. */
        public static final double EASE = 12;

        static Sleeve of(double bar) {
            return new Sleeve(bar, (Math.PI * bar + EASE) / 2);
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
