package thrumwright.drawing.piece;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import thrumwright.block.Course;
import thrumwright.block.Setting;
import thrumwright.drawing.edge.LoopPen;
import thrumwright.drawing.yarn.BlockPicture;
import thrumwright.drawing.yarn.Tail;
import thrumwright.piece.Place;
import thrumwright.plan.BlockPlan;
import thrumwright.plan.EndPlan;
import thrumwright.plan.Plan;
import thrumwright.yarn.Yarn;

/**
 * All that there is to draw of a planned piece, to scale but for the design, of which only a band is shown at either
 * side of a tear.
 */
public final class PiecePicture {
    /** Height of the band that stands for the design, mm. */
    public static final double DESIGN = 26;

    /** Tails hang at most so far below the start's lowest line, mm. */
    private static final double TAILS_BELOW = 4;

    private static final double CLOSE_BELOW = 2.5;

    private static final double STRIPE = 0.36 * DESIGN;

    /** Stands for the stripe among blocks, which all have longer ids. */
    private static final String OF_THE_STRIPE = "";

    /** More picks are never drawn for a stripe, however fine they are. */
    private static final int MOST_PICKS = 400;

    private final Plan plan;
    private final boolean close;
    private final Map<Place, LatePictures> late;
    private final Map<Place, Map<String, BlockPicture>> blocks;
    private final Map<Place, BlockPicture> stripes;
    private final Map<Place, List<Tail>> tails;
    private final PieceReach reach;
    private final double margin;
    private final double beside;
    private final Map<Place, Double> hanging;

    private PiecePicture(Plan plan, boolean close, Map<Place, LatePictures> late) {
        this.plan = plan;
        this.close = close;
        this.late = late;
        this.blocks = Map.of(
                Place.START, pictures(plan.start()),
                Place.TOP, pictures(plan.top()));
        this.stripes = Map.of(
                Place.START, stripe(Place.START, plan.start().after()),
                Place.TOP, stripe(Place.TOP, Course.beginning()));
        this.tails = Map.of(
                Place.START, tails(plan.start()),
                Place.TOP, tails(plan.top()));
        this.beside = yarnBeside();
        this.margin = reached();
        this.reach = PieceReach.of(plan, tails, turns());
        this.hanging = Map.of(Place.START, hangs(Place.START), Place.TOP, hangs(Place.TOP));
    }

    public static PiecePicture of(Plan plan) {
        return of(plan, false);
    }

    /** A picture whose tails hang close beside the cloth, so that they leave it as much room as they can. */
    public static PiecePicture close(Plan plan) {
        return of(plan, true);
    }

    private static PiecePicture of(Plan plan, boolean close) {
        return new PiecePicture(plan, close, Map.of(Place.START, new LatePictures(), Place.TOP, new LatePictures()));
    }

    /** The picture of a later plan; blocks that look as they did lately keep what was worked out for them. */
    public PiecePicture next(Plan later) {
        return new PiecePicture(later, close, late);
    }

    private Map<String, BlockPicture> pictures(EndPlan end) {
        Map<String, BlockPicture> pictures = new HashMap<>();
        LatePictures known = late.get(end.place());
        for (BlockPlan block : end.blocks()) {
            String id = block.block().id();
            block.work().ifPresent(work -> pictures.put(id, known.orAlike(id, BlockPicture.of(work))));
        }
        known.keepOnly(id -> pictures.containsKey(id) || id.equals(OF_THE_STRIPE));
        return pictures;
    }

    private BlockPicture stripe(Place place, Course course) {
        Yarn yarn = plan.piece().stripe(place);
        int picks = (int) Math.max(2, Math.round(STRIPE / yarn.beaten()));
        Setting setting = plan.piece().setting(yarn);
        BlockPicture stripe = BlockPicture.picks(yarn, setting, Math.min(picks, MOST_PICKS), course);
        return late.get(place).orAlike(OF_THE_STRIPE, stripe);
    }

    private List<Tail> tails(EndPlan end) {
        List<Tail> tails = new ArrayList<>();
        for (BlockPlan block : end.blocks()) {
            if (block.work().isPresent()) {
                tails.addAll(blocks.get(end.place()).get(block.block().id()).tails(block.bottom()));
            }
        }
        // what lies in the start's loops would hide tails
        double loops = end.place() == Place.START && end.loops().isPresent() ? LoopPen.BEYOND * ground().spacing() : 0;
        double lowest = end.place() == Place.TOP ? -DESIGN : close ? -CLOSE_BELOW : -TAILS_BELOW;
        List<Tail> cut = tails.stream().map(tail -> tail.above(lowest)).toList();
        return close ? Tail.hungClose(cut, Math.max(turns(), loops)) : Tail.hung(cut);
    }

    /** How far turns of any yarn reach beyond the edge ends, mm, more than 0. */
    private double turns() {
        double thickest = Stream.concat(
                        blocks.values().stream().flatMap(of -> of.values().stream()), stripes.values().stream())
                .mapToDouble(block -> block.setting().relaxed())
                .max()
                .orElse(0);
        return ground().warp() / 2 + thickest;
    }

    public Plan plan() {
        return plan;
    }

    public Map<String, BlockPicture> blocks(Place place) {
        return blocks.get(place);
    }

    public BlockPicture stripe(Place place) {
        return stripes.get(place);
    }

    /** Tails of an end, their heights counted from its lowest line. */
    public List<Tail> tails(Place place) {
        return tails.get(place);
    }

    public Setting ground() {
        return plan.piece().setting(plan.piece().warpYarn());
    }

    /** Height of an end's lowest line in the picture, mm above the start's lowest line. */
    public double base(Place place) {
        return place == Place.START ? 0 : plan.start().height() + DESIGN;
    }

    /** Height of the whole picture from the start's lowest line to the top's highest, mm. */
    public double height() {
        return base(Place.TOP) + plan.top().height();
    }

    /** Where the lower bar's upper edge lies, mm above the start's lowest line: below 0. */
    public double lowerBar() {
        return -plan.start().onLoom();
    }

    /** Where the upper bar's lower edge lies, mm above the start's lowest line; below the top where that is too high. */
    public double upperBar() {
        return base(Place.TOP) + plan.budget().open() - plan.top().onLoom();
    }

    /** How far what is drawn reaches beyond the cloth. */
    public PieceReach reach() {
        return reach;
    }

    /** How far what is drawn reaches into the bare warp beyond an end, mm, 0 or more. */
    public double beyond(Place place) {
        return Math.max(place == Place.START ? reach.below() : 0, loops(place));
    }

    /** How far the picture reaches to either side of the warp, mm, 0 or more: posts or tails. */
    public double margin() {
        return margin;
    }

    private double reached() {
        double least = beside;
        Setting ground = ground();
        return ground.posts()
                .map(posts -> Math.max(least, posts.gap() + posts.diameter() + ground.warp() + 2))
                .orElse(least);
    }

    /** How far yarn reaches to either side of the warp, mm, 0 or more; not what goes to the posts. */
    public double beside() {
        return beside;
    }

    private double yarnBeside() {
        return Math.max(tailsBeside(), 2.5 * ground().spacing() + 1);
    }

    /** How far tails reach to either side of the warp, and a little air, mm, more than 0. */
    private double tailsBeside() {
        return Math.max(0.5 * ground().spacing(), farthestTail()) + 1;
    }

    private double farthestTail() {
        return tails.values().stream()
                .flatMap(List::stream)
                .mapToDouble(Tail::reach)
                .max()
                .orElse(0);
    }

    /** How far tails hang below an end's lowest line, mm. */
    public double hanging(Place place) {
        return hanging.get(place);
    }

    private double hangs(Place place) {
        return tails.get(place).stream()
                .mapToDouble(tail -> Math.max(0, tail.down() - tail.y()) + tail.thickness())
                .max()
                .orElse(0);
    }

    /** How far warp loops and what they lie round reach beyond an end's edge, mm, 0 or more. */
    public double loops(Place place) {
        return plan.end(place)
                .loops()
                .map(loops -> LoopPen.reach(ground(), loops.thick().mm()))
                .orElse(0.0);
    }

    /** From the first warp end to the last, mm, 0 or more. */
    public double span() {
        return ground().span();
    }
}
