package thrumwright.sheet;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import thrumwright.plan.Plan;

/**
 * Everything that a step sheet says, in the order in which it is needed.
 *
 * @param title the piece's title
 * @param name of the weaver whose sheet it is; blank if it is to be written on; empty if the sheet is nobody's own
 * @param facts loom, warp, size and lines, for the head
 * @param findings what the weaver should know before beginning, in plain sentences
 * @param cutNote what all cuts include
 * @param cuts what to cut, in the order of use
 * @param yarnNote how much of the design that holds
 * @param yarns what each yarn comes to
 * @param chapters start, design, top, off the loom; none is empty
 */
public record StepSheet(
        String title,
        Optional<String> name,
        List<Fact> facts,
        List<String> findings,
        String cutNote,
        List<CutLine> cuts,
        String yarnNote,
        List<YarnLine> yarns,
        List<Chapter> chapters) {
    public StepSheet {
        facts = List.copyOf(facts);
        findings = List.copyOf(findings);
        cuts = List.copyOf(cuts);
        yarns = List.copyOf(yarns);
        chapters = List.copyOf(chapters);
    }

    public static StepSheet of(Plan plan, Locale locale) {
        return new SheetWriter(plan, Optional.empty(), locale).sheet();
    }

    /**
     * The sheet of one weaver among others, which says nothing of buying.
     *
     * @param name may be blank, then there is a line to write it on
     */
    public static StepSheet of(Plan plan, String name, Locale locale) {
        return new SheetWriter(plan, Optional.of(name), locale).sheet();
    }

    /** All steps of all chapters, in order. */
    public List<Step> steps() {
        return chapters.stream().flatMap(chapter -> chapter.steps().stream()).toList();
    }
}
