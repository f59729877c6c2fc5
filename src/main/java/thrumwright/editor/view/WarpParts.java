package thrumwright.editor.view;

import java.awt.Color;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thrumwright.drawing.Palette;
import thrumwright.piece.Place;
import thrumwright.plan.BlockPlan;
import thrumwright.plan.Budget;
import thrumwright.plan.EndPlan;
import thrumwright.plan.Plan;

/**
 * What takes how much of the warp between the bars, from the lower one up.
 *
 * @param stretches one after the other, without gaps; none is empty
 * @param slices the blocks of both ends that have a height, from the lowest
 */
record WarpParts(List<WarpStretch> stretches, List<Slice> slices) {
    /** Less isn't worth a name, mm. */
    private static final double LEAST = 0.05;

    /**
     * A stretch of the warp.
     *
     * @param key of its name
     * @param from above the lower bar, mm
     * @param to above the lower bar, mm
     */
    record WarpStretch(String key, double from, double to) {
        double height() {
            return to - from;
        }

        double middle() {
            return (from + to) / 2;
        }
    }

    /**
     * A block on the warp.
     *
     * @param from above the lower bar, mm
     * @param to above the lower bar, mm
     * @param colour of its yarn
     */
    record Slice(Place place, BlockPlan block, double from, double to, Color colour) {
        String id() {
            return block.block().id();
        }
    }

    static WarpParts of(Plan plan, Palette palette) {
        Budget budget = plan.budget();
        double topEnds = budget.designEnds() + budget.top();
        double spare = topEnds + Math.max(0, budget.left());
        List<WarpStretch> stretches = new ArrayList<>();
        stretches.add(new WarpStretch("clearance", 0, budget.clearance()));
        stretches.add(new WarpStretch("start", budget.clearance(), budget.startLine()));
        stretches.add(new WarpStretch("design", budget.startLine(), budget.designEnds()));
        stretches.add(new WarpStretch("top", budget.designEnds(), topEnds));
        stretches.add(new WarpStretch("left", topEnds, spare));
        stretches.add(new WarpStretch("room", spare, spare + budget.workingRoom()));
        stretches.removeIf(part -> part.height() < LEAST);
        List<Slice> slices = new ArrayList<>();
        add(slices, plan.start(), budget.clearance(), palette);
        add(slices, plan.top(), budget.designEnds(), palette);
        return new WarpParts(List.copyOf(stretches), List.copyOf(slices));
    }

    private static void add(List<Slice> slices, EndPlan end, double above, Palette palette) {
        for (BlockPlan block : end.blocks()) {
            if (block.height() > 0) {
                Color colour = block.work()
                        .map(work -> palette.yarn(work.yarn().colour()))
                        .orElse(palette.paper());
                slices.add(new Slice(end.place(), block, above + block.bottom(), above + block.top(), colour));
            }
        }
    }

    /** How far up anything reaches, mm. */
    double reach() {
        return stretches.isEmpty() ? 0 : stretches.get(stretches.size() - 1).to();
    }

    /** The block at a height above the lower bar, or the nearest one if none is farther away than {@code near}. */
    Optional<Slice> at(double mm, double near) {
        Slice nearest = null;
        double least = near;
        for (Slice slice : slices) {
            double away = Math.max(0, Math.max(slice.from() - mm, mm - slice.to()));
            if (away < least || nearest == null && away <= near) {
                nearest = slice;
                least = away;
            }
        }
        return Optional.ofNullable(nearest);
    }
}
