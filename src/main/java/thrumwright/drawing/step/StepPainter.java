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
import thrumwright.drawing.yarn.YarnPath;
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
    /** Length of an arrow, and what is free beside it, in half widths of its head. */
    private static final double ARROW = 3.4;

    /** The arrow at a tip of yarn: half the width of its head, in distances between warp ends, and its length in those. */
    static final double TIP = 0.16;

    static final double TIP_LONG = 2.4;

    private static final double AIR = 0.9;
    /** Of the box's height: the size of letters at most. */
    private static final double LETTERS = 0.11;
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

    /** All that the drawing of a woven step follows from besides how it is painted; empty for other steps. */
    public static Optional<Object> likeness(Plan plan, EndPlan end, BlockPlan block) {
        return block.work()
                .map(work -> Move.of(plan, end, block, StepScene.of(work)))
                .map(move -> move.whole().likeness(move.ground(), move.warp()));
    }

    /** The same of a block as it must be or with its slip. */
    public static Optional<Object> likeness(Plan plan, BlockPlan block, Slip slip, boolean right) {
        return block.work()
                .map(work -> List.of(
                        slip,
                        right,
                        StepScene.of(work, slip, right)
                                .likeness(List.of(), plan.piece().warpYarn())));
    }

    /** The move while one row of it is being worked; nothing goes outside the box. */
    void move(Rectangle2D box, Move move, StepScene scene) {
        within(box, painter -> {
            // without its number: the picture's row stands for every row that is worked like it
            HandWay hand = HandWay.in(box, painter.g, palette, null);
            View view = moving(box, move);
            painter.work(box, view, hand, move, scene);
            move.tips(scene).forEach(tip -> painter.tip(view, scene, tip));
        });
    }

    /** How a move lies in a box. */
    static View moving(Rectangle2D box, Move move) {
        return withArrow(box, view(box, move.whole(), HandWay.in(box, null, null, null)), move.whole());
    }

    /** Raised, if need be, so that the arrow below a cord that is tied to posts is seen in a low box, too. */
    private static View withArrow(Rectangle2D box, View view, StepScene scene) {
        double lacking = 0.85 * scene.setting().spacing() + view.clothY(box.getMaxY());
        return scene.tied() && lacking > 0 ? view.raised(lacking) : view;
    }

    /** The way of the hand, where a yarn is being laid in. */
    private void tip(View view, StepScene scene, YarnPath.Tip tip) {
        double size = view.length(TIP * scene.setting().spacing());
        double x = view.x(tip.x());
        double y = view.y(tip.y());
        new HandWay(g, palette, null, size)
                .straight(x, y, x + TIP_LONG * size * tip.dx(), y - TIP_LONG * size * tip.dy(), 0);
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
                                work -> new StagePainter(painter.g, palette, painter.font)
                                        .paint(box, plan, end, block, stage),
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
                                finish -> new EdgePainter(
                                                EdgeView.whole(painter.g, palette, painter.font, labels, !right))
                                        .paint(box, plan, end, finish),
                                () -> painter.slip(box, plan, block.work().orElseThrow(), slip, right)));
    }

    /** A block alone as far as it is worked; nothing goes outside the box. */
    void slip(Rectangle2D box, SlipMove move, StepScene scene) {
        within(box, painter -> painter.slip(box, move.plan(), scene, move.slip(), move.strain()));
    }

    private void slip(Rectangle2D box, Plan plan, Work work, Slip slip, boolean right) {
        Strain strain = right || !slip.strains() ? Strain.NONE : Strain.of(slip);
        slip(box, plan, StepScene.of(work, slip, right), slip, strain);
    }

    private void slip(Rectangle2D box, Plan plan, StepScene scene, Slip slip, Strain strain) {
        if (slip.strains()) {
            strained(box, plan, scene, strain);
        } else {
            alone(box, plan, scene);
        }
    }

    private void within(Rectangle2D box, Consumer<StepPainter> painting) {
        Graphics2D within = (Graphics2D) g.create();
        within.clip(box);
        within.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        painting.accept(new StepPainter(within, palette, fitting(box), labels));
        within.dispose();
    }

    /** Letters that leave room for the drawing in a small box. */
    private Font fitting(Rectangle2D box) {
        double most = LETTERS * box.getHeight();
        return font == null || font.getSize2D() <= most ? font : font.deriveFont((float) most);
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

    static View middle(Rectangle2D box, StepScene scene) {
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
        block.work().map(work -> Move.of(plan, end, block, StepScene.of(work))).ifPresent(move -> work(box, move));
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

    private void work(Rectangle2D box, Move move) {
        HandWay hand = HandWay.in(box, g, palette, font);
        work(box, view(box, move.whole(), hand), hand, move, move.whole());
    }

    private void work(Rectangle2D box, View view, HandWay hand, Move move, StepScene scene) {
        cloth(view, scene.placed(move.ground()), scene.tails(), scene.setting(), move.warp(), box);
        for (Row row : scene.told()) {
            arrow(hand, view, scene, row);
        }
    }

    /** As large as there is room beside the arrows and their numbers. */
    private static View view(Rectangle2D box, StepScene scene, HandWay hand) {
        double left = scene.reach(Side.LEFT);
        double wide = scene.setting().span() + left + scene.reach(Side.RIGHT);
        double before = arrowRoom(scene, Side.LEFT, hand);
        double room = box.getWidth() - before - arrowRoom(scene, Side.RIGHT, hand);
        double scale = Math.min(
                room / wide, box.getHeight() * (1 - BELOW) / ((scene.height() + Math.max(0, scene.lap())) * 1.2));
        double spare = room - wide * scale;
        double below = Math.max(BELOW * box.getHeight() / scale, scene.rowHeight());
        return new View(scale, box.getMinX() + before + spare / 2 + scale * left, box.getMaxY() - below * scale);
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

    /** Page units; beside posts arrows stand within the drawing. */
    private static double arrowRoom(StepScene scene, Side side, HandWay hand) {
        boolean setsOut = scene.arrows().stream().anyMatch(row -> row.from() == side);
        return setsOut && !scene.tied() ? hand.room() + (ARROW + 2 * AIR) * hand.size() : 0;
    }

    /** At the side where a row begins, beside its tail; beside a post below the first row and above the next. */
    private void arrow(HandWay hand, View view, StepScene scene, Row row) {
        int way = row.from() == Side.LEFT ? 1 : -1;
        double edge = row.from() == Side.LEFT ? 0 : scene.setting().span();
        double y = (row.number() - scene.arrows().get(0).number() + 0.5) * scene.rowHeight() + scene.lap();
        double out = scene.reach(row.from());
        if (scene.tied()) {
            double s = scene.setting().spacing();
            y = row.equals(scene.arrows().get(0)) ? -0.55 * s : scene.height() + 0.55 * s;
            out = 0.1 * s;
        }
        double to = view.x(edge - way * out) - way * AIR * hand.size();
        hand.straight(to - way * ARROW * hand.size(), view.y(y), to, view.y(y), row.number());
    }
}
