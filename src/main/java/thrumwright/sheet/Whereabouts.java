package thrumwright.sheet;

import java.time.LocalDateTime;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import thrumwright.measure.Phrases;
import thrumwright.piece.Ticks;
import thrumwright.plan.Plan;

/**
 * Where somebody stands with a piece.
 *
 * @param at the step, and how many of its rows are done, in a few words
 * @param last when the last row was ticked; empty if none was
 */
public record Whereabouts(String at, Optional<LocalDateTime> last) {
    public static Whereabouts of(Plan plan, Locale locale) {
        LoomSheet sheet = LoomSheet.of(plan, locale);
        Ticks ticks = plan.piece().ticks();
        Optional<LocalDateTime> last = sheet.last(ticks)
                .flatMap(row -> ticks.last(sheet.step(row).step().key()));
        return new Whereabouts(at(sheet, ticks, Phrases.of("thrumwright.sheet.loom", locale)), last);
    }

    private static String at(LoomSheet sheet, Ticks ticks, Phrases phrases) {
        if (sheet.last(ticks).isEmpty()) {
            return phrases.say("standing.begins");
        }
        return sheet.now(ticks)
                .map(now -> at(sheet.step(now), now.row(), phrases))
                .orElseGet(() -> phrases.say("standing.finished"));
    }

    private static String at(LoomStep step, int done, Phrases phrases) {
        return step.rows().isEmpty()
                ? phrases.say("standing.step", Map.of("step", step.title()))
                : phrases.say("standing.row", Map.of("step", step.title(), "done", done, "rows", step.count()));
    }
}
