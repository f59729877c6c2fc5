package thrumwright.block;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import thrumwright.cord.Route;
import thrumwright.cord.Visit;
import thrumwright.measure.BadMeasure;
import thrumwright.measure.Length;

/**
 * Warp ends worked over each other along the edge so that they turn to the back: each goes behind its next neighbours,
 * round the last of them to the front, back over them, and to the back again between itself and its neighbour, below its
 * own way. A second row does the same the other way.
 *
 * @param over neighbours that each end goes round, 1 to {@link #MOST_OVER}
 * @param bothWays whether a second row follows, the other way
 * @param from the side at which the first row begins
 * @param back how far each end lies back along its neighbour in the end, or how long it hangs
 * @param fringe whether the ends hang as a fringe after the second row; after one row they lie at the back
 */
public record TurnedEnds(Tag tag, int over, boolean bothWays, Side from, Length back, boolean fringe)
        implements EdgeFinish {
    /** The most neighbours. */
    public static final int MOST_OVER = 6;

    public TurnedEnds {
        Objects.requireNonNull(tag);
        Objects.requireNonNull(from);
        if (over < 1 || over > MOST_OVER) {
            throw new BadMeasure("turned.over", Map.of("most", MOST_OVER, "over", over));
        }
        EdgeFinish.checkLength(back);
        fringe = fringe && bothWays;
    }

    /** Ends that lie at the back. */
    public TurnedEnds(Tag tag, int over, boolean bothWays, Side from, Length back) {
        this(tag, over, bothWays, from, back, false);
    }

    public int rows() {
        return bothWays ? 2 : 1;
    }

    /** How high the worked edge stands, mm: an end lies two thicknesses below its own way in each row (model). */
    public double height(Setting warp) {
        return (2 * rows() + 1) * warp.beaten();
    }

    /** Neighbours that are left for an end, counted from 0 in the direction of working; none for the last. */
    private int neighbours(Setting warp, int index) {
        return Math.min(over, warp.ends() - 1 - index);
    }

    /**
     * What one end takes in one row, mm: a quarter bend out of its own place and behind m neighbours, πr/2 + ms − r, and
     * round them, √((2πr + (m−1)s)² + (2t)²).
     *
     * @param warp the warp yarn on its own warp
     * @param neighbours m, 1 or more
     */
    public static double lengthRound(Setting warp, int neighbours) {
        double r = warp.weavingRadius();
        double behind = Math.PI * r / 2 + neighbours * warp.spacing() - r;
        double round = 2 * Math.PI * r + (neighbours - 1) * warp.spacing();
        return behind + Math.hypot(round, 2 * warp.beaten());
    }

    /**
     * The way of each end through one row, in the order of working; the last end has no neighbour left and no way.
     *
     * @param row 0 next to the cloth, or 1; heights are counted from the outermost row's outer line
     */
    public List<Strand> strands(Setting warp, int row) {
        Side begins = row == 0 ? from : from.other();
        Way way = new Way(warp, begins == Side.LEFT);
        double y = height(warp) - (2 * row + 0.5) * warp.beaten();
        List<Strand> strands = new ArrayList<>();
        for (int i = 0; i < warp.ends() - 1; i++) {
            strands.add(new Strand(List.of(
                    Leg.level(behind(way, i, i + neighbours(warp, i)), y + warp.beaten()),
                    Leg.climbing(round(way, i + neighbours(warp, i), i + 1), y + warp.beaten(), y - warp.beaten()))));
        }
        return strands;
    }

    /** From its own place, in a quarter bend, behind its neighbours to the last of them. */
    private static Route behind(Way way, int own, int head) {
        double radius = way.setting().weavingRadius();
        double along = way.rightward() ? radius : -radius;
        Visit bend = Visit.of(way.x(own) + along, radius, way.sense(false));
        double outside = way.rightward() ? Math.PI : 0;
        return Route.of(List.of(bend, way.end(head, false, radius)), outside, Route.BACK);
    }

    /** Round the last neighbour to the front, back over all of them, and to the back round the first. */
    private static Route round(Way way, int head, int foot) {
        double radius = way.setting().weavingRadius();
        if (head == foot) {
            Visit once = new Visit(way.x(head), 0, radius, way.sense(false), 1);
            return Route.of(List.of(once), Route.BACK, Route.BACK);
        }
        List<Visit> visits = List.of(way.end(head, false, radius), way.end(foot, false, radius));
        return Route.of(visits, Route.BACK, Route.BACK);
    }

    @Override
    public int endsPerGroup() {
        return 1;
    }

    @Override
    public Optional<Side> begins() {
        return Optional.of(from);
    }

    @Override
    public boolean hangs() {
        return fringe;
    }

    @Override
    public double beyond(Setting warp) {
        return height(warp) + (fringe ? back.mm() : 0);
    }

    /** Both rows on the most neighbours, and what lies back. */
    @Override
    public double freeWarp(Setting warp) {
        return Math.max(HANDS, rows() * lengthRound(warp, neighbours(warp, 0)) + back.mm());
    }

    @Override
    public Optional<Length> length() {
        return Optional.of(back);
    }

    @Override
    public TurnedEnds withLength(Length other) {
        return new TurnedEnds(tag, over, bothWays, from, other, fringe);
    }

    @Override
    public List<String> stages(int made) {
        List<String> stages = new ArrayList<>(
                List.of("turned-ends.stage.behind", "turned-ends.stage.round", "turned-ends.stage.go-on"));
        if (bothWays) {
            stages.add("turned-ends.stage.back-again");
        }
        return stages;
    }

    @Override
    public String key() {
        return "turned-ends";
    }

    @Override
    public List<String> ownPlaces() {
        return EdgeFinish.places("over", "side", "otherSide");
    }

    @Override
    public <R> R of(FinishCases<R> cases) {
        return cases.turnedEnds(this);
    }

    /** A reflection across the warp leaves the sides where they are; the rows are counted from the cloth at either end. */
    @Override
    public TurnedEnds mirrored() {
        return this;
    }

    @Override
    public TurnedEnds withTag(Tag other) {
        return new TurnedEnds(other, over, bothWays, from, back, fringe);
    }

    public TurnedEnds withOver(int other) {
        return new TurnedEnds(tag, other, bothWays, from, back, fringe);
    }

    public TurnedEnds withBothWays(boolean other) {
        return new TurnedEnds(tag, over, other, from, back, fringe);
    }

    public TurnedEnds withFrom(Side other) {
        return new TurnedEnds(tag, over, bothWays, other, back, fringe);
    }

    public TurnedEnds withFringe(boolean other) {
        return new TurnedEnds(tag, over, bothWays, from, back, other);
    }
}
