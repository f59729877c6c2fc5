package thrumwright.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thrumwright.block.Block;
import thrumwright.piece.Measures;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;

/**
 * Between which heights a step can have come out: above what was measured before it, and not above what was measured after it
 * or the opening.
 *
 * @param above mm above the lower bar, 0 or more
 * @param upTo mm above the lower bar, more than 0
 */
public record HeightRange(double above, double upTo) {
    /** @param step its key */
    public static HeightRange of(Piece piece, String step) {
        Plan plan = Plan.of(piece);
        boolean travels = plan.room().travels();
        double above = plan.budget().clearance();
        boolean passed = false;
        for (String each : steps(piece)) {
            Optional<Double> reached = piece.measures().height(each);
            if (travels && each.equals(Measures.DESIGN)) {
                above = 0;
            }
            if (each.equals(step)) {
                passed = true;
            } else if (reached.isPresent() && passed) {
                return new HeightRange(above, reached.get());
            } else if (reached.isPresent()) {
                above = reached.get();
            }
        }
        return new HeightRange(above, plan.budget().open());
    }

    /** The keys of all that has a height, in the order of weaving. */
    private static List<String> steps(Piece piece) {
        List<String> steps = new ArrayList<>();
        piece.end(Place.START).blocks().stream()
                .map(Block::id)
                .map(Place.START::step)
                .forEach(steps::add);
        steps.add(Measures.DESIGN);
        piece.end(Place.TOP).blocks().stream()
                .map(Block::id)
                .map(Place.TOP::step)
                .forEach(steps::add);
        return steps;
    }

    /** @param height mm above the lower bar */
    public boolean holds(double height) {
        return height > above && height <= upTo;
    }
}
