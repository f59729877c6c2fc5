package thrumwright.drawing;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import thrumwright.block.Setting;
import thrumwright.yarn.Yarn;

/** Draws blocks on their warp, from the front or from behind. */
final class ClothPainter {
    /** Below so many page units from end to end single yarns can't be seen. */
    private static final double SINGLE_YARNS_FROM = 2;
    /** Stretches reach at most so far beyond their middle line, in diameters. */
    private static final double SPARE = 2;

    private final Graphics2D g;
    private final Palette palette;
    private final boolean everyYarn;
    private final Face face;

    /**
     * @param everyYarn whether to draw single yarns however small they are, as on paper
     */
    ClothPainter(Graphics2D g, Palette palette, boolean everyYarn, Face face) {
        this.g = g;
        this.palette = palette;
        this.everyYarn = everyYarn;
        this.face = face;
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    }

    /** A block's picture at its height. */
    record Placed(BlockPicture picture, double bottom, double height) {
        View on(View view) {
            return view.raised(bottom);
        }
    }

    /**
     * Bare warp.
     *
     * @param setting any yarn on this warp
     * @param colour the warp yarn's
     */
    void warp(View view, Setting setting, Yarn warp, double fromY, double toY) {
        int first = 0;
        int last = setting.ends() - 1;
        Rectangle2D visible = g.getClipBounds();
        if (visible != null) {
            first = Math.max(first, (int) Math.floor(view.clothX(visible.getMinX()) / setting.spacing()) - 1);
            last = Math.min(last, (int) Math.ceil(view.clothX(visible.getMaxX()) / setting.spacing()) + 1);
        }
        WarpPen pen = new WarpPen(g, view, palette.yarn(warp.colour()), warp.plies(), face);
        pen.draw(setting.spacing(), setting.warp(), first, last, fromY, toY);
    }

    /**
     * Blocks on their warp: first what lies behind, then posts and warp, then what lies in front.
     *
     * @param view with y = 0 at the lowest block's lower edge
     * @param blocks with pictures, from the lowest to the highest
     * @param tails their heights counted like the blocks'
     * @param fromY how far down the warp shows, mm
     * @param toY how far up
     */
    void blocks(View view, List<Placed> blocks, List<Tail> tails, Setting ground, Yarn warp, double fromY, double toY) {
        Rectangle2D visible = g.getClipBounds();
        List<Placed> seen = visible == null
                ? blocks
                : blocks.stream().filter(block -> meets(view, block, visible)).toList();
        boolean single = everyYarn || view.length(ground.spacing()) >= SINGLE_YARNS_FROM;
        if (single) {
            seen.forEach(block -> behind(view, block, visible));
        }
        tails(view, ground, tails.stream().filter(tail -> tail.inFront() != (face == Face.FRONT)));
        ground.posts().ifPresent(posts -> new PostPen(g, view, palette).draw(ground, posts, fromY, toY));
        warp(view, ground, warp, fromY, toY);
        for (Placed block : seen) {
            if (single) {
                inFront(view, block, visible);
            } else {
                texture(block.on(view), ground, shown(block.picture()), palette.yarn(warp.colour()), block.height());
                pen(view, block).drawTogether(block.picture().beyond());
            }
            pen(view, block).drawTogether(block.picture().ties());
        }
        tails(view, ground, tails.stream().filter(tail -> tail.inFront() == (face == Face.FRONT)));
    }

    private void behind(View view, Placed block, Rectangle2D visible) {
        Color shaded = behind(shown(block.picture()));
        int plies = block.picture().yarn().plies();
        YarnPen.inTheShade(g, block.on(view), shaded, plies, face)
                .drawTogether(within(view, face.far(block.picture(), detail(view, block)), visible));
    }

    private void inFront(View view, Placed block, Rectangle2D visible) {
        List<Stretch> front = within(view, face.near(block.picture(), detail(view, block)), visible);
        if (block.picture().overlapping()) {
            pen(view, block).drawInOrder(front);
        } else {
            pen(view, block).drawTogether(front);
        }
    }

    private Detail detail(View view, Placed block) {
        return Detail.of(view.length(block.picture().setting().relaxed()) * Detail.device(g));
    }

    private static boolean meets(View view, Placed block, Rectangle2D visible) {
        double spare = view.length(SPARE * block.picture().yarn().diameter());
        return view.y(block.bottom()) + spare >= visible.getMinY()
                && view.y(block.bottom() + block.height()) - spare <= visible.getMaxY();
    }

    /** The stretches that can be seen. */
    private static List<Stretch> within(View view, List<Stretch> stretches, Rectangle2D visible) {
        if (visible == null || stretches.isEmpty()) {
            return stretches;
        }
        double spare = SPARE * stretches.get(0).thickest();
        double left = view.clothX(visible.getMinX()) - spare;
        double right = view.clothX(visible.getMaxX()) + spare;
        return stretches.stream()
                .filter(stretch -> stretch.highX() >= left && stretch.lowX() <= right)
                .toList();
    }

    private YarnPen pen(View view, Placed block) {
        BlockPicture picture = block.picture();
        return new YarnPen(g, block.on(view), shown(picture), picture.yarn().plies(), face);
    }

    private Color behind(Color yarn) {
        return Palette.mixed(Palette.mixed(yarn, Color.BLACK, 0.4), palette.paper(), 0.08);
    }

    /** What comes out later is paler, and framed besides. */
    private Color shown(BlockPicture picture) {
        Color own = palette.yarn(picture.yarn().colour());
        return switch (picture.tint()) {
            case FULL -> own;
            case PALE -> Palette.mixed(own, palette.paper(), 0.45);
            case GREY -> Palette.mixed(Palette.grey(own), palette.paper(), 0.5);
        };
    }

    /** From far away: ribs, one an end, where they can still be told apart; else a plain field. */
    private void texture(View view, Setting setting, Color yarn, Color warp, double height) {
        Rectangle2D field = new Rectangle2D.Double(
                view.x(-setting.gauge()),
                view.y(height),
                view.length(setting.span() + 2 * setting.gauge()),
                view.length(height));
        Color average = Palette.mixed(Palette.mixed(yarn, warp, 0.05), Color.BLACK, 0.12);
        g.setColor(average);
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
        g.setColor(average);
        g.draw(field);
    }

    /** Tails, those that hang farthest out first. */
    private void tails(View view, Setting setting, Stream<Tail> tails) {
        tails.sorted(Comparator.comparingDouble(Tail::out).reversed()).forEach(tail -> {
            Color colour = shown(tail.picture());
            int plies = tail.picture().yarn().plies();
            new YarnPen(g, view, colour, plies, face).drawTogether(List.of(tail.stretch(setting)));
        });
    }
}
