package thrumwright.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import thrumwright.measure.Phrases;
import thrumwright.piece.SearchWords;
import thrumwright.piece.Structure;

/** What other weavers call a thing finds it. */
class OtherNamesTest {
    private static final SearchWords SEARCH = SearchWords.of(Phrases.of("thrumwright.piece.search", Locale.ROOT));

    private static List<String> found(String sought) {
        return Structures.builtIn().all().stream()
                .filter(structure -> structure.answers(sought, SEARCH))
                .map(Structure::id)
                .toList();
    }

    @ParameterizedTest
    @CsvSource({
        "half-Damascus, turned-edge",
        "half Damascus, turned-edge",
        "hook-and-loop, strip-hem",
        "hook and loop, strip-hem",
        "pocket, bar-sleeve",
        "jig, cord-round-posts",
        "selvage, closed-warp",
        "sumak, folded-hem",
        "double half hitch, half-hitch-hem",
        "double half hitches, hitched-fringe",
        "spacer, spread-header",
        "deep hem, inch-hem"
    })
    void isFoundByItsOtherName(String sought, String structure) {
        assertThat(found(sought))
                .contains(structure)
                .hasSizeLessThan(Structures.builtIn().all().size() / 2);
    }
}
