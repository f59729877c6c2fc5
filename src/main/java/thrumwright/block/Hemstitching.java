package thrumwright.block;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import thrumwright.cord.Route;
import thrumwright.cord.Visit;
import thrumwright.measure.BadMeasure;

/**
 * A needle and one thread bind warp ends in groups along the edge of the cloth while they go round its outermost picks: down in
 * front of those picks, once round the group at the edge, behind the group again, and up through the cloth beside it. It lies
 * on picks that are woven already, so that it has no height.
 *
 * @param endsPerGroup m, warp ends that are bound together, 1 to 24
 * @param picks r, how many picks it goes round, 1 to {@link #MOST_PICKS}
 * @param round on which side of its line those picks lie
 */
public record Hemstitching(Tag tag, Use use, int endsPerGroup, int picks, Round round) implements YarnBlock {
    /** The most picks. */
    public static final int MOST_PICKS = 12;

    /** The picks that it goes round. */
    public enum Round {
        /** The first picks, above it: at the start. */
        FIRST,
        /** The last picks, below it: at the top. */
        LAST
    }

    public Hemstitching {
        Objects.requireNonNull(tag);
        Objects.requireNonNull(use);
        Objects.requireNonNull(round);
        Twining.checkGroup(endsPerGroup);
        if (picks < 1 || picks > MOST_PICKS) {
            throw new BadMeasure("hemstitching.picks", Map.of("most", MOST_PICKS, "count", picks));
        }
    }

    /** Groups: ⌈N/m⌉, of which the last may be smaller. */
    private int groups(Setting setting) {
        return (setting.ends() + endsPerGroup - 1) / endsPerGroup;
    }

    /** How far it reaches into the cloth, mm, more than 0: r·t, taking the picks for as thick as the thread (model). */
    public double depth(Setting setting) {
        return picks * setting.beaten();
    }

    @Override
    public double lap(Setting setting) {
        return round == Round.FIRST ? depth(setting) : -depth(setting);
    }

    @Override
    public int rowCount(Setting setting) {
        return 1;
    }

    @Override
    public double height(Setting setting) {
        return 0;
    }

    /**
     * For k groups and h = r·t: in each group h down, three half turns and three ways behind or in front of it,
     * k(3πD/2 + h) + 3(N−k)s; from group to group up through the cloth, (k−1)√(ℓ²+h²), and at the last √((πD/2)²+h²).
     */
    @Override
    public double length(Setting setting) {
        int groups = groups(setting);
        double deep = depth(setting);
        double round =
                groups * (1.5 * Math.PI * setting.gauge() + deep) + 3 * (setting.ends() - groups) * setting.spacing();
        return round + (groups - 1) * Math.hypot(setting.space(), deep) + setting.turn(deep);
    }

    @Override
    public List<Row> rows(Setting setting, Course before) {
        return RowList.worked(1, before, use, Optional.empty(), false);
    }

    @Override
    public List<Strand> strands(Setting setting, List<Row> made) {
        Way way = Way.of(setting, made.get(0));
        double inside = lap(setting);
        List<Leg> legs = new ArrayList<>();
        for (int foot = 0; foot < setting.ends(); foot += endsPerGroup) {
            int head = Math.min(foot + endsPerGroup, setting.ends()) - 1;
            Route down = Route.of(List.of(way.end(foot, true)), Route.FRONT, Route.FRONT);
            legs.add(Leg.climbing(down, inside, 0));
            legs.add(Leg.level(bound(way, head, foot), 0));
            Route up = head == setting.ends() - 1 ? way.turn(false) : way.crossing(head, false);
            legs.add(Leg.climbing(up, 0, inside));
        }
        return List.of(new Strand(legs));
    }

    /** From the front of a group's nearest end behind it to the last, back in front, and behind it again. */
    private static Route bound(Way way, int head, int foot) {
        double radius = way.setting().radius();
        List<Visit> visits = head == foot
                ? List.of(new Visit(way.x(head), 0, radius, way.sense(false), 1))
                : List.of(way.end(foot, false), way.end(head, false), way.end(foot, false), way.end(head, false));
        return Route.of(visits, Route.FRONT, Route.BACK);
    }

    @Override
    public Map<String, Integer> counts() {
        return Map.of("group", endsPerGroup, "round", picks);
    }

    /** A thread on a needle, led before what lies above it is woven or after: no neighbour's yarn. */
    @Override
    public boolean goesOn() {
        return false;
    }

    @Override
    public boolean crossesItself() {
        return true;
    }

    /** It is worked when the picks stand that it goes round: those above it are woven after its place in the stack. */
    @Override
    public List<String> told(Setting setting) {
        String towards = round == Round.FIRST ? "hemstitching.first." : "hemstitching.last.";
        return List.of(
                towards + "when",
                "hemstitching.needle",
                "plain.begin",
                towards + "edge",
                "hemstitching.bind",
                towards + "through",
                "hemstitching.go-on",
                "hemstitching.side",
                "plain.end");
    }

    @Override
    public String whole() {
        return "hemstitching.whole";
    }

    @Override
    public List<String> stages(int made) {
        String towards = round == Round.FIRST ? "hemstitching.stage.first." : "hemstitching.stage.last.";
        return List.of(towards + "edge", "hemstitching.stage.bind", towards + "through");
    }

    @Override
    public String key() {
        return "hemstitching";
    }

    /** Of one row there is no more or less. */
    @Override
    public Optional<Amount> extent() {
        return Optional.empty();
    }

    @Override
    public boolean hasHeight() {
        return false;
    }

    @Override
    public boolean fillsSpaces() {
        return true;
    }

    @Override
    public boolean holds() {
        return true;
    }

    @Override
    public int period() {
        return endsPerGroup;
    }

    @Override
    public int longestFloat() {
        return endsPerGroup;
    }

    @Override
    public int endsToShow() {
        return 4 * endsPerGroup;
    }

    @Override
    public List<String> ownPlaces() {
        return List.of("group", "round");
    }

    @Override
    public <R> R of(YarnCases<R> cases) {
        return cases.hemstitching(this);
    }

    @Override
    public Hemstitching mirrored() {
        return withRound(round == Round.FIRST ? Round.LAST : Round.FIRST);
    }

    /** There the cloth lies below it. */
    @Override
    public Hemstitching begunAtTop() {
        return withRound(Round.LAST);
    }

    @Override
    public List<String> cautions() {
        return List.of("hemstitching.careful");
    }

    @Override
    public Hemstitching withTag(Tag other) {
        return new Hemstitching(other, use, endsPerGroup, picks, round);
    }

    @Override
    public Hemstitching withUse(Use other) {
        return new Hemstitching(tag, other, endsPerGroup, picks, round);
    }

    /** It has one row. */
    @Override
    public Hemstitching withRows(int other) {
        return this;
    }

    public Hemstitching withEndsPerGroup(int other) {
        return new Hemstitching(tag, use, other, picks, round);
    }

    public Hemstitching withPicks(int other) {
        return new Hemstitching(tag, use, endsPerGroup, other, round);
    }

    public Hemstitching withRound(Round other) {
        return new Hemstitching(tag, use, endsPerGroup, picks, other);
    }
}
