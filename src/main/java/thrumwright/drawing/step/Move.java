package thrumwright.drawing.step;

import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import thrumwright.drawing.Palette;
import thrumwright.drawing.yarn.ClothPainter;
import thrumwright.drawing.yarn.Detail;
import thrumwright.drawing.yarn.YarnPath;
import thrumwright.plan.BlockPlan;
import thrumwright.plan.EndPlan;
import thrumwright.plan.Plan;
import thrumwright.yarn.Yarn;

/**
 * The move of a step while it is made: its rows are laid in one after the other, along the same strands as every drawing.
 *
 * @param whole its first rows as they will be
 * @param ground what was woven before
 * @param warp the yarn of the warp
 */
public record Move(StepScene whole, List<ClothPainter.PlacedBlock> ground, Yarn warp) {
    /** Crossings nearer to a row's end than this share of its yarn are its end. */
    private static final double END = 0.995;

    /** That of a block; empty for one that isn't woven. */
    public static Optional<Move> of(Plan plan, EndPlan end, BlockPlan block) {
        return block.work().map(work -> of(plan, end, block, StepScene.moving(work)));
    }

    static Move of(Plan plan, EndPlan end, BlockPlan block, StepScene scene) {
        return new Move(scene, scene.ground(plan, end, block), plan.piece().warpYarn());
    }

    /** How many rows are shown, 1 or more. */
    public int rows() {
        return whole.work().rows().size();
    }

    /**
     * The share of the yarn's length that is laid in before a row, 0 to 1.
     *
     * @param row of the picture, from 0; as many as there are: after the last
     */
    public double share(int row) {
        return whole.picture().share(row);
    }

    /**
     * The row of the picture that shows a row of the block: the same one, or where the block has more, one that is worked
     * like it, since rows go on by turns.
     *
     * @param row of the block, from 0
     */
    public int shows(int row) {
        return row < rows() ? row : rows() - 1 - ((rows() - 1 - row) & 1);
    }

    /**
     * Draws it into a box while a row is being laid in; nothing goes outside the box.
     *
     * @param row of the picture, from 0
     * @param share of that row's yarn that is laid in, 0 to 1
     */
    public void paint(Graphics2D g, Palette palette, Font font, Rectangle2D box, int row, double share) {
        new StepPainter(g, palette, font).move(box, this, whole.at(row, share));
    }

    /**
     * What of the picture in a box is different once more of a row's yarn is laid in; all else may stay as it was painted.
     *
     * @param row of the picture, from 0
     * @param before share of that row's yarn that was laid in, 0 to 1
     * @param now as before, later
     */
    public Rectangle2D changed(Rectangle2D box, int row, double before, double now) {
        if (before <= 0 || before >= now || now >= 1) {
            return box;
        }
        double from = share(row);
        double length = share(row + 1) - from;
        return new MovedPart(box, StepPainter.moving(box, this), whole, UnaryOperator.identity(), true)
                .between(from + before * length, from + now * length);
    }

    /**
     * Where a row's yarn has passed from front to back or the other way, one share of its length after the other; the last
     * is 1.
     *
     * @param row of the picture, from 0
     */
    public List<Double> crossings(int row) {
        double from = whole.picture().share(row);
        double to = whole.picture().share(row + 1);
        List<Double> passed = new ArrayList<>(whole.picture().path(Detail.FINE).strands().stream()
                .flatMap(List::stream)
                .map(reached -> (reached.to() - from) / (to - from))
                .filter(share -> share > 1 - END && share < END)
                .sorted()
                .distinct()
                .toList());
        passed.add(1.0);
        return passed;
    }

    /** Where its yarns are being laid in; nowhere once a row is done. */
    List<YarnPath.Tip> tips(StepScene scene) {
        double laid = scene.picture().laid();
        boolean between = scene.now()
                .filter(row -> laid < whole.picture().share(row.number()))
                .isPresent();
        return between ? scene.picture().path(Detail.FINE).tips(laid) : List.of();
    }
}
