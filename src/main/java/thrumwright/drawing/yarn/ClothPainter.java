package thrumwright.drawing.yarn;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import thrumwright.block.Setting;
import thrumwright.drawing.Palette;
import thrumwright.drawing.View;
import thrumwright.yarn.Yarn;

/** Draws blocks on their warp, from the front or from behind. */
public final class ClothPainter {
    /** Below so many device units from end to end, the yarn is drawn once and its picture repeated. */
    private static final double SINGLE_YARNS_FROM = 7;
    /** Stretches reach at most so far beyond their middle line, in diameters. */
    private static final double SPARE = 2;

    /** How much darker yarn is behind the warp. */
    private static final double SHADE = 0.3;

    /** Page units beyond any page. */
    private static final double FAR = 1e6;

    private final Graphics2D g;
    private final Palette palette;
    private final boolean everyYarn;
    private final Face face;

    /**
     * @param everyYarn whether to draw single yarns however small they are, as on paper
     */
    public ClothPainter(Graphics2D g, Palette palette, boolean everyYarn, Face face) {
        this.g = g;
        this.palette = palette;
        this.everyYarn = everyYarn;
        this.face = face;
        prepare(g);
    }

    private static void prepare(Graphics2D g) {
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    }

    /** A block's picture at its height. */
    public record Placed(BlockPicture picture, double bottom, double height) {
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
        double low = fromY;
        double high = toY;
        if (visible != null) {
            low = Math.max(low, view.clothY(visible.getMaxY()) - setting.spacing());
            high = Math.min(high, view.clothY(visible.getMinY()) + setting.spacing());
        }
        if (low < high) {
            pen.draw(setting.spacing(), setting.warp(), first, last, low, high);
        }
    }

    /**
     * Blocks on their warp: first what lies behind, then posts and warp, then what lies in front.
     *
     * @param view with y = 0 at the lowest block's lower edge
     * @param blocks with pictures, from the lowest to the highest
     * @param tails their heights counted like the blocks'
     * @param fromY how far down warp and posts show, mm
     * @param toY how far up
     */
    public void blocks(
            View view, List<Placed> blocks, List<Tail> tails, Setting ground, Yarn warp, double fromY, double toY) {
        blocks(view, blocks, tails, ground, warp, new Upright(fromY, toY), new Upright(fromY, toY));
    }

    /** From one height to another, mm. */
    public record Upright(double low, double high) {}

    /** As above, where the warp ends sooner than the posts. */
    public void blocks(
            View view,
            List<Placed> blocks,
            List<Tail> tails,
            Setting ground,
            Yarn warp,
            Upright warpShown,
            Upright postsShown) {
        Rectangle2D visible = g.getClipBounds();
        List<Placed> seen = visible == null
                ? blocks
                : blocks.stream().filter(block -> meets(view, block, visible)).toList();
        seen.forEach(block -> yarn(view, block, false));
        tails(view, ground, tails.stream().filter(tail -> tail.inFront() != (face == Face.FRONT)));
        ground.posts()
                .ifPresent(posts ->
                        new PostPen(g, view, palette).draw(ground, posts, postsShown.low(), postsShown.high()));
        warp(view, ground, warp, warpShown.low(), warpShown.high());
        seen.forEach(block -> yarn(view, block, true));
        tails(view, ground, tails.stream().filter(tail -> tail.inFront() == (face == Face.FRONT)));
        seen.forEach(block -> pen(g, block.on(view), block.picture())
                .drawInOrder(block.picture().ties()));
    }

    /** A block's yarn in front of the warp or behind it. On a screen as much as repeats itself is worked out once. */
    private void yarn(View view, Placed block, boolean near) {
        if (everyYarn || face == Face.BACK) {
            yarn(g, block.on(view), block.picture(), near);
            return;
        }
        boolean single = view.length(block.picture().setting().spacing()) * Detail.device(g) >= SINGLE_YARNS_FROM;
        double s = block.picture().setting().spacing();
        Rectangle2D visible = g.getClipBounds();
        for (Repetition.Slab slab : block.picture().repetition().slabs()) {
            boolean meets = visible == null
                    || view.x(slab.left(s)) <= visible.getMaxX() && view.x(slab.right(s)) >= visible.getMinX();
            if (meets && single) {
                slab(view, block, near, slab);
            } else if (meets) {
                strip(view, block, near, slab);
            }
        }
    }

    /** Whether the page lies on the screen as it is, neither turned nor mirrored. */
    private boolean upright() {
        AffineTransform device = g.getTransform();
        return device.getScaleX() > 0
                && device.getScaleX() == device.getScaleY()
                && device.getShearX() == 0
                && device.getShearY() == 0;
    }

    private void slab(View view, Placed block, boolean near, Repetition.Slab slab) {
        double s = block.picture().setting().spacing();
        Graphics2D own = (Graphics2D) g.create();
        View shifted = new View(view.scale(), view.x(slab.shift() * s), view.base());
        if (slab.left(s) > Double.NEGATIVE_INFINITY) {
            own.clip(new Rectangle2D.Double(onPixel(view.x(slab.left(s))), -FAR, FAR, 2 * FAR));
        }
        if (slab.right(s) < Double.POSITIVE_INFINITY) {
            own.clip(new Rectangle2D.Double(onPixel(view.x(slab.right(s))) - FAR, -FAR, FAR, 2 * FAR));
        }
        yarn(own, block.on(shifted), block.picture().narrow(), near);
        own.dispose();
    }

    /** The place of the device pixel's border that is nearest. */
    private double onPixel(double x) {
        AffineTransform device = g.getTransform();
        double at = Math.rint(x * device.getScaleX() + device.getTranslateX());
        return (at - device.getTranslateX()) / device.getScaleX();
    }

    /** Onto whole device pixels, unless the page is turned. */
    private void strip(View view, Placed block, boolean near, Repetition.Slab slab) {
        double shift = slab.shift() * block.picture().setting().spacing();
        Point2D corner = new Point2D.Double(view.x(shift), block.on(view).base());
        Graphics2D own = (Graphics2D) g.create();
        if (upright()) {
            g.getTransform().transform(corner, corner);
            double lower = Math.floor(corner.getY());
            Strip strip = strip(view, block, near, slab, (int) Math.floor((corner.getY() - lower) * Strip.PHASES));
            own.setTransform(new AffineTransform());
            own.drawImage(
                    strip.image(), (int) Math.round(corner.getX()) + strip.left(), (int) lower + strip.top(), null);
        } else {
            Strip strip = strip(view, block, near, slab, 0);
            own.translate(corner.getX(), corner.getY());
            own.scale(1 / Detail.device(g), 1 / Detail.device(g));
            own.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
            own.drawImage(strip.image(), strip.left(), strip.top(), null);
        }
        own.dispose();
    }

    private Strip strip(View view, Placed block, boolean near, Repetition.Slab slab, int phase) {
        BlockPicture narrow = block.picture().narrow();
        double dots = view.length(Detail.device(g));
        Strip.Key key = new Strip.Key(slab.narrow(), near, shown(narrow), dots, phase);
        return narrow.strip(key, (on, there) -> {
            prepare(on);
            yarn(on, there, narrow, near);
        });
    }

    private void yarn(Graphics2D on, View view, BlockPicture picture, boolean near) {
        Rectangle2D visible = on.getClipBounds();
        Detail detail = Detail.of(view.length(picture.setting().relaxed()) * Detail.device(on));
        if (near) {
            List<Stretch> front = within(view, face.near(picture, detail), visible);
            if (picture.overlapping()) {
                pen(on, view, picture).drawInOrder(front);
            } else {
                pen(on, view, picture).drawTogether(front);
            }
        } else {
            behind(on, view, picture).drawTogether(within(view, face.far(picture, detail), visible));
        }
    }

    /** What draws a block's yarn behind the warp. */
    public YarnPen behind(View view, BlockPicture picture) {
        return behind(g, view, picture);
    }

    private YarnPen behind(Graphics2D on, View view, BlockPicture picture) {
        return YarnPen.inTheShade(
                on, view, behind(shown(picture)), picture.yarn().plies(), face);
    }

    /** What draws a block's yarn in front of the warp. */
    public YarnPen inFront(View view, BlockPicture picture) {
        return pen(g, view, picture);
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
        double low = view.clothY(visible.getMaxY()) - spare;
        double high = view.clothY(visible.getMinY()) + spare;
        return stretches.stream()
                .filter(stretch -> stretch.highX() >= left && stretch.lowX() <= right)
                .filter(stretch -> stretch.highY() >= low && stretch.lowY() <= high)
                .toList();
    }

    private YarnPen pen(Graphics2D on, View view, BlockPicture picture) {
        return new YarnPen(on, view, shown(picture), picture.yarn().plies(), face);
    }

    private Color behind(Color yarn) {
        return Palette.mixed(Palette.mixed(yarn, Color.BLACK, SHADE), palette.paper(), 0.08);
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

    /** Tails, those that hang farthest out first. */
    private void tails(View view, Setting setting, Stream<Tail> tails) {
        tails.sorted(Comparator.comparingDouble(Tail::out).reversed()).forEach(tail -> {
            Color colour = shown(tail.picture());
            int plies = tail.picture().yarn().plies();
            new YarnPen(g, view, colour, plies, face).drawTogether(List.of(tail.stretch(setting)));
        });
    }
}
