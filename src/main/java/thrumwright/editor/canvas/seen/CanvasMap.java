package thrumwright.editor.canvas.seen;

import java.awt.Rectangle;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import thrumwright.block.Side;
import thrumwright.drawing.View;
import thrumwright.drawing.piece.PiecePicture;
import thrumwright.piece.Place;
import thrumwright.plan.BlockPlan;
import thrumwright.plan.EndPlan;
import thrumwright.plan.Hem;

/**
 * What is seen of a piece: where everything lies on the canvas. It leads from one space to the other, and nothing else
 * does. <i>Cloth</i>: mm, x from the first warp end to the right, heights up from an end's lowest line. <i>Canvas</i>:
 * pixels from its upper left corner, y down. <i>Dots</i>: device pixels from the cloth's corner, where the first warp end
 * meets the start's lowest line, y down.
 *
 * @param view where the cloth's corner lies on the canvas, and the scale
 * @param axes what is shown of the cloth, and what is left out
 * @param spots from the highest on the canvas to the lowest
 */
public record CanvasMap(PiecePicture picture, View view, Axes axes, List<BlockSpot> spots) {
    /** How near a line without height counts as hit, pixels. */
    private static final double NEAR = 4;

    public CanvasMap {
        spots = List.copyOf(spots);
    }

    /** Of a piece with nothing left out. */
    public static CanvasMap of(PiecePicture picture, View view) {
        return of(picture, view, Axes.whole(view.scale()));
    }

    static CanvasMap of(PiecePicture picture, View view, Axes axes) {
        CanvasMap empty = new CanvasMap(picture, view, axes, List.of());
        List<BlockSpot> spots = new ArrayList<>();
        for (Place place : List.of(Place.TOP, Place.START)) {
            List<BlockSpot> ofEnd = new ArrayList<>();
            EndPlan end = picture.plan().end(place);
            for (int i = end.blocks().size() - 1; i >= 0; i--) {
                ofEnd.add(empty.spot(end, end.blocks().get(i)));
            }
            // to the hundredth of a pixel, so that what lies at one height keeps its order
            ofEnd.sort(Comparator.comparingLong(spot -> Math.round(spot.middle() * 100)));
            spots.addAll(ofEnd);
        }
        return new CanvasMap(picture, view, axes, spots);
    }

    private BlockSpot spot(EndPlan end, BlockPlan block) {
        double bottom = lowest(end, block);
        return new BlockSpot(end.place(), block, y(end.place(), bottom + block.height()), y(end.place(), bottom));
    }

    /** A fold lies along its line. */
    private static double lowest(EndPlan end, BlockPlan block) {
        return end.hem()
                .filter(hem -> hem.blockId().equals(block.block().id()))
                .map(Hem::foldLine)
                .orElse(block.bottom());
    }

    /** Pixels of the canvas per mm, more than 0. */
    public double scale() {
        return view.scale();
    }

    /** Where rows have their notes; empty where there is no room for them. */
    public Optional<RowRoom> notes() {
        for (double wide : RowRoom.widths(picture, scale())) {
            double left = aside(Side.LEFT);
            if (together(Side.LEFT, left + wide / scale())) {
                return Optional.of(new RowRoom(left, aside(Side.RIGHT), wide));
            }
        }
        return Optional.empty();
    }

    /** Where posts are far, next to what hangs there; else outside them: mm beside the cloth. */
    private double aside(Side side) {
        double tails = Reach.mm(picture, side, scale());
        return together(side, picture.reach().outermost())
                ? Math.max(tails, picture.reach().outermost() + Breaking.AIR / scale())
                : tails;
    }

    /** Whether nothing is left out from the cloth's edge to there, mm beside it. */
    private boolean together(Side side, double beside) {
        double edge = side == Side.LEFT ? 0 : picture.span();
        double there = side == Side.LEFT ? -beside : edge + beside;
        double pixels = Math.abs(axes.across().pixel(edge) - axes.across().pixel(there));
        return Math.abs(pixels - beside * scale()) < 0.5;
    }

    /** The left edge of all that is drawn, pixels of the canvas, any sign. */
    public double left() {
        double outermost = x(-picture.reach().outermost() - Breaking.AIR / scale());
        return notes().map(room -> x(-room.left()) - room.wide())
                .map(far -> Math.min(far, outermost))
                .orElse(outermost);
    }

    /** From the cloth, mm right of the first warp end (either sign), to pixels of the canvas. */
    public double x(double mm) {
        return view.left() + axes.across().pixel(mm);
    }

    /** From the cloth, mm above the end's lowest line (either sign), to pixels of the canvas. */
    public double y(Place place, double mm) {
        return height(picture.base(place) + mm);
    }

    /** From the picture, mm above the start's lowest line (either sign), to pixels of the canvas. */
    public double height(double mm) {
        return view.base() + axes.up().pixel(mm);
    }

    /** From pixels of the canvas to the cloth, mm right of the first warp end (either sign). */
    public double across(double x) {
        return axes.across().mm(x - view.left());
    }

    /** From pixels of the canvas to the cloth, mm above the end's lowest line (either sign). */
    public double above(Place place, double y) {
        return heightAt(y) - picture.base(place);
    }

    /** From pixels of the canvas to the picture, mm above the start's lowest line (either sign). */
    public double heightAt(double y) {
        return axes.up().mm(y - view.base());
    }

    /**
     * From a part of the canvas to dots, and a dot more all round.
     *
     * @param density device pixels per pixel of the canvas, more than 0
     */
    public Rectangle dots(Rectangle part, double density) {
        int left = (int) Math.floor((part.x - view.left()) * density) - 1;
        int top = (int) Math.floor((part.y - view.base()) * density) - 1;
        int right = (int) Math.ceil((part.getMaxX() - view.left()) * density) + 1;
        int bottom = (int) Math.ceil((part.getMaxY() - view.base()) * density) + 1;
        return new Rectangle(left, top, right - left, bottom - top);
    }

    /**
     * From dots to the part of the canvas where they lie, and a pixel more all round.
     *
     * @param density device pixels per pixel of the canvas, more than 0
     */
    public Rectangle part(Rectangle dots, double density) {
        int left = (int) Math.floor(dots.x / density + view.left()) - 1;
        int top = (int) Math.floor(dots.y / density + view.base()) - 1;
        int right = (int) Math.ceil(dots.getMaxX() / density + view.left()) + 1;
        int bottom = (int) Math.ceil(dots.getMaxY() / density + view.base()) + 1;
        return new Rectangle(left, top, right - left, bottom - top);
    }

    public Optional<BlockSpot> spot(Place place, String id) {
        return spots.stream().filter(spot -> spot.isOf(place, id)).findFirst();
    }

    /** The block under any height, pixels of the canvas; a line near by comes before what it lies on. */
    public Optional<BlockSpot> at(double y) {
        Optional<BlockSpot> line = spots.stream()
                .filter(spot -> spot.line() && Math.abs(spot.middle() - y) <= NEAR)
                .min(Comparator.comparingDouble(spot -> Math.abs(spot.middle() - y)));
        return line.or(() -> spots.stream()
                .filter(spot -> !spot.line() && y >= spot.top() && y < spot.bottom())
                .findFirst());
    }

    /** The block's field on the canvas, across the warp; even a line has one that can be seen. */
    public Rectangle2D field(BlockSpot spot) {
        double left = x(-picture.margin() * 0.5);
        double width = x(picture.span() + picture.margin() * 0.5) - left;
        double height = Math.max(spot.line() ? 7 : 3, spot.high());
        return new Rectangle2D.Double(left, spot.middle() - height / 2, width, height);
    }

    /** The end that is nearest to any height, pixels of the canvas. */
    public Place placeAt(double y) {
        return y < designMiddle() ? Place.TOP : Place.START;
    }

    /** Where the middle of the design lies, pixels from above on the canvas. */
    public double designMiddle() {
        return y(Place.START, picture.plan().start().height() + PiecePicture.DESIGN / 2);
    }
}
