package thrumwright.drawing.yarn;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.UnaryOperator;
import thrumwright.block.Amount;
import thrumwright.block.Course;
import thrumwright.block.HalfHitch;
import thrumwright.block.Leg;
import thrumwright.block.MaterialRole;
import thrumwright.block.PlainBand;
import thrumwright.block.Row;
import thrumwright.block.Setting;
import thrumwright.block.Side;
import thrumwright.block.Soumak;
import thrumwright.block.Strand;
import thrumwright.block.Tag;
import thrumwright.block.Use;
import thrumwright.block.YarnBlock;
import thrumwright.cord.Route;
import thrumwright.cord.Section;
import thrumwright.cord.TautCord;
import thrumwright.cord.Visit;
import thrumwright.plan.Work;
import thrumwright.yarn.Yarn;

/**
 * What there is to draw of one block: its yarn in stretches in front of the warp and behind it, made from the very
 * strands that give its length. They are worked out when they are first wanted, and kept.
 */
public final class BlockPicture {
    /** Yarn before and behind, both edges and what is between, at every place between two pixels, in two sizes. */
    private static final int MOST_STRIPS = 2 * 3 * Strip.PHASES * 2;

    /** Pegs beyond so many have no part in where a cord begins or ends. */
    private static final int FEW = 6;

    private final YarnBlock block;
    private final Setting setting;
    private final List<Row> rows;
    private final Yarn yarn;
    private final Tint tint;
    private final boolean tailed;
    private final UnaryOperator<List<Strand>> slip;
    private final Map<Detail, Sides> sides = new ConcurrentHashMap<>();
    private final Map<Strip.Key, Strip> strips = new ConcurrentHashMap<>();
    private final Repetition repetition;
    private BlockPicture narrow;
    private List<LooseEnd> looseEnds;

    /** How its colour is drawn. */
    enum Tint {
        FULL,
        /** It comes out again. */
        PALE,
        /** It is only there to stand on. */
        GREY
    }

    /** The stretches of both faces, those on top last. */
    private record Sides(List<Stretch> front, List<Stretch> back) {}

    /**
     * A place at the edge where the yarn begins or ends.
     *
     * @param y mm above the block's lower edge
     * @param inFront whether it lies in front of the edge end
     */
    private record LooseEnd(Side side, double y, boolean inFront) {}

    private BlockPicture(
            YarnBlock block,
            Setting setting,
            List<Row> rows,
            Yarn yarn,
            Tint tint,
            boolean tailed,
            UnaryOperator<List<Strand>> slip) {
        this.block = block;
        this.setting = setting;
        this.rows = rows;
        this.yarn = yarn;
        this.tint = tint;
        this.tailed = tailed;
        this.slip = slip;
        this.repetition = Repetition.of(block, setting);
    }

    /** A block with its tails, paler if it comes out again. */
    public static BlockPicture of(Work work) {
        Tint tint = work.block().use().comesOut() ? Tint.PALE : Tint.FULL;
        return new BlockPicture(
                work.block(), work.setting(), work.rows(), work.yarn(), tint, true, UnaryOperator.identity());
    }

    /** A block that is being worked, in its full colour. */
    static BlockPicture atWork(Work work) {
        return slipped(work, UnaryOperator.identity());
    }

    /** The same with a slip in how its yarn is led. */
    public static BlockPicture slipped(Work work, UnaryOperator<List<Strand>> slip) {
        return new BlockPicture(work.block(), work.setting(), work.rows(), work.yarn(), Tint.FULL, true, slip);
    }

    /** What was woven before, in grey and without tails. */
    public static BlockPicture woven(Work work) {
        return new BlockPicture(
                work.block(), work.setting(), work.rows(), work.yarn(), Tint.GREY, false, UnaryOperator.identity());
    }

    /** So many plain picks of a yarn that belongs to no block: the design's. */
    public static BlockPicture picks(Yarn yarn, Setting setting, int count, Course before) {
        PlainBand band = new PlainBand(
                Tag.of("design"),
                Use.of(MaterialRole.WEFT),
                PlainBand.Purpose.PLAIN,
                new Amount.Picks(count),
                Optional.empty());
        return new BlockPicture(
                band, setting, band.rows(setting, before), yarn, Tint.FULL, false, UnaryOperator.identity());
    }

    /** Whether the other one shows the same. */
    public boolean alike(BlockPicture other) {
        return block.equals(other.block)
                && setting.equals(other.setting)
                && rows.equals(other.rows)
                && yarn.equals(other.yarn)
                && tint == other.tint
                && tailed == other.tailed;
    }

    /** In mm. */
    public double height() {
        return block.height(setting);
    }

    Yarn yarn() {
        return yarn;
    }

    public Setting setting() {
        return setting;
    }

    public List<Stretch> front(Detail detail) {
        return sides(detail).front();
    }

    public List<Stretch> back(Detail detail) {
        return sides(detail).back();
    }

    private Sides sides(Detail wanted) {
        return sides.computeIfAbsent(wanted, detail -> {
            List<Stretch> all =
                    Stretches.of(setting, slip.apply(block.strands(setting, rows)), tailed && !toPosts(), detail);
            return new Sides(
                    all.stream().filter(Stretch::front).toList(),
                    all.stream().filter(stretch -> !stretch.front()).toList());
        });
    }

    /** How it repeats itself across the warp. */
    Repetition repetition() {
        return repetition;
    }

    /** The same block on the narrow warp of its repetition. */
    synchronized BlockPicture narrow() {
        if (narrow == null) {
            narrow = repetition.repeats()
                    ? new BlockPicture(block, setting.withEnds(repetition.fewer()), rows, yarn, tint, tailed, slip)
                    : this;
        }
        return narrow;
    }

    /** A picture of a part of it; kept for a while. */
    Strip strip(Strip.Key key, Strip.Pen pen) {
        if (strips.size() > MOST_STRIPS) {
            strips.clear();
        }
        return strips.computeIfAbsent(key, wanted -> Strip.of(wanted, reach(), setting.spacing(), pen));
    }

    /** How many pictures of parts are kept. */
    int strips() {
        return strips.size();
    }

    /** All that its yarn may reach, apart from tails: mm from the first warp end, and up from its lower edge. */
    private Rectangle2D reach() {
        double beside = 2 * setting.gauge() + 2 * setting.relaxed();
        double out = block.tied()
                ? setting.posts()
                        .map(posts -> posts.gap() + posts.diameter() + beside)
                        .orElse(beside)
                : beside;
        double above = 2 * setting.relaxed();
        return new Rectangle2D.Double(-out, -above, setting.span() + 2 * out, height() + 2 * above);
    }

    /** A folded yarn ends twice where it finishes; any other begins at one place and ends at another. */
    private List<LooseEnd> looseEnds(List<Strand> strands) {
        Side begins = rows.get(0).from();
        Side ends = rows.get(rows.size() - 1).to();
        List<LooseEnd> loose = new ArrayList<>();
        if (block.folded()) {
            for (int i = 0; i < strands.size(); i++) {
                double aside = (i - (strands.size() - 1) / 2.0) * setting.beaten();
                loose.add(looseEnd(ends, lastOf(strands.get(i).legs()), 1, aside));
            }
            return loose;
        }
        Strand strand = strands.get(0);
        loose.add(looseEnd(begins, strand.legs().get(0), 0, 0));
        loose.add(looseEnd(ends, lastOf(strand.legs()), 1, 0));
        return loose;
    }

    private LooseEnd looseEnd(Side side, Leg leg, int share, double aside) {
        List<Section> sections =
                TautCord.along(outermost(leg.route(), share == 0)).sections();
        Section section = share == 0 ? sections.get(0) : lastOf(sections);
        Section.Spot spot = section.at(share);
        double edge = side == Side.LEFT ? 0 : setting.span();
        boolean onTheEdge = Math.abs(spot.x() - edge) < setting.radius() / 2;
        double y = aside + (share == 0 ? leg.fromY() : leg.toY());
        return new LooseEnd(side, y, onTheEdge && spot.z() > 0);
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

    /** Its tails at the height of the block, not yet hung clear of each other; a cord tied to posts has none. */
    public List<Tail> tails(double bottom) {
        if (!tailed || toPosts()) {
            return List.of();
        }
        double thick = setting.relaxed();
        double out = setting.spacing() + thick;
        double down = 1.6 * setting.spacing() + thick;
        return looseEnds().stream()
                .map(end -> new Tail(
                        this,
                        end.side(),
                        end.side() == Side.LEFT ? 0 : setting.span(),
                        bottom + end.y(),
                        end.inFront(),
                        thick,
                        out,
                        down))
                .toList();
    }

    /** Both edges are the same on the narrow warp, and sooner worked out. */
    private synchronized List<LooseEnd> looseEnds() {
        if (looseEnds == null) {
            BlockPicture few = narrow();
            looseEnds = few.looseEnds(block.strands(few.setting, rows));
        }
        return looseEnds;
    }

    /** Whether its yarn is tied to the loom's posts. */
    private boolean toPosts() {
        return block.tied() && setting.posts().isPresent();
    }

    /** Where a tied cord begins and ends: turns round the posts, or on a loom without any a knot beside the edge end. */
    public List<Stretch> ties() {
        List<Stretch> ties = new ArrayList<>();
        if (block.tied()) {
            double each = height() / rows.size();
            ties.addAll(tie(rows.get(0).from(), each / 2, -1));
            ties.addAll(tie(rows.get(rows.size() - 1).to(), height() - each / 2, 1));
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

    /** Whether stretches lie on each other, so that their order matters. */
    boolean overlapping() {
        return block instanceof Soumak || block instanceof HalfHitch;
    }

    Tint tint() {
        return tint;
    }
}
