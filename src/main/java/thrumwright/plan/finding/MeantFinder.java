package thrumwright.plan.finding;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import thrumwright.piece.Meant;
import thrumwright.piece.Place;
import thrumwright.plan.Hem;
import thrumwright.plan.Plan;
import thrumwright.plan.finding.Finding.Code;

/** A matter of taste may be meant: then it is only noted. */
final class MeantFinder {
    private static final Map<Code, Code> TASTE = Map.of(
            Code.OTHER_COLOUR, Code.OTHER_COLOUR_MEANT,
            Code.HEMS_DIFFER, Code.HEMS_DIFFER_MEANT);

    private MeantFinder() {}

    /** The same finding; of a matter of taste as a note where it is meant, and else with the way to say so. */
    static Finding of(Plan plan, Finding finding) {
        Code note = TASTE.get(finding.code());
        Optional<Meant.Told> about = step(plan, finding).map(step -> new Meant.Told(name(finding.code()), step));
        if (note == null || about.isEmpty()) {
            return finding;
        }
        Meant.Told told = about.get();
        if (plan.piece().meant().has(told)) {
            return finding.meant(note, new Repair.MeanNoMore(told));
        }
        List<Repair> repairs = new ArrayList<>(finding.repairs());
        repairs.add(new Repair.Mean(told));
        return finding.mendedBy(repairs);
    }

    private static String name(Code code) {
        return code.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The block that it is about; where it is about both hems, the fold of the one that is woven last. */
    private static Optional<String> step(Plan plan, Finding finding) {
        return finding.place()
                .flatMap(place -> finding.blockId().map(place::step))
                .or(() -> plan.top().hem().map(Hem::blockId).map(Place.TOP::step));
    }
}
