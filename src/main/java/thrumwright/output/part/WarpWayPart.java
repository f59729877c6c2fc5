package thrumwright.output.part;

import java.awt.Font;
import java.awt.Graphics2D;
import thrumwright.drawing.View;
import thrumwright.drawing.loom.WarpWay;
import thrumwright.drawing.loom.WarpWayPainter;
import thrumwright.output.page.Part;
import thrumwright.output.page.TextPart;
import thrumwright.piece.Piece;

/**
 * The way of the warp round a loom of this kind, with the names of what is seen.
 *
 * @param make with the words of the warping sheet
 */
public record WarpWayPart(Piece piece, PartMaker make) implements Part {
    private static final double HIGH = 130;
    private static final double ARROW = 3.2;
    /** Room for names at either side, points. */
    private static final double BESIDE = 105;

    @Override
    public double height(double width) {
        return HIGH;
    }

    @Override
    public void paint(Graphics2D g, double x, double y, double width) {
        WarpWay way = WarpWay.of(piece.loom().kind());
        WarpWayPainter painter = new WarpWayPainter(
                g, make.palette(), make.palette().yarn(piece.warpYarn().colour()));
        View view = WarpWayPainter.fitted(way, x + BESIDE, y + 2, width - 2 * BESIDE, HIGH - 4);
        painter.paint(way, view, ARROW);
        way.names().forEach(name -> name(g, view, name));
    }

    private void name(Graphics2D g, View view, WarpWay.Name name) {
        Font font = make.type().small();
        String text = make.phrases().say("way." + name.key());
        double wide = TextPart.width(text, font);
        g.setFont(font);
        g.setColor(make.palette().ink());
        g.drawString(text, (float) (view.x(name.x()) - (name.left() ? wide : 0)), (float)
                (view.y(name.z()) + 0.33 * font.getSize2D()));
    }
}
