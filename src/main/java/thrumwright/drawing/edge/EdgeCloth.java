package thrumwright.drawing.edge;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thrumwright.block.Course;
import thrumwright.block.Lean;
import thrumwright.block.Row;
import thrumwright.block.Setting;
import thrumwright.drawing.yarn.BlockPicture;
import thrumwright.drawing.yarn.ClothPainter;
import thrumwright.piece.Place;
import thrumwright.plan.BlockPlan;
import thrumwright.plan.EndPlan;
import thrumwright.plan.Plan;
import thrumwright.plan.Work;
import thrumwright.yarn.Yarn;

/**
 * The cloth at an edge, a few warp ends wide, with what holds it there: the end's own blocks from the edge inwards, and beyond
 * them the design's first picks.
 *
 * @param ends number of warp ends to show
 * @param pitch from one to the next, page units
 * @param high how much of it is seen, page units
 */
record EdgeCloth(Plan plan, EndPlan end, int ends, double pitch, double high) {
    /** Thicknesses as shares of the distance between ends: the warp's, and the least and most of a yarn's. */
    private static final double WARP = 0.25;

    private static final double THINNEST = 0.3;
    private static final double THICKEST = 0.6;
    /** Of what is seen: the most that one row takes. */
    private static final double ROW = 0.3;

    /** The blocks with their heights above the edge, those nearest to it first; the end stands as at the start. */
    List<ClothPainter.PlacedBlock> blocks() {
        List<ClothPainter.PlacedBlock> placed = new ArrayList<>();
        double edge = 0;
        for (BlockPlan block : fromTheEdge()) {
            Work few = few(block.work().orElseThrow(), high - edge);
            placed.add(new ClothPainter.PlacedBlock(BlockPicture.finished(few), edge, few.height()));
            edge += few.height();
            if (edge > high) {
                return placed;
            }
        }
        placed.add(design(edge));
        return placed;
    }

    /** What stays in the cloth. */
    private List<BlockPlan> fromTheEdge() {
        List<BlockPlan> blocks = new ArrayList<>();
        for (BlockPlan block : end.blocks()) {
            if (block.stays()) {
                blocks.add(end.place() == Place.START ? blocks.size() : 0, block);
            }
        }
        return blocks;
    }

    private ClothPainter.PlacedBlock design(double edge) {
        Yarn yarn = plan.piece().stripe(end.place());
        Setting setting = setting(plan.piece().setting(yarn));
        int picks = (int) Math.ceil((high - edge) / setting.beaten()) + 1;
        BlockPicture picture = BlockPicture.picks(yarn, setting, picks, Course.beginning());
        return new ClothPainter.PlacedBlock(picture, edge, picture.height());
    }

    /** A yarn on these few ends. */
    Setting setting(Setting whole) {
        double share = pitch / whole.spacing();
        double most = Math.min(THICKEST * pitch, ROW * high);
        double relaxed = Math.max(Math.min(THINNEST * pitch, most), Math.min(most, share * whole.relaxed()));
        double beaten = relaxed * Math.max(0.5, Math.min(1, whole.beaten() / whole.relaxed()));
        return new Setting(ends, pitch, pitch * WARP, relaxed, beaten, Optional.empty());
    }

    /** The outermost rows of a block that there is room for; at the top they are told from the edge, and so turned over. */
    private Work few(Work whole, double room) {
        Setting setting = setting(whole.setting());
        double each = whole.block().height(setting) / whole.rows().size();
        int rows = each > 0 ? (int) Math.max(1, Math.min(whole.rows().size(), Math.ceil(room / each) + 1)) : 1;
        List<Row> outermost = new ArrayList<>();
        for (int i = 0; i < rows; i++) {
            boolean start = end.place() == Place.START;
            Row row = whole.rows().get(start ? i : whole.rows().size() - 1 - i);
            Optional<Lean> lean = start ? row.lean() : row.lean().map(Lean::other);
            outermost.add(new Row(i + 1, row.shed(), row.from(), lean));
        }
        var block = end.place() == Place.START
                ? whole.block()
                : whole.block().mirrored().woven().orElseThrow();
        return new Work(block.withRows(rows), whole.yarn(), setting, outermost, whole.cut());
    }
}
