package thrumwright.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import thrumwright.measure.Phrases;
import thrumwright.piece.ClassMember;
import thrumwright.piece.ClassSet;
import thrumwright.plan.Plan;
import thrumwright.plan.finding.ClassPlan;
import thrumwright.testing.Pieces;
import thrumwright.testing.RandomClasses;
import thrumwright.testing.Seeds;

/** What is written once for all looms with the same plan is what each of them would have. */
class WrittenClassTest {
    private static final Phrases HEADINGS = Phrases.of("thrumwright.sheet.steps", Locale.UK);

    @Test
    void everyLoomHasTheSheetThatItWouldHaveAlone() {
        for (int seed = 0; seed < Seeds.of(100, 2); seed++) {
            compared(new RandomClasses(seed).next(4));
        }
    }

    @Test
    void loomsWithTheSamePlanDifferInTheirNamesOnly() {
        ClassSet set = new ClassSet(
                "Three",
                Pieces.panel(),
                List.of(),
                List.of(ClassMember.named("Asta"), ClassMember.named(""), ClassMember.named("Bo")));
        compared(set);
        WrittenClass written = new WrittenClass(ClassPlan.of(set), Locale.UK);
        List<String> marks = IntStream.range(0, 3)
                .mapToObj(member -> SheetMark.of(written, member))
                .toList();
        assertThat(marks).doesNotHaveDuplicates();
        assertThat(written.loom(2).chapters()).isSameAs(written.loom(0).chapters());
    }

    private static void compared(ClassSet set) {
        WrittenClass written = new WrittenClass(ClassPlan.of(set), Locale.UK);
        for (int member = 0; member < set.members().size(); member++) {
            Plan plan = written.plan().plans().get(member);
            StepSheet alone = StepSheet.of(plan, set.members().get(member).name(), Locale.UK);
            assertThat(written.loom(member)).isEqualTo(alone);
            assertThat(written.text(member)).isEqualTo(PlainText.of(alone, HEADINGS));
            assertThat(SheetMark.of(written, member)).isEqualTo(SheetMark.of(plan, alone, Locale.UK));
        }
    }
}
