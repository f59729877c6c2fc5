package thrumwright.editor.canvas.seen;

import java.util.List;
import thrumwright.block.Side;
import thrumwright.drawing.piece.PiecePicture;

/**
 * How far something is drawn beside the cloth, where nothing may be left out.
 *
 * @param mm that grow with the picture, 0 or more
 * @param pixels that don't, 0 or more
 */
record Reach(double mm, double pixels) {
    /** Air beside tails, and the wedge at the end of a fold: pixels. */
    private static final double AIR = 2;

    private static final double WEDGE = 8.5;

    /** Tails, and marks with what lies in loops. */
    static List<Reach> of(PiecePicture picture, Side side) {
        return List.of(
                new Reach(picture.reach().yarn(side), AIR),
                new Reach(picture.reach().marks(), WEDGE));
    }

    /** All of it, mm, more than 0; the scale is in pixels per mm, more than 0. */
    static double mm(PiecePicture picture, Side side, double scale) {
        return of(picture, side).stream()
                .mapToDouble(reach -> reach.mm() + reach.pixels() / scale)
                .max()
                .orElse(0);
    }
}
