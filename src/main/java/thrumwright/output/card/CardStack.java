package thrumwright.output.card;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import thrumwright.block.Lean;
import thrumwright.block.Row;
import thrumwright.drawing.Palette;
import thrumwright.plan.BlockPlan;
import thrumwright.plan.EndPlan;
import thrumwright.plan.Work;
import thrumwright.sheet.card.YarnLetters;

/**
 * Blocks as they lie one above the other, true to each other in height, with their rows.
 *
 * @param blocks from the lowest
 * @param times how many times as high as the weaving it is drawn
 */
record CardStack(EndPlan end, List<BlockPlan> blocks, double times, YarnLetters letters, CardStyle style) {
    /** Higher than so many times their height blocks look like another cloth. */
    private static final double MOST_TIMES = 12;
    /** Rows that are drawn less high would run together, points. */
    private static final double LEAST_ROW = 1.6;

    private static final double POINTS = thrumwright.output.page.Paper.POINTS;
    private static final float[] DASHED = {3, 2};

    static CardStack within(EndPlan end, List<BlockPlan> blocks, double height, YarnLetters letters, CardStyle style) {
        double mm = high(blocks);
        double times = mm > 0 ? Math.min(MOST_TIMES, height / (mm * POINTS)) : 0;
        return new CardStack(end, blocks, times, letters, style);
    }

    private static double high(List<BlockPlan> blocks) {
        return blocks.isEmpty()
                ? 0
                : blocks.get(blocks.size() - 1).top() - blocks.get(0).bottom();
    }

    double height() {
        return high(blocks) * times * POINTS;
    }

    private double at(double bottom, double mm) {
        return bottom - (mm - blocks.get(0).bottom()) * times * POINTS;
    }

    /** Where a block's middle lies; for the fold the line of the fold. */
    double middle(BlockPlan block, double bottom) {
        double mm = block.fold()
                .flatMap(fold -> end.hem().filter(hem -> hem.blockId().equals(fold.id())))
                .map(hem -> hem.foldLine())
                .orElse((block.bottom() + block.top()) / 2);
        double low = blocks.get(0).bottom();
        double high = blocks.get(blocks.size() - 1).top();
        return at(bottom, Math.max(low, Math.min(high, mm)));
    }

    void paint(Graphics2D g, double x, double bottom, double width) {
        for (BlockPlan block : blocks) {
            double top = at(bottom, block.top());
            Rectangle2D box = new Rectangle2D.Double(x, top, width, at(bottom, block.bottom()) - top);
            if (box.getHeight() > 0) {
                block(g, block, box);
            }
        }
        fold(g, x, bottom, width);
    }

    private void block(Graphics2D g, BlockPlan block, Rectangle2D box) {
        block.work().ifPresent(work -> woven(g, work, box));
        g.setColor(style.palette().ink());
        g.setStroke(outline(block));
        g.draw(box);
        if (!folded(block)) {
            block.work().ifPresent(work -> letter(g, work, box));
        }
    }

    private void woven(Graphics2D g, Work work, Rectangle2D box) {
        Color yarn = style.palette().yarn(work.yarn().colour());
        g.setColor(yarn);
        g.fill(box);
        boolean dark = Palette.lightness(yarn) < 0.45;
        g.setColor(Palette.mixed(yarn, dark ? Color.WHITE : Color.BLACK, 0.4));
        rows(g, work, box);
    }

    /** Dashed round what comes out and what isn't woven. */
    private static BasicStroke outline(BlockPlan block) {
        return block.stays()
                ? new BasicStroke(1)
                : new BasicStroke(1, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, DASHED, 0);
    }

    /** Whether the line of the fold runs through it. */
    private boolean folded(BlockPlan block) {
        return end.hem()
                .filter(hem -> hem.foldLine() > block.bottom() && hem.foldLine() < block.top())
                .isPresent();
    }

    /** A line for each row, or strokes that lean as its stitches do. */
    private void rows(Graphics2D g, Work work, Rectangle2D box) {
        int count = work.rows().size();
        double high = box.getHeight() / count;
        g.setStroke(new BasicStroke((float) Math.min(0.8, high / 4)));
        for (int i = 0; i < count && high >= LEAST_ROW; i++) {
            double low = box.getMaxY() - i * high;
            Row row = work.rows().get(i);
            if (row.lean().isPresent()) {
                strokes(g, row.lean().get(), box, low, Math.min(high, box.getHeight()));
            }
            if (i > 0) {
                g.draw(new Line2D.Double(box.getMinX(), low, box.getMaxX(), low));
            }
        }
    }

    /** Strokes at about 60°, however high the row is drawn. */
    private static void strokes(Graphics2D g, Lean lean, Rectangle2D box, double low, double high) {
        double step = box.getWidth() / 6;
        double wide = Math.min(0.7 * step, 0.5 * high);
        double tall = Math.min(0.8 * high, 1.8 * wide);
        int up = lean == Lean.Z ? 1 : -1;
        for (int i = 0; i < 6; i++) {
            double x = box.getMinX() + (i + 0.5) * step;
            double y = low - high / 2;
            g.draw(new Line2D.Double(x - wide / 2, y + up * tall / 2, x + wide / 2, y - up * tall / 2));
        }
    }

    private void letter(Graphics2D g, Work work, Rectangle2D box) {
        double size = style.small().getSize2D();
        if (box.getHeight() < size * 1.3) {
            return;
        }
        String letter = letters.letter(work.yarn());
        double wide = style.width(letter, style.strong());
        Rectangle2D patch =
                new Rectangle2D.Double(box.getCenterX() - wide / 2 - 2, box.getCenterY() - size * 0.5, wide + 4, size);
        g.setColor(style.palette().paper());
        g.fill(patch);
        g.setColor(style.palette().ink());
        g.setFont(style.strong());
        g.drawString(letter, (float) (box.getCenterX() - wide / 2), (float) (box.getCenterY() + size * 0.35));
    }

    private void fold(Graphics2D g, double x, double bottom, double width) {
        end.hem()
                .filter(hem -> hem.foldLine() >= blocks.get(0).bottom()
                        && hem.foldLine() <= blocks.get(blocks.size() - 1).top())
                .ifPresent(hem -> {
                    double y = at(bottom, hem.foldLine());
                    g.setColor(style.palette().accent());
                    g.setStroke(new BasicStroke(
                            2, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, new float[] {6, 3}, 0));
                    g.draw(new Line2D.Double(x - 3, y, x + width + 4, y));
                });
    }
}
