package thrumwright.drawing;

import java.awt.BasicStroke;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thrumwright.block.HalfHitch;
import thrumwright.block.HemFold;
import thrumwright.block.OrderingCord;
import thrumwright.block.Posts;
import thrumwright.block.Row;
import thrumwright.block.Setting;
import thrumwright.block.Side;
import thrumwright.block.Soumak;
import thrumwright.block.Twining;
import thrumwright.block.WarpFinish;
import thrumwright.plan.BlockPlan;
import thrumwright.plan.EndPlan;
import thrumwright.plan.Plan;
import thrumwright.plan.Work;
import thrumwright.yarn.Yarn;

/**
 * The move of one step, large: the edge where the yarn begins, a few warp ends wide, with what was woven before in grey
 * below it. The same strands as in the whole picture, on a narrower warp of the same kind.
 */
public final class StepPainter {
    private static final int SHOWN_ENDS = 6;

    private final Graphics2D g;
    private final Palette palette;
    private final Font font;

    /** @param font for the few words in a drawing */
    public StepPainter(Graphics2D g, Palette palette, Font font) {
        this.g = g;
        this.palette = palette;
        this.font = font;
    }

    /** Draws a step into a box; nothing goes outside it. */
    public void paint(Rectangle2D box, Plan plan, EndPlan end, BlockPlan block) {
        Shape before = g.getClip();
        g.clip(box);
        if (block.work().isPresent()) {
            work(box, plan, end, block);
        } else if (block.block() instanceof HemFold) {
            end.hem()
                    .filter(hem -> hem.cloth() > 0)
                    .ifPresent(hem -> new FoldPainter(g, palette).paint(box, plan, end, hem, font));
        } else if (block.block() instanceof WarpFinish finish) {
            new FinishPainter(g, palette).paint(box, plan, end, finish);
        } else {
            open(box, plan);
        }
        g.setClip(before);
    }

    private void work(Rectangle2D box, Plan plan, EndPlan end, BlockPlan block) {
        Work work = block.work().orElseThrow();
        Setting few = few(work);
        Work small = shortened(work, few);
        double rowHeight = small.block().height(few) / small.rows().size();
        boolean tied = few.posts().isPresent() && work.block() instanceof OrderingCord;
        double side = tied ? few.posts().get().gap() + few.posts().get().diameter() * 1.2 : 2.7 * few.spacing();
        double wide = few.span() + side + (tied ? side : 2.2 * few.spacing());
        double scale = box.getWidth() / wide;
        double needed = small.block().height(few) * 1.15;
        scale = Math.min(scale, box.getHeight() * 0.72 / needed);
        boolean fromLeft = work.begins() == Side.LEFT;
        double spare = box.getWidth() - wide * scale;
        double left = box.getMinX() + spare / 2 + scale * (fromLeft || tied ? side : 2.2 * few.spacing());
        double below = Math.max(0.24 * box.getHeight() / scale, rowHeight);
        View view = new View(scale, left, box.getMaxY() - below * scale);
        double top = (view.base() - box.getMinY()) / scale;
        ClothPainter cloth = new ClothPainter(g, palette, true, Face.FRONT);
        Yarn warp = plan.piece().warpYarn();
        List<ClothPainter.Placed> placed = new ArrayList<>();
        before(plan, end, block, few).ifPresent(placed::add);
        BlockPicture picture = BlockPicture.atWork(small);
        placed.add(new ClothPainter.Placed(picture, 0, small.block().height(few)));
        cloth.blocks(view, placed, Tail.hung(picture.tails(0)), few, warp, -below - 1, top + 1);
        for (int i = 0; i < Math.min(2, small.rows().size()); i++) {
            arrow(view, few, small.rows().get(i), (i + 0.5) * rowHeight, box);
        }
    }

    /** A warp of few ends with the same edge: as many, odd or even, as the whole one. */
    private static Setting few(Work work) {
        Setting whole = work.setting();
        int ends = Math.min(whole.ends(), SHOWN_ENDS + whole.ends() % 2);
        Optional<Posts> posts =
                work.block() instanceof OrderingCord ? whole.posts().map(p -> nearer(p, whole)) : Optional.empty();
        return new Setting(ends, whole.spacing(), whole.warp(), whole.relaxed(), whole.beaten(), posts);
    }

    /** Posts drawn in, so that the few ends stay large. */
    private static Posts nearer(Posts posts, Setting whole) {
        return new Posts(
                Math.min(posts.diameter(), 1.5 * whole.spacing()), Math.min(posts.gap(), 1.6 * whole.spacing()));
    }

    private static Work shortened(Work work, Setting few) {
        int most =
                work.block() instanceof Twining || work.block() instanceof Soumak || work.block() instanceof HalfHitch
                        ? 2
                        : work.block() instanceof OrderingCord ? 3 : 4;
        int whole = work.rows().size();
        // as many rows, odd or even, as the whole block, so that the yarn ends at the right side
        int shown = whole <= most ? whole : most - (most - whole & 1);
        List<Row> rows = work.rows().subList(0, shown);
        return new Work(Rows.limited(work.block(), rows.size()), work.yarn(), few, rows, work.cut());
    }

    /** The last rows of the block below, to stand on. */
    private Optional<ClothPainter.Placed> before(Plan plan, EndPlan end, BlockPlan block, Setting few) {
        int index = end.blocks().indexOf(block);
        for (int i = index - 1; i >= 0; i--) {
            Optional<Work> below = end.blocks().get(i).work();
            if (below.isPresent() && !(below.get().block() instanceof OrderingCord)) {
                Work work = below.get();
                int count = Math.min(work.rows().size(), 6);
                List<Row> last = work.rows()
                        .subList(work.rows().size() - count, work.rows().size());
                Setting own = new Setting(
                        few.ends(),
                        few.spacing(),
                        few.warp(),
                        work.setting().relaxed(),
                        work.setting().beaten(),
                        few.posts());
                Work small = new Work(Rows.limited(work.block(), count), work.yarn(), own, last, work.cut());
                double height = small.block().height(own);
                return Optional.of(new ClothPainter.Placed(BlockPicture.woven(small), -height, height));
            }
        }
        return Optional.empty();
    }

    /** An arrow beside a row, at the side where it begins, the way it goes. */
    private void arrow(View view, Setting few, Row row, double y, Rectangle2D box) {
        double size = Math.min(box.getWidth(), box.getHeight()) * 0.045;
        boolean right = row.from() == Side.LEFT;
        double at = right ? box.getMinX() + size * 0.6 : box.getMaxX() - size * 0.6;
        double tip = at + (right ? 1 : -1) * size * 3;
        double line = view.y(y);
        Path2D arrow = new Path2D.Double(new Line2D.Double(at, line, tip, line));
        arrow.moveTo(tip + (right ? -1 : 1) * size, line - size * 0.8);
        arrow.lineTo(tip, line);
        arrow.lineTo(tip + (right ? -1 : 1) * size, line + size * 0.8);
        g.setColor(palette.paper());
        g.setStroke(new BasicStroke((float) (size * 0.9), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        g.draw(arrow);
        g.setColor(palette.ink());
        g.setStroke(new BasicStroke((float) (size * 0.36), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        g.draw(arrow);
    }

    private void open(Rectangle2D box, Plan plan) {
        Setting ground = plan.piece().setting(plan.piece().warpYarn());
        int ends = Math.min(ground.ends(), SHOWN_ENDS);
        double scale = box.getWidth() * 0.7 / ((ends - 1) * ground.spacing());
        View view = new View(scale, box.getMinX() + box.getWidth() * 0.15, box.getMaxY());
        ClothPainter cloth = new ClothPainter(g, palette, true, Face.FRONT);
        Setting few =
                new Setting(ends, ground.spacing(), ground.warp(), ground.relaxed(), ground.beaten(), Optional.empty());
        cloth.warp(view, few, plan.piece().warpYarn(), 0, box.getHeight() / scale);
    }
}
