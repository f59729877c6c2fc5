package thrumwright.drawing.yarn;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import thrumwright.block.Leg;
import thrumwright.block.Row;
import thrumwright.block.Setting;
import thrumwright.block.Side;
import thrumwright.block.Strand;
import thrumwright.block.YarnBlock;
import thrumwright.cord.PathSection;
import thrumwright.cord.Route;
import thrumwright.cord.TautCord;
import thrumwright.cord.Visit;

/** Where a block's yarn begins and ends: loose at an edge, or tied. */
record YarnEnds(YarnBlock block, Setting setting, List<Row> rows, Which which) {
    /** Which of its ends there are. */
    enum Which {
        BOTH,
        /** It is still worked on. */
        FIRST
    }

    /** Pegs beyond so many have no part in where a cord begins or ends. */
    private static final int FEW = 6;

    /**
     * A place at the edge where the yarn begins or ends.
     *
     * @param x of the warp end on which it lies, mm
     * @param y mm above the block's lower edge
     * @param inFront whether it lies in front of that end
     */
    record LooseEnd(Side side, double x, double y, boolean inFront) {}

    /** A loose end hanging, not yet clear of others; {@code bottom} is the block's lower edge, mm. */
    Tail tail(LooseEnd end, DyedYarn yarn, double bottom) {
        double thick = setting.relaxed();
        double out = setting.spacing() + thick;
        double down = 1.6 * setting.spacing() + thick;
        return new Tail(yarn, end.side(), end.x(), bottom + end.y(), lies(end), thick, out, down);
    }

    /** Yarn that is wrapped lies on its own end. */
    private Tail.Lies lies(LooseEnd end) {
        if (!end.inFront()) {
            return Tail.Lies.BEHIND;
        }
        return block.crossesItself() ? Tail.Lies.UNDER_ITS_ROW : Tail.Lies.IN_FRONT;
    }

    /**
     * A folded yarn ends twice where it finishes; any other begins at one place and ends at another.
     *
     * @param higher how much higher the last row lies, mm, 0 or more
     */
    List<LooseEnd> loose(double higher) {
        List<Strand> strands = block.strands(setting, rows);
        Side ends = rows.get(rows.size() - 1).to();
        if (block.folded()) {
            return which == Which.BOTH ? folded(strands, ends, higher) : List.of();
        }
        Side from = rows.get(0).from();
        LooseEnd begins = looseEnd(from, outermost(strands, from).legs().get(0), 0, 0);
        return which == Which.BOTH
                ? List.of(begins, looseEnd(ends, lastOf(outermost(strands, ends).legs()), 1, higher))
                : List.of(begins);
    }

    /** The yarn at a side; where they lie side by side, those between hang at the back. */
    private Strand outermost(List<Strand> strands, Side side) {
        return block.inParts() && side == Side.RIGHT ? lastOf(strands) : strands.get(0);
    }

    private List<LooseEnd> folded(List<Strand> strands, Side ends, double higher) {
        List<LooseEnd> loose = new ArrayList<>();
        for (int i = 0; i < strands.size(); i++) {
            double aside = (i - (strands.size() - 1) / 2.0) * setting.beaten();
            loose.add(looseEnd(ends, lastOf(strands.get(i).legs()), 1, aside + higher));
        }
        return loose;
    }

    private LooseEnd looseEnd(Side side, Leg leg, int share, double aside) {
        List<PathSection> sections =
                TautCord.along(outermost(leg.route(), share == 0)).sections();
        PathSection section = share == 0 ? sections.get(0) : lastOf(sections);
        PathSection.Spot spot = section.at(share);
        double y = aside + (share == 0 ? leg.fromY() : leg.toY());
        // beyond the edge end it hangs from there
        double x = Math.max(0, Math.min(setting.span(), spot.x()));
        return new LooseEnd(side, x, y, spot.z() > setting.radius() / 2);
    }

    /** The part of a route that decides where it begins or ends; the rest of a long one needn't be pulled taut. */
    private static Route outermost(Route route, boolean beginning) {
        List<Visit> visits = route.visits();
        if (visits.size() <= FEW) {
            return route;
        }
        return beginning
                ? new Route(visits.subList(0, FEW), route.from(), OptionalDouble.empty())
                : new Route(visits.subList(visits.size() - FEW, visits.size()), OptionalDouble.empty(), route.to());
    }

    private static <T> T lastOf(List<T> list) {
        return list.get(list.size() - 1);
    }

    /** Whether its yarn is tied to the loom's posts. */
    boolean toPosts() {
        return block.tied() && setting.posts().isPresent();
    }

    /** Where a tied cord begins and ends: turns round the posts, or on a loom without any a knot beside the edge end. */
    List<Stretch> ties() {
        List<Stretch> ties = new ArrayList<>();
        if (block.tied()) {
            double each = block.height(setting) / rows.size();
            ties.addAll(tie(rows.get(0).from(), each / 2, -1));
        }
        if (block.tied() && which == Which.BOTH) {
            double each = block.height(setting) / rows.size();
            ties.addAll(tie(rows.get(rows.size() - 1).to(), block.height(setting) - each / 2, 1));
        }
        return ties;
    }

    private List<Stretch> tie(Side side, double y, int upwards) {
        return toPosts() ? turns(side, y, upwards) : knot(side, y);
    }

    /** The tail tied over the cord, close beside the edge end. */
    private List<Stretch> knot(Side side, double y) {
        double thick = setting.relaxed();
        int way = side == Side.LEFT ? -1 : 1;
        double edge = side == Side.LEFT ? 0 : setting.span();
        double near = edge + way * (setting.radius() + 0.55 * thick);
        List<Stretch> turns = new ArrayList<>();
        for (int slant : new int[] {-1, 1}) {
            double[] across = {near - 0.5 * thick, near, near + 0.5 * thick};
            double[] up = {y - slant * 0.75 * thick, y, y + slant * 0.75 * thick};
            turns.add(Stretch.loose(across, up, 0.85 * thick));
        }
        return turns;
    }

    /** Two turns round a post, away from the weaving. */
    private List<Stretch> turns(Side side, double y, int upwards) {
        double away = setting.posts().orElseThrow().gap() + setting.warp() / 2;
        double across = setting.posts().orElseThrow().diameter();
        double inner = side == Side.LEFT ? -away : setting.span() + away;
        double outer = side == Side.LEFT ? inner - across : inner + across;
        double thick = setting.relaxed();
        List<Stretch> turns = new ArrayList<>();
        for (int i = 0; i < 2; i++) {
            double at = y + upwards * i * 1.05 * thick;
            turns.add(Stretch.loose(
                    new double[] {inner, (inner + outer) / 2, outer},
                    new double[] {at, at + upwards * 0.15 * thick, at + upwards * 0.5 * thick},
                    thick));
        }
        return turns;
    }
}
