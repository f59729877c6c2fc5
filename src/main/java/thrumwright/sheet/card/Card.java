package thrumwright.sheet.card;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import thrumwright.piece.Place;
import thrumwright.plan.Plan;
import thrumwright.sheet.StepSheet;

/**
 * What hangs by the loom while one end is woven: a row for each block, in the order of working.
 *
 * @param title which end it is
 * @param piece the piece's title
 * @param facts whose it is, loom, ends and room for the date
 * @param keys what its signs mean, those that it has
 * @param begin the line with which the work begins, below the first block
 * @param rows from the lowest on the loom to the highest
 * @param after the lines with which it goes on above the last block, from the lowest to the highest
 * @param notes what to know of the whole end: what differs from the start, what must stay free
 */
public record Card(
        Place place,
        String title,
        String piece,
        String facts,
        List<CardKey> keys,
        CardLine begin,
        List<CardRow> rows,
        List<CardLine> after,
        List<String> notes) {
    public Card {
        keys = List.copyOf(keys);
        rows = List.copyOf(rows);
        after = List.copyOf(after);
        notes = List.copyOf(notes);
    }

    public static Card of(Plan plan, Place place, Locale locale) {
        return of(plan, Optional.empty(), StepSheet.of(plan, locale), place, locale);
    }

    /**
     * The card of one weaver.
     *
     * @param name may be blank, then there is a line to write it on; empty if the card is nobody's own
     * @param sheet of the same plan, from which the numbers of the steps are
     */
    public static Card of(Plan plan, Optional<String> name, StepSheet sheet, Place place, Locale locale) {
        return new CardWriter(plan, name, sheet, place, locale).card();
    }

    /** Whether an end has anything to weave or to leave; without that there is nothing to hang by the loom. */
    public static boolean needed(Plan plan, Place place) {
        return !plan.end(place).blocks().isEmpty();
    }
}
