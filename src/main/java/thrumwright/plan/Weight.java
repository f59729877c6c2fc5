package thrumwright.plan;

import java.util.List;
import java.util.stream.Stream;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;
import thrumwright.yarn.Yarn;

/**
 * About how heavy the finished piece is, in grams, by the lengths of its yarns. The design is taken to be woven half in the
 * first and half in the last stripe's yarn (model), since only the weaver knows the rest.
 *
 * @param warp that stays, with its fringes
 * @param ends what stays of both ends, with what tassels are wrapped with
 * @param design its weft
 * @param bands that hems are faced with
 */
public record Weight(double warp, double ends, double design, double bands) {
    public static Weight of(Plan plan) {
        return new Weight(warp(plan), ends(plan), design(plan.piece()), bands(plan));
    }

    /** The whole piece, in grams, 0 or more. */
    public double total() {
        return warp + ends + design + bands;
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
        return grams(plan.piece().warp().ends() * each, plan.piece().warpYarn());
    }

    private static double ends(Plan plan) {
        double grams = 0;
        for (EndPlan end : List.of(plan.start(), plan.top())) {
            for (BlockPlan block : end.blocks()) {
                if (block.stays()) {
                    Work work = block.work().orElseThrow();
                    grams += grams(laidIn(work.cut()), work.yarn());
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
        return grams(wrapping.count() * laidIn(wrapping.each()), wrapping.yarn());
    }

    private static double design(Piece piece) {
        double grams = 0;
        for (Place place : Place.values()) {
            Yarn weft = piece.stripe(place);
            int picks = (int) Math.max(1, Math.round(piece.design().heightOnLoom() / 2 / weft.beaten()));
            grams += grams(piece.setting(weft).plain(picks) * (1 + piece.ease(weft)), weft);
        }
        return grams;
    }

    private static double grams(double mm, Yarn yarn) {
        return mm / 1e6 * yarn.tex();
    }
}
