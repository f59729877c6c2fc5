package thrumwright.editor.canvas;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import thrumwright.drawing.View;
import thrumwright.drawing.piece.PiecePicture;
import thrumwright.piece.Place;
import thrumwright.plan.BlockPlan;
import thrumwright.plan.EndPlan;
import thrumwright.plan.Hem;

/**
 * Where every block lies on the canvas, in pixels.
 *
 * @param spots from the highest on the canvas to the lowest
 */
public record CanvasMap(PiecePicture picture, View view, List<Spot> spots) {
    /** How near a line without height counts as hit, pixels. */
    private static final double NEAR = 4;

    /**
     * A block on the canvas.
     *
     * @param top its upper line
     * @param bottom its lower line; the same for what has no height
     */
    public record Spot(Place place, BlockPlan plan, double top, double bottom) {
        public String id() {
            return plan.block().id();
        }

        public double middle() {
            return (top + bottom) / 2;
        }

        public boolean line() {
            return bottom - top < 0.01;
        }
    }

    public CanvasMap {
        spots = List.copyOf(spots);
    }

    public static CanvasMap of(PiecePicture picture, View view) {
        List<Spot> spots = new ArrayList<>();
        for (Place place : List.of(Place.TOP, Place.START)) {
            EndPlan end = picture.plan().end(place);
            View own = view.raised(picture.base(place));
            List<Spot> ofEnd = new ArrayList<>();
            for (int i = end.blocks().size() - 1; i >= 0; i--) {
                BlockPlan block = end.blocks().get(i);
                double bottom = lowest(end, block);
                ofEnd.add(new Spot(place, block, own.y(bottom + block.height()), own.y(bottom)));
            }
            // to the hundredth of a pixel, so that what lies at one height keeps its order
            ofEnd.sort(Comparator.comparingLong(spot -> Math.round(spot.middle() * 100)));
            spots.addAll(ofEnd);
        }
        return new CanvasMap(picture, view, spots);
    }

    /** A fold lies along its line. */
    private static double lowest(EndPlan end, BlockPlan block) {
        return end.hem()
                .filter(hem -> hem.blockId().equals(block.block().id()))
                .map(Hem::foldLine)
                .orElse(block.bottom());
    }

    public Optional<Spot> spot(Place place, String id) {
        return spots.stream()
                .filter(spot -> spot.place() == place && spot.id().equals(id))
                .findFirst();
    }

    /** The block under a height on the canvas; a line near by comes before what it lies on. */
    public Optional<Spot> at(double y) {
        Optional<Spot> line = spots.stream()
                .filter(spot -> spot.line() && Math.abs(spot.middle() - y) <= NEAR)
                .min(Comparator.comparingDouble(spot -> Math.abs(spot.middle() - y)));
        return line.or(() -> spots.stream()
                .filter(spot -> !spot.line() && y >= spot.top() && y < spot.bottom())
                .findFirst());
    }

    /** The outer edge of an end that is nearest: its place, for what is put down at a height. */
    public Place placeAt(double y) {
        double middle = view.y(picture.plan().start().height() + PiecePicture.DESIGN / 2);
        return y < middle ? Place.TOP : Place.START;
    }

    /** How many of an end's blocks lie below a height, by their middles. */
    public int below(Place place, double y) {
        return (int) spots.stream()
                .filter(spot -> spot.place() == place && spot.middle() > y)
                .count();
    }

    /** The height on the canvas where the design lies. */
    public double designMiddle() {
        return view.y(picture.plan().start().height() + PiecePicture.DESIGN / 2);
    }
}
