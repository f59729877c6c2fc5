package thrumwright.drawing.edge;

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
import thrumwright.drawing.Palette;
import thrumwright.drawing.View;
import thrumwright.drawing.yarn.Detail;
import thrumwright.drawing.yarn.Face;
import thrumwright.drawing.yarn.Stretch;
import thrumwright.drawing.yarn.Stretches;
import thrumwright.drawing.yarn.YarnPen;
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
        double edge = box.getMinY() + box.getHeight() * CLOTH;
        double top = edge + box.getHeight() * GATHERED;
        Bundle at = new Bundle(scale, edge, top, top + turns * thick * scale, box.getMaxY());
        double left = box.getMinX() + box.getWidth() * 0.03 + scale * s / 2;
        Color cords = palette.yarn(plan.piece().warpYarn().colour());
        for (int i = 0; i < TASSELS; i++) {
            double first = left + i * size * s * scale;
            List<Stretch> wrapping = wrapping(shown, few, turns * thick);
            View view = new View(scale, first + few.span() * scale / 2, at.bottom());
            Color colour = palette.yarn(yarn.colour());
            YarnPen.inTheShade(g, view, Palette.mixed(colour, Color.BLACK, 0.4), yarn.plies(), Face.FRONT)
                    .drawInOrder(wrapping.stream().filter(turn -> !turn.front()).toList());
            ends(first, at, few, shown.widest(few), cords);
            new YarnPen(g, view, colour, yarn.plies(), Face.FRONT)
                    .drawInOrder(wrapping.stream().filter(Stretch::front).toList());
        }
        pen.cloth(box, edge, left, s * scale, TASSELS * size, plan, end);
    }

    /** Page y of the cloth's edge, of the wrapping's upper and lower edge, and of what can be painted on. */
    private record Bundle(double scale, double edge, double top, double bottom, double low) {}

    /** The turns of one tassel, {@code high} mm high. */
    private static List<Stretch> wrapping(WrappedTassels tassels, Setting few, double high) {
        Setting alone =
                new Setting(2, few.spacing() * 1e3, tassels.widest(few), few.relaxed(), few.beaten(), Optional.empty());
        Strand turns = spread(tassels.strand(few), high / tassels.wrapped(few));
        return Stretches.of(alone, List.of(turns), false, Detail.FINE);
    }

    /** The ends of one tassel; {@code wide} is how wide the bundle is, mm. */
    private void ends(double first, Bundle at, Setting few, double wide, Color warp) {
        double middle = first + few.span() * at.scale() / 2;
        for (int i = 0; i < few.ends(); i++) {
            double aside = (i - (few.ends() - 1) / 2.0) / few.ends() * wide * at.scale();
            double x = first + i * few.spacing() * at.scale();
            pen.cord(end(x, middle + aside, at, 2.4 * aside), few.warp() * at.scale(), warp);
        }
    }

    /** The same turns over another height. */
    private static Strand spread(Strand strand, double by) {
        return new Strand(strand.legs().stream()
                .map(leg -> new Leg(leg.route(), leg.fromY() * by, leg.middleY() * by, leg.toY() * by))
                .toList());
    }

    private static Path2D end(double from, double within, Bundle at, double spread) {
        double gathering = (at.edge() + at.top()) / 2;
        double bottom = at.bottom();
        double low = at.low();
        Path2D path = new Path2D.Double();
        path.moveTo(from, at.edge() - 2);
        path.curveTo(from, gathering, within, gathering, within, at.top());
        path.lineTo(within, bottom);
        path.curveTo(within, (2 * bottom + low) / 3, within + spread, (bottom + 2 * low) / 3, within + spread, low - 4);
        return path;
    }
}
