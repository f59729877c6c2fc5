package thrumwright.plan;

import java.util.Optional;
import thrumwright.piece.Measures;
import thrumwright.piece.Place;

/**
 * What there is to measure of a step on the loom.
 *
 * @param reach the height that was planned first, as the sheet says it, mm; empty for what has none
 * @param cut yarn that is cut for it, all lengths together, mm, 0 or more
 */
public record StepMeasure(Optional<Double> reach, double cut) {
    /** @param step its key; nothing is measured of any but blocks on the loom and where the design ends */
    public static StepMeasure of(Plan plan, String step) {
        Plan first = Plan.asFirstPlanned(plan.piece());
        if (step.equals(Measures.DESIGN)) {
            return new StepMeasure(
                    Optional.of(first.above(Place.TOP, first.budget().designEnds())), 0);
        }
        for (Place place : Place.values()) {
            if (step.startsWith(place.step(""))) {
                String id = step.substring(place.step("").length());
                EndPlan end = first.end(place);
                Optional<Double> reach = end.block(id)
                        .filter(block -> block.height() > 0)
                        .map(block -> first.above(place, end.reach(block)));
                return new StepMeasure(reach, cut(plan.end(place), id));
            }
        }
        return new StepMeasure(Optional.empty(), 0);
    }

    private static double cut(EndPlan end, String id) {
        return end.block(id)
                .flatMap(BlockPlan::work)
                .flatMap(Work::toCut)
                .map(cut -> cut.butterflies().total())
                .orElse(0.0);
    }
}
