package thrumwright.sheet;

import java.util.List;
import java.util.Locale;
import thrumwright.measure.Phrases;

/**
 * How each kind of block is worked, once for each kind, and what happens off the loom; of one sheet, or once for all sheets of a
 * class.
 *
 * @param entries in the order of their first steps
 * @param own for each sheet what holds for its loom alone
 */
public record Booklet(List<BookletEntry> entries, List<List<Own>> own) {
    /** A sentence that belongs to a step of one loom alone. */
    public record Own(int step, String title, String text) {}

    public Booklet {
        entries = List.copyOf(entries);
        own = List.copyOf(own);
    }

    /** Of one sheet. */
    public static Booklet of(StepSheet sheet, Locale locale) {
        return of(List.of(sheet), List.of(sheet.title()), locale);
    }

    /**
     * Of several sheets, once for all.
     *
     * @param sheets of pieces with the same blocks, at least one
     * @param names of their looms
     */
    public static Booklet of(List<StepSheet> sheets, List<String> names, Locale locale) {
        return new BookletWriter(sheets, names, Phrases.of("thrumwright.sheet.steps", locale)).booklet();
    }

    /** What holds for one loom alone, in the order of its steps. */
    public List<Own> own(int sheet) {
        return own.get(sheet);
    }
}
