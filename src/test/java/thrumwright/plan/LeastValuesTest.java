package thrumwright.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import thrumwright.measure.Length;
import thrumwright.sheet.StepSheet;
import thrumwright.store.BuiltIn;
import thrumwright.store.FileProblem;
import thrumwright.store.PieceFile;
import thrumwright.yarn.Sample;

/** Whatever is divided by is bounded: the least that a file may say gives a plan whose numbers are all finite. */
class LeastValuesTest {
    /** From far too small to usual: the first that is accepted is the least. */
    private static final List<String> SIZES = List.of(
            "0", "1e-300", "0.000000000000001", "0.000000001", "0.000001", "0.0001", "0.001", "0.01", "0.1", "1", "10");

    private static final Pattern MEASURE = Pattern.compile("(\"\\w+\": \"?)([0-9.]+)( ?(?:mm|cm|m|/cm|in)?\"?,?)$");

    /** Each line of each demo piece that holds a number. */
    static Stream<String[]> fields() throws FileProblem {
        List<String[]> fields = new ArrayList<>();
        for (String name : BuiltIn.DEMO.names()) {
            String[] lines = BuiltIn.DEMO.text(name).split("\n");
            for (int i = 0; i < lines.length; i++) {
                if (MEASURE.matcher(lines[i]).find() && !lines[i].contains("\"thrumwright")) {
                    fields.add(new String[] {name, Integer.toString(i)});
                }
            }
        }
        return fields.stream();
    }

    @ParameterizedTest
    @MethodSource("fields")
    void theLeastThatIsAcceptedGivesAFinitePlan(String name, int line) throws FileProblem {
        int accepted = 0;
        for (String size : SIZES) {
            String[] lines = BuiltIn.DEMO.text(name).split("\n");
            lines[line] = MEASURE.matcher(lines[line]).replaceFirst("$1" + size + "$3");
            PieceFile file;
            try {
                file = PieceFile.read(String.join("\n", lines));
            } catch (FileProblem refused) {
                assertThat(refused).hasMessageStartingWith("Line ");
                continue;
            }
            accepted++;
            finite(Plan.of(file.piece()));
        }
        assertThat(accepted).isPositive();
    }

    private static void finite(Plan plan) {
        assertThat(plan.warpYarn()).isFinite();
        assertThat(plan.finishedHeight()).isFinite().isPositive();
        assertThat(plan.finishedWidth()).isFinite().isPositive();
        for (BlockPlan block : plan.start().blocks()) {
            assertThat(block.height()).as(block.block().id()).isFinite().isNotNegative();
            block.work()
                    .ifPresent(
                            work -> assertThat(work.cut().length()).isFinite().isPositive());
        }
        assertThat(plan.totals()).allSatisfy(total -> assertThat(total.grams()).isFinite());
        assertThat(StepSheet.of(plan, Locale.UK).steps()).isNotEmpty();
    }

    @ParameterizedTest
    @CsvSource({"20, 0.000000001 mm", "100000, 1 mm", "1, 0.004 mm"})
    void aSampleOfNothingIsRefused(int picks, String height) {
        assertThatThrownBy(() -> new Sample(picks, Length.parse(height))).hasMessageContaining("so low");
    }
}
