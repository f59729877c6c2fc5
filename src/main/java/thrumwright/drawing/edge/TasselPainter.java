package thrumwright.drawing.edge;

import java.awt.Color;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Optional;
import thrumwright.block.Setting;
import thrumwright.block.WrappedTassels;
import thrumwright.drawing.View;
import thrumwright.drawing.yarn.Stretch;
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

    private final EdgePen pen;
    private final EdgeView eye;

    TasselPainter(EdgeView eye) {
        this.eye = eye;
        this.pen = new EdgePen(eye.g(), eye.palette());
    }

    void paint(Rectangle2D box, Plan plan, EndPlan end, WrappedTassels tassels) {
        Yarn yarn = plan.piece().yarnOf(tassels, end.place());
        Setting whole = plan.piece().setting(yarn);
        int size = Math.min(tassels.endsPerGroup(), MOST_IN_GROUP);
        int shownTassels = eye.staged() ? 1 : TASSELS;
        double s = whole.spacing();
        double scale = box.getWidth() * 0.94 / (Math.max(1.5, shownTassels) * size * s);
        double thick = Math.max(THINNEST * s, Math.min(0.5 * s, whole.beaten()));
        double warp = Math.min(0.35 * s, whole.warp());
        // far from a second end, so that nothing squeezes the turns
        Setting few = new Setting(size, s, warp, thick, thick, Optional.empty());
        double room = box.getHeight() / scale;
        int turns = (int) Math.max(1, Math.min(tassels.turns(), room * (WRAPPED - GATHERED) / thick));
        double edge = box.getMinY() + box.getHeight() * CLOTH;
        double top = edge + box.getHeight() * GATHERED;
        Bundle at = new Bundle(scale, edge, top, top + turns * thick * scale, box.getMaxY());
        double left = box.getCenterX() - scale * s * (shownTassels * size - 1) / 2;
        Color cords = eye.palette().yarn(plan.piece().warpYarn().colour());
        WrappedTassels shown = tassels.withEndsPerGroup(size).withTurns(turns);
        for (int i = 0; i < shownTassels; i++) {
            double first = left + i * size * s * scale;
            View view = new View(scale, first + few.span() * scale / 2, at.bottom());
            tassel(new Wrapped(view, few, shown, eye.palette().yarn(yarn.colour()), yarn.plies()), first, at, cords);
        }
        pen.cloth(box, edge, left, s * scale, shownTassels * size, plan, end);
        if (eye.staged()) {
            View view = new View(scale, left + few.span() * scale / 2, at.bottom());
            new TasselStages(eye, new Wrapped(view, few, shown, eye.palette().yarn(yarn.colour()), yarn.plies()))
                    .ways(box);
        }
    }

    private void tassel(Wrapped wrapped, double first, Bundle at, Color cords) {
        Setting few = wrapped.few();
        List<Stretch> wrapping = eye.staged()
                ? new TasselStages(eye, wrapped).turns()
                : wrapped.turns(wrapped.tassels().turns() / (eye.slipped() ? 2 : 1), 0, wrapped.high());
        wrapped.behind(eye)
                .drawInOrder(wrapping.stream().filter(turn -> !turn.front()).toList());
        ends(first, at, few, wrapped.tassels().widest(few), cords);
        if (eye.staged()) {
            new TasselStages(eye, wrapped).loop();
        }
        wrapped.inFront(eye)
                .drawInOrder(wrapping.stream().filter(Stretch::front).toList());
        if (eye.staged()) {
            new TasselStages(eye, wrapped).onTop();
        }
    }

    /** Page y of the cloth's edge, of the wrapping's upper and lower edge, and of what can be painted on. */
    private record Bundle(double scale, double edge, double top, double bottom, double low) {}

    /** The ends of one tassel; {@code wide} is how wide the bundle is, mm. */
    private void ends(double first, Bundle at, Setting few, double wide, Color warp) {
        double middle = first + few.span() * at.scale() / 2;
        for (int i = 0; i < few.ends(); i++) {
            double aside = (i - (few.ends() - 1) / 2.0) / few.ends() * wide * at.scale();
            double x = first + i * few.spacing() * at.scale();
            pen.cord(end(x, middle + aside, at, 2.4 * aside), few.warp() * at.scale(), warp);
        }
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
