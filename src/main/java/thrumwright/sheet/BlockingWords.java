package thrumwright.sheet;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import thrumwright.measure.Shown;
import thrumwright.piece.Piece;
import thrumwright.plan.BlockPlan;
import thrumwright.plan.DesignWeft;
import thrumwright.plan.EndPlan;
import thrumwright.plan.Hem;
import thrumwright.plan.Plan;
import thrumwright.yarn.Fibre;

/** How to block and steam the piece, by the fibres that stay in it (common practice, no source). */
final class BlockingWords {
    /** Common practice, no source. */
    private static final List<Fibre> MOST_DELICATE_FIRST = List.of(Fibre.SILK, Fibre.WOOL, Fibre.COTTON, Fibre.LINEN);

    private final Plan plan;
    private final Shown shown;

    BlockingWords(Plan plan) {
        this.plan = plan;
        this.shown = plan.piece().shown();
    }

    /** Whether cloth is turned back somewhere, so that it counts in the height and hides what is tried on it. */
    private boolean hemmed() {
        return Stream.of(plan.start(), plan.top())
                .flatMap(end -> end.hem().stream())
                .filter(Hem::folds)
                .anyMatch(hem -> hem.cloth() > 0);
    }

    /** Those of the yarns that stay. */
    Set<Fibre> fibres() {
        Piece piece = plan.piece();
        Set<Fibre> fibres = EnumSet.copyOf(piece.warpYarn().fibres());
        for (DesignWeft.Covered part : DesignWeft.of(piece).parts()) {
            fibres.addAll(part.yarn().fibres());
        }
        for (EndPlan end : List.of(plan.start(), plan.top())) {
            end.blocks().stream().filter(BlockPlan::stays).forEach(block -> fibres.addAll(fibres(block)));
        }
        return fibres;
    }

    private static Set<Fibre> fibres(BlockPlan block) {
        return block.work().orElseThrow().yarn().fibres();
    }

    List<String> keys() {
        Set<Fibre> fibres = fibres();
        List<String> keys = new ArrayList<>(List.of(hemmed() ? "off.block.pin-hemmed" : "off.block.pin"));
        Fibre delicate = MOST_DELICATE_FIRST.stream()
                .filter(fibres::contains)
                .findFirst()
                .orElseThrow();
        keys.add("off.block." + delicate.name().toLowerCase(Locale.ROOT));
        if (fibres.size() > 1) {
            keys.add(hemmed() ? "off.block.mixed-hem" : "off.block.mixed");
        }
        keys.add("off.block.dry");
        return keys;
    }

    Map<String, Object> values() {
        double height = plan.piece().design().height().mm()
                + plan.start().staying()
                + plan.top().staying();
        return Map.of(
                "width", shown.height(plan.finishedWidth()),
                "height", shown.height(height),
                "pins", shown.height(shown.system().length(25, 1)));
    }
}
