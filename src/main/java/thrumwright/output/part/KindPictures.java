package thrumwright.output.part;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import thrumwright.drawing.Pictured;
import thrumwright.drawing.step.StagePicture;
import thrumwright.output.page.Part;
import thrumwright.output.page.Structured;
import thrumwright.output.page.TextPart;
import thrumwright.plan.EndPlan;
import thrumwright.plan.Plan;
import thrumwright.sheet.StageWords;
import thrumwright.sheet.Step;

/**
 * The pictures of a kind of block: the stages of its working in a row, and right and wrong one above the other. These stand at the
 * end of the row if it has room for them.
 */
public record KindPictures(List<Pictured> stages, List<SlipPicture> slips, PartMaker make) {
    private static final double SHAPE = 0.667;
    private static final double SLIP_SHAPE = 0.56;
    /** Width of right and wrong as a share of a stage's. */
    private static final double SLIP = 0.74;

    private static final double BETWEEN = 7;
    private static final double BELOW = 3;
    /** So many pictures side by side. */
    private static final int IN_ROW = 4;
    /** The widest picture, points. */
    private static final double WIDEST = 172;

    /** Of the first of some blocks, and right and wrong of the first of them that can go wrong. */
    public static KindPictures of(Plan plan, StageWords words, List<Step.Picture> shown, PartMaker make) {
        List<Pictured> stages = new ArrayList<>();
        List<SlipPicture> slips = new ArrayList<>();
        for (Step.Picture picture : shown) {
            EndPlan end = plan.end(picture.place());
            end.block(picture.blockId()).ifPresent(block -> {
                if (stages.isEmpty()) {
                    stages.addAll(StagePicture.of(plan, end, block, words));
                }
                if (slips.isEmpty()) {
                    slips.addAll(SlipPicture.both(plan, end, block, make.phrases(), make.type(), make.palette()));
                }
            });
        }
        return new KindPictures(List.copyOf(stages), List.copyOf(slips), make);
    }

    /** One picture alone. */
    public static KindPictures of(Pictured picture, PartMaker make) {
        return new KindPictures(List.of(picture), List.of(), make);
    }

    boolean none() {
        return stages.isEmpty();
    }

    /** Whether right and wrong stand beside the words, not in the row. */
    boolean slipsBeside() {
        return !slips.isEmpty() && stages.size() >= IN_ROW;
    }

    /** Of a picture, points, in a row so wide. */
    double each(double width) {
        int across = Math.min(IN_ROW, stages.size());
        boolean more = !slips.isEmpty() && !slipsBeside();
        double all = across + (more ? SLIP : 0);
        double gaps = (across - (more ? 0 : 1)) * BETWEEN;
        return Math.min(Math.min(WIDEST * make.type().density(), width / 3), (width - gaps) / all);
    }

    /** Of right and wrong, points. */
    double slipWidth(double width) {
        return SLIP * each(width);
    }

    private Part caption(String text) {
        return new TextPart(text, make.type().small(), make.palette().ink());
    }

    private double stageHeight(Pictured stage, double each) {
        return SHAPE * each + BELOW + caption(stage.caption()).height(each);
    }

    private double slipHeight(SlipPicture slip, double each) {
        return SLIP_SHAPE * each + 1 + caption(slip.caption()).height(each) + BELOW;
    }

    /** Of both, one above the other: points. */
    double slipsHeight(double each) {
        return slips.stream().mapToDouble(slip -> slipHeight(slip, each)).sum();
    }

    /** Of the row, points, for a width in points. */
    double height(double width) {
        double each = each(width);
        double row = stages.stream()
                .mapToDouble(stage -> stageHeight(stage, each))
                .max()
                .orElse(0);
        int rows = (stages.size() + IN_ROW - 1) / IN_ROW;
        double all = rows * row + Math.max(0, rows - 1) * BETWEEN;
        return slipsBeside() ? all : Math.max(all, slipsHeight(slipWidth(width)));
    }

    /** Paints the row. */
    void paint(Graphics2D g, double x, double y, double width) {
        double each = each(width);
        double row = stages.stream()
                .mapToDouble(stage -> stageHeight(stage, each))
                .max()
                .orElse(0);
        for (int i = 0; i < stages.size(); i++) {
            double left = x + i % IN_ROW * (each + BETWEEN);
            int line = i / IN_ROW;
            double top = y + line * (row + BETWEEN);
            stage(g, stages.get(i), new Rectangle2D.Double(left, top, each, SHAPE * each));
        }
        if (!slipsBeside()) {
            paintSlips(g, x + stages.size() * (each + BETWEEN), y, slipWidth(width));
        }
    }

    /** Paints right and wrong one above the other. */
    void paintSlips(Graphics2D g, double x, double y, double each) {
        double top = y;
        for (SlipPicture slip : slips) {
            Rectangle2D box = new Rectangle2D.Double(x, top, each, SLIP_SHAPE * each);
            Structured.figure(g, slip.says(), box, () -> {
                slip.paint(g, box);
                caption(slip.caption()).paint(g, box.getMinX(), box.getMaxY() + 1, each);
            });
            top += slipHeight(slip, each);
        }
    }

    private void stage(Graphics2D g, Pictured stage, Rectangle2D box) {
        Structured.figure(g, stage.says(), box, () -> {
            stage.paint(g, make.palette(), make.type().strong(), box);
            g.setColor(make.palette().faint());
            g.setStroke(new BasicStroke(0.5f));
            g.draw(box);
            caption(stage.caption()).paint(g, box.getMinX(), box.getMaxY() + BELOW, box.getWidth());
        });
    }
}
