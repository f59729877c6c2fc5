package thrumwright.drawing.piece;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.RoundRectangle2D;
import thrumwright.drawing.Palette;
import thrumwright.drawing.View;

/** Draws what of the loom stands round a piece. */
public record LoomPainter(Graphics2D g, View view, Palette palette) {
    /** Where light falls on a bar, as shares of its thickness from above. */
    private static final double LIT_FROM = 0.18;

    private static final double LIT = 0.3;

    /**
     * Both bars, as far as the warp and the posts reach and half their thickness farther.
     *
     * @param thick how thick they are drawn, mm, more than 0
     */
    public void bars(PiecePicture picture, double thick) {
        bar(picture, picture.lowerBar() - thick, thick);
        bar(picture, picture.upperBar(), thick);
    }

    private void bar(PiecePicture picture, double bottom, double thick) {
        double high = view.length(thick);
        double beside = picture.reach().outermost() + thick / 2;
        double left = view.x(-beside);
        double wide = view.x(picture.span() + beside) - left;
        double top = view.y(bottom + thick);
        RoundRectangle2D bar = new RoundRectangle2D.Double(left, top, wide, high, high * 0.7, high * 0.7);
        g.setColor(palette.post());
        g.fill(bar);
        g.setColor(Palette.mixed(palette.post(), Color.WHITE, 0.4));
        double inset = high * 0.3;
        g.fill(new RoundRectangle2D.Double(
                left + inset,
                top + high * LIT_FROM,
                Math.max(0, wide - 2 * inset),
                high * LIT,
                high * LIT,
                high * LIT));
        g.setColor(Palette.mixed(palette.post(), palette.ink(), 0.6));
        g.setStroke(new BasicStroke(1));
        g.draw(bar);
    }
}
