package thrumwright.output.part;

import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;

/** A strip of paper that is too long for the height of a page, laid on its side: its lower edge is at the left. */
record LyingStrip(PaperStrip strip) implements PaperStrip {
    @Override
    public double width() {
        return strip.height(strip.width());
    }

    @Override
    public double height(double width) {
        return strip.width();
    }

    @Override
    public void paint(Graphics2D g, double x, double y, double width) {
        AffineTransform before = g.getTransform();
        g.translate(x + width(), y);
        g.rotate(Math.PI / 2);
        strip.paint(g, 0, 0, strip.width());
        g.setTransform(before);
    }
}
