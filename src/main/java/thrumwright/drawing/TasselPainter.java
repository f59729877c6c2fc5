package thrumwright.drawing;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Optional;
import thrumwright.block.Leg;
import thrumwright.block.Setting;
import thrumwright.block.Strand;
import thrumwright.block.WrappedTassels;
import thrumwright.plan.EndPlan;
import thrumwright.plan.Plan;
import thrumwright.yarn.Yarn;

/** A few tassels: their ends gathered, the wrapping as it runs round the bundle, the rest hanging. */
final class TasselPainter {
    private static final int TASSELS = 3;
    private static final int MOST_IN_GROUP = 6;
    /** Shares of the box: the cloth, where the wrapping begins, and where it must have ended. */
    private static final double CLOTH = 0.2;

    private static final double GATHERED = 0.12;
    private static final double WRAPPED = 0.5;
    /** Of the distance between ends: the least that a turn shows. */
    private static final double THINNEST = 0.16;

    private final Graphics2D g;
    private final Palette palette;
    private final EdgePen pen;
    private final boolean slipped;

    /** @param slipped whether to show what beginners get wrong */
    TasselPainter(Graphics2D g, Palette palette, boolean slipped) {
        this.slipped = slipped;
        this.g = g;
        this.palette = palette;
        this.pen = new EdgePen(g, palette);
    }

    void paint(Rectangle2D box, Plan plan, EndPlan end, WrappedTassels tassels) {
        Yarn yarn = plan.piece().yarnOf(tassels, end.place());
        Setting whole = plan.piece().setting(yarn);
        int size = Math.min(tassels.endsPerGroup(), MOST_IN_GROUP);
        double s = whole.spacing();
        double scale = box.getWidth() * 0.94 / (TASSELS * size * s);
        double thick = Math.max(THINNEST * s, Math.min(0.5 * s, whole.beaten()));
        double warp = Math.min(0.35 * s, whole.warp());
        // far from a second end, so that nothing squeezes the turns
        Setting few = new Setting(size, s, warp, thick, thick, Optional.empty());
        double room = box.getHeight() / scale;
        int turns = (int) Math.max(1, Math.min(tassels.turns(), room * (WRAPPED - GATHERED) / thick));
        int seen = slipped ? Math.max(1, turns / 2) : turns;
        WrappedTassels shown = new WrappedTassels(tassels.tag(), tassels.use(), size, seen, tassels.hanging());
        double high = turns * thick;
        double edge = box.getMinY() + box.getHeight() * CLOTH;
        double left = box.getMinX() + box.getWidth() * 0.03 + scale * s / 2;
        for (int i = 0; i < TASSELS; i++) {
            tassel(box, left + i * size * s * scale, edge, scale, shown, few, high, plan, yarn);
        }
        pen.cloth(box, edge, left, s * scale, TASSELS * size, plan, end);
    }

    private void tassel(
            Rectangle2D box,
            double first,
            double edge,
            double scale,
            WrappedTassels tassels,
            Setting few,
            double high,
            Plan plan,
            Yarn yarn) {
        Color warp = palette.yarn(plan.piece().warpYarn().colour());
        Color wrapping = palette.yarn(yarn.colour());
        double middle = first + few.span() * scale / 2;
        double top = edge + box.getHeight() * GATHERED;
        double bottom = top + high * scale;
        View view = new View(scale, middle, bottom);
        Setting alone =
                new Setting(2, few.spacing() * 1e3, tassels.widest(few), few.relaxed(), few.beaten(), Optional.empty());
        List<Stretch> turns = Stretches.of(
                alone, List.of(spread(tassels.strand(few), high / tassels.wrapped(few))), false, Detail.FINE);
        YarnPen.inTheShade(g, view, Palette.mixed(wrapping, Color.BLACK, 0.4), yarn.plies(), Face.FRONT)
                .drawInOrder(turns.stream().filter(turn -> !turn.front()).toList());
        for (int i = 0; i < few.ends(); i++) {
            double aside = (i - (few.ends() - 1) / 2.0) / few.ends() * tassels.widest(few) * scale;
            double x = first + i * few.spacing() * scale;
            pen.cord(end(x, middle + aside, edge, top, bottom, box.getMaxY(), 2.4 * aside), few.warp() * scale, warp);
        }
        new YarnPen(g, view, wrapping, yarn.plies(), Face.FRONT)
                .drawInOrder(turns.stream().filter(Stretch::front).toList());
    }

    /** The same turns over another height. */
    private static Strand spread(Strand strand, double by) {
        return new Strand(strand.legs().stream()
                .map(leg -> new Leg(leg.route(), leg.fromY() * by, leg.middleY() * by, leg.toY() * by))
                .toList());
    }

    private static Path2D end(
            double from, double within, double edge, double top, double bottom, double low, double spread) {
        Path2D path = new Path2D.Double();
        path.moveTo(from, edge - 2);
        path.curveTo(from, (edge + top) / 2, within, (edge + top) / 2, within, top);
        path.lineTo(within, bottom);
        path.curveTo(within, (2 * bottom + low) / 3, within + spread, (bottom + 2 * low) / 3, within + spread, low - 4);
        return path;
    }
}
