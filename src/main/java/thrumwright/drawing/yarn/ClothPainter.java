package thrumwright.drawing.yarn;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Rectangle2D;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import thrumwright.block.Setting;
import thrumwright.drawing.Palette;
import thrumwright.drawing.View;
import thrumwright.yarn.Yarn;

/** Draws blocks on their warp, from the front or from behind. */
public final class ClothPainter {
    /** Seen from behind, a block with no more crossings than that is drawn whole. */
    private static final double WHOLE_BEHIND = 100_000;

    private final Graphics2D g;
    private final Palette palette;
    private final boolean everyYarn;
    private final Face face;
    private final YarnPainter yarn;

    /**
     * @param everyYarn whether to draw single yarns however small they are, as on paper
     */
    public ClothPainter(Graphics2D g, Palette palette, boolean everyYarn, Face face) {
        this.g = g;
        this.palette = palette;
        this.everyYarn = everyYarn;
        this.face = face;
        this.yarn = new YarnPainter(palette, face);
        prepare(g);
    }

    static void prepare(Graphics2D g) {
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    }

    /** A block's picture at its height. */
    public record PlacedBlock(BlockPicture picture, double bottom, double height) {
        View on(View view) {
            return view.raised(bottom);
        }

        /** All that its drawing follows from. */
        public Object likeness() {
            return List.of(picture.likeness(), bottom, height);
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
     * Blocks on their warp: first what lies behind, then posts and warp, then what lies in front; stitches last that lie on other
     * blocks.
     *
     * @param view with y = 0 at the lowest block's lower edge
     * @param blocks with pictures, from the lowest to the highest
     * @param tails their heights counted like the blocks'
     * @param fromY how far down warp and posts show, mm
     * @param toY how far up
     */
    public void blocks(
            View view,
            List<PlacedBlock> blocks,
            List<Tail> tails,
            Setting ground,
            Yarn warp,
            double fromY,
            double toY) {
        blocks(view, blocks, tails, ground, warp, new Upright(fromY, toY), new Upright(fromY, toY));
    }

    /** From one height to another, mm. */
    public record Upright(double low, double high) {}

    /** As above, where the warp ends sooner than the posts. */
    public void blocks(
            View view,
            List<PlacedBlock> blocks,
            List<Tail> tails,
            Setting ground,
            Yarn warp,
            Upright warpShown,
            Upright postsShown) {
        Rectangle2D visible = g.getClipBounds();
        List<PlacedBlock> seen = visible == null
                ? blocks
                : blocks.stream().filter(block -> meets(view, block, visible)).toList();
        seen.forEach(block -> yarn(view, block, false));
        tails(view, ground, tails.stream().filter(tail -> !near(tail)));
        ground.posts()
                .ifPresent(posts ->
                        new PostPen(g, view, palette).draw(ground, posts, postsShown.low(), postsShown.high()));
        warp(view, ground, warp, warpShown.low(), warpShown.high());
        tails(view, ground, tails.stream().filter(tail -> near(tail) && under(tail)));
        seen.stream()
                .sorted(Comparator.comparing(block -> block.picture().lap() != 0))
                .forEach(block -> yarn(view, block, true));
        tails(view, ground, tails.stream().filter(tail -> near(tail) && !under(tail)));
        seen.forEach(block -> inFront(block.on(view), block.picture())
                .drawInOrder(block.picture().ties()));
    }

    private boolean near(Tail tail) {
        return tail.inFront() == (face == Face.FRONT);
    }

    private static boolean under(Tail tail) {
        return tail.lies() == Tail.Lies.UNDER_ITS_ROW;
    }

    /** A block's yarn in front of the warp or behind it. */
    private void yarn(View view, PlacedBlock block, boolean near) {
        View on = block.on(view);
        BlockPicture picture = block.picture();
        if (CoverPainter.tooFine(on, picture, everyYarn ? 1 : Detail.device(g))) {
            new CoverPainter(g, palette).draw(on, picture, near);
        } else if (everyYarn || face == Face.BACK && picture.crossings() <= WHOLE_BEHIND) {
            yarn.draw(g, on, picture, near);
        } else {
            new RepeatPainter(g, yarn).draw(on, picture, near);
        }
    }

    /** What draws a block's yarn behind the warp. */
    public YarnPen behind(View view, BlockPicture picture) {
        return yarn.behind(g, view, picture);
    }

    /** What draws a block's yarn in front of the warp. */
    public YarnPen inFront(View view, BlockPicture picture) {
        return yarn.pen(g, view, picture.yarn());
    }

    private static boolean meets(View view, PlacedBlock block, Rectangle2D visible) {
        double spare =
                view.length(YarnPainter.SPARE * block.picture().yarn().yarn().diameter());
        double lap = block.picture().lap();
        return view.y(block.bottom() + Math.min(0, lap)) + spare >= visible.getMinY()
                && view.y(block.bottom() + block.height() + Math.max(0, lap)) - spare <= visible.getMaxY();
    }

    /**
     * Tails, those that hang farthest out first. Those of many blocks hang far out: on a screen only what is seen of them is
     * worked out. Paper has all of them, since there what is drawn lies by steps from what was drawn before.
     */
    private void tails(View view, Setting setting, Stream<Tail> tails) {
        Optional<Rectangle2D> visible = everyYarn ? Optional.empty() : Optional.ofNullable(g.getClipBounds());
        tails.sorted(Comparator.comparingDouble(Tail::out).reversed()).forEach(tail -> {
            List<Stretch> hanging = List.of(tail.stretch(setting));
            List<Stretch> seen =
                    visible.map(part -> YarnPainter.within(view, hanging, part)).orElse(hanging);
            yarn.pen(g, view, tail.yarn()).markedIn(visible).drawInOrder(seen);
        });
    }
}
