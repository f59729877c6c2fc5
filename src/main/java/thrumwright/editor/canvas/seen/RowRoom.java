package thrumwright.editor.canvas.seen;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import thrumwright.block.Side;
import thrumwright.drawing.piece.PiecePicture;
import thrumwright.piece.Place;
import thrumwright.plan.BlockPlan;
import thrumwright.plan.Work;

/**
 * Where rows have their notes.
 *
 * @param left how far beside the cloth those at the left are, mm
 * @param right how far beside it those at the right are, mm
 * @param wide how much room they take at either side, pixels
 */
public record RowRoom(double left, double right, double wide) {
    /** From so many pixels between single warp ends rows have notes, and room for them. */
    private static final double CLOSE = 26;
    /** For an arrow with a dot, and for one with a word: pixels. */
    private static final double DOTS = 26;

    private static final double WORDS = 50;
    /** From so high on a row has room for a word, pixels. */
    private static final double TOLD = 13;

    /** How far beside the cloth, mm, 0 or more. */
    public double aside(Side side) {
        return side == Side.LEFT ? left : right;
    }

    /** Whether a row is told in a word rather than by a dot: its height, pixels, 0 or more. */
    public boolean told(double high) {
        return wide >= WORDS && high >= TOLD;
    }

    /**
     * How much room notes may take at either side, pixels, the best first; none where rows have no notes.
     *
     * @param scale pixels per mm, more than 0
     */
    static List<Double> widths(PiecePicture picture, double scale) {
        if (picture.plan().piece().warp().spacing() * scale < CLOSE) {
            return List.of();
        }
        boolean words = Stream.of(Place.values())
                .flatMap(place -> picture.plan().end(place).blocks().stream())
                .anyMatch(block -> isTold(block, scale));
        return words ? List.of(WORDS, DOTS) : List.of(DOTS);
    }

    private static boolean isTold(BlockPlan block, double scale) {
        return block.work()
                .filter(work -> block.height() / Math.max(1, work.rows().size()) * scale >= TOLD)
                .filter(RowRoom::hasPassings)
                .isPresent();
    }

    private static boolean hasPassings(Work work) {
        int ends = work.setting().ends();
        return work.rows().stream().map(row -> row.meets(ends)).anyMatch(Optional::isPresent);
    }
}
