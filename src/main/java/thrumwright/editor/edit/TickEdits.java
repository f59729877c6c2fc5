package thrumwright.editor.edit;

import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.Map;
import thrumwright.measure.Phrases;
import thrumwright.piece.Piece;
import thrumwright.piece.Ticks;
import thrumwright.plan.Plan;
import thrumwright.sheet.AtLoom;
import thrumwright.sheet.LoomSheet;
import thrumwright.sheet.LoomStep;

/**
 * What is done at the loom, row by row.
 *
 * @param phrases with the names under {@code edit.…}
 */
public record TickEdits(Phrases phrases) {
    /** The row that is woven now is done. */
    public Edit done(LoomSheet sheet, AtLoom now, LocalDateTime when) {
        String key = sheet.step(now).step().key();
        LocalDateTime minute = when.truncatedTo(ChronoUnit.MINUTES);
        return Edit.of(
                named("done", sheet, now),
                piece -> piece.withTicks(fitted(sheet, piece).with(key, minute)));
    }

    /** The last row that was done isn't. */
    public Edit back(LoomSheet sheet, AtLoom last) {
        String key = sheet.step(last).step().key();
        return Edit.of(
                named("back", sheet, last),
                piece -> piece.withTicks(fitted(sheet, piece).without(key)));
    }

    private static Ticks fitted(LoomSheet sheet, Piece piece) {
        return piece.ticks().within(key -> LoomSheet.rows(sheet.plan(), key));
    }

    private String named(String what, LoomSheet sheet, AtLoom at) {
        LoomStep step = sheet.step(at);
        String key = "edit.row-" + what + (step.rows().isEmpty() ? ".step" : "");
        return phrases.say(key, Map.of("step", step.step().title(), "row", at.row() + 1, "rows", step.count()));
    }

    /**
     * A piece with as many ticks as still have a row, and what was measured of steps that are still there.
     *
     * @param ticks those before the change that made the piece
     */
    static Piece kept(Piece piece, Ticks ticks) {
        if (ticks.isEmpty() && piece.measures().isEmpty()) {
            return piece;
        }
        Plan plan = Plan.of(piece);
        return piece.withTicks(ticks.within(key -> LoomSheet.rows(plan, key)))
                .withMeasures(piece.measures().within(key -> LoomSheet.rows(plan, key) > 0));
    }
}
