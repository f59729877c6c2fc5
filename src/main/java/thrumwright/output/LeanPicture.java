package thrumwright.output;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.Map;
import java.util.Optional;
import thrumwright.drawing.Palette;
import thrumwright.drawing.StepPainter;
import thrumwright.measure.Phrases;
import thrumwright.plan.BlockPlan;
import thrumwright.plan.Plan;
import thrumwright.plan.Work;

/** How a row looks when it is right, or when it is wrong: said and crossed out, not only drawn. */
record LeanPicture(Plan plan, Work work, boolean right, Phrases phrases, Type type, Palette palette) {
    /** The work of a block whose stitches lean, if they do. */
    static Optional<Work> leaning(BlockPlan block) {
        return block.work().filter(work -> work.rows().get(0).lean().isPresent());
    }

    String caption() {
        return phrases.say(right ? "picture.right" : "picture.wrong");
    }

    /** What it shows, in words. */
    String says() {
        String lean = phrases.say("lean." + work.rows().get(0).lean().orElseThrow());
        return phrases.say(right ? "picture.lean.right" : "picture.lean.wrong", Map.of("lean", lean));
    }

    void paint(Graphics2D g, Rectangle2D box) {
        new StepPainter(g, palette, type.body()).leaning(box, plan, work, right);
        g.setColor(right ? palette.faint() : palette.accent());
        g.setStroke(new BasicStroke(right ? 0.5f : 1f));
        g.draw(box);
        if (!right) {
            g.draw(new Line2D.Double(box.getMinX(), box.getMaxY(), box.getMaxX(), box.getMinY()));
            g.draw(new Line2D.Double(box.getMinX(), box.getMinY(), box.getMaxX(), box.getMaxY()));
        }
    }
}
