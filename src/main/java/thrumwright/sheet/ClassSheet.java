package thrumwright.sheet;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import thrumwright.measure.Phrases;
import thrumwright.piece.ClassSet;
import thrumwright.plan.finding.ClassPlan;
import thrumwright.yarn.Yarn;

/**
 * What a teacher needs for a whole class: what to buy, what to cut together, and what differs from loom to loom.
 *
 * @param title of the class
 * @param facts the piece, and all that is alike on every loom
 * @param findings what the teacher should know before beginning, in plain sentences
 * @param shopping what each yarn comes to over all looms
 * @param shoppingNote how much of the design that holds
 * @param cutNote what all cuts include
 * @param cuts what to cut together, yarn by yarn
 * @param columns what the table of looms tells of each: a number, a name, and what differs
 * @param looms a row for each loom, with a cell for each column
 */
public record ClassSheet(
        String title,
        List<Fact> facts,
        List<String> findings,
        List<YarnLine> shopping,
        String shoppingNote,
        String cutNote,
        List<Cuts> cuts,
        List<String> columns,
        List<List<String>> looms) {
    /**
     * What to cut of one yarn, or of one sort of band.
     *
     * @param yarn empty for a band
     * @param heading the yarn or band, how many lengths and how much in all
     * @param lines the longest first
     */
    public record Cuts(Optional<Yarn> yarn, String heading, List<Line> lines) {
        public Cuts {
            lines = List.copyOf(lines);
        }
    }

    /**
     * Equal lengths of one yarn, for some looms; more than one line where they are many.
     *
     * @param count how many
     * @param mm to cut
     * @param length the same in the weaver's units
     * @param whom for what and for whom, in words
     */
    public record Line(int count, double mm, String length, String whom) {}

    public ClassSheet {
        facts = List.copyOf(facts);
        findings = List.copyOf(findings);
        shopping = List.copyOf(shopping);
        cuts = List.copyOf(cuts);
        columns = List.copyOf(columns);
        looms = looms.stream().map(List::copyOf).toList();
    }

    /** What a class is called on its sheets; never blank. */
    public static String title(ClassSet set, Locale locale) {
        return set.title().isBlank()
                ? Phrases.of("thrumwright.sheet.class", locale).say("untitled")
                : set.title();
    }

    public static ClassSheet of(ClassPlan plan, Locale locale) {
        return new WrittenClass(plan, locale).lists();
    }
}
