package thrumwright.drawing;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.util.ArrayList;
import java.util.List;
import thrumwright.block.Posts;
import thrumwright.block.Setting;
import thrumwright.block.Side;
import thrumwright.plan.BlockPlan;
import thrumwright.plan.EndPlan;
import thrumwright.plan.Work;
import thrumwright.yarn.Yarn;

/** Draws blocks, and whole ends, from the front. */
final class ClothPainter {
    /** Below so many page units from end to end single yarns can't be seen. */
    private static final double SINGLE_YARNS_FROM = 2;

    private final Graphics2D g;
    private final Palette palette;
    private final boolean everyYarn;

    /**
     * @param everyYarn whether to draw single yarns however small they are, as on paper
     */
    ClothPainter(Graphics2D g, Palette palette, boolean everyYarn) {
        this.g = g;
        this.palette = palette;
        this.everyYarn = everyYarn;
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    }

    /**
     * Bare warp, to be drawn before any block.
     *
     * @param setting any yarn on this warp
     * @param colour the warp yarn's
     */
    void warp(View view, Setting setting, Color colour, double fromY, double toY) {
        new WarpPen(g, view, colour).draw(setting.spacing(), setting.warp(), 0, setting.ends() - 1, fromY, toY);
    }

    /** The warp's colour as the palette shows it. */
    Color colour(Yarn yarn) {
        return palette.yarn(yarn.colour());
    }

    /** Both posts from one height to another. */
    void posts(View view, Setting setting, Posts posts, double fromY, double toY) {
        double away = posts.gap() + setting.warp() / 2;
        post(view, -away - posts.diameter(), posts.diameter(), fromY, toY);
        post(view, setting.span() + away, posts.diameter(), fromY, toY);
    }

    private void post(View view, double left, double diameter, double fromY, double toY) {
        double width = view.length(diameter);
        RoundRectangle2D shape = new RoundRectangle2D.Double(
                view.x(left), view.y(toY), width, view.y(fromY) - view.y(toY), width / 3, width / 3);
        g.setColor(palette.post());
        g.fill(shape);
        g.setColor(Palette.mixed(palette.post(), palette.paper(), 0.5));
        g.fill(new Rectangle2D.Double(
                view.x(left) + width * 0.25, view.y(toY) + width / 8, width * 0.18, shape.getHeight() - width / 4));
        g.setColor(Palette.mixed(palette.post(), palette.ink(), 0.4));
        g.setStroke(new BasicStroke((float) Math.max(0.4, Math.min(1, width * 0.03))));
        g.draw(shape);
    }

    /**
     * Blocks on their warp: first what lies behind, then posts and warp, then what lies in front.
     *
     * @param view with y = 0 at the lowest block's lower edge
     * @param blocks with pictures, from the lowest to the highest
     * @param fromY how far down the warp shows, mm
     * @param toY how far up
     */
    void blocks(View view, List<Placed> blocks, Setting ground, Color warp, double fromY, double toY) {
        Rectangle2D visible = g.getClipBounds();
        List<Placed> seen = visible == null
                ? blocks
                : blocks.stream().filter(block -> meets(view, block, visible)).toList();
        boolean single = everyYarn || view.length(ground.spacing()) >= SINGLE_YARNS_FROM;
        if (single) {
            blocks.forEach(block -> pen(view, block, behind(shown(block.picture())))
                    .drawTogether(block.picture().back()));
        }
        ground.posts().ifPresent(posts -> posts(view, ground, posts, fromY, toY));
        warp(view, ground, warp, fromY, toY);
        for (Placed block : seen) {
            if (!single) {
                texture(view.raised(block.bottom()), ground, shown(block.picture()), warp, block.height());
            } else if (block.picture().overlapping()) {
                pen(view, block, shown(block.picture()))
                        .drawInOrder(within(view, block.picture().front(), visible));
            } else {
                pen(view, block, shown(block.picture()))
                        .drawTogether(within(view, block.picture().front(), visible));
            }
        }
    }

    private static boolean meets(View view, Placed block, Rectangle2D visible) {
        double spare = view.length(4);
        return view.y(block.bottom()) + spare >= visible.getMinY()
                && view.y(block.bottom() + block.height()) - spare <= visible.getMaxY();
    }

    /** The stretches that can be seen. */
    private static List<Stretch> within(View view, List<Stretch> stretches, Rectangle2D visible) {
        if (visible == null) {
            return stretches;
        }
        double left = view.clothX(visible.getMinX()) - 5;
        double right = view.clothX(visible.getMaxX()) + 5;
        return stretches.stream()
                .filter(stretch -> stretch.highX() >= left && stretch.lowX() <= right)
                .toList();
    }

    /** A block's picture at its height. */
    record Placed(BlockPicture picture, double bottom, double height) {}

    private YarnPen pen(View view, Placed block, Color colour) {
        return new YarnPen(
                g, view.raised(block.bottom()), colour, block.picture().yarn().plies());
    }

    private Color behind(Color yarn) {
        return Palette.mixed(Palette.mixed(yarn, Color.BLACK, 0.38), palette.paper(), 0.12);
    }

    private Color shown(BlockPicture picture) {
        return shown(picture.yarn(), picture.pale());
    }

    /** What comes out later is paler, and bracketed besides. */
    private Color shown(Yarn yarn, boolean comesOut) {
        Color own = palette.yarn(yarn.colour());
        return comesOut ? Palette.mixed(own, palette.paper(), 0.45) : own;
    }

    /** From far away: ribs, one an end, where they can still be told apart; else a plain field. */
    private void texture(View view, Setting setting, Color yarn, Color warp, double height) {
        Rectangle2D field = new Rectangle2D.Double(
                view.x(-setting.gauge()),
                view.y(height),
                view.length(setting.span() + 2 * setting.gauge()),
                view.length(height));
        g.setColor(Palette.mixed(yarn, warp, 0.08));
        g.fill(field);
        g.setColor(Palette.mixed(yarn, Color.BLACK, 0.28));
        g.setStroke(new BasicStroke(0.5f));
        double rib = view.length(setting.spacing());
        if (rib >= 1) {
            Path2D gaps = new Path2D.Double();
            for (int end = 0; end < setting.ends() - 1; end++) {
                double x = view.x((end + 0.5) * setting.spacing());
                gaps.moveTo(x, field.getMinY());
                gaps.lineTo(x, field.getMaxY());
            }
            g.draw(gaps);
        }
        g.draw(field);
    }

    /**
     * A tail or a tied end where a yarn begins or ends.
     *
     * @param view with y = 0 at the block's lower edge
     */
    void tails(View view, Work work, boolean pale) {
        Color yarn = shown(work.yarn(), pale);
        double first = rowMiddle(work, 0);
        double last = rowMiddle(work, work.rows().size() - 1);
        if (work.block().tied()) {
            work.setting().posts().ifPresent(posts -> {
                YarnPen tied = new YarnPen(g, view, yarn, work.yarn().plies());
                tied.drawTogether(coils(work, posts, work.begins(), first, -1));
                tied.drawTogether(coils(work, posts, work.ends(), last, 1));
            });
        }
        List<Side> tails = work.tails();
        YarnPen pen = new YarnPen(g, view, yarn, work.yarn().plies());
        for (int i = 0; i < tails.size(); i++) {
            boolean early = i == 0 && !work.block().folded();
            double shift =
                    work.block().folded() ? (i - 0.5) * 2 * work.setting().beaten() : 0;
            pen.drawTogether(List.of(tail(work.setting(), tails.get(i), (early ? first : last) + shift, i)));
        }
    }

    /** A cord tied to a post: two turns round it, away from the weaving. */
    private static List<Stretch> coils(Work work, Posts posts, Side side, double y, int upwards) {
        Setting setting = work.setting();
        double away = posts.gap() + setting.warp() / 2;
        double inner = side == Side.LEFT ? -away : setting.span() + away;
        double outer = side == Side.LEFT ? inner - posts.diameter() : inner + posts.diameter();
        List<Stretch> coils = new ArrayList<>();
        for (int i = 0; i < 2; i++) {
            double at = y + upwards * i * 1.1 * setting.beaten();
            double[] width = {setting.beaten(), setting.beaten()};
            coils.add(new Stretch(
                    true,
                    0,
                    new double[] {inner, outer},
                    new double[] {at, at + upwards * 0.5 * setting.beaten()},
                    width));
        }
        return coils;
    }

    private static double rowMiddle(Work work, int row) {
        double each = work.block().height(work.setting()) / work.rows().size();
        return (row + 0.5) * each;
    }

    /** A short end that leaves the edge and hangs. */
    private static Stretch tail(Setting setting, Side side, double y, int which) {
        int points = 12;
        double[] x = new double[points];
        double[] heights = new double[points];
        double[] width = new double[points];
        double out = 2.2 * setting.spacing() + which * 1.2 * setting.relaxed();
        double down = 2 * setting.spacing();
        for (int i = 0; i < points; i++) {
            double share = (double) i / (points - 1);
            double along = Math.sin(share * Math.PI / 2) * out;
            x[i] = side == Side.LEFT ? -along : setting.span() + along;
            heights[i] = y - down * share * share;
            width[i] = setting.beaten() + (setting.relaxed() - setting.beaten()) * Math.min(1, share * 4);
        }
        return new Stretch(true, 0, x, heights, width);
    }

    /** A fold line across the whole width, with a small wedge at either side. */
    void fold(View view, Setting setting, double y) {
        double left = view.x(-2.5 * setting.spacing());
        double right = view.x(setting.span() + 2.5 * setting.spacing());
        double at = view.y(y);
        float unit = (float) Math.max(1, Math.min(3, view.length(setting.spacing()) * 0.25));
        g.setColor(palette.paper());
        g.setStroke(new BasicStroke(unit * 1.9f));
        g.draw(new Line2D.Double(left, at, right, at));
        g.setColor(palette.accent());
        g.setStroke(new BasicStroke(
                unit, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, new float[] {unit * 5, unit * 3}, 0));
        g.draw(new Line2D.Double(left, at, right, at));
        wedge(left, at, unit * 4, 1);
        wedge(right, at, unit * 4, -1);
    }

    private void wedge(double x, double y, double size, int direction) {
        Path2D wedge = new Path2D.Double();
        wedge.moveTo(x, y);
        wedge.lineTo(x - direction * size, y - size * 0.6);
        wedge.lineTo(x - direction * size, y + size * 0.6);
        wedge.closePath();
        g.fill(wedge);
    }

    /** A dashed bracket round what comes out later, beside its paler colour. */
    private void comesOut(View view, Setting setting, BlockPlan block) {
        double inset = view.length(setting.spacing());
        double left = view.x(0) - inset;
        double right = view.x(setting.span()) + inset;
        g.setColor(palette.faint());
        g.setStroke(new BasicStroke(1, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, new float[] {3, 3}, 0));
        g.draw(new Rectangle2D.Double(left, view.y(block.height()), right - left, view.length(block.height())));
    }

    /**
     * Over an end's blocks: tails, what comes out, the fold.
     *
     * @param view with y = 0 at the end's lowest line
     */
    void marks(View view, EndPlan end, Setting ground) {
        for (BlockPlan block : end.blocks()) {
            block.work().ifPresent(work -> {
                tails(view.raised(block.bottom()), work, block.comesOut());
                if (block.comesOut()) {
                    comesOut(view.raised(block.bottom()), work.setting(), block);
                }
            });
        }
        end.hem().ifPresent(hem -> fold(view, ground, hem.foldLine()));
    }
}
