package thrumwright.output.part;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import thrumwright.measure.Unit;
import thrumwright.measure.UnitSystem;
import thrumwright.output.page.Paper;

/**
 * One strip, marked in centimetres or inches above the start line.
 *
 * @param from of the whole, mm, 0 or more
 * @param to of the whole, mm, more than {@code from}
 * @param stop where the design must end, mm
 */
record DesignStrip(double from, double to, double stop, UnitSystem units, PartMaker make) implements PaperStrip {
    private static final double WIDTH = 26 * Paper.POINTS;
    private static final double LONG = 9;
    private static final double SHORT = 4;

    @Override
    public double width() {
        return WIDTH;
    }

    @Override
    public double height(double width) {
        return (to - from) * Paper.POINTS;
    }

    @Override
    public void paint(Graphics2D g, double x, double y, double width) {
        double bottom = y + height(WIDTH);
        g.setColor(make.palette().ink());
        g.setStroke(new BasicStroke(0.8f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER));
        g.draw(new Rectangle2D.Double(x, y, WIDTH, bottom - y));
        g.setFont(make.type().small());
        double step = units == UnitSystem.INCHES ? Unit.INCH.millimetres() / 4 : 5;
        int whole = units == UnitSystem.INCHES ? 4 : 2;
        for (int i = (int) Math.ceil(from / step - 1e-6); i * step <= to + 1e-6; i++) {
            mark(g, x, bottom - (i * step - from) * Paper.POINTS, i % whole == 0 ? String.valueOf(i / whole) : "");
        }
        if (to >= stop - 1e-6) {
            stop(g, x, y);
        }
    }

    private void mark(Graphics2D g, double x, double y, String number) {
        g.setColor(make.palette().ink());
        g.draw(new Line2D.Double(x, y, x + (number.isEmpty() ? SHORT : LONG), y));
        if (!number.isEmpty()) {
            float size = make.type().small().getSize2D();
            boolean room = y - size / 2 > 0;
            g.drawString(number, (float) (x + LONG + 3), (float) (room ? y + size * 0.3 : y + size));
        }
    }

    private void stop(Graphics2D g, double x, double y) {
        g.setColor(make.palette().accent());
        g.setStroke(new BasicStroke(1.6f));
        g.draw(new Line2D.Double(x, y, x + WIDTH, y));
        g.drawString(make.phrases().say("strip.stop"), (float) (x + WIDTH / 2), (float)
                (y + make.type().small().getSize2D() + 1));
    }
}
