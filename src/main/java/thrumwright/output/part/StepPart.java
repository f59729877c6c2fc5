package thrumwright.output.part;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import thrumwright.drawing.Palette;
import thrumwright.drawing.step.StepPainter;
import thrumwright.measure.Phrases;
import thrumwright.output.page.Paper;
import thrumwright.output.page.Part;
import thrumwright.output.page.Role;
import thrumwright.output.page.Structured;
import thrumwright.output.page.TextPart;
import thrumwright.output.page.Type;
import thrumwright.plan.BlockPlan;
import thrumwright.plan.EndPlan;
import thrumwright.plan.Plan;
import thrumwright.sheet.Step;

/**
 * The head of a step: a box to tick, its number and title in large type, and its drawings with what to do beside them. Its
 * rows in large type with a box each, and the height to reach, follow as parts of their own.
 */
public record StepPart(Step step, Plan plan, List<SlipPicture> slips, Type type, Palette palette, List<Part> words)
        implements Part {
    private static final double GAP = 7;
    private static final double PICTURE = 62 * Paper.POINTS;
    private static final double PICTURE_SHAPE = 0.66;
    /** Where right and wrong are shown too, lower, so that pages hold as many steps. */
    private static final double PICTURE_WITH_SLIPS = 0.48;

    private static final double SLIP_SHAPE = 0.31;
    private static final double BELOW_SLIPS = 3;

    /**
     * All parts of a step, in order.
     *
     * @param pageWidth what there is across a page, points, more than 0
     * @param pageHeight what there is down a page, points; a head that is higher goes on in parts of its own
     */
    public static List<Part> all(
            Step step, Plan plan, Phrases phrases, Type type, Palette palette, double pageWidth, double pageHeight) {
        List<Part> parts = new ArrayList<>();
        List<Part> words = words(step, phrases, type, palette);
        List<SlipPicture> slips = slips(step, plan, phrases, type, palette);
        StepPart head = new StepPart(step, plan, slips, type, palette, words);
        if (head.height(pageWidth) <= pageHeight) {
            parts.add(head);
        } else {
            parts.add(new StepPart(step, plan, slips, type, palette, List.of()));
            parts.addAll(words);
        }
        parts.addAll(RowsPart.lines(step.rows(), type, palette, pageWidth));
        step.rows().stream()
                .filter(row -> row.count() > 1)
                .forEach(row -> parts.add(new TickRunPart(row.count(), palette)));
        if (!step.reach().isEmpty()) {
            double high = step.picture()
                    .flatMap(shown -> plan.end(shown.place()).block(shown.blockId()))
                    .map(BlockPlan::height)
                    .orElse(0.0);
            parts.add(new ReachPart(step, high, type, palette));
        }
        return parts;
    }

    private static List<Part> words(Step step, Phrases phrases, Type type, Palette palette) {
        List<Part> parts = new ArrayList<>();
        if (!step.take().isEmpty()) {
            parts.add(new TextPart(step.take(), type.strong(), palette.ink()));
        }
        step.sentences().forEach(sentence -> parts.add(new TextPart(sentence, type.body(), palette.ink())));
        step.cautions()
                .forEach(caution -> parts.add(
                        new TextPart(phrases.say("caution.mark") + " " + caution, type.aside(), palette.accent())));
        return parts;
    }

    private double picture() {
        return PICTURE * type.density();
    }

    private double pictureHeight() {
        return (slips.isEmpty() ? PICTURE_SHAPE : PICTURE_WITH_SLIPS) * picture();
    }

    private double slipHeight() {
        return SLIP_SHAPE * picture();
    }

    private double slipWidth() {
        return slipWidth(type);
    }

    /** What there is across for one of a pair, points. */
    static double slipWidth(Type type) {
        return (PICTURE * type.density() - GAP) / 2;
    }

    private boolean drawn() {
        return step.picture().isPresent();
    }

    /** Right and wrong, if there are such pictures of a step. */
    private static List<SlipPicture> slips(Step step, Plan plan, Phrases phrases, Type type, Palette palette) {
        return step.picture().stream()
                .flatMap(shown -> slips(plan, plan.end(shown.place()), shown.blockId(), phrases, type, palette))
                .toList();
    }

    private static Stream<SlipPicture> slips(
            Plan plan, EndPlan end, String blockId, Phrases phrases, Type type, Palette palette) {
        return end.block(blockId).stream()
                .flatMap(block -> SlipPicture.both(plan, end, block, phrases, type, palette).stream());
    }

    private Part caption(SlipPicture slip) {
        return new TextPart(slip.caption(), type.small(), palette.ink());
    }

    /** Both stand side by side. */
    private double slipsHeight() {
        return slips.stream()
                .mapToDouble(slip -> GAP + slipHeight() + caption(slip).height(slipWidth()) + BELOW_SLIPS)
                .max()
                .orElse(0);
    }

    private double pictures() {
        if (!drawn()) {
            return 0;
        }
        return pictureHeight() + slipsHeight();
    }

    private double textLeft() {
        return drawn() ? picture() + 12 : 0;
    }

    private Part title() {
        Part text = new TextPart(step.number() + "  " + step.title(), type.heading(), palette.ink());
        return Structured.part(Role.STEP, text);
    }

    private double textHeight(double width) {
        return words.stream()
                .mapToDouble(part -> part.height(width - textLeft()) + 2)
                .sum();
    }

    private double box() {
        return Type.box(type.heading());
    }

    @Override
    public double height(double width) {
        double body = Math.max(textHeight(width), pictures());
        return 2 * GAP + title().height(width - box() - 10) + body;
    }

    @Override
    public void paint(Graphics2D g, double x, double y, double width) {
        g.setColor(palette.faint());
        g.setStroke(new BasicStroke(0.8f));
        g.draw(new Line2D.Double(x, y + GAP / 2, x + width, y + GAP / 2));
        double at = y + GAP;
        TickMarks.box(g, x + 1, at + type.heading().getSize2D() * 0.28, box(), palette);
        title().paint(g, x + box() + 10, at, width - box() - 10);
        at += title().height(width - box() - 10);
        if (drawn()) {
            Rectangle2D box = new Rectangle2D.Double(x, at, picture(), pictureHeight());
            Structured.figure(g, step.picture().orElseThrow().says(), box, () -> picture(g, box));
            double below = at + pictureHeight() + GAP;
            double left = x;
            for (SlipPicture slip : slips) {
                slip(g, slip, new Rectangle2D.Double(left, below, slipWidth(), slipHeight()));
                left += slipWidth() + GAP;
            }
        }
        double text = at;
        for (Part part : words) {
            part.paint(g, x + textLeft(), text, width - textLeft());
            text += part.height(width - textLeft()) + 2;
        }
    }

    private void picture(Graphics2D g, Rectangle2D box) {
        Step.Picture shown = step.picture().orElseThrow();
        plan.end(shown.place())
                .block(shown.blockId())
                .ifPresent(block ->
                        new StepPainter(g, palette, type.body()).paint(box, plan, plan.end(shown.place()), block));
        g.setColor(palette.faint());
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
