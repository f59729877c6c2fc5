package thrumwright.drawing.edge;

import thrumwright.drawing.HandWay;

/** A plied cord: the group in two halves, each twisted the same way, and both left to ply back the other way. */
record PliedStages(FringeGroup group) implements GroupStages {
    /** Of what hangs: how far the plied cord has come. */
    private static final double PLIED = 0.6;

    private int left() {
        return group.at().size() / 2;
    }

    private double apart() {
        return Math.max(
                0.28 * group.at().size() * group.at().pitch(), 2 * group.at().thick());
    }

    @Override
    public void draw(int stage) {
        if (stage == 2) {
            plied();
        } else {
            divided(stage == 1);
        }
    }

    private void plied() {
        FringeGroup.Hanging at = group.at();
        double size = group.cordSize(2);
        group.gather(at.knot());
        new TwistedCord(at.middle(), at.knot(), size, 2, 1).draw(group.g(), down(PLIED), group.warp());
        half(at.middle() - 0.3 * size, down(PLIED) - size, -apart(), true);
        half(at.middle() + 0.3 * size, down(PLIED) - size, apart(), true);
    }

    private void divided(boolean twisted) {
        FringeGroup.Hanging at = group.at();
        double aside = apart() / 2;
        group.gather(0, Math.max(1, left()), at.middle() - aside, at.knot());
        group.gather(left(), at.size() - left(), at.middle() + aside, at.knot());
        half(at.middle() - aside, at.knot(), -0.6 * aside, twisted);
        half(at.middle() + aside, at.knot(), 0.6 * aside, twisted);
    }

    private double down(double share) {
        return group.at().edge() + share * (group.at().bottom() - group.at().edge());
    }

    /** One half down to its tip, so far aside there, twisted or as it is. */
    private void half(double x, double from, double aside, boolean twisted) {
        new TwistedCord(x, from, group.at().thick() * 1.25, 2, -1)
                .slanting(aside / (group.at().tip() - from))
                .drawOrLoose(group.g(), group.at().tip(), group.warp(), twisted);
    }

    @Override
    public void ways(HandWay hand, int stage) {
        FringeGroup.Hanging at = group.at();
        double y = down(stage == 1 ? 0.72 : 0.5);
        double wide = 1.6 * at.thick();
        if (stage == 0) {
            hand.straight(at.middle(), y, at.middle() + 1.2 * apart(), y, 0);
            hand.straight(at.middle() - 0.1 * apart(), y, at.middle() - 1.2 * apart(), y, 1);
        } else if (stage == 1) {
            TwistWay.across(hand, at.middle() - 0.65 * apart(), y, wide, 1, 2);
            TwistWay.across(hand, at.middle() + 0.65 * apart(), y, wide, 1, 0);
        } else {
            TwistWay.across(hand, at.middle(), down(0.45), 1.3 * wide, -1, 3);
        }
    }
}
