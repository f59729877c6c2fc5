package thrumwright.drawing.step;

import java.util.ArrayList;
import java.util.List;
import thrumwright.block.HalfHitch;
import thrumwright.block.Hemstitching;
import thrumwright.block.Lean;
import thrumwright.block.Leg;
import thrumwright.block.OrderingCord;
import thrumwright.block.PlainBand;
import thrumwright.block.Row;
import thrumwright.block.Setting;
import thrumwright.block.Side;
import thrumwright.block.SlitBand;
import thrumwright.block.Soumak;
import thrumwright.block.SpreadHeader;
import thrumwright.block.Strand;
import thrumwright.block.Twining;
import thrumwright.block.YarnBlock;
import thrumwright.drawing.yarn.Legs;
import thrumwright.plan.Work;

/**
 * How each kind's yarn is led, stage by stage: its own strands, as far as they go, and not yet drawn tight where a loop must
 * be seen.
 *
 * @param work the rows that are shown
 * @param stage from 0
 */
record Leading(Work work, int stage) implements YarnBlock.YarnCases<Led> {
    /** How much a loop stands open before it is drawn tight. */
    private static final double OPEN = 2.4;
    /** Of the width: how high a pick is laid in as an arc. */
    private static final double ARC = 0.2;
    /** Of the distance between ends: how far the yarn rises to the hand. */
    private static final double RISE = 1.6;

    static Led of(Work work, int stage) {
        return work.block().of(new Leading(work, stage));
    }

    private Setting setting() {
        return work.setting();
    }

    private List<Leg> legs(int strand) {
        return strands().get(strand).legs();
    }

    private List<Strand> strands() {
        return work.block().strands(setting(), work.rows());
    }

    private Row row(int index) {
        return work.rows().get(index);
    }

    private boolean rightward() {
        return rightward(0);
    }

    private boolean rightward(int row) {
        return row(row).from() == Side.LEFT;
    }

    private double rise() {
        return RISE * setting().spacing();
    }

    /** So many of a strand's legs, and on to the hand. */
    private List<Leg> begun(List<Leg> legs, int count, double rise) {
        List<Leg> begun = new ArrayList<>(legs.subList(0, Math.min(count, legs.size())));
        begun.add(Legs.toHand(begun.get(begun.size() - 1), setting(), rightward(), rise));
        return begun;
    }

    @Override
    public Led orderingCord(OrderingCord cord) {
        int rows = work.rows().size();
        if (stage == cord.stages(rows).size() - 1) {
            return new Led(strands(), List.of(), List.of(), Led.Push.OUT, true);
        }
        return Led.setting(picks(stage, 0), row(stage));
    }

    @Override
    public Led plainBand(PlainBand band) {
        if (stage == 1) {
            return Led.pressed(picks(0, 0));
        }
        return Led.setting(picks(stage / 2, ARC * setting().span()), row(stage / 2));
    }

    /** One part of it; the others are worked alike. */
    @Override
    public Led slitBand(SlitBand band) {
        if (stage == 1) {
            return Led.pressed(picks(0, 0));
        }
        return Led.setting(picks(stage / 2, ARC * setting().span() / 2), row(stage / 2));
    }

    @Override
    public Led spreadHeader(SpreadHeader header) {
        int pick = Math.min(stage, work.rows().size() - 1);
        return Led.setting(picks(pick, 0), row(pick));
    }

    /** Picks up to the one that is laid in now, which runs on to the hand, in an arc so high, mm. */
    private List<Leg> picks(int pick, double arc) {
        List<Leg> legs = legs(0);
        boolean posts = work.block().tied() && setting().posts().isPresent();
        int tie = work.block().tied() && !posts ? 1 : 0;
        int now = posts ? pick : tie + 2 * pick;
        List<Leg> across = Legs.atEnds(legs.get(now), rightward(pick));
        List<Leg> inWarp = posts ? across.subList(0, across.size() - 1) : across;
        List<Leg> laid = new ArrayList<>(legs.subList(0, now));
        laid.addAll(Legs.arched(inWarp, arc));
        laid.add(Legs.toHand(laid.get(laid.size() - 1), setting(), rightward(pick), 0.25 * rise()));
        return laid;
    }

    @Override
    public Led twining(Twining twining) {
        int flats = twining.endsPerGroup() > 1 ? 1 : 0;
        int gaps = (setting().ends() - 1) / twining.endsPerGroup();
        int came = stage == 3 ? Math.min(3, gaps) : Math.min(1, stage);
        int went = stage == 1 ? 0 : came;
        List<Leg> front = half(legs(0), flats + went * (flats + 1), true);
        List<Leg> back = half(legs(1), 1 + flats + came * (flats + 1), false);
        List<List<Leg>> ways = switch (stage) {
            case 0 -> List.of(back.subList(0, 1));
            case 1 -> List.of(back.subList(1 + flats, back.size() - 1));
            case 2 -> List.of(front.subList(flats, front.size() - 1));
            default -> List.of();
        };
        return new Led(List.of(new Strand(front), new Strand(back)), ways, List.of(), Led.Push.NONE, false);
    }

    /** One half so far, and on to the hand; that one is held up that goes on above the other. */
    private List<Leg> half(List<Leg> legs, int count, boolean front) {
        boolean frontAbove = (row(0).lean().orElseThrow() == Lean.Z) == rightward();
        double rise = front == frontAbove ? rise() : 0.15 * rise();
        if (count == 0) {
            double x = rightward() ? 0 : setting().span();
            return List.of(
                    Legs.toHand(x, front, setting(), rightward(), setting().beaten(), rise));
        }
        return begun(legs, count, rise);
    }

    @Override
    public Led soumak(Soumak soumak) {
        List<Leg> legs = legs(0);
        int count = Math.min(stage + 1, legs.size());
        return Led.along(begun(legs, count, rise()), legs.subList(count - 1, count));
    }

    @Override
    public Led halfHitch(HalfHitch hitch) {
        int flat = hitch.endsPerGroup() > 1 ? 1 : 0;
        // the second group, if there is one: the first is done
        int group = setting().ends() > hitch.endsPerGroup() ? flat + 2 : flat - 1;
        return stage == 2 ? tied(legs(0), group + 2) : loose(legs(0), Math.max(0, group), group + 1);
    }

    /** A hitch that is held above the row, so that it is seen: its loop, and then its end brought through. */
    private Led loose(List<Leg> legs, int group, int loop) {
        double open = OPEN * setting().beaten();
        Leg wrap = Legs.roundOnce(legs.get(loop), open);
        boolean laid = stage == 0;
        Leg on = Legs.toHand(wrap, setting(), laid != rightward(), laid ? -0.5 * rise() : 2.2 * rise());
        List<Leg> way = List.of(laid ? wrap : Legs.firstOf(on, 2 * setting().spacing(), rightward()));
        List<Leg> before = new ArrayList<>(legs.subList(group, loop));
        before.replaceAll(leg -> Legs.rising(leg, open));
        // what comes from the group before lies on the end that is brought through below it
        List<Strand> strands =
                List.of(new Strand(legs.subList(0, group)), new Strand(List.of(wrap, on)), new Strand(before));
        return new Led(strands, List.of(way), List.of(), Led.Push.NONE, false);
    }

    private Led tied(List<Leg> legs, int last) {
        List<Leg> laid = new ArrayList<>(legs.subList(0, last + 1));
        Leg through = level(legs.get(last));
        laid.add(through);
        return Led.along(laid, List.of(Legs.firstOf(through, 2 * setting().spacing(), rightward())));
    }

    /** On from a loop, level, so that it lies under it. */
    private Leg level(Leg loop) {
        Leg to = Legs.toHand(loop, setting(), rightward(), 0);
        double y = (loop.fromY() + loop.toY()) / 2;
        return new Leg(to.route(), y, y, y);
    }

    @Override
    public Led hemstitching(Hemstitching stitches) {
        List<Leg> legs = legs(0);
        int count = Math.min(stage + 1, legs.size());
        double rise = stage == 2 ? 0.4 * rise() : Math.signum(-stitches.lap(setting())) * 0.5 * rise();
        return Led.along(begun(legs, count, rise), legs.subList(count - 1, count));
    }
}
