package thrumwright.editor.loom;

import java.time.LocalDateTime;
import java.util.Optional;
import java.util.function.Supplier;
import thrumwright.editor.edit.Session;
import thrumwright.editor.edit.TickEdits;
import thrumwright.editor.text.Texts;
import thrumwright.piece.Measures;
import thrumwright.piece.Ticks;
import thrumwright.plan.Plan;
import thrumwright.sheet.AtLoom;
import thrumwright.sheet.LoomSheet;
import thrumwright.sheet.LoomStep;

/**
 * Where the work at the loom stands. What is done is ticked in the piece; only how far the words before a step's first row
 * are read is known here.
 */
final class Weaving {
    private final Session session;
    private final Texts texts;
    private final TickEdits edits;
    private final Supplier<LocalDateTime> clock;
    private LoomSheet sheet;
    private Plan planned;
    private Reading reading = new Reading(Optional.empty(), 0);

    /** How many leaves are turned of the step at a place. */
    private record Reading(Optional<AtLoom> at, int turned) {}

    Weaving(Session session, Texts texts, Supplier<LocalDateTime> clock) {
        this.session = session;
        this.texts = texts;
        this.edits = new TickEdits(texts.phrases());
        this.clock = clock;
    }

    /** The steps of the piece as it is. */
    LoomSheet sheet() {
        if (planned != session.plan()) {
            planned = session.plan();
            sheet = LoomSheet.of(planned, texts.locale());
        }
        return sheet;
    }

    /** The row that is woven now; empty once all is done. */
    Optional<AtLoom> now() {
        Optional<AtLoom> now = sheet().now(ticks());
        if (!now.equals(reading.at())) {
            reading = new Reading(now, 0);
        }
        return now;
    }

    /** The step that can be measured: the one that was just ended, else the one at hand, if it has a height. */
    Optional<LoomStep> measurable() {
        Optional<LoomStep> ended = sheet().last(ticks()).map(sheet()::step);
        boolean between = now().filter(at -> at.row() > 0).isEmpty();
        return between && ended.filter(Weaving::rises).isPresent()
                ? ended
                : now().map(sheet()::step).filter(Weaving::rises);
    }

    private static boolean rises(LoomStep step) {
        return !step.reach().isEmpty() || step.step().key().equals(Measures.DESIGN);
    }

    private Ticks ticks() {
        return session.shown().ticks();
    }

    /**
     * How many of the leaves are turned on which its words stand; all of them: the row itself is to be seen.
     *
     * @param leaves of the step that is woven now, 1 or more
     */
    int read(int leaves) {
        boolean begun = now().filter(at -> at.row() > 0).isPresent();
        return begun ? leaves : Math.min(reading.turned(), last(leaves));
    }

    /** A step without rows is its words alone. */
    private int last(int leaves) {
        boolean rows =
                now().map(sheet()::step).filter(step -> !step.rows().isEmpty()).isPresent();
        return rows ? leaves : leaves - 1;
    }

    /** On by one: the next leaf, or the row is done. */
    void forward(int leaves) {
        int at = read(leaves);
        if (at < last(leaves)) {
            turn(at + 1);
        } else {
            now().ifPresent(row -> session.edit(edits.done(sheet(), row, clock.get())));
        }
    }

    /** Back by one: the leaf before, or the last row isn't done yet. */
    void back(int leaves) {
        int at = read(leaves);
        boolean leaf = at > 0 && now().filter(row -> row.row() == 0).isPresent();
        if (leaf) {
            turn(at - 1);
            return;
        }
        sheet().last(ticks()).ifPresent(row -> {
            session.edit(edits.back(sheet(), row));
            turn(Integer.MAX_VALUE);
        });
    }

    private void turn(int leaves) {
        reading = new Reading(now(), leaves);
    }
}
