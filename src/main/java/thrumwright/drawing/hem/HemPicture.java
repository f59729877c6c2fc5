package thrumwright.drawing.hem;

import java.awt.BasicStroke;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.font.FontRenderContext;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import thrumwright.block.Block;
import thrumwright.block.Support;
import thrumwright.drawing.Dimension;
import thrumwright.drawing.Palette;
import thrumwright.drawing.Spread;
import thrumwright.measure.Shown;
import thrumwright.piece.Place;
import thrumwright.plan.BlockPlan;
import thrumwright.plan.EndPlan;
import thrumwright.plan.Hem;
import thrumwright.plan.Plan;

/**
 * A hem from the side as it will be, with its bar in it: at the left the names of what was turned back, at the right its
 * depth, at the turned edge how thick it is.
 */
public final class HemPicture {
    /** Between the drawing and what is written beside it, page units. */
    private static final double AIR = 10;

    private static final double LEADER = 18;

    /** Beyond all that is drawn, mm. */
    private static final double SPARE = 0.3;

    /** Page units per mm. */
    private static final double LEAST = 0.5;

    /** From a measure's line to its words. */
    private static final double TO_WORDS = 9;

    private final Plan plan;
    private final EndPlan end;
    private final Hem hem;
    private final Font font;
    private final FontRenderContext context;
    private final HemLine line;
    private final List<Name> names = new ArrayList<>();
    private final double stout;
    private final String depth;
    private final String thick;

    /**
     * A block's name.
     *
     * @param z of the place that it names, mm from the front layer
     * @param up mm above the turned edge
     */
    private record Name(String text, double z, double up) {}

    /**
     * @param hem that folds
     * @param naming of blocks
     * @param context of what it will be drawn on
     */
    public HemPicture(
            Plan plan, EndPlan end, Hem hem, Font font, FontRenderContext context, Function<Block, String> naming) {
        this.plan = plan;
        this.end = end;
        this.hem = hem;
        this.font = font;
        this.context = context;
        this.line = SleeveLine.of(hem).<HemLine>map(sleeve -> sleeve).orElse(HemLine.flat(hem));
        this.stout = stout();
        Shown shown = plan.piece().shown();
        this.depth = shown.height(line.depth());
        this.thick = shown.height(hem.stacked());
        for (BlockPlan block : end.blocks()) {
            if (block.stays() && block.work().isPresent()) {
                name(naming.apply(block.block()), HemCloth.along(end, hem, block) + block.height() / 2);
            }
        }
        names.sort(Comparator.comparingDouble(Name::up));
    }

    /** How far the stoutest yarn stands out beyond the cloth at the fold, mm; the design's too. */
    private double stout() {
        double warp = plan.piece().warpYarn().diameter();
        double most = Math.max(warp, warp / 2 + plan.piece().stripe(end.place()).beaten());
        for (BlockPlan block : end.blocks()) {
            if (block.stays() && block.work().isPresent()) {
                most = Math.max(most, warp / 2 + block.work().get().setting().relaxed());
            }
        }
        return Math.max(0, most - hem.thickness() / 2) + SPARE;
    }

    /** What is turned back has its name. */
    private void name(String text, double along) {
        if (along > 0 && along < hem.cloth()) {
            double[] at = line.at(along);
            double outward = hem.thickness() / 2;
            names.add(new Name(
                    text, at[0] + Math.sin(at[2]) * outward, at[1] - Math.cos(at[2]) * outward + line.outside()));
        }
    }

    /** Whether its bar is drawn in it, so that it is less deep than when it lies flat. */
    private boolean filled() {
        return line instanceof SleeveLine;
    }

    /** How deep a hem is with its bar in it, mm; empty if it takes none, or none that it has room for. */
    public static Optional<Double> depthRoundBar(Hem hem) {
        return SleeveLine.of(hem).map(SleeveLine::depth);
    }

    /** Page units per mm, above 0, at which all of it has room in a box. */
    public double scale(Rectangle2D box) {
        double wide = box.getWidth() - namesWidth() - depthWidth() - waiting();
        double high = box.getHeight() - AIR - below();
        double scale = Math.min(
                wide / (behind() + before()), high / (FoldPainter.shownFront(hem) + 2 * line.outside() + 2 * stout));
        return Math.max(LEAST, scale);
    }

    /** Before the middle of the front layer, mm. */
    private double before() {
        return hem.thickness() / 2 + stout;
    }

    /** Behind the front layer, mm; a bar or a strip that isn't in the hem too. */
    private double behind() {
        double beside = hem.sleeve()
                .filter(sleeve -> !filled())
                .map(sleeve -> sleeve.support().kind() == Support.Kind.STRIP
                        ? 3.0
                        : 1.4 * sleeve.support().thick())
                .orElse(0.0);
        return line.behind() + stout + beside;
    }

    /** From a bar that isn't in the hem to the hem. */
    private double waiting() {
        return !filled() && hem.sleeve().isPresent() ? FoldPainter.GAP : 0;
    }

    private double namesWidth() {
        return names.stream().mapToDouble(name -> width(name.text())).max().orElse(-LEADER) + LEADER;
    }

    private double depthWidth() {
        return AIR + TO_WORDS + width(depth);
    }

    private double below() {
        return TO_WORDS + font.getSize2D();
    }

    private double width(String text) {
        return font.getStringBounds(text, context).getWidth();
    }

    /** Draws it in the middle of a box; {@code scale} in page units per mm, above 0. */
    public void paint(Graphics2D g, Palette palette, Rectangle2D box, double scale) {
        boolean down = end.place() == Place.START;
        double all = namesWidth() + waiting() + (behind() + before()) * scale + depthWidth();
        double left = box.getCenterX() - all / 2;
        double front = left + namesWidth() + waiting() + behind() * scale;
        double edge =
                down ? box.getMaxY() - AIR - below() - stout * scale : box.getMinY() + AIR + below() + stout * scale;
        double fold = edge + (down ? -1 : 1) * line.outside() * scale;
        HemPlacing placing = new HemPlacing(scale, front, fold, down);
        // what leads from the names lies behind the hem
        names(g, palette, placing, left + namesWidth() - LEADER);
        new FoldPainter(g, palette).folded(placing, line, plan, end, hem);
        Dimension measures = new Dimension(g, palette.ink(), font);
        measures.upright(front + before() * scale + AIR, edge, placing.y(line.depth() - line.outside()), depth);
        if (!filled()) {
            double from = placing.x(hem.thickness() / 2 - hem.stacked());
            measures.level(
                    from, placing.x(hem.thickness() / 2), edge + (down ? 1 : -1) * (AIR + stout * scale), down, thick);
        }
    }

    /** Apart from each other, each led to its place. */
    private void names(Graphics2D g, Palette palette, HemPlacing placing, double right) {
        List<Name> downwards = new ArrayList<>(names);
        downwards.sort(Comparator.comparingDouble(name -> placing.y(name.up() - line.outside())));
        double[] at = downwards.stream()
                .mapToDouble(name -> placing.y(name.up() - line.outside()))
                .toArray();
        double apart = font.getSize2D() * 1.25;
        double[] placed = Spread.apart(at, apart, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
        g.setFont(font);
        g.setStroke(new BasicStroke(0.9f));
        for (int i = 0; i < placed.length; i++) {
            Name name = downwards.get(i);
            g.setColor(palette.ink());
            g.drawString(
                    name.text(), (float) (right - width(name.text())), (float) (placed[i] + font.getSize2D() * 0.35));
            Path2D leader = new Path2D.Double(new Line2D.Double(right + 3, placed[i], right + 7, placed[i]));
            leader.lineTo(placing.x(name.z()) - 1, at[i]);
            g.setColor(palette.faint());
            g.draw(leader);
        }
    }
}
