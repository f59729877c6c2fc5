package thrumwright.plan;

import java.util.List;
import java.util.stream.Stream;

/**
 * About how heavy the finished piece is, in grams, by the lengths of its yarns. The design is as it was told, else half in the
 * first and half in the last stripe's yarn (model).
 *
 * @param warp that stays, with its fringes
 * @param ends what stays of both ends, with what tassels are wrapped with
 * @param design its weft
 * @param bands that hems are faced with
 * @param cord along the edges
 */
public record Weight(double warp, double ends, double design, double bands, double cord) {
    public static Weight of(Plan plan) {
        return new Weight(warp(plan), ends(plan), DesignWeft.of(plan.piece()).grams(), bands(plan), cord(plan));
    }

    /** The whole piece, in grams, 0 or more. */
    public double total() {
        return warp + ends + design + bands + cord;
    }

    private static double cord(Plan plan) {
        return plan.sewnCord().map(cord -> cord.yarn().grams(cord.yarnLength())).orElse(0.0);
    }

    private static double bands(Plan plan) {
        return Stream.of(plan.start(), plan.top())
                .flatMap(end -> end.hem().stream())
                .flatMap(hem -> hem.band().stream())
                .mapToDouble(SewnBand::grams)
                .sum();
    }

    private static double warp(Plan plan) {
        double each = plan.piece().design().heightOnLoom();
        for (EndPlan end : List.of(plan.start(), plan.top())) {
            each += end.blocks().stream()
                    .filter(block -> !block.comesOut())
                    .mapToDouble(BlockPlan::height)
                    .sum();
            each += end.finish().map(Finish::needed).orElse(0.0);
        }
        return plan.piece().warpYarn().grams(plan.piece().warp().ends() * each);
    }

    private static double ends(Plan plan) {
        double grams = 0;
        for (EndPlan end : List.of(plan.start(), plan.top())) {
            for (BlockPlan block : end.blocks()) {
                if (block.stays()) {
                    Work work = block.work().orElseThrow();
                    grams += work.yarn().grams(laidIn(work.cut()));
                }
            }
            grams += end.finish().flatMap(Finish::wrapping).map(Weight::wrapped).orElse(0.0);
        }
        return grams;
    }

    /** In mm: tails are trimmed off. */
    private static double laidIn(Cut cut) {
        return cut.exact() + cut.ease();
    }

    private static double wrapped(Wrapping wrapping) {
        return wrapping.yarn().grams(wrapping.count() * laidIn(wrapping.each()));
    }
}
