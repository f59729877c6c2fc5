package thrumwright.editor.canvas;

import java.awt.Point;
import java.util.Comparator;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import thrumwright.block.Side;
import thrumwright.drawing.yarn.Tail;
import thrumwright.editor.canvas.seen.CanvasMap;
import thrumwright.editor.text.Texts;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;
import thrumwright.plan.BlockPlan;

/**
 * What is said of the tail under the mouse.
 *
 * @param map of what is seen
 */
record PointedAt(CanvasMap map, Texts texts) {
    /** How near a tail is hit, pixels. */
    private static final double NEAR = 6;

    /** Whose tail hangs there, how long it is left and at which side; empty where none hangs. */
    Optional<String> tail(Point point) {
        return Stream.of(Place.values())
                .flatMap(place -> map.picture().tails(place).stream().map(tail -> new Hung(map, place, tail)))
                .filter(hung -> hung.away(point) <= NEAR)
                .min(Comparator.comparingDouble(hung -> hung.away(point)))
                .flatMap(this::said);
    }

    private Optional<String> said(Hung hung) {
        Piece piece = map.picture().plan().piece();
        return hung.block()
                .map(block -> texts.say(
                        "canvas.tail.tip",
                        Map.of(
                                "block", texts.words().name(block.block()),
                                "tail", piece.habits().tail(),
                                "side", texts.words().side(hung.tail().side()))));
    }

    /** A tail where it hangs on the canvas. */
    private record Hung(CanvasMap map, Place place, Tail tail) {
        /** From the line in which it hangs down, pixels. */
        double away(Point point) {
            double edge = tail.side() == Side.LEFT ? -tail.out() : map.picture().span() + tail.out();
            double lowest = map.y(place, tail.y() - tail.down());
            double highest = map.y(place, tail.y());
            double beside = Math.max(0, Math.abs(point.x - map.x(edge)) - tail.thickness() * map.scale() / 2);
            double beyond = Math.max(0, Math.max(point.y - lowest, highest - point.y));
            return Math.hypot(beside, beyond);
        }

        Optional<BlockPlan> block() {
            return map.picture().plan().end(place).blocks().stream()
                    .filter(block -> block.work().isPresent())
                    .filter(block -> block.bottom() <= tail.y() && tail.y() <= block.top())
                    .findFirst();
        }
    }
}
