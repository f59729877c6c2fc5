package thrumwright.editor.canvas.seen;

import java.awt.Dimension;
import thrumwright.drawing.View;
import thrumwright.drawing.piece.PiecePicture;
import thrumwright.piece.Place;

/**
 * How a piece is to be shown in the room there is: from this follow its scale and where it lies.
 *
 * @param end the one whose height is to fit, if one is
 * @param lowered how far the picture is to lie below the middle of its window, pixels, either sign
 */
public record Framing(PiecePicture picture, Room room, Zoom zoom, Place end, double lowered) {
    /** Room beside a picture without rules, pixels. */
    public static final int BESIDE = 16;

    private static final int ABOVE = 36;
    /** How far apart single warp ends are shown, pixels. */
    private static final double APART = 24;
    /** How much of the picture stays in the window, pixels. */
    private static final int STAYS = 30;
    /** No end is shown as if it were lower, mm. */
    private static final double LEAST_END = 5;

    /** Pixels of the canvas per mm, from {@link Zoom#LEAST} to {@link Zoom#MOST}. */
    public double scale() {
        double scale = switch (zoom.fit()) {
            case PIECE -> Math.min(byWidth(), byHeight(Math.max(1, picture.height())));
            case WIDTH -> byWidth();
            case END -> Math.min(singleEnds(), byHeight(Math.max(LEAST_END, endHeight())));
            case FREE -> zoom.scale();
        };
        return Math.max(Zoom.LEAST, Math.min(Zoom.MOST, scale));
    }

    private double byWidth() {
        return Math.max(1, room.width() - room.left() - room.right()) / wide();
    }

    private double byHeight(double mm) {
        return Math.max(1, room.height() - 2 * ABOVE) / mm;
    }

    /** Posts and tails too. */
    private double wide() {
        return picture.span() + 2 * picture.margin();
    }

    private double endHeight() {
        return picture.plan().end(end).height();
    }

    /** Where single warp ends can be told apart, pixels per mm, more than 0: an end of few rows is shown no closer. */
    public double singleEnds() {
        return APART / picture.plan().piece().warp().spacing();
    }

    /** Where the cloth lies on the canvas. */
    public View view() {
        double scale = scale();
        double left = (room.canvasWidth() + room.left() - room.right() - picture.span() * scale) / 2;
        double base = (room.canvasHeight() + picture.height() * scale) / 2 + inside(scale);
        return new View(scale, room.onPixel(left), room.onPixel(base));
    }

    /** How far the picture really lies below the middle: no farther than a window that shows all of it allows, pixels. */
    public double inside() {
        return inside(scale());
    }

    private double inside(double scale) {
        double slack = Math.max(0, (room.canvasHeight() - picture.height() * scale) / 2 - ABOVE);
        return Math.max(-slack, Math.min(lowered, slack));
    }

    /**
     * The canvas that is wanted. Where the scale was chosen freely there is room around the picture, so that any point of
     * it can be anywhere; above and below it close to one end too, so that what is worked on can stay where it is.
     *
     * @param least height, pixels
     */
    public Dimension size(int least) {
        double scale = scale();
        boolean free = zoom.fit() == Zoom.Fit.FREE && room.scrolls();
        boolean near = zoom.fit() == Zoom.Fit.END && room.scrolls();
        double around = free ? Math.max(0, room.width() - 2 * STAYS) : room.left() + room.right();
        double above = free || near ? Math.max(0, room.height() - 2 * STAYS) : 2 * ABOVE;
        double height = picture.height() * scale + above;
        return new Dimension((int) Math.floor(wide() * scale + around), (int) Math.max(least, Math.floor(height)));
    }
}
