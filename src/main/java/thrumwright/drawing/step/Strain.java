package thrumwright.drawing.step;

import thrumwright.drawing.yarn.Stretch;

/**
 * Where something is drawn that stands elsewhere than it should, in shares of the width and of the block's height.
 * Pictures of slips only: nothing is measured by it.
 */
interface Strain {
    /** Nothing stands elsewhere. */
    Strain NONE = (across, up) -> across;

    /** The edges come in, the farther the more rows are woven; above, the warp goes slowly back to its width. */
    Strain DRAWN_IN = (across, up) -> {
        double woven = Math.max(0, Math.min(1, up));
        double pulled = woven * woven * (3 - 2 * woven) - Math.max(0, Math.min(0.5, (up - 1) * 0.25));
        double aside = 2 * across - 1;
        double within = Math.max(-1, Math.min(1, aside));
        double moved = within * (1 - pulled * (0.1 + 0.2 * Math.abs(within * within * within)));
        return (1 + moved + aside - within) / 2;
    };

    /** Some ends stand close together, others far apart; the edges are where they should be. */
    Strain UNEVEN =
            (across, up) -> across <= 0 || across >= 1 ? across : across + 0.075 * Math.sin(4 * Math.PI * across);

    /**
     * @param across 0 at the left edge end, 1 at the right one
     * @param up 0 at the block's lower edge, 1 at its upper edge
     * @return where it is drawn, across
     */
    double at(double across, double up);

    /** That of a slip that moves warp ends aside. */
    static Strain of(Slip slip) {
        return slip == Slip.UNEVEN_ENDS ? UNEVEN : DRAWN_IN;
    }

    /** A stretch so displaced, on a block so wide and high, mm. */
    default Stretch strained(Stretch stretch, double span, double height) {
        double[] x = new double[stretch.x().length];
        for (int i = 0; i < x.length; i++) {
            x[i] = span * at(stretch.x()[i] / span, stretch.y()[i] / height);
        }
        return new Stretch(
                stretch.front(),
                stretch.order(),
                stretch.length(),
                stretch.joinsAtStart(),
                stretch.joinsAtEnd(),
                x,
                stretch.y(),
                stretch.width(),
                stretch.lift());
    }
}
