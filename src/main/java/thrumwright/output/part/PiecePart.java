package thrumwright.output.part;

import java.awt.Graphics2D;
import thrumwright.drawing.Palette;
import thrumwright.drawing.View;
import thrumwright.drawing.piece.PiecePainter;
import thrumwright.drawing.piece.PiecePicture;
import thrumwright.output.page.Part;
import thrumwright.piece.Place;

/** The whole piece, as large as width and height allow. */
public record PiecePart(PiecePicture picture, Palette palette, double most) implements Part {
    /** Bare warp below and above, mm, at least; more where tails hang lower. */
    private static final double BARE = 6;

    private double bare() {
        double loops = Math.max(picture.loops(Place.START), picture.loops(Place.TOP));
        return Math.max(BARE, Math.max(picture.hanging(Place.START), loops) + 1);
    }

    private double scale(double width) {
        double byWidth = width / (picture.span() + 2 * picture.margin());
        return Math.min(byWidth, most / (picture.height() + 2 * bare()));
    }

    @Override
    public double height(double width) {
        return scale(width) * (picture.height() + 2 * bare());
    }

    @Override
    public void paint(Graphics2D g, double x, double y, double width) {
        double scale = scale(width);
        double left = x + (width - scale * picture.span()) / 2;
        View view = new View(scale, left, y + scale * (picture.height() + bare()));
        new PiecePainter(g, palette, true).piece(view, picture, bare());
    }
}
