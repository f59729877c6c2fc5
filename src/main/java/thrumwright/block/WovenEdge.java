package thrumwright.block;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import thrumwright.cord.Route;
import thrumwright.cord.Sense;
import thrumwright.cord.Visit;
import thrumwright.measure.BadMeasure;
import thrumwright.measure.Length;

/**
 * A woven edge: each warp end is bent across its next neighbours and woven through them as a pick, in front of the first,
 * behind the second and so on, and then taken to the back. It sets out below all ends that pass it, and nears the cloth by one
 * thickness with every neighbour.
 *
 * @param through neighbours that each end is woven through, {@link #LEAST} to {@link #MOST}
 * @param from the side at which it begins
 * @param back how far each end lies back along its neighbour in the end
 */
public record WovenEdge(Tag tag, int through, Side from, Length back) implements EdgeFinish {
    /** The fewest neighbours that hold an end: one in front, one behind. */
    public static final int LEAST = 2;
    /** The most neighbours. */
    public static final int MOST = 12;
    /** What hands need for it, mm: ‘8 inches of fringe are not too much’ (‘No fringe for you!’, tuesdayweavers.blogspot.com, 2017). */
    public static final double HANDS_NEED = 203.2;

    public WovenEdge {
        Objects.requireNonNull(tag);
        Objects.requireNonNull(from);
        if (through < LEAST || through > MOST) {
            throw new BadMeasure("woven.through", Map.of("least", LEAST, "most", MOST, "through", through));
        }
        EdgeFinish.checkLength(back);
    }

    /** How high the worked edge stands, mm, more than 0: so many thicknesses as ends pass each, and the end itself (model). */
    public double height(Setting warp) {
        return (through + 1) * warp.beaten();
    }

    /** Neighbours that are left for an end, counted from 0 in the direction of working; none for the last. */
    public int neighbours(Setting warp, int index) {
        return Math.min(through, warp.ends() - 1 - index);
    }

    /** How many thicknesses below the cloth an end lies where it passes so many neighbours on; 0: at its own place. */
    private int below(int index, int passed) {
        return Math.min(index + passed, through) - passed;
    }

    /**
     * What one end takes, mm, once as many ends pass it as it passes: a quarter bend out of its own place and on to its
     * neighbour, πr/2 + s − r, a space of plain weave ℓ to each further one, all of them nearing the cloth by t, √(… + t²), and
     * half a turn to the back, πr, if it is in front of the last.
     *
     * @param warp the warp yarn on its own warp
     * @param neighbours 1 or more
     */
    public static double lengthThrough(Setting warp, int neighbours) {
        double r = warp.weavingRadius();
        double first = Math.hypot(Math.PI * r / 2 + warp.spacing() - r, warp.beaten());
        double others = (neighbours - 1) * Math.hypot(warp.space(), warp.beaten());
        return first + others + (front(neighbours) ? Math.PI * r : 0);
    }

    /** Whether an end lies in front of a neighbour, counted from 1. */
    private static boolean front(int neighbour) {
        return neighbour % 2 != 0;
    }

    /**
     * The way of each end, in the order of working; the last end has no neighbour left and no way. Heights are counted from the
     * edge's outer line.
     */
    public List<Strand> strands(Setting warp) {
        Way way = new Way(warp, from == Side.LEFT);
        List<Strand> strands = new ArrayList<>();
        for (int i = 0; i < warp.ends() - 1; i++) {
            strands.add(strand(way, i));
        }
        return strands;
    }

    private Strand strand(Way way, int index) {
        List<Leg> legs = new ArrayList<>();
        int last = neighbours(way.setting(), index);
        for (int passed = 1; passed <= last; passed++) {
            Route route = passed == 1 ? out(way, index) : way.crossing(index + passed - 1, front(passed - 1));
            legs.add(Leg.climbing(route, y(way, index, passed - 1), y(way, index, passed)));
        }
        if (front(last)) {
            legs.add(Leg.level(toTheBack(way, index + last), y(way, index, last)));
        }
        return new Strand(legs);
    }

    private double y(Way way, int index, int passed) {
        return height(way.setting())
                - (below(index, passed) + 0.5) * way.setting().beaten();
    }

    /** From its own place, in a quarter bend, to the front of its neighbour. */
    private static Route out(Way way, int own) {
        double radius = way.setting().weavingRadius();
        double along = way.rightward() ? radius : -radius;
        Visit bend = Visit.of(way.x(own) + along, radius, way.sense(true));
        return Route.of(List.of(bend, way.end(own + 1, true, radius)), way.rightward() ? Math.PI : 0, Route.FRONT);
    }

    /** Half way round the last neighbour. */
    private static Route toTheBack(Way way, int last) {
        Sense sense = way.sense(true);
        Visit round = Visit.of(way.x(last), way.setting().weavingRadius(), sense);
        return Route.of(List.of(round), Route.FRONT, Route.BACK);
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
        return false;
    }

    @Override
    public double beyond(Setting warp) {
        return height(warp);
    }

    /** Down past the ends that pass it, through the most neighbours, and what lies back; never less than hands need. */
    @Override
    public double freeWarp(Setting warp) {
        int most = neighbours(warp, 0);
        return Math.max(HANDS_NEED, most * warp.beaten() + lengthThrough(warp, most) + back.mm());
    }

    @Override
    public Optional<Length> length() {
        return Optional.of(back);
    }

    @Override
    public WovenEdge withLength(Length other) {
        return new WovenEdge(tag, through, from, other);
    }

    @Override
    public List<String> stages(int made) {
        return List.of("woven-edge.stage.across", "woven-edge.stage.back", "woven-edge.stage.go-on");
    }

    @Override
    public String key() {
        return "woven-edge";
    }

    @Override
    public List<String> ownPlaces() {
        return EdgeFinish.places("through", "side", "otherSide");
    }

    @Override
    public <R> R of(FinishCases<R> cases) {
        return cases.wovenEdge(this);
    }

    /** A reflection across the warp leaves the sides where they are. */
    @Override
    public WovenEdge mirrored() {
        return this;
    }

    @Override
    public WovenEdge withTag(Tag other) {
        return new WovenEdge(other, through, from, back);
    }

    public WovenEdge withThrough(int other) {
        return new WovenEdge(tag, other, from, back);
    }

    public WovenEdge withFrom(Side other) {
        return new WovenEdge(tag, through, other, back);
    }
}
