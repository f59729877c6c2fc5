package thrumwright.output.part;

import java.awt.BasicStroke;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import thrumwright.drawing.Palette;
import thrumwright.output.page.Part;
import thrumwright.piece.Piece;
import thrumwright.sheet.WarpMarks;

/** The bar with its marks and the warp ends between them, counted through from the left; drawn to the width of the page. */
public record MarkedBarPart(Piece piece, PartMaker make) implements Part {
    private static final double HIGH = 62;
    private static final double BAR = 7;
    private static final double MARK = 12;
    /** A number isn't set closer to the next than this, points. */
    private static final double APART = 26;

    @Override
    public double height(double width) {
        return HIGH;
    }

    @Override
    public void paint(Graphics2D g, double x, double y, double width) {
        WarpMarks marks = WarpMarks.of(piece);
        double scale = width / (marks.ends().size() * marks.apart());
        double bar = y + 26;
        ends(g, x, bar, scale);
        Palette palette = make.palette();
        g.setColor(palette.post());
        g.fill(new Rectangle2D.Double(x, bar, width, BAR));
        g.setColor(palette.ink());
        g.setStroke(new BasicStroke(0.7f));
        g.draw(new Rectangle2D.Double(x, bar, width, BAR));
        numbers(g, marks, x, bar, scale);
    }

    private void ends(Graphics2D g, double x, double bar, double scale) {
        double spacing = piece.warp().sett().spacing();
        double thick = Math.max(0.35, Math.min(0.6 * spacing, piece.warpYarn().diameter()) * scale);
        g.setColor(Palette.mixed(make.palette().ink(), make.palette().paper(), 0.25));
        g.setStroke(new BasicStroke((float) thick, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER));
        for (int i = 0; i < piece.warp().ends(); i++) {
            double at = x + (i + 0.5) * spacing * scale;
            g.draw(new Line2D.Double(at, bar + BAR, at, bar + BAR + 26));
        }
    }

    private void numbers(Graphics2D g, WarpMarks marks, double x, double bar, double scale) {
        Font font = make.type().small();
        g.setFont(font);
        int counted = 0;
        double free = x;
        for (int i = 0; i <= marks.ends().size(); i++) {
            double at = x + i * marks.apart() * scale;
            g.setColor(make.palette().accent());
            g.draw(new Line2D.Double(at, bar - MARK / 2, at, bar + BAR));
            if (i > 0) {
                counted += marks.ends().get(i - 1);
                String number = String.valueOf(counted);
                double wide =
                        font.getStringBounds(number, g.getFontRenderContext()).getWidth();
                if (at - wide >= free) {
                    g.setColor(make.palette().ink());
                    g.drawString(number, (float) (at - wide), (float) (bar - MARK));
                    free = at + Math.max(4, APART - wide);
                }
            }
        }
    }
}
