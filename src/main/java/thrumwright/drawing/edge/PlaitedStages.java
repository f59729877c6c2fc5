package thrumwright.drawing.edge;

import thrumwright.drawing.HandWay;

/** A plait: the group in three, the outer parts over the middle one by turns, and on to its end. */
record PlaitedStages(FringeGroup group) implements GroupStages {
    private static final int PARTS = 3;

    private double apart() {
        return Math.max(
                0.3 * group.at().size() * group.at().pitch(), 1.8 * group.at().thick());
    }

    private double down(double share) {
        return group.at().edge() + share * (group.at().bottom() - group.at().edge());
    }

    /** How far the plait has come. */
    private double plaited(int stage) {
        return stage == 0 ? group.at().knot() : down(stage == 1 ? 0.34 : 0.68);
    }

    @Override
    public void draw(int stage) {
        if (stage == 0) {
            divided();
        } else {
            begun(plaited(stage));
        }
    }

    private void divided() {
        FringeGroup.Hanging at = group.at();
        for (int part = 0; part < PARTS; part++) {
            int from = Math.min(at.size() - 1, part * at.size() / PARTS);
            int to = Math.min(at.size(), Math.max(from + 1, (part + 1) * at.size() / PARTS));
            double aside = (part - 1) * apart() / 2;
            group.gather(from, to - from, at.middle() + aside, at.knot());
            part(at.middle() + aside, at.knot(), aside);
        }
    }

    /** Plaited so far down, with the parts held apart below. */
    private void begun(double to) {
        FringeGroup.Hanging at = group.at();
        double size = group.cordSize(PARTS);
        group.gather(at.knot());
        TwistedCord plait = new TwistedCord(at.middle(), at.knot(), size, PARTS, 1);
        plait.draw(group.g(), to, group.warp());
        for (int part = 0; part < PARTS; part++) {
            double x = plait.xAt(part, to);
            double out = x - at.middle();
            part(x, to - 0.4 * size, Math.abs(out) < 0.2 * size ? 0 : Math.signum(out) * apart());
        }
    }

    /** One of the three down to its tip, so far aside there. */
    private void part(double x, double from, double aside) {
        new TwistedCord(x, from, group.at().thick() * 1.2, 2, 1)
                .slanting(aside / (group.at().tip() - from))
                .drawOrLoose(group.g(), group.at().tip(), group.warp(), false);
    }

    @Override
    public void ways(HandWay hand, int stage) {
        FringeGroup.Hanging at = group.at();
        if (stage == 0) {
            double y = down(0.55);
            hand.straight(at.middle(), y, at.middle() + 1.3 * apart(), y, 0);
            hand.straight(at.middle() - 0.1 * apart(), y, at.middle() - 1.3 * apart(), y, 1);
        } else if (stage == 1) {
            TwistWay.across(hand, at.middle() + 0.45 * apart(), down(0.5), 0.55 * apart(), -1, 2);
            TwistWay.across(hand, at.middle() - 0.45 * apart(), down(0.68), 0.55 * apart(), 1, 0);
        } else {
            double x = at.middle() + 0.8 * apart();
            hand.straight(x, down(0.3), x, down(0.66), 3);
        }
    }
}
