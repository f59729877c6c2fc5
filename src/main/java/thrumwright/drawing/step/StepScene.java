package thrumwright.drawing.step;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import thrumwright.block.Course;
import thrumwright.block.Lean;
import thrumwright.block.Leg;
import thrumwright.block.Posts;
import thrumwright.block.Row;
import thrumwright.block.Setting;
import thrumwright.block.Shed;
import thrumwright.block.Side;
import thrumwright.block.Strand;
import thrumwright.drawing.yarn.BlockPicture;
import thrumwright.drawing.yarn.ClothPainter;
import thrumwright.drawing.yarn.Tail;
import thrumwright.plan.BlockPlan;
import thrumwright.plan.EndPlan;
import thrumwright.plan.Plan;
import thrumwright.plan.Work;
import thrumwright.yarn.Yarn;

/**
 * A block's first rows on a few warp ends, to teach from. The warp ends keep their distance, but all yarns are at least
 * so thick, and beaten so loosely, that over and under can be told apart.
 *
 * @param work the rows that are shown
 * @param picture of those rows
 * @param tails hung clear of each other
 * @param now the row that is being worked; empty if all are shown as they will be
 */
record StepScene(Work work, BlockPicture picture, List<Tail> tails, Optional<Row> now) {
    private static final int ENDS = 6;
    private static final int MOST_ENDS = 12;
    private static final int FEWEST_ENDS = 4;
    private static final int ROWS_BELOW = 6;
    /** So many rows, if there are as many, draw the edges in before one's eyes. */
    private static final int SLIPPED_ROWS = 6;
    /** Thicknesses as shares of the distance between ends: the warp's, and the least and most of a yarn's. */
    private static final double WARP = 0.2;

    private static final double THINNEST = 0.34;
    private static final double THICKEST = 0.5;
    /** How much of a yarn's thickness beating leaves, at least. */
    private static final double LOOSE = 0.75;

    static StepScene of(Work whole) {
        return of(shown(whole), UnaryOperator.identity());
    }

    /** Enough rows to show how each row of the block is worked: one that goes either way, if there are more than one. */
    static StepScene moving(Work whole) {
        StepScene usual = of(whole);
        return usual.work.rows().size() == 1 && whole.rows().size() > 1
                ? of(shortened(whole, 3), UnaryOperator.identity())
                : usual;
    }

    private static StepScene of(Work few, UnaryOperator<List<Strand>> slip) {
        BlockPicture picture = BlockPicture.slipped(few, slip);
        return new StepScene(few, picture, Tail.hung(picture.tails(0)), Optional.empty());
    }

    /** Those rows as far as they are worked at a stage, from 0. */
    static StepScene led(Work few, Led led) {
        BlockPicture picture = led.done()
                ? BlockPicture.slipped(few, strands -> led.strands())
                : BlockPicture.underWay(few, led.strands());
        return new StepScene(few, picture, Tail.hung(picture.tails(0)), Optional.empty());
    }

    /** The rows that are shown, on the ends that are shown. */
    static Work shown(Work whole) {
        return shortened(whole, usualRows(whole));
    }

    /**
     * The rows in which a slip shows.
     *
     * @param right whether they are as they must be
     */
    static StepScene of(Work whole, Slip slip, boolean right) {
        boolean band = slip == Slip.DRAWN_IN || slip == Slip.TIGHT_CORD;
        Work few = shortened(whole, band ? Math.max(usualRows(whole), SLIPPED_ROWS) : usualRows(whole));
        if (right || slip.strains()) {
            return of(few, UnaryOperator.identity());
        }
        return switch (slip) {
            case LEAN -> of(withRows(few, StepScene::leaningWrong), UnaryOperator.identity());
            case SAME_SHED -> of(withRows(few, StepScene::inOneShed), UnaryOperator.identity());
            default -> of(few, StepScene::uncrossed);
        };
    }

    /**
     * The same while one of its rows is being worked.
     *
     * @param row from 0
     * @param share of that row's yarn that is laid in, 0 to 1
     */
    StepScene at(int row, double share) {
        double before = picture.share(row);
        BlockPicture laid = picture.laid(before + (picture.share(row + 1) - before) * share);
        return new StepScene(
                work, laid, Tail.hung(laid.tails(0)), Optional.of(work.rows().get(row)));
    }

    /** @param share of all its yarn that is laid in, 0 to 1 */
    StepScene laid(double share) {
        BlockPicture laid = picture.laid(share);
        return new StepScene(work, laid, Tail.hung(laid.tails(0)), now);
    }

    private static Work withRows(Work work, UnaryOperator<Row> slip) {
        List<Row> rows = work.rows().stream().map(slip).toList();
        return new Work(work.block(), work.yarn(), work.setting(), rows, work.cut(), work.oneLength());
    }

    private static Row leaningWrong(Row row) {
        return new Row(row.number(), row.shed(), row.from(), row.lean().map(Lean::other));
    }

    /** From the second row on each is in the shed of the one before it, so that the first two share theirs. */
    private static Row inOneShed(Row row) {
        Optional<Shed> shed = row.number() > 1 ? row.shed().map(Shed::other) : row.shed();
        return new Row(row.number(), shed, row.from(), row.lean());
    }

    /** Every wrap climbs, so that the second of a hitch lies beside the first instead of across it. */
    private static List<Strand> uncrossed(List<Strand> strands) {
        return strands.stream()
                .map(strand -> new Strand(
                        strand.legs().stream().map(StepScene::climbing).toList()))
                .toList();
    }

    private static Leg climbing(Leg leg) {
        return leg.fromY() > leg.toY() ? new Leg(leg.route(), leg.toY(), leg.middleY(), leg.fromY()) : leg;
    }

    private static Setting setting(Setting whole, int ends, boolean posts) {
        double s = whole.spacing();
        double thick = Math.max(THINNEST * s, Math.min(THICKEST * s, whole.relaxed()));
        double share = Math.max(LOOSE, Math.min(1, whole.beaten() / whole.relaxed()));
        double warp = Math.max(WARP * s, Math.min(0.35 * s, whole.warp()));
        return new Setting(
                ends, s, warp, thick, share * thick, posts ? whole.posts().map(p -> nearer(p, s)) : Optional.empty());
    }

    /** Enough for a few stitches; odd or even as in the whole warp, so that the edges are those of the whole warp. */
    private static int ends(Work work) {
        int wanted = work.block().endsToShow();
        int all = work.setting().ends();
        return Math.min(all, Math.max(ENDS, Math.min(MOST_ENDS, wanted + wanted % 2)) + all % 2);
    }

    /** Posts drawn in, so that the few ends stay large. */
    private static Posts nearer(Posts posts, double spacing) {
        return new Posts(Math.min(posts.diameter(), 1.5 * spacing), Math.min(posts.gap(), 1.9 * spacing));
    }

    private static int usualRows(Work whole) {
        if (whole.block().tied()) {
            return 3;
        }
        return whole.block().plainWeave() ? 4 : 2;
    }

    /** The same on as few ends as show a stitch or two, so that they are large. */
    static Work closely(Work whole) {
        int all = whole.setting().ends();
        int wanted = Math.min(
                MOST_ENDS,
                Math.max(
                        FEWEST_ENDS,
                        whole.block().longestFloat() + whole.block().period() + 2));
        return shortened(whole, usualRows(whole), Math.min(all, wanted + wanted % 2 + all % 2));
    }

    private static Work shortened(Work whole, int most) {
        return shortened(whole, most, ends(whole));
    }

    private static Work shortened(Work whole, int most, int ends) {
        Setting setting = setting(whole.setting(), ends, whole.block().tied());
        int rows = whole.rows().size();
        // as many rows, odd or even, as the whole block, so that the yarn ends at the right side
        int shown = rows <= most ? rows : most - (most - rows & 1);
        return new Work(
                whole.block().onFew(ends).withRows(shown),
                whole.yarn(),
                setting,
                whole.rows().subList(0, shown),
                whole.cut(),
                whole.oneLength());
    }

    /**
     * The last rows of what was woven before a block, to stand on: their upper edge is at y = 0.
     *
     * @param ends number of warp ends to show
     */
    static Optional<ClothPainter.PlacedBlock> below(EndPlan end, BlockPlan block, int ends) {
        for (int i = end.blocks().indexOf(block) - 1; i >= 0; i--) {
            Optional<Work> work = end.blocks().get(i).work();
            if (work.filter(Work::stands).isPresent() && !work.get().block().tied()) {
                return work.map(woven -> lastRows(woven, ends));
            }
        }
        return Optional.empty();
    }

    private static ClothPainter.PlacedBlock lastRows(Work work, int ends) {
        int all = work.rows().size();
        ClothPainter.PlacedBlock rows = rows(work, Math.max(0, all - ROWS_BELOW), all, ends);
        return new ClothPainter.PlacedBlock(rows.picture(), -rows.height(), rows.height());
    }

    /** Some rows of what stands beside a block, with their lower edge at y = 0. */
    private static ClothPainter.PlacedBlock rows(Work work, int from, int to, int ends) {
        Setting few = setting(work.setting(), ends, false);
        Work small = new Work(
                work.block().withRows(to - from), work.yarn(), few, work.rows().subList(from, to), work.cut());
        return new ClothPainter.PlacedBlock(
                BlockPicture.woven(small), 0, small.block().height(few));
    }

    /** What was woven before, and the cloth on which a block lies that has no height. */
    List<ClothPainter.PlacedBlock> ground(Plan plan, EndPlan end, BlockPlan block) {
        List<ClothPainter.PlacedBlock> ground = new ArrayList<>();
        if (lap() >= 0) {
            below(end, block, setting().ends()).ifPresent(ground::add);
        }
        cloth(plan, end, block).ifPresent(ground::add);
        return ground;
    }

    /** The same, and the block itself. */
    List<ClothPainter.PlacedBlock> placed(Plan plan, EndPlan end, BlockPlan block) {
        return placed(ground(plan, end, block));
    }

    /** The block itself on what was woven before. */
    List<ClothPainter.PlacedBlock> placed(List<ClothPainter.PlacedBlock> ground) {
        List<ClothPainter.PlacedBlock> placed = new ArrayList<>(ground);
        placed.add(new ClothPainter.PlacedBlock(picture, 0, height()));
        return placed;
    }

    /** The cloth on which a block lies that has no height: rows above it or below it, else plain picks of the design's yarn. */
    Optional<ClothPainter.PlacedBlock> cloth(Plan plan, EndPlan end, BlockPlan block) {
        if (lap() == 0) {
            return Optional.empty();
        }
        int ends = setting().ends();
        Optional<ClothPainter.PlacedBlock> there = lap() < 0 ? below(end, block, ends) : above(end, block, ends);
        return there.or(() -> Optional.of(picks(plan, end)));
    }

    /** The first rows of what is woven on top of a block, with their lower edge at y = 0. */
    static Optional<ClothPainter.PlacedBlock> above(EndPlan end, BlockPlan block, int ends) {
        return end
                .blocks()
                .subList(end.blocks().indexOf(block) + 1, end.blocks().size())
                .stream()
                .flatMap(next -> next.work().stream())
                .filter(Work::stands)
                .findFirst()
                .map(next -> rows(next, 0, Math.min(next.rows().size(), ROWS_BELOW), ends));
    }

    private ClothPainter.PlacedBlock picks(Plan plan, EndPlan end) {
        Yarn yarn = plan.piece().stripe(end.place());
        Setting few = setting(plan.piece().setting(yarn), setting().ends(), false);
        BlockPicture picks = BlockPicture.picks(yarn, few, ROWS_BELOW, Course.beginning());
        return new ClothPainter.PlacedBlock(picks, lap() < 0 ? -picks.height() : 0, picks.height());
    }

    /** All that the drawing of it on some ground follows from; the tails follow from the picture. */
    Object likeness(List<ClothPainter.PlacedBlock> ground, Yarn warp) {
        return List.of(
                picture.likeness(),
                now,
                ground.stream().map(ClothPainter.PlacedBlock::likeness).toList(),
                warp);
    }

    /** See {@link BlockPicture#lap}. */
    double lap() {
        return picture.lap();
    }

    Setting setting() {
        return work.setting();
    }

    double height() {
        return picture.height();
    }

    double rowHeight() {
        return height() / work.rows().size();
    }

    /** Whether the cord runs out round the posts. */
    boolean tied() {
        return work.block().tied() && setting().posts().isPresent();
    }

    /** How far yarns and posts reach beyond the edge end on a side, mm. */
    double reach(Side side) {
        double reach = setting().radius() + setting().relaxed();
        for (Tail tail : tails) {
            if (tail.side() == side) {
                reach = Math.max(reach, tail.reach());
            }
        }
        return tied()
                ? setting().posts().orElseThrow().gap()
                        + setting().posts().orElseThrow().diameter()
                        + 2 * setting().relaxed()
                : reach;
    }

    /** The rows whose arrows are drawn. */
    List<Row> told() {
        return now.map(List::of).orElseGet(this::arrows);
    }

    /** The rows to be shown with an arrow: the first ones, until the yarn has gone both ways. */
    List<Row> arrows() {
        return new ArrayList<>(work.rows().subList(0, Math.min(2, work.rows().size())));
    }
}
