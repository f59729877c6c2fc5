package thrumwright.editor.canvas.seen;

import java.awt.Dimension;
import thrumwright.block.Side;
import thrumwright.drawing.View;
import thrumwright.drawing.piece.PiecePicture;
import thrumwright.piece.Place;

/**
 * How a piece is to be shown in the room there is: from this follow its scale, what is left out and where it lies.
 *
 * @param end the one whose height is to fit, if one is
 * @param lowered how far the picture is to lie below the middle of its window, pixels, either sign
 * @param before the scale that it had, which it keeps while that is about right, pixels per mm; 0 for none
 */
public record Framing(PiecePicture picture, Room room, Zoom zoom, Place end, double lowered, double before) {
    /** Room beside a picture without rules, pixels. */
    public static final int BESIDE = 2;

    private static final int ABOVE = 2;
    /** Above and below an end that is looked at, pixels. */
    private static final int BY_AN_END = 36;
    /** How far apart single warp ends are shown, and at least at both selvedges, pixels. */
    private static final double APART = 36;

    private static final double LEGIBLE = 8;

    /** How far apart warp ends are where one end is looked at: no farther, unless both ends were as large already. */
    private static final double AT_AN_END = 27;

    /** By how much one end is larger then than both. */
    private static final double CLOSER = 1.25;

    /** How much of the picture stays in the window, pixels. */
    private static final int STAYS = 30;
    /** No end is shown as if it were lower, mm. */
    private static final double LEAST_END = 12;
    /** So much of the width is cloth where both selvedges are looked at. */
    private static final double LEAST_CLOTH = 0.3;
    /** A picture that should be so many times larger or smaller is fitted anew. */
    private static final double LARGER = 2;

    private static final double SMALLER = 1.5;

    /** The one that is right at first sight. */
    public Framing settled() {
        if (zoom.fit() != Zoom.Fit.FIRST) {
            return this;
        }
        Framing loom = with(Zoom.Fit.LOOM);
        Framing ends = with(Zoom.Fit.ENDS);
        if (loom.share() >= Breaking.MUCH || !ends.torn() || ends.share() <= loom.share()) {
            return loom;
        }
        Framing selvedges = with(Zoom.Fit.SELVEDGES);
        return selvedges.scale() <= ends.scale() ? selvedges : ends;
    }

    private double share() {
        return breaking(scale()).share();
    }

    private Framing with(Zoom.Fit fit) {
        return new Framing(picture, room, Zoom.fitting(fit), end, lowered, before);
    }

    /** Pixels of the canvas per mm, from {@link Zoom#LEAST} to {@link Zoom#MOST}. */
    public double scale() {
        double scale = Zoom.within(fitting());
        if (zoom.fit() == Zoom.Fit.FREE) {
            return scale;
        }
        return scale < LARGER * before && scale > before / SMALLER ? before : scale;
    }

    private double fitting() {
        return switch (zoom.fit()) {
            case FIRST, LOOM -> Math.min(byWidth(), byHeight());
            case SELVEDGES -> bothSelvedges();
            case ENDS -> Math.min(byHeight(), byTails());
            case END -> oneEnd();
            case PIECE -> Math.min(byWidth(), free(2 * Breaking.BAR) / (picture.upperBar() - picture.lowerBar()));
            case FREE -> zoom.scale();
        };
    }

    private double bothSelvedges() {
        return Math.max(LEGIBLE / spacing(), Math.min(byHeight(), byTails()));
    }

    /** In a narrow window tails leave some room to the cloth. */
    private double byTails() {
        double tails = (1 - LEAST_CLOTH) * room.between() - Breaking.leastBeside() - Outside.GAP;
        return Math.max(0, tails) / tailsBeside();
    }

    private double tailsBeside() {
        return picture.reach().left() + picture.reach().right();
    }

    private double oneEnd() {
        double most = Math.max(AT_AN_END / spacing(), CLOSER * bothSelvedges());
        return Math.min(most, (room.height() - 2 * BY_AN_END) / Math.max(LEAST_END, endHeight()));
    }

    private double byWidth() {
        double whole = Math.max(1, room.between() - 2 * Breaking.AIR)
                / (picture.span() + 2 * picture.reach().outermost());
        if (!breaking(whole).beside(Side.LEFT).broken()
                && !breaking(whole).beside(Side.RIGHT).broken()) {
            return whole;
        }
        double broken = Double.MAX_VALUE;
        for (Reach left : Reach.of(picture, Side.LEFT)) {
            for (Reach right : Reach.of(picture, Side.RIGHT)) {
                double free = room.between() - Breaking.leastBeside() - left.pixels() - right.pixels();
                broken = Math.min(
                        broken,
                        Math.max(1, free)
                                / (picture.span()
                                        + left.mm()
                                        + right.mm()
                                        + 2 * picture.reach().round()));
            }
        }
        return Math.max(whole, broken);
    }

    private double byHeight() {
        double beyond = picture.beyond(Place.START) + picture.beyond(Place.TOP);
        return free(Breaking.least()) / Math.max(1, picture.height() + beyond);
    }

    /** Of the window's height, pixels. */
    private double free(double taken) {
        return Math.max(1, room.height() - 2 * ABOVE - taken);
    }

    private double endHeight() {
        return picture.plan().end(end).height();
    }

    private double spacing() {
        return picture.plan().piece().warp().spacing();
    }

    /** Where single warp ends and their yarns can be told apart, pixels per mm, more than 0. */
    public double singleEnds() {
        return APART / spacing();
    }

    /** The whole loom fills the height of its window with bare warp. */
    private Breaking breaking(double scale) {
        Breaking least = new Breaking(picture, room, zoom.breaks(), scale, 0);
        double more = (free(0) - least.high()) / 2;
        return zoom.fit() == Zoom.Fit.LOOM && more > 0
                ? new Breaking(picture, room, zoom.breaks(), scale, more)
                : least;
    }

    /** What is shown of a piece at a scale, wherever it lies. */
    Axes axes(double scale) {
        return breaking(scale).axes();
    }

    /** Whether the middle is left out, so that both selvedges have room. */
    public boolean torn() {
        return breaking(scale()).torn();
    }

    /** Where the cloth lies on the canvas. */
    public View view() {
        double scale = scale();
        Breaking breaking = breaking(scale);
        double beside = breaking.beside(Side.LEFT).pixels();
        double left = breaking.torn()
                ? room.left() + beside
                : (room.canvasWidth() + room.left() - room.right() - breaking.wide()) / 2 + beside;
        double base = (room.canvasHeight() + breaking.high()) / 2 - breaking.below() + inside(scale);
        return new View(scale, room.onPixel(left), room.onPixel(base));
    }

    /** How far the picture really lies below the middle: no farther than a window that shows all of it allows, pixels. */
    public double inside() {
        return inside(scale());
    }

    private double inside(double scale) {
        double slack = Math.max(0, (room.canvasHeight() - breaking(scale).high()) / 2 - ABOVE);
        return Math.max(-slack, Math.min(lowered, slack));
    }

    /**
     * The canvas that is wanted. Where the scale was chosen freely there is room around the picture, so that any point of
     * it can be anywhere; above and below it close to one end too, so that what is worked on can stay where it is.
     */
    public Dimension size() {
        Breaking breaking = breaking(scale());
        boolean free = zoom.fit() == Zoom.Fit.FREE && room.scrolls();
        boolean high = breaking.high() > room.height();
        boolean near = (zoom.fit() == Zoom.Fit.END || high) && room.scrolls();
        double around = free ? Math.max(0, room.width() - 2 * STAYS) : room.left() + room.right();
        double above = free || near ? Math.max(0, room.height() - 2 * STAYS) : 2 * ABOVE;
        double width = breaking.torn() ? 0 : breaking.wide() + around;
        return new Dimension((int) Math.floor(width), (int) Math.floor(breaking.high() + above));
    }
}
