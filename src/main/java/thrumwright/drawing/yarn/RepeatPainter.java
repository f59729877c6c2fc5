package thrumwright.drawing.yarn;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import thrumwright.drawing.Palette;
import thrumwright.drawing.View;

/** Draws a block's yarn on a screen: as much as repeats itself across the warp and up it is worked out once. */
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
        List<Repetition.Slab> columns = seen(view, picture);
        for (Repetition.Slab rows : picture.courses().slabs()) {
            if (!seen(view, rows, picture.rowHeight())) {
                continue;
            }
            for (Repetition.Slab column : columns) {
                if (single) {
                    slab(view, picture, near, new Tile(column, rows));
                } else {
                    strip(view, picture, near, new Tile(column, rows));
                }
            }
        }
    }

    /** Some warp ends in some rows. */
    private record Tile(Repetition.Slab column, Repetition.Slab rows) {}

    private List<Repetition.Slab> seen(View view, BlockPicture picture) {
        double s = picture.setting().spacing();
        Rectangle2D visible = g.getClipBounds();
        return picture.repetition().slabs().stream()
                .filter(slab -> visible == null
                        || view.x(slab.left(s)) <= visible.getMaxX() && view.x(slab.right(s)) >= visible.getMinX())
                .toList();
    }

    /** Yarn reaches a little over its row. */
    private boolean seen(View view, Repetition.Slab rows, double each) {
        Rectangle2D visible = g.getClipBounds();
        return visible == null
                || view.y(rows.low(each) - each) >= visible.getMinY()
                        && view.y(rows.high(each) + each) <= visible.getMaxY();
    }

    /** Whether the page lies on the screen as it is, neither turned nor mirrored. */
    private boolean upright() {
        AffineTransform device = g.getTransform();
        return device.getScaleX() > 0
                && device.getScaleX() == device.getScaleY()
                && device.getShearX() == 0
                && device.getShearY() == 0;
    }

    private void slab(View view, BlockPicture picture, boolean near, Tile tile) {
        double s = picture.setting().spacing();
        Graphics2D own = (Graphics2D) g.create();
        double left = tile.column().left(s);
        double right = tile.column().right(s);
        if (left > Double.NEGATIVE_INFINITY) {
            own.clip(new Rectangle2D.Double(onPixel(view.x(left)), -FAR, FAR, 2 * FAR));
        }
        if (right < Double.POSITIVE_INFINITY) {
            own.clip(new Rectangle2D.Double(onPixel(view.x(right)) - FAR, -FAR, FAR, 2 * FAR));
        }
        clipRows(own, view, tile.rows(), picture.rowHeight());
        yarn.draw(own, shifted(view, picture, tile), picture.narrow(), near);
        own.dispose();
    }

    private void clipRows(Graphics2D own, View view, Repetition.Slab rows, double each) {
        double low = rows.low(each);
        double high = rows.high(each);
        if (low > Double.NEGATIVE_INFINITY) {
            own.clip(new Rectangle2D.Double(-FAR, onPixelRow(view.y(low)) - FAR, 2 * FAR, FAR));
        }
        if (high < Double.POSITIVE_INFINITY) {
            own.clip(new Rectangle2D.Double(-FAR, onPixelRow(view.y(high)), 2 * FAR, FAR));
        }
    }

    /** The view in which the narrow block's yarn lies where the tile is. */
    private static View shifted(View view, BlockPicture picture, Tile tile) {
        double x = tile.column().shift() * picture.setting().spacing();
        double y = tile.rows().shift() * picture.rowHeight();
        return new View(view.scale(), view.x(x), view.y(y));
    }

    /** The place of the device pixel's border that is nearest. */
    private double onPixel(double x) {
        AffineTransform device = g.getTransform();
        double at = Math.rint(x * device.getScaleX() + device.getTranslateX());
        return (at - device.getTranslateX()) / device.getScaleX();
    }

    private double onPixelRow(double y) {
        AffineTransform device = g.getTransform();
        double at = Math.rint(y * device.getScaleY() + device.getTranslateY());
        return (at - device.getTranslateY()) / device.getScaleY();
    }

    /** Onto whole device pixels, unless the page is turned. */
    private void strip(View view, BlockPicture picture, boolean near, Tile tile) {
        View shifted = shifted(view, picture, tile);
        Point2D corner = new Point2D.Double(shifted.left(), shifted.base());
        Graphics2D own = (Graphics2D) g.create();
        if (upright()) {
            g.getTransform().transform(corner, corner);
            double lower = Math.floor(corner.getY());
            YarnStrip strip =
                    strip(view, picture, near, tile, (int) Math.floor((corner.getY() - lower) * YarnStrip.PHASES));
            own.setTransform(new AffineTransform());
            own.drawImage(
                    strip.image(), (int) Math.round(corner.getX()) + strip.left(), (int) lower + strip.top(), null);
        } else {
            YarnStrip strip = strip(view, picture, near, tile, 0);
            own.translate(corner.getX(), corner.getY());
            own.scale(1 / Detail.device(g), 1 / Detail.device(g));
            own.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
            own.drawImage(strip.image(), strip.left(), strip.top(), null);
        }
        own.dispose();
    }

    private YarnStrip strip(View view, BlockPicture picture, boolean near, Tile tile, int phase) {
        BlockPicture narrow = picture.narrow();
        double dots = view.length(Detail.device(g));
        YarnStrip.Key key = new YarnStrip.Key(
                tile.column().narrow(),
                tile.rows().narrow(),
                yarn.face(),
                near,
                narrow.yarn().colour(palette),
                dots,
                phase);
        return narrow.strip(key, (on, there) -> {
            ClothPainter.prepare(on);
            yarn.draw(on, there, narrow, near);
        });
    }
}
