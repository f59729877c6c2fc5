package thrumwright.sheet;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import thrumwright.measure.Shown;
import thrumwright.measure.Unit;
import thrumwright.measure.UnitSystem;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;
import thrumwright.plan.BlockPlan;
import thrumwright.plan.EndPlan;
import thrumwright.plan.Plan;
import thrumwright.yarn.Fibre;

/** How to block and steam the piece, by the fibres that stay in it (common practice, no source). */
final class BlockingWords {
    private final Plan plan;
    private final Shown shown;

    BlockingWords(Plan plan) {
        this.plan = plan;
        this.shown = plan.piece().shown();
    }

    private Set<Fibre> fibres() {
        Piece piece = plan.piece();
        Set<Fibre> fibres = EnumSet.of(piece.warpYarn().fibre());
        for (Place place : Place.values()) {
            fibres.add(piece.stripe(place).fibre());
        }
        for (EndPlan end : List.of(plan.start(), plan.top())) {
            end.blocks().stream()
                    .filter(BlockPlan::stays)
                    .forEach(block ->
                            fibres.add(block.work().orElseThrow().yarn().fibre()));
        }
        return fibres;
    }

    List<String> keys() {
        Set<Fibre> fibres = fibres();
        List<String> keys = new ArrayList<>(List.of("off.block.pin"));
        fibres.forEach(fibre -> keys.add("off.block." + fibre.name().toLowerCase(Locale.ROOT)));
        if (fibres.size() > 1) {
            keys.add("off.block.mixed");
        }
        keys.add("off.block.dry");
        return keys;
    }

    Map<String, Object> values() {
        boolean inches = shown.system() == UnitSystem.INCHES;
        double height = plan.piece().design().height().mm()
                + plan.start().staying()
                + plan.top().staying();
        return Map.of(
                "width", shown.height(plan.finishedWidth()),
                "height", shown.cut(height),
                "pins", shown.height(inches ? Unit.INCH.millimetres() : 25));
    }
}
