package thrumwright.drawing.yarn;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import thrumwright.drawing.Palette;
import thrumwright.drawing.View;

/** Draws a block's yarn on a screen: as much as repeats itself across the warp is worked out once. */
final class RepeatPainter {
    /** Below so many device units from end to end, the yarn is drawn once and its picture repeated. */
    private static final double SINGLE_YARNS_FROM = 7;

    /** Page units beyond any page. */
    private static final double FAR = 1e6;

    private final Graphics2D g;
    private final Palette palette;
    private final YarnPainter yarn;

    RepeatPainter(Graphics2D g, YarnPainter yarn) {
        this.g = g;
        this.palette = yarn.palette();
        this.yarn = yarn;
    }

    /**
     * Draws one block's yarn.
     *
     * @param view with y = 0 at the block's lower edge
     * @param near whether to draw the yarn towards the eye
     */
    void draw(View view, BlockPicture picture, boolean near) {
        boolean single = view.length(picture.setting().spacing()) * Detail.device(g) >= SINGLE_YARNS_FROM;
        double s = picture.setting().spacing();
        Rectangle2D visible = g.getClipBounds();
        for (Repetition.Slab slab : picture.repetition().slabs()) {
            boolean meets = visible == null
                    || view.x(slab.left(s)) <= visible.getMaxX() && view.x(slab.right(s)) >= visible.getMinX();
            if (meets && single) {
                slab(view, picture, near, slab);
            } else if (meets) {
                strip(view, picture, near, slab);
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

    private void slab(View view, BlockPicture picture, boolean near, Repetition.Slab slab) {
        double s = picture.setting().spacing();
        Graphics2D own = (Graphics2D) g.create();
        View shifted = new View(view.scale(), view.x(slab.shift() * s), view.base());
        if (slab.left(s) > Double.NEGATIVE_INFINITY) {
            own.clip(new Rectangle2D.Double(onPixel(view.x(slab.left(s))), -FAR, FAR, 2 * FAR));
        }
        if (slab.right(s) < Double.POSITIVE_INFINITY) {
            own.clip(new Rectangle2D.Double(onPixel(view.x(slab.right(s))) - FAR, -FAR, FAR, 2 * FAR));
        }
        yarn.draw(own, shifted, picture.narrow(), near);
        own.dispose();
    }

    /** The place of the device pixel's border that is nearest. */
    private double onPixel(double x) {
        AffineTransform device = g.getTransform();
        double at = Math.rint(x * device.getScaleX() + device.getTranslateX());
        return (at - device.getTranslateX()) / device.getScaleX();
    }

    /** Onto whole device pixels, unless the page is turned. */
    private void strip(View view, BlockPicture picture, boolean near, Repetition.Slab slab) {
        double shift = slab.shift() * picture.setting().spacing();
        Point2D corner = new Point2D.Double(view.x(shift), view.base());
        Graphics2D own = (Graphics2D) g.create();
        if (upright()) {
            g.getTransform().transform(corner, corner);
            double lower = Math.floor(corner.getY());
            YarnStrip strip =
                    strip(view, picture, near, slab, (int) Math.floor((corner.getY() - lower) * YarnStrip.PHASES));
            own.setTransform(new AffineTransform());
            own.drawImage(
                    strip.image(), (int) Math.round(corner.getX()) + strip.left(), (int) lower + strip.top(), null);
        } else {
            YarnStrip strip = strip(view, picture, near, slab, 0);
            own.translate(corner.getX(), corner.getY());
            own.scale(1 / Detail.device(g), 1 / Detail.device(g));
            own.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
            own.drawImage(strip.image(), strip.left(), strip.top(), null);
        }
        own.dispose();
    }

    private YarnStrip strip(View view, BlockPicture picture, boolean near, Repetition.Slab slab, int phase) {
        BlockPicture narrow = picture.narrow();
        double dots = view.length(Detail.device(g));
        YarnStrip.Key key = new YarnStrip.Key(slab.narrow(), near, narrow.yarn().colour(palette), dots, phase);
        return narrow.strip(key, (on, there) -> {
            ClothPainter.prepare(on);
            yarn.draw(on, there, narrow, near);
        });
    }
}
