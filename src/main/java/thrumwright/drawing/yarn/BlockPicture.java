package thrumwright.drawing.yarn;

import java.awt.Color;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.UnaryOperator;
import thrumwright.block.Amount;
import thrumwright.block.Course;
import thrumwright.block.MaterialRole;
import thrumwright.block.PlainBand;
import thrumwright.block.Posts;
import thrumwright.block.Row;
import thrumwright.block.Setting;
import thrumwright.block.Strand;
import thrumwright.block.Tag;
import thrumwright.block.Use;
import thrumwright.block.YarnBlock;
import thrumwright.drawing.Palette;
import thrumwright.plan.Work;
import thrumwright.yarn.Yarn;

/**
 * What there is to draw of one block: its yarn in stretches in front of the warp and behind it, made from the very
 * strands that give its length. They are worked out when they are first wanted, and kept.
 */
public final class BlockPicture {
    /** Yarn before and behind, both edges and what is between, either way, at every place between two pixels, in two sizes. */
    private static final int MOST_STRIPS = 2 * 3 * 3 * YarnStrip.PHASES * 2;

    private final YarnBlock block;
    private final Setting setting;
    private final List<Row> rows;
    private final DyedYarn yarn;
    private final TailedEnds hanging;
    private final UnaryOperator<List<Strand>> slip;
    private final double laid;
    private final Map<Detail, YarnPath> paths;
    private final Map<Detail, Sides> sides = new ConcurrentHashMap<>();
    private final Map<YarnStrip.Key, YarnStrip> strips = new ConcurrentHashMap<>();
    private final YarnEnds.Which which;
    private final YarnEnds ends;
    private final Repetition repetition;
    private final Repetition courses;
    private BlockPicture narrow;
    private List<YarnEnds.LooseEnd> looseEnds;

    /** The stretches of both faces, those on top last. */
    private record Sides(List<Stretch> front, List<Stretch> back) {}

    private record Likeness(
            YarnBlock block,
            Setting setting,
            List<Row> rows,
            DyedYarn yarn,
            TailedEnds hanging,
            UnaryOperator<List<Strand>> slip,
            YarnEnds.Which which,
            double laid) {}

    private BlockPicture(
            YarnBlock block,
            Setting setting,
            List<Row> rows,
            DyedYarn yarn,
            TailedEnds hanging,
            UnaryOperator<List<Strand>> slip,
            YarnEnds.Which which) {
        this.block = block;
        this.setting = setting;
        this.rows = rows;
        this.yarn = yarn;
        this.hanging = hanging;
        this.slip = slip;
        this.laid = 1;
        this.paths = new ConcurrentHashMap<>();
        this.which = which;
        this.ends = new YarnEnds(block, setting, rows, which);
        this.repetition = Repetition.of(block, setting);
        this.courses = Repetition.ofRows(rows.size());
    }

    /** As far as its yarn is laid in. */
    private BlockPicture(BlockPicture whole, double laid) {
        this.block = whole.block;
        this.setting = whole.setting;
        this.rows = whole.rows;
        this.yarn = whole.yarn;
        this.hanging = whole.hanging;
        this.slip = whole.slip;
        this.laid = laid;
        this.paths = whole.paths;
        this.which = whole.which;
        this.ends = whole.ends;
        this.repetition = whole.repetition;
        this.courses = whole.courses;
    }

    private static BlockPicture of(
            Work work, DyedYarn.Tint tint, TailedEnds hanging, UnaryOperator<List<Strand>> slip) {
        return new BlockPicture(
                work.block(),
                work.setting(),
                work.rows(),
                new DyedYarn(work.yarn(), tint),
                hanging,
                slip,
                YarnEnds.Which.BOTH);
    }

    /** A block with its tails, paler if it comes out again. */
    public static BlockPicture of(Work work) {
        DyedYarn.Tint tint = work.block().use().comesOut() ? DyedYarn.Tint.PALE : DyedYarn.Tint.FULL;
        return of(work, tint, TailedEnds.of(work.oneLength()), UnaryOperator.identity());
    }

    /** A block that is being worked, in its full colour, with a slip in how its yarn is led. */
    public static BlockPicture slipped(Work work, UnaryOperator<List<Strand>> slip) {
        return of(work, DyedYarn.Tint.FULL, TailedEnds.of(work.oneLength()), slip);
    }

    /** A block whose yarn is led on by the hand: it has begun, and hasn't come to its end. */
    public static BlockPicture underWay(Work work, List<Strand> laid) {
        return new BlockPicture(
                work.block(),
                work.setting(),
                work.rows(),
                new DyedYarn(work.yarn(), DyedYarn.Tint.FULL),
                TailedEnds.of(work.oneLength()),
                strands -> laid,
                YarnEnds.Which.FIRST);
    }

    /** A block as it lies at the edge, without tails. */
    public static BlockPicture finished(Work work) {
        return of(work, DyedYarn.Tint.FULL, TailedEnds.NOWHERE, UnaryOperator.identity());
    }

    /** What was woven before, in grey and without tails. */
    public static BlockPicture woven(Work work) {
        return of(work, DyedYarn.Tint.GREY, TailedEnds.NOWHERE, UnaryOperator.identity());
    }

    /** So many plain picks of a yarn that belongs to no block: the design's. */
    public static BlockPicture picks(Yarn yarn, Setting setting, int count, Course before) {
        PlainBand band = new PlainBand(
                Tag.of("design"),
                Use.of(MaterialRole.WEFT),
                PlainBand.Purpose.PLAIN,
                new Amount.Picks(count),
                Optional.empty());
        DyedYarn full = new DyedYarn(yarn, DyedYarn.Tint.FULL);
        return new BlockPicture(
                band,
                setting,
                band.rows(setting, before),
                full,
                TailedEnds.NOWHERE,
                UnaryOperator.identity(),
                YarnEnds.Which.BOTH);
    }

    /** Whether the other one shows the same. */
    public boolean alike(BlockPicture other) {
        return likeness().equals(other.likeness());
    }

    /** All that it follows from: pictures of which these are equal show the same. */
    public Object likeness() {
        return new Likeness(block, setting, rows, yarn, hanging, slip, which, laid);
    }

    /**
     * The same while it is being worked: its yarn is laid in so far, and nothing hangs where it ends.
     *
     * @param share of the length of each of its yarns, 0 to 1
     */
    public BlockPicture laid(double share) {
        return new BlockPicture(this, share);
    }

    /** The share of each of its yarns that is laid in, 0 to 1. */
    public double laid() {
        return laid;
    }

    /** The way of its yarns, as they are laid in. */
    public YarnPath path(Detail detail) {
        return paths.computeIfAbsent(
                detail, wanted -> YarnPath.of(setting, slip.apply(block.strands(setting, rows)), joined(), wanted));
    }

    /**
     * How much of the length of its yarns some of its rows take, from the first row: 0 to 1.
     *
     * @param count of rows, 0 to as many as there are
     */
    public double share(int count) {
        return count == 0 ? 0 : length(count) / length(rows.size());
    }

    private double length(int count) {
        return block.withRows(count).strands(setting, rows.subList(0, count)).stream()
                .mapToDouble(Strand::length)
                .sum();
    }

    /** Whether its yarn goes on into tails. */
    private boolean joined() {
        return hanging.any() && !ends.toPosts();
    }

    /** In mm, 0 or more. */
    public double height() {
        return block.height(setting);
    }

    /** How far it lies over the cloth beside it, mm, either sign, see {@link YarnBlock#lap}. */
    public double lap() {
        return block.lap(setting);
    }

    DyedYarn yarn() {
        return yarn;
    }

    /** The colour of its yarn as it is drawn. */
    public Color colour(Palette palette) {
        return yarn.colour(palette);
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
            List<Stretch> all = path(detail).laid(laid);
            return new Sides(
                    all.stream().filter(Stretch::front).toList(),
                    all.stream().filter(stretch -> !stretch.front()).toList());
        });
    }

    /** How it repeats itself across the warp. */
    Repetition repetition() {
        return repetition;
    }

    /** How its rows repeat themselves. */
    Repetition courses() {
        return courses;
    }

    /** Of one row, mm, 0 or more. */
    double rowHeight() {
        return height() / rows.size();
    }

    /** How many crossings of yarn and warp there are, 1 or more. */
    double crossings() {
        return (double) setting.ends() * rows.size();
    }

    /** The same block on the narrow warp of its repetition, with as many rows as differ. */
    synchronized BlockPicture narrow() {
        if (narrow == null) {
            narrow = repetition.repeats() || courses.repeats() ? fewer() : this;
        }
        return narrow;
    }

    private BlockPicture fewer() {
        YarnBlock low = courses.repeats() ? block.withRows(courses.fewer()) : block;
        return new BlockPicture(
                low,
                setting.withEnds(repetition.fewer()),
                rows.subList(0, courses.fewer()),
                yarn,
                hanging,
                slip,
                which);
    }

    /** A picture of a part of it; kept for a while. */
    YarnStrip strip(YarnStrip.Key key, YarnStrip.Pen pen) {
        if (strips.size() > MOST_STRIPS) {
            strips.clear();
        }
        return strips.computeIfAbsent(
                key, wanted -> YarnStrip.of(wanted, reach(), setting.spacing(), rowHeight(), pen));
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
        return new Rectangle2D.Double(
                -out, -above + Math.min(0, lap()), setting.span() + 2 * out, height() + 2 * above + Math.abs(lap()));
    }

    /** Its tails, with the block's lower edge at any height, mm, not yet hung clear of each other; a cord tied to posts has none. */
    public List<Tail> tails(double bottom) {
        if (!joined() || laid < 1 && block.folded()) {
            return List.of();
        }
        return hung().stream().map(end -> ends.tail(end, yarn, bottom)).toList();
    }

    private List<YarnEnds.LooseEnd> hung() {
        List<YarnEnds.LooseEnd> loose = looseEnds();
        boolean ended = hanging.last() && laid >= 1;
        return loose.subList(hanging.first() ? 0 : 1, ended ? loose.size() : 1);
    }

    /** Both edges are the same on the narrow warp, and sooner worked out. */
    private synchronized List<YarnEnds.LooseEnd> looseEnds() {
        if (looseEnds == null) {
            looseEnds = narrow().ends.loose(height() - narrow().height());
        }
        return looseEnds;
    }

    /** Where a tied cord begins and ends: turns round the posts, or on a loom without any a knot beside the edge end. */
    public List<Stretch> ties() {
        List<Stretch> ties = ends.ties();
        return laid < 1 ? ties.subList(0, ties.size() / 2) : ties;
    }

    /** The posts, if its yarn is tied to them. */
    Optional<Posts> toPosts() {
        return ends.toPosts() ? setting.posts() : Optional.empty();
    }

    /** Whether stretches lie on each other, so that their order matters. */
    boolean overlapping() {
        return block.crossesItself();
    }
}
