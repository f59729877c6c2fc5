package thrumwright.output.part;

import java.awt.Graphics2D;
import thrumwright.drawing.Palette;
import thrumwright.drawing.loom.WarpWay;
import thrumwright.drawing.loom.WarpWayPainter;
import thrumwright.output.page.Part;
import thrumwright.piece.Piece;

/** The way of the warp round a loom of this kind. */
public record WarpWayPart(Piece piece, Palette palette) implements Part {
    private static final double HIGH = 130;
    private static final double ARROW = 3.2;

    @Override
    public double height(double width) {
        return HIGH;
    }

    @Override
    public void paint(Graphics2D g, double x, double y, double width) {
        WarpWay way = WarpWay.of(piece.loom().kind());
        WarpWayPainter painter =
                new WarpWayPainter(g, palette, palette.yarn(piece.warpYarn().colour()));
        painter.paint(way, WarpWayPainter.fitted(way, x, y + 2, width, HIGH - 4), ARROW);
    }
}
