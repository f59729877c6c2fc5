package thrumwright.drawing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import thrumwright.block.Course;
import thrumwright.block.Setting;
import thrumwright.piece.Place;
import thrumwright.plan.BlockPlan;
import thrumwright.plan.EndPlan;
import thrumwright.plan.Plan;
import thrumwright.plan.Work;
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

    private static final double STRIPE = 0.36 * DESIGN;

    private final Plan plan;
    private final Map<Place, Map<String, BlockPicture>> blocks;
    private final Map<Place, BlockPicture> stripes;
    private final Map<Place, List<Tail>> tails;

    private PiecePicture(Plan plan, PiecePicture before) {
        this.plan = plan;
        this.blocks = Map.of(
                Place.START, pictures(plan.start(), before),
                Place.TOP, pictures(plan.top(), before));
        this.stripes = Map.of(
                Place.START, stripe(plan, Place.START, plan.start().after(), before),
                Place.TOP, stripe(plan, Place.TOP, Course.beginning(), before));
        this.tails = Map.of(
                Place.START, tails(plan.start()),
                Place.TOP, tails(plan.top()));
    }

    public static PiecePicture of(Plan plan) {
        return new PiecePicture(plan, null);
    }

    /** The picture of a later plan; blocks that haven't changed keep theirs. */
    public PiecePicture next(Plan later) {
        return new PiecePicture(later, this);
    }

    private static Map<String, BlockPicture> pictures(EndPlan end, PiecePicture before) {
        Map<String, BlockPicture> pictures = new HashMap<>();
        for (BlockPlan block : end.blocks()) {
            block.work().ifPresent(work -> pictures.put(block.block().id(), picture(end.place(), work, before)));
        }
        return pictures;
    }

    private static BlockPicture picture(Place place, Work work, PiecePicture before) {
        BlockPicture known = before == null
                ? null
                : before.blocks.get(place).get(work.block().id());
        BlockPicture picture = BlockPicture.of(work);
        return known == null ? picture : known.orIfAlike(picture);
    }

    private static BlockPicture stripe(Plan plan, Place place, Course course, PiecePicture before) {
        Yarn yarn = plan.piece().stripe(place);
        int picks = (int) Math.max(2, Math.round(STRIPE / yarn.beaten()));
        BlockPicture stripe = BlockPicture.picks(yarn, plan.piece().setting(yarn), Math.min(picks, 400), course);
        return before == null ? stripe : before.stripe(place).orIfAlike(stripe);
    }

    private List<Tail> tails(EndPlan end) {
        List<Tail> tails = new ArrayList<>();
        for (BlockPlan block : end.blocks()) {
            if (block.work().isPresent()) {
                tails.addAll(blocks.get(end.place()).get(block.block().id()).tails(block.bottom()));
            }
        }
        double lowest = end.place() == Place.START ? -TAILS_BELOW : -DESIGN;
        return Tail.hung(tails.stream().map(tail -> tail.above(lowest)).toList());
    }

    public Plan plan() {
        return plan;
    }

    Map<String, BlockPicture> blocks(Place place) {
        return blocks.get(place);
    }

    BlockPicture stripe(Place place) {
        return stripes.get(place);
    }

    /** Tails of an end, their heights counted from its lowest line. */
    List<Tail> tails(Place place) {
        return tails.get(place);
    }

    Setting ground() {
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

    /** How far the picture reaches to either side of the warp, mm: posts or tails. */
    public double margin() {
        Setting ground = ground();
        double hanging = tails.values().stream()
                .flatMap(List::stream)
                .mapToDouble(Tail::reach)
                .max()
                .orElse(0);
        double least = Math.max(hanging, 2.5 * ground.spacing()) + 1;
        return ground.posts()
                .map(posts -> Math.max(least, posts.gap() + posts.diameter() + ground.warp() + 2))
                .orElse(least);
    }

    /** How far tails hang below an end's lowest line, mm. */
    public double hanging(Place place) {
        return tails.get(place).stream()
                .mapToDouble(tail -> Math.max(0, tail.down() - tail.y()) + tail.thickness())
                .max()
                .orElse(0);
    }

    /** From the first warp end to the last, mm. */
    public double span() {
        return ground().span();
    }
}
