package thrumwright.sheet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import thrumwright.measure.Shown;
import thrumwright.measure.Unit;
import thrumwright.measure.UnitSystem;
import thrumwright.plan.Hem;
import thrumwright.plan.HemStitch;
import thrumwright.plan.Plan;
import thrumwright.plan.Weight;

/** How to hang the piece: which sentences, and what they name. */
final class HangingWords {
    /** A bar longer than this sags under a heavy piece, mm (common practice, no source). */
    private static final double LONG = 1500;

    private final Plan plan;
    private final Shown shown;

    HangingWords(Plan plan) {
        this.plan = plan;
        this.shown = plan.piece().shown();
    }

    /** A bar stands out by that much at either side (common practice, no source), a strip is as much shorter (CCI Notes 13/4). */
    private double beside() {
        return shown.system() == UnitSystem.INCHES ? 0.75 * Unit.INCH.millimetres() : 20;
    }

    List<String> keys() {
        List<String> keys = new ArrayList<>();
        boolean bar = plan.top().hem().flatMap(Hem::sleeve).isPresent();
        if (bar) {
            keys.add("off.hang.bar");
        } else {
            keys.add(plan.top().hem().filter(Hem::folds).isPresent() ? "off.hang.strip-hem" : "off.hang.strip");
            keys.add("off.hang.board");
        }
        if (plan.start().hem().flatMap(Hem::sleeve).isPresent()) {
            keys.add("off.hang.lower-bar");
        }
        if (plan.finishedWidth() > LONG) {
            keys.add(bar ? "off.hang.long-bar" : "off.hang.long-board");
        }
        keys.add("off.hang.weight");
        keys.add("off.hang.rest");
        return keys;
    }

    Map<String, Object> values() {
        double width = plan.finishedWidth();
        double beside = beside();
        Map<String, Object> values = new HashMap<>();
        values.put("width", shown.cut(width));
        values.put("over", shown.height(beside));
        values.put("length", shown.cut(width + 2 * beside));
        values.put("strip", shown.cut(Math.max(width / 2, width - beside)));
        values.put("spacing", shown.height(HemStitch.SPACING));
        values.put("weight", shown.mass(Weight.of(plan).total()));
        return values;
    }
}
