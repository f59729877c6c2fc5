package thrumwright.drawing.piece;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.List;
import thrumwright.block.Setting;
import thrumwright.drawing.Palette;
import thrumwright.drawing.View;
import thrumwright.drawing.edge.LoopPen;
import thrumwright.drawing.yarn.BlockPicture;
import thrumwright.drawing.yarn.ClothPainter;
import thrumwright.drawing.yarn.Face;
import thrumwright.drawing.yarn.Tail;
import thrumwright.piece.Place;
import thrumwright.plan.BlockPlan;
import thrumwright.plan.EndPlan;
import thrumwright.plan.Plan;
import thrumwright.yarn.Yarn;

/** Draws a whole piece as it stands on the loom, or one end of it. */
public final class PiecePainter {
    private final Graphics2D g;
    private final Palette palette;
    private final boolean everyYarn;
    private final Face face;

    /** @param everyYarn whether to draw single yarns however small they are, as on paper */
    public PiecePainter(Graphics2D g, Palette palette, boolean everyYarn, Face face) {
        this.g = g;
        this.palette = palette;
        this.everyYarn = everyYarn;
        this.face = face;
    }

    /** A painter of the front. */
    public PiecePainter(Graphics2D g, Palette palette, boolean everyYarn) {
        this(g, palette, everyYarn, Face.FRONT);
    }

    /**
     * The start below, the design as a torn band, the top above.
     *
     * @param view with y = 0 at the start's lowest line and x = 0 at the first warp end
     * @param bare how much bare warp to show below and above, mm, 0 or more
     */
    public void piece(View view, PiecePicture picture, double bare) {
        piece(view, picture, new ClothPainter.Upright(-bare, picture.height() + bare));
    }

    /** As above, with the bare warp between two heights above the start's lowest line. */
    public void piece(View view, PiecePicture picture, ClothPainter.Upright bare) {
        AffineTransform before = g.getTransform();
        g.transform(face.turned(view, picture.span()));
        wholePiece(view, picture, bare);
        g.setTransform(before);
    }

    private void wholePiece(View view, PiecePicture picture, ClothPainter.Upright bare) {
        Plan plan = picture.plan();
        Setting ground = picture.ground();
        ClothPainter cloth = new ClothPainter(g, palette, everyYarn, face);
        Yarn warp = plan.piece().warpYarn();
        List<ClothPainter.PlacedBlock> placed = new ArrayList<>();
        place(placed, picture, plan.start());
        double design = plan.start().height();
        placed.add(stripe(picture, Place.START, design));
        placed.add(stripe(picture, Place.TOP, design + PiecePicture.DESIGN));
        place(placed, picture, plan.top());
        List<Tail> tails = new ArrayList<>(picture.tails(Place.START));
        picture.tails(Place.TOP).forEach(tail -> tails.add(tail.raised(picture.base(Place.TOP))));
        double base = picture.base(Place.TOP);
        ClothPainter.Upright shown = new ClothPainter.Upright(
                edgeOr(plan.start(), bare.low()), base + edgeOr(plan.top(), bare.high() - base));
        cloth.blocks(view, placed, tails, ground, warp, shown, bare);
        tear(view, ground, design + PiecePicture.DESIGN / 2, picture.margin());
        over(view, picture, plan.start());
        over(view.raised(picture.base(Place.TOP)), picture, plan.top());
    }

    /**
     * One end alone, with the edge of the design next to it.
     *
     * @param view with y = 0 at the end's lowest line
     * @param bare how much bare warp to show beyond the end, mm, 0 or more
     */
    public void end(View view, PiecePicture picture, Place place, double bare) {
        AffineTransform before = g.getTransform();
        g.transform(face.turned(view, picture.span()));
        oneEnd(view, picture, place, bare);
        g.setTransform(before);
    }

    private void oneEnd(View view, PiecePicture picture, Place place, double bare) {
        EndPlan end = picture.plan().end(place);
        Setting ground = picture.ground();
        ClothPainter cloth = new ClothPainter(g, palette, everyYarn, face);
        Yarn warp = picture.plan().piece().warpYarn();
        List<ClothPainter.PlacedBlock> placed = new ArrayList<>();
        View lowered = view.raised(-picture.base(place));
        place(placed, picture, end);
        placed.add(stripe(picture, place, place == Place.START ? end.height() : picture.base(place)));
        double stripe = placed.get(placed.size() - 1).height();
        double base = picture.base(place);
        double stripeLow = base - stripe - 1;
        double stripeHigh = end.height() + stripe + 1;
        boolean start = place == Place.START;
        ClothPainter.Upright shown = start
                ? new ClothPainter.Upright(edgeOr(end, -bare), stripeHigh)
                : new ClothPainter.Upright(stripeLow, base + edgeOr(end, end.height() + bare));
        ClothPainter.Upright posts = start
                ? new ClothPainter.Upright(-bare, stripeHigh)
                : new ClothPainter.Upright(stripeLow, base + end.height() + bare);
        List<Tail> tails = picture.tails(place).stream()
                .map(tail -> tail.raised(picture.base(place)))
                .toList();
        cloth.blocks(lowered, placed, tails, ground, warp, shown, posts);
        over(view, picture, end);
    }

    /** The edge of the cloth where warp loops close it, else how far bare warp shows; mm above the end's lowest line. */
    private static double edgeOr(EndPlan end, double bare) {
        return end.loops().isPresent() ? end.edge() : bare;
    }

    /** Over an end's blocks: the frame of what comes out, the groups of warp ends, the fold. */
    private void over(View view, PiecePicture picture, EndPlan end) {
        Setting ground = picture.ground();
        Marks marks = new Marks(g, view, palette);
        List<BlockPlan> blocks = end.blocks();
        for (int i = 0; i < blocks.size(); i++) {
            int first = i;
            while (i < blocks.size() && blocks.get(i).comesOut()) {
                i++;
            }
            if (i > first) {
                marks.comesOut(
                        ground, blocks.get(first).bottom(), blocks.get(i - 1).top());
            }
        }
        int outward = end.place() == Place.START ? -1 : 1;
        end.finish()
                .filter(finish -> end.loops().isEmpty())
                .ifPresent(finish -> marks.finish(ground, finish, end.edge(), outward));
        Yarn warp = picture.plan().piece().warpYarn();
        end.loops()
                .ifPresent(loops -> new LoopPen(g, palette, view.raised(end.edge()), ground, warp, face, outward)
                        .draw(end.place(), loops.round(), loops.thick().mm()));
        end.hem().ifPresent(hem -> {
            marks.fold(ground, hem.foldLine());
            hem.mitre().ifPresent(mitre -> marks.mitre(ground, hem, mitre, outward));
        });
    }

    /** How much of the design's stripe is shown beside a single end, mm, 0 or more. */
    public static double stripeHeight(PiecePicture picture, Place place) {
        return stripe(picture, place, 0).height() + 1;
    }

    private static void place(List<ClothPainter.PlacedBlock> placed, PiecePicture picture, EndPlan end) {
        for (BlockPlan block : end.blocks()) {
            if (block.work().isPresent()) {
                placed.add(new ClothPainter.PlacedBlock(
                        picture.blocks(end.place()).get(block.block().id()),
                        picture.base(end.place()) + block.bottom(),
                        block.height()));
            }
        }
    }

    /** The design's picks next to an end: upwards from a line at the start, down from it at the top. */
    private static ClothPainter.PlacedBlock stripe(PiecePicture picture, Place place, double line) {
        BlockPicture stripe = picture.stripe(place);
        double height = stripe.height();
        return new ClothPainter.PlacedBlock(stripe, place == Place.START ? line : line - height, height);
    }

    /** A ragged gap right across, where the rest of the design is left out. */
    private void tear(View view, Setting ground, double y, double margin) {
        double gap = view.length(PiecePicture.DESIGN * 0.13);
        double left = view.x(-Math.min(margin, 3 * ground.spacing()));
        double right = view.x(ground.span() + Math.min(margin, 3 * ground.spacing()));
        double step = Math.max(6, view.length(5));
        Path2D upper = ragged(left, right, view.y(y) - gap, step, gap * 0.7);
        Path2D lower = ragged(left, right, view.y(y) + gap, step, gap * 0.7);
        Path2D hole = new Path2D.Double(upper);
        Path2D back = ragged(right, left, view.y(y) + gap, -step, gap * 0.7);
        hole.append(back, true);
        hole.closePath();
        g.setColor(palette.paper());
        g.fill(hole);
        g.setColor(palette.faint());
        g.setStroke(new BasicStroke(1, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        g.draw(upper);
        g.draw(lower);
    }

    private static Path2D ragged(double from, double to, double y, double step, double high) {
        Path2D line = new Path2D.Double();
        int steps = (int) Math.max(1, Math.round((to - from) / step));
        for (int i = 0; i <= steps; i++) {
            double x = from + (to - from) * i / steps;
            int tooth = step > 0 ? i : steps - i;
            double up = y - (tooth % 2 == 0 ? high : -high * (0.4 + 0.2 * (tooth % 3)));
            if (i == 0) {
                line.moveTo(x, up);
            } else {
                line.lineTo(x, up);
            }
        }
        return line;
    }
}
