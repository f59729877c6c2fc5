package thrumwright.drawing.edge;

import thrumwright.drawing.HandWay;

/** An overhand knot: the loop, the tips brought through it, and the knot drawn tight against the edge. */
record KnottedStages(FringeGroup group) implements GroupStages {
    /** Of what hangs: where an open knot begins, and how large it is. */
    private static final double OPEN_AT = 0.3;

    private static final double OPEN = 0.22;
    /** Points of the knot's way: where the loop begins, and where the tips turn behind. */
    private static final int BEGINS = 3;

    private static final int TURNS = OverhandKnot.LOOPED;

    private OverhandKnot open() {
        FringeGroup.Hanging at = group.at();
        double free = at.bottom() - at.edge();
        double unit = Math.min(OPEN * free, at.size() * at.pitch() * 0.4);
        return group.knotAt(at.edge() + OPEN_AT * free, Math.max(unit, at.thick() * at.size() * 0.6));
    }

    @Override
    public void draw(int stage) {
        if (stage > 1) {
            group.knotted();
            return;
        }
        OverhandKnot knot = open();
        group.gather(knot.y() - 0.1 * knot.unit());
        int last = stage == 0 ? OverhandKnot.LOOPED : OverhandKnot.THROUGH;
        if (stage == 1) {
            group.spread(knot.leaves(), knot.below(), group.at().tip(), 1);
        }
        knot.draw(group.pen(), group.warp(), knot.y() - 0.15 * knot.unit(), Double.NaN, last);
    }

    @Override
    public void ways(HandWay hand, int stage) {
        OverhandKnot knot = open();
        switch (stage) {
            case 0 -> hand.along(knot.way(BEGINS, OverhandKnot.LOOPED), 1);
            case 1 -> hand.along(knot.way(TURNS, OverhandKnot.THROUGH), 2);
            default -> {
                FringeGroup.Hanging at = group.at();
                double x = at.middle() + 0.46 * at.size() * at.pitch();
                double free = at.bottom() - at.edge();
                hand.straight(x, at.edge() + 0.62 * free, x, at.edge() + 0.14 * free, 3);
            }
        }
    }
}
