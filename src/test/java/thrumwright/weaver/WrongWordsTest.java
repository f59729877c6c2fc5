package thrumwright.weaver;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import thrumwright.plan.Plan;
import thrumwright.testing.RandomPieces;

/** One wrong word in a step, and the cloth is another: the weaver made of code would have seen it. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class WrongWordsTest {
    private static final int PIECES = 40;

    private final List<Plan> plans = new ArrayList<>();
    private final List<String> sheets = new ArrayList<>();

    @BeforeAll
    void write() {
        for (int seed = 0; seed < PIECES; seed++) {
            plans.add(Plan.of(CodeWeaverTest.inOurWords(new RandomPieces(seed).next())));
            sheets.add(CodeWeaverTest.text(plans.get(seed)));
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "first pick goes over the left edge end, then | first pick goes under the left edge end, then",
                "then under and over by turns | then over and under by turns",
                "comes back over the ends that the one before went under | comes back over the ends that the one before went over",
                "come back over the ends that the one before went under, and under | come back under the ends that the one before went under, and over",
                "Begin at the left | Begin at the right",
                "The yarn ends at the left | The yarn ends at the right",
                "Tie it to the right post | Tie it to the left post",
                "Tie it round the left edge end | Tie it round the right edge end",
                "fold round the outermost 2 ends | fold round the outermost 3 ends",
                "bring the back half to the front, below | bring the back half to the front, above",
                "and on over the next 3 ends | and on over the next 2 ends",
                "lead the front half behind | lead the front half in front of",
                "round the outermost end to the back, and the half at the back to the front | round the outermost end to the front,"
                        + " and the half at the back to the back",
                "the back half comes to the front above | the back half comes to the front below",
                "Both halves end at the left | Both halves end at the right",
                "Wrap the yarn once round the outermost 2 ends | Wrap the yarn once round the outermost 3 ends",
                "counting the end just wrapped | counting the 2 ends just wrapped",
                "behind the last 2 of them | behind the last of them",
                "come to the front above your own float | come to the front below your own float",
                "Take the outermost 3 ends | Take the outermost 2 ends",
                "the next 2 ends, and so on to the other side | the next 3 ends, and so on to the other side",
                "Do the same once more: | Don't do the same once more:",
                "→ over the left edge end | → under the left edge end",
                "2 picks in all | 3 picks in all",
                "first pick begins at the left | first pick begins at the right",
                "Its last pick begins at the right | Its last pick begins at the left"
            })
    void isFelt(String right, String wrong) {
        Pattern wherever = Pattern.compile(Pattern.quote(right).replace(" ", "\\E\\s+\\Q"));
        int said = 0;
        for (int i = 0; i < PIECES; i++) {
            String changed = wherever.matcher(sheets.get(i)).replaceAll(Matcher.quoteReplacement(wrong));
            if (!changed.equals(sheets.get(i))) {
                said++;
                assertThat(CodeWeaverTest.differences(plans.get(i), changed)).isNotEmpty();
            }
        }
        assertThat(said).isPositive();
    }
}
