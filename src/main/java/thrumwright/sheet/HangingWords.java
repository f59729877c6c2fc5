package thrumwright.sheet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import thrumwright.block.Support;
import thrumwright.measure.Phrases;
import thrumwright.measure.Shown;
import thrumwright.plan.EndPlan;
import thrumwright.plan.Hem;
import thrumwright.plan.HemStitch;
import thrumwright.plan.Plan;
import thrumwright.plan.Weight;
import thrumwright.plan.words.Words;

/** How to hang the piece: which sentences, and what they name. */
final class HangingWords {
    /** A bar longer than this sags under a heavy piece, mm (common practice, no source). */
    private static final double LONG = 1500;

    /** So many times the weight of the piece its fixings must hold at least (common practice, no source). */
    static final int TIMES = 5;

    private final Plan plan;
    private final Phrases phrases;
    private final Words words;
    private final Shown shown;

    HangingWords(Plan plan, Phrases phrases, Words words) {
        this.plan = plan;
        this.phrases = phrases;
        this.words = words;
        this.shown = plan.piece().shown();
    }

    /** A bar stands out by that much at either side (common practice, no source). */
    private double beside() {
        return twoCentimetres();
    }

    /** A strip is cut 2 cm shorter in all than the top edge is wide, so it ends 1 cm inside either side (CCI Notes 13/4). */
    private double stripShorter() {
        return Math.min(plan.finishedWidth() / 2, twoCentimetres());
    }

    private double twoCentimetres() {
        return shown.system().length(20, 0.75);
    }

    List<String> keys() {
        List<String> keys = new ArrayList<>();
        Optional<Support> rod = rod(plan.top());
        if (rod.isPresent()) {
            if (rod.get().kind() == Support.Kind.SLAT) {
                keys.add("off.hang.slat");
            }
            keys.add("off.hang.bar");
        } else {
            Optional<Hem> hem = plan.top().hem().filter(Hem::folds);
            boolean deep = hem.filter(
                            one -> one.sleeve().isPresent() || plan.strip().fits(one))
                    .isPresent();
            keys.add(deep ? "off.hang.strip-hem" : "off.hang.strip");
            if (hem.isPresent() && !deep) {
                keys.add("off.hang.strip-shallow");
            }
            keys.add("off.hang.board");
            keys.add(hem.isPresent() ? "off.hang.peel" : "off.hang.peel-edge");
        }
        if (rod(plan.start()).isPresent()) {
            keys.add("off.hang.lower-bar");
        }
        if (plan.finishedWidth() > LONG) {
            keys.add(rod.isPresent() ? "off.hang.long-bar" : "off.hang.long-board");
        }
        keys.add(Weight.of(plan).bands() > 0 ? "off.hang.weight-band" : "off.hang.weight");
        keys.add(rod.isPresent() ? "off.hang.load" : "off.hang.load-board");
        keys.add("off.hang.rest");
        return keys;
    }

    /** What slides into the hem of an end. */
    private static Optional<Support> rod(EndPlan end) {
        return end.hem().flatMap(Hem::sleeve).filter(Hem.Sleeve::slidesIn).map(Hem.Sleeve::support);
    }

    private String name(Optional<Support> rod) {
        boolean slat = rod.filter(Support.Slat.class::isInstance).isPresent();
        return phrases.say(slat ? "off.hang.rod.slat" : "off.hang.rod.bar");
    }

    /** The strip that the top hem is to take, or the one that suits the weight. */
    private String tape() {
        Support strip = plan.top()
                .hem()
                .flatMap(Hem::sleeve)
                .map(Hem.Sleeve::support)
                .orElseGet(() -> plan.strip().support());
        return words.support(strip, shown) + ",";
    }

    List<String> cautions() {
        return rod(plan.top()).isPresent() ? List.of("caution.overhead") : List.of("caution.overhead", "caution.strip");
    }

    Map<String, Object> values() {
        double width = plan.finishedWidth();
        double beside = beside();
        Map<String, Object> values = new HashMap<>();
        values.put("width", shown.cut(width));
        values.put("over", shown.height(beside));
        values.put("length", shown.cut(width + 2 * beside));
        values.put("strip", shown.cut(width - stripShorter()));
        values.put("inside", shown.height(stripShorter() / 2));
        values.put("tape", tape());
        values.put("needed", shown.height(plan.strip().depth()));
        values.put("depth", shown.height(plan.top().hem().map(Hem::room).orElse(0.0)));
        values.put("rod", name(rod(plan.top())));
        values.put("lowerRod", name(rod(plan.start())));
        values.put("spacing", shown.height(HemStitch.spacing(shown.system())));
        double weight = Weight.of(plan).total();
        values.put("weight", shown.mass(weight));
        values.put("times", TIMES);
        values.put("load", shown.mass(TIMES * weight));
        return values;
    }
}
