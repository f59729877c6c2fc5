package thrumwright.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import thrumwright.block.Block;
import thrumwright.block.EdgeFinish;
import thrumwright.block.HemFold;
import thrumwright.block.OrderingCord;
import thrumwright.block.Support;
import thrumwright.measure.Phrases;
import thrumwright.piece.Difficulty;
import thrumwright.piece.End;
import thrumwright.piece.SearchWords;
import thrumwright.piece.Structure;

/** Looking for a structure by what one wants finds what it should, and nothing else. */
class SearchTest {
    private static final SearchWords SEARCH = SearchWords.of(Phrases.of("thrumwright.piece.search", Locale.ROOT));

    private final List<Structure> all = Structures.builtIn().all();

    private List<String> found(String sought) {
        return ids(structure -> structure.answers(sought, SEARCH));
    }

    private List<String> ids(Predicate<Structure> wanted) {
        return all.stream().filter(wanted).map(Structure::id).toList();
    }

    private static boolean has(Structure structure, Predicate<Block> wanted) {
        return structure.end().blocks().stream().anyMatch(wanted);
    }

    private static boolean takes(Structure structure, Support.Kind kind) {
        return has(
                structure,
                block -> block instanceof HemFold fold
                        && fold.support().map(Support::kind).equals(Optional.of(kind)));
    }

    private static boolean hangs(Structure structure) {
        return has(structure, block -> block instanceof EdgeFinish finish && finish.hangs());
    }

    /** What folds is a hem, but for an edge that folds under a band; that says “no hem” itself. */
    private static boolean hemmed(Structure structure) {
        return has(structure, HemFold.class::isInstance)
                && structure.goodFor().stream().noneMatch(words -> words.contains("no hem"))
                && !structure.use().contains("no hem");
    }

    private List<String> goodFor(String words) {
        return ids(structure -> structure.goodFor().contains(words));
    }

    @Test
    void whatHangsFromABar() {
        assertThat(found("hang from a bar"))
                .isEqualTo(ids(structure -> takes(structure, Support.Kind.BAR)))
                .isNotEmpty();
        assertThat(found("hang from a slat"))
                .isEqualTo(ids(structure -> takes(structure, Support.Kind.SLAT)))
                .isNotEmpty();
    }

    /** What hangs is a fringe, but for knots that are trimmed short to lock the edge; these say “no fringe” themselves. */
    @Test
    void whatHasNoFringe() {
        List<String> without =
                ids(structure -> !hangs(structure) || structure.goodFor().contains("no fringe"));
        assertThat(found("no fringe")).isEqualTo(without).hasSizeGreaterThan(10);
        assertThat(found("fringe")).isEqualTo(ids(structure -> !without.contains(structure.id())));
        assertThat(found("no hem"))
                .isEqualTo(
                        ids(structure -> !hemmed(structure) && found("no hem").contains(structure.id())));
        assertThat(found("hem")).isEqualTo(ids(SearchTest::hemmed)).hasSizeGreaterThan(5);
    }

    @Test
    void whatIsQuickOrForAChildsClass() {
        assertThat(found("quick")).isEqualTo(goodFor("quick")).hasSizeGreaterThan(3);
        assertThat(found("for a child’s class"))
                .isEqualTo(goodFor("for a child’s class"))
                .hasSizeGreaterThan(2);
        assertThat(found("first piece"))
                .isEqualTo(ids(structure -> structure.difficulty().equals(Optional.of(Difficulty.FIRST_PIECE))));
    }

    @Test
    void whatNeedsNoPosts() {
        assertThat(found("no posts"))
                .contains("hem-without-posts", "waste-band-only", "cord-without-posts")
                .allMatch(id -> !hemmed(byId(id)) || !found("posts").contains(id));
        assertThat(found("no ordering cord"))
                .isNotEmpty()
                .allMatch(id -> !has(byId(id), OrderingCord.class::isInstance));
    }

    private Structure byId(String id) {
        return Structures.builtIn().byId(id).orElseThrow();
    }

    /** Each way to write it finds what the usual one finds. */
    @ParameterizedTest
    @CsvSource({
        "no fringe, NO FRINGE",
        "no fringe, without fringe",
        "no fringe, without a fringe",
        "no fringe, no fringes",
        "no fringe, fringeless",
        "no fringe, fringe-free",
        "no fringe, fringe free",
        "no fringe, no frin",
        "no fringe hem, hemmed without fringe",
        "no fringe no hem, no fringe or hem",
        "no fringe no hem, without hem or fringe",
        "for a child’s class, for a child's class",
        "for a child’s class, a childs class",
        "for a child’s class, child class",
        "for a child’s class, children class",
        "for a child’s class, class for kids",
        "hang from a bar, Hanging from bars",
        "hang from a bar, hang from a rod",
        "hang from a bar, hang from a dowel",
        "hang from a bar, hang bar",
        "hook-and-loop strip, hook and loop strip",
        "hook-and-loop strip, 'hook, loop'",
        "plait, braid",
        "plait, braided",
        "plait, brai",
        "plait, plaits",
        "plait, plaiting",
        "mitred, mitered",
        "half hitches, half-hitch",
        "first piece, easy",
        "first piece, beginners",
        "quick, fast",
        "twining, twined",
        "colourful, colorful",
        "patient hands, patient"
    })
    void isFoundHoweverItIsWritten(String usual, String written) {
        assertThat(found(written)).isEqualTo(found(usual)).isNotEmpty();
    }

    /** No beginning of a word that finds something finds less than the whole word does. */
    @ParameterizedTest
    @ValueSource(
            strings = {"hang from a bar", "no fringe", "quick", "for a child’s class", "lattice", "slat", "braided"})
    void eachLetterNarrows(String sought) {
        List<String> before = found("");
        assertThat(before).hasSameSizeAs(all);
        for (int end = 1; end <= sought.length(); end++) {
            List<String> now = found(sought.substring(0, end));
            assertThat(now).as(sought.substring(0, end)).isNotEmpty().containsAll(found(sought));
            before = now;
        }
        assertThat(before).isEqualTo(found(sought));
    }

    @ParameterizedTest
    @ValueSource(strings = {"zebra", "no bar hem fringe", "quick patient"})
    void whatThereIsntIsntFound(String sought) {
        assertThat(found(sought)).isEmpty();
    }

    /** Somebody's own structure of few words is found by what its stack shows. */
    @Test
    void aStackSpeaksForItself() {
        End sleeve = byId("bar-sleeve").end();
        Structure own = new Structure(
                "own", "Ours", "For us.", "", Optional.empty(), false, List.of(), "common practice, no source", sleeve);
        for (String sought : List.of("no fringe", "hem", "bar", "without fringes", "rod")) {
            assertThat(own.answers(sought, SEARCH)).as(sought).isTrue();
        }
        for (String sought : List.of("fringe", "no hem", "slat", "quick")) {
            assertThat(own.answers(sought, SEARCH)).as(sought).isFalse();
        }
    }
}
