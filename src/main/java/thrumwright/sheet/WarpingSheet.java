package thrumwright.sheet;

import java.util.List;
import java.util.Locale;
import thrumwright.plan.Plan;

/**
 * How the warp is put on the loom, before anything is woven.
 *
 * @param facts what is to be counted and to be measured off
 * @param steps in order, numbered from 1
 * @param cautions what can hurt
 * @param way what the picture of the warp's way shows, in words
 * @param counted what the picture of the marked bar shows, in words
 */
public record WarpingSheet(
        String title, List<Fact> facts, List<WarpStep> steps, List<String> cautions, String way, String counted) {
    public WarpingSheet {
        facts = List.copyOf(facts);
        steps = List.copyOf(steps);
        cautions = List.copyOf(cautions);
    }

    /** One step of the warping. */
    public record WarpStep(int number, String title, String text) {}

    public static WarpingSheet of(Plan plan, Locale locale) {
        return new WarpingWriter(plan, locale).sheet();
    }
}
