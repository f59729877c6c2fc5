package thrumwright.drawing.step;

import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import thrumwright.block.HemFold;
import thrumwright.block.OpenWarp;
import thrumwright.block.Row;
import thrumwright.block.Setting;
import thrumwright.block.Side;
import thrumwright.drawing.HandWay;
import thrumwright.drawing.Palette;
import thrumwright.drawing.PictureLabels;
import thrumwright.drawing.View;
import thrumwright.drawing.edge.EdgePainter;
import thrumwright.drawing.edge.EdgeView;
import thrumwright.drawing.hem.HemLying;
import thrumwright.drawing.hem.MitrePainter;
import thrumwright.drawing.yarn.ClothPainter;
import thrumwright.drawing.yarn.Face;
import thrumwright.drawing.yarn.Tail;
import thrumwright.plan.BlockPlan;
import thrumwright.plan.EndPlan;
import thrumwright.plan.Hem;
import thrumwright.plan.Plan;
import thrumwright.plan.Work;
import thrumwright.yarn.Yarn;

/**
 * The move of one step, large: a few warp ends wide, with what was woven before in grey below it and an arrow where each
 * of the first rows sets out. The yarn runs by the same strands as in the whole picture. It can be read in a box as
 * small as 35 mm × 25 mm.
 *
 * @param font for the few words in a drawing
 * @param labels those words
 */
public record StepPainter(Graphics2D g, Palette palette, Font font, PictureLabels labels) {
    /** Length of an arrow, in distances between ends. */
    private static final double ARROW = 1.5;
    /** Share of the box below the step. */
    private static final double BELOW = 0.24;

    /** With its words in the language of where the program runs. */
    public StepPainter(Graphics2D g, Palette palette, Font font) {
        this(g, palette, font, PictureLabels.here());
    }

    /** Draws a step into a box; nothing goes outside it. */
    public void paint(Rectangle2D box, Plan plan, EndPlan end, BlockPlan block) {
        within(box, painter -> painter.draw(box, plan, end, block));
    }

    /**
     * One stage of how a block is worked, see {@link BlockPlan#stages}; nothing goes outside the box.
     *
     * @param stage from 0
     */
    public void stage(Rectangle2D box, Plan plan, EndPlan end, BlockPlan block, int stage) {
        within(
                box,
                painter -> block.work()
                        .ifPresentOrElse(
                                work -> new StagePainter(painter.g, palette, font).paint(box, plan, end, block, stage),
                                () -> painter.without(box, plan, end, block, stage)));
    }

    /** A stage of what takes no yarn across the warp. */
    private void without(Rectangle2D box, Plan plan, EndPlan end, BlockPlan block, int stage) {
        block.block()
                .finish()
                .ifPresentOrElse(
                        finish -> new EdgePainter(new EdgeView(g, palette, font, labels, false, stage))
                                .paint(box, plan, end, finish),
                        () -> stageOfLine(box, plan, end, block, stage));
    }

    private void stageOfLine(Rectangle2D box, Plan plan, EndPlan end, BlockPlan block, int stage) {
        if (block.fold().isPresent()) {
            end.hem().filter(Hem::folds).ifPresent(hem -> fold(box, plan, end, hem, stage));
        } else if (block.block() instanceof OpenWarp gap) {
            new OpenPainter(g, palette, font).paint(box, plan, end, block, gap, stage);
        }
    }

    /** A block as the picture of its kind, alone and without arrows; nothing goes outside the box. */
    public void kind(Rectangle2D box, Plan plan, EndPlan end, BlockPlan block) {
        within(
                box,
                painter -> block.work()
                        .ifPresentOrElse(
                                work -> painter.kind(box, plan, end, block, StepScene.of(work)),
                                () -> painter.draw(box, plan, end, block)));
    }

    /**
     * A block alone, as it must be or with the slip that beginners make; nothing goes outside the box.
     *
     * @param slip of that block, by {@link Slip#of}
     * @param right whether to draw it as it must be
     */
    public void slip(Rectangle2D box, Plan plan, EndPlan end, BlockPlan block, Slip slip, boolean right) {
        within(
                box,
                painter -> block.block()
                        .finish()
                        .ifPresentOrElse(
                                finish -> new EdgePainter(EdgeView.whole(painter.g, palette, font, labels, !right))
                                        .paint(box, plan, end, finish),
                                () -> painter.slip(box, plan, block.work().orElseThrow(), slip, right)));
    }

    private void slip(Rectangle2D box, Plan plan, Work work, Slip slip, boolean right) {
        StepScene scene = StepScene.of(work, slip, right);
        if (slip.strains()) {
            strained(box, plan, scene, right ? Strain.NONE : Strain.of(slip));
        } else {
            alone(box, plan, scene);
        }
    }

    private void within(Rectangle2D box, Consumer<StepPainter> painting) {
        Graphics2D within = (Graphics2D) g.create();
        within.clip(box);
        within.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        painting.accept(new StepPainter(within, palette, font, labels));
        within.dispose();
    }

    private void strained(Rectangle2D box, Plan plan, StepScene scene, Strain strain) {
        View view = middle(box, scene);
        new StrainedPainter(g, palette)
                .paint(
                        view,
                        scene.picture(),
                        plan.piece().warpYarn(),
                        strain,
                        view.clothY(box.getMaxY()) - 1,
                        view.clothY(box.getMinY()) + 1);
    }

    private static View middle(Rectangle2D box, StepScene scene) {
        Setting few = scene.setting();
        double beside = scene.tied() ? scene.reach(Side.LEFT) : few.spacing();
        double scale = Math.min(
                box.getWidth() / (few.span() + 2 * beside),
                box.getHeight() * 0.7 / (scene.height() + Math.abs(scene.lap())));
        double left = box.getCenterX() - scale * few.span() / 2;
        return new View(scale, left, box.getCenterY() + scale * (scene.height() + scene.lap()) / 2);
    }

    private void alone(Rectangle2D box, Plan plan, StepScene scene) {
        alone(box, plan, scene, Optional.empty());
    }

    private void kind(Rectangle2D box, Plan plan, EndPlan end, BlockPlan block, StepScene scene) {
        alone(box, plan, scene, scene.cloth(plan, end, block));
    }

    private void alone(Rectangle2D box, Plan plan, StepScene scene, Optional<ClothPainter.PlacedBlock> cloth) {
        List<ClothPainter.PlacedBlock> placed = new ArrayList<>(cloth.stream().toList());
        placed.add(new ClothPainter.PlacedBlock(scene.picture(), 0, scene.height()));
        cloth(
                middle(box, scene),
                placed,
                List.of(),
                scene.setting(),
                plan.piece().warpYarn(),
                box);
    }

    private void draw(Rectangle2D box, Plan plan, EndPlan end, BlockPlan block) {
        block.work().ifPresent(work -> work(box, plan, end, block));
        block.block()
                .finish()
                .ifPresent(finish ->
                        new EdgePainter(EdgeView.whole(g, palette, font, labels, false)).paint(box, plan, end, finish));
        if (block.block() instanceof HemFold) {
            end.hem().filter(Hem::folds).ifPresent(hem -> fold(box, plan, end, hem, HemLying.WHOLE));
        } else if (block.block() instanceof OpenWarp gap) {
            new OpenPainter(g, palette, font).paint(box, plan, end, block, gap, OpenPainter.WHOLE);
        }
    }

    /** A hem from the side; beside it, where its corners are turned in, one of them from the back. */
    private void fold(Rectangle2D box, Plan plan, EndPlan end, Hem hem, int stage) {
        HemLying side = new HemLying(g, palette, font, labels);
        if (hem.mitre().isEmpty() || stage != HemLying.WHOLE) {
            side.paint(box, plan, end, hem, stage);
            return;
        }
        side.paint(part(box, 0, 0.56), plan, end, hem, stage);
        new MitrePainter(g, palette, font)
                .paint(part(box, 0.6, 1), plan, end, hem, hem.mitre().get());
    }

    /** Of a box, from one share of its width to another. */
    private static Rectangle2D part(Rectangle2D box, double from, double to) {
        return new Rectangle2D.Double(
                box.getX() + from * box.getWidth(), box.getY(), (to - from) * box.getWidth(), box.getHeight());
    }

    private void work(Rectangle2D box, Plan plan, EndPlan end, BlockPlan block) {
        StepScene scene = StepScene.of(block.work().orElseThrow());
        Setting few = scene.setting();
        double left = scene.reach(Side.LEFT) + arrowRoom(scene, Side.LEFT);
        double right = scene.reach(Side.RIGHT) + arrowRoom(scene, Side.RIGHT);
        double wide = few.span() + left + right;
        double scale = Math.min(
                box.getWidth() / wide,
                box.getHeight() * (1 - BELOW) / ((scene.height() + Math.max(0, scene.lap())) * 1.2));
        double spare = box.getWidth() - wide * scale;
        double below = Math.max(BELOW * box.getHeight() / scale, scene.rowHeight());
        View view = new View(scale, box.getMinX() + spare / 2 + scale * left, box.getMaxY() - below * scale);
        List<ClothPainter.PlacedBlock> placed = new ArrayList<>();
        if (scene.lap() >= 0) {
            StepScene.below(end, block, few.ends()).ifPresent(placed::add);
        }
        scene.cloth(plan, end, block).ifPresent(placed::add);
        placed.add(new ClothPainter.PlacedBlock(scene.picture(), 0, scene.height()));
        cloth(view, placed, scene.tails(), few, plan.piece().warpYarn(), box);
        for (Row row : scene.arrows()) {
            arrow(box, view, scene, row);
        }
    }

    private void cloth(
            View view,
            List<ClothPainter.PlacedBlock> placed,
            List<Tail> tails,
            Setting few,
            Yarn warp,
            Rectangle2D box) {
        double low = view.clothY(box.getMaxY()) - 1;
        double high = view.clothY(box.getMinY()) + 1;
        new ClothPainter(g, palette, true, Face.FRONT).blocks(view, placed, tails, few, warp, low, high);
    }

    private static double arrowRoom(StepScene scene, Side side) {
        boolean setsOut = scene.arrows().stream().anyMatch(row -> row.from() == side);
        return setsOut && !scene.tied() ? (ARROW + 0.75) * scene.setting().spacing() : 0;
    }

    /** At the side where a row begins, beside its tail; beside a post below the first row and above the next. */
    private void arrow(Rectangle2D box, View view, StepScene scene, Row row) {
        Setting few = scene.setting();
        double long_ = ARROW * few.spacing();
        int way = row.from() == Side.LEFT ? 1 : -1;
        double edge = row.from() == Side.LEFT ? 0 : few.span();
        double y = (row.number() - scene.arrows().get(0).number() + 0.5) * scene.rowHeight() + scene.lap();
        double tip = scene.reach(row.from()) + 0.2 * few.spacing();
        if (scene.tied()) {
            boolean first = row.equals(scene.arrows().get(0));
            y = first ? -0.55 * few.spacing() : scene.height() + 0.55 * few.spacing();
            tip = 0.4 * few.spacing();
        }
        double to = view.x(edge - way * tip);
        double from = view.x(edge - way * (tip + long_));
        HandWay hand = HandWay.in(box, g, palette, font);
        hand.straight(from + way * hand.room(), view.y(y), to, view.y(y), row.number());
    }
}
