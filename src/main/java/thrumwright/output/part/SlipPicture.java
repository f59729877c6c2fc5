package thrumwright.output.part;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import thrumwright.drawing.Palette;
import thrumwright.drawing.step.Slip;
import thrumwright.drawing.step.StepPainter;
import thrumwright.measure.Phrases;
import thrumwright.output.page.Type;
import thrumwright.plan.BlockPlan;
import thrumwright.plan.EndPlan;
import thrumwright.plan.Plan;
import thrumwright.plan.comparison.BlockPair;

/** How a block looks when it is right, or with the slip that beginners make: ticked or crossed, and said in words. */
public record SlipPicture(
        Plan plan,
        EndPlan end,
        BlockPlan block,
        Slip slip,
        boolean right,
        Phrases phrases,
        Type type,
        Palette palette) {
    private static final double MARK = 6;

    /** Right and wrong, in this order; nothing where there are no such pictures to show. */
    public static List<SlipPicture> both(
            Plan plan, EndPlan end, BlockPlan block, Phrases phrases, Type type, Palette palette) {
        Optional<Slip> slip = Slip.toShow(plan, end, block);
        return slip.stream()
                .flatMap(one -> List.of(true, false).stream()
                        .map(right -> new SlipPicture(plan, end, block, one, right, phrases, type, palette)))
                .toList();
    }

    /** What stands below it. */
    public String caption() {
        return said("");
    }

    /** What it shows, in words. */
    public String says() {
        return said(".says");
    }

    /** What stands below a picture of a block, as it must be or with its slip. */
    public static String caption(Slip slip, BlockPlan block, boolean right, Phrases phrases) {
        return said(slip, block, right, phrases, "");
    }

    private String said(String what) {
        return said(slip, block, right, phrases, what);
    }

    private static String said(Slip slip, BlockPlan block, boolean right, Phrases phrases, String what) {
        String key = "slip." + slip.name().toLowerCase(Locale.ROOT).replace('_', '-') + (right ? ".right" : ".wrong");
        String lean = block.work()
                .flatMap(BlockPair::firstLean)
                .map(leaning -> phrases.say("lean." + leaning))
                .orElse("");
        return phrases.say(key + what, Map.of("lean", lean));
    }

    /** See {@link StepPainter#likeness(Plan, BlockPlan, Slip, boolean)}. */
    public Optional<Object> likeness() {
        return StepPainter.likeness(plan, block, slip, right);
    }

    public void paint(Graphics2D g, Rectangle2D box) {
        new StepPainter(g, palette, type.body()).slip(box, plan, end, block, slip, right);
        g.setColor(right ? palette.faint() : palette.accent());
        g.setStroke(new BasicStroke(right ? 0.5f : 1f));
        g.draw(box);
        mark(g, box.getMinX() + MARK + 2.5, box.getMinY() + MARK + 2.5);
    }

    /** A tick or a cross on a disc, so that it shows on any yarn. */
    private void mark(Graphics2D g, double x, double y) {
        Ellipse2D disc = new Ellipse2D.Double(x - MARK, y - MARK, 2 * MARK, 2 * MARK);
        g.setColor(palette.paper());
        g.fill(disc);
        g.setColor(right ? palette.ink() : palette.accent());
        g.setStroke(new BasicStroke(0.8f));
        g.draw(disc);
        double half = MARK * 0.5;
        Path2D sign = new Path2D.Double();
        sign.moveTo(x - half, right ? y : y - half);
        if (right) {
            sign.lineTo(x - half * 0.3, y + half * 0.8);
            sign.lineTo(x + half, y - half * 0.8);
        } else {
            sign.lineTo(x + half, y + half);
            sign.moveTo(x - half, y + half);
            sign.lineTo(x + half, y - half);
        }
        g.setStroke(new BasicStroke(1.6f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        g.draw(sign);
    }
}
