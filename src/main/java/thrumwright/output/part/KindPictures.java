package thrumwright.output.part;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import thrumwright.drawing.step.StepPainter;
import thrumwright.output.page.Part;
import thrumwright.output.page.Structured;
import thrumwright.output.page.TextPart;
import thrumwright.plan.BlockPlan;
import thrumwright.plan.EndPlan;
import thrumwright.plan.Plan;
import thrumwright.sheet.Step;

/** The pictures of a kind of block, one below the other: its move, then right and wrong beside each other. */
public record KindPictures(List<Move> moves, List<SlipPicture> slips, PartMaker make) {
    private static final double SHAPE = 0.62;
    private static final double SLIP_SHAPE = 0.62;
    private static final double BETWEEN = 6;
    private static final double CAPTION = 3;

    /** A block whose move is drawn. */
    public record Move(Plan plan, EndPlan end, BlockPlan block, String says) {}

    /** Of the first of some blocks, and right and wrong of all. */
    public static KindPictures of(Plan plan, List<Step.Picture> shown, PartMaker make) {
        List<Move> moves = new ArrayList<>();
        List<SlipPicture> slips = new ArrayList<>();
        for (Step.Picture picture : shown) {
            EndPlan end = plan.end(picture.place());
            end.block(picture.blockId()).ifPresent(block -> {
                if (moves.isEmpty()) {
                    moves.add(new Move(plan, end, block, picture.says()));
                }
                if (slips.isEmpty()) {
                    slips.addAll(SlipPicture.both(plan, end, block, make.phrases(), make.type(), make.palette()));
                }
            });
        }
        return new KindPictures(List.copyOf(moves), List.copyOf(slips), make);
    }

    boolean none() {
        return moves.isEmpty();
    }

    private static double slipWidth(double width) {
        return (width - BETWEEN) / 2;
    }

    private Part caption(SlipPicture slip) {
        return new TextPart(slip.caption(), make.type().small(), make.palette().ink());
    }

    private double slipsHeight(double width) {
        double each = slipWidth(width);
        return slips.stream()
                .mapToDouble(slip -> BETWEEN + SLIP_SHAPE * each + caption(slip).height(each) + CAPTION)
                .max()
                .orElse(0);
    }

    /** In points, for a width in points. */
    double height(double width) {
        return moves.size() * (SHAPE * width + BETWEEN) - BETWEEN + slipsHeight(width);
    }

    /** @param place where they begin, and how wide they are; its height means nothing */
    void paint(Graphics2D g, Rectangle2D place) {
        double width = place.getWidth();
        double at = place.getMinY();
        for (Move move : moves) {
            Rectangle2D box = new Rectangle2D.Double(place.getMinX(), at, width, SHAPE * width);
            Structured.figure(g, move.says(), box, () -> move(g, move, box));
            at += SHAPE * width + BETWEEN;
        }
        double left = place.getMinX();
        for (SlipPicture slip : slips) {
            slip(g, slip, new Rectangle2D.Double(left, at, slipWidth(width), SLIP_SHAPE * slipWidth(width)));
            left += slipWidth(width) + BETWEEN;
        }
    }

    private void move(Graphics2D g, Move move, Rectangle2D box) {
        new StepPainter(g, make.palette(), make.type().body()).paint(box, move.plan(), move.end(), move.block());
        g.setColor(make.palette().faint());
        g.setStroke(new BasicStroke(0.5f));
        g.draw(box);
    }

    private void slip(Graphics2D g, SlipPicture slip, Rectangle2D box) {
        Structured.figure(g, slip.says(), box, () -> {
            slip.paint(g, box);
            caption(slip).paint(g, box.getMinX(), box.getMaxY() + 1, box.getWidth());
        });
    }
}
