package thrumwright.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import thrumwright.measure.Length;
import thrumwright.measure.Shown;
import thrumwright.measure.UnitSystem;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;
import thrumwright.plan.Plan;
import thrumwright.store.Structures;
import thrumwright.testing.Pieces;

/** What somebody stumbled over who read sheets with yarn in hand. */
class ReadAtTheLoomTest {
    private static StepSheet sheet(Piece piece) {
        return StepSheet.of(Plan.of(piece), Locale.UK);
    }

    private static Piece with(String structure) {
        return Structures.builtIn().byId(structure).orElseThrow().on(Pieces.panel(), Place.START);
    }

    private static Stream<String> sentences(StepSheet sheet) {
        return sheet.steps().stream().flatMap(step -> step.sentences().stream());
    }

    @Test
    void tiesAreToldOfOnlyWhereACordIsTied() {
        assertThat(sheet(with("cord-round-posts")).cutNote()).contains("cords that are tied");
        assertThat(sheet(with("hem-without-posts")).cutNote())
                .isEqualTo("Every length includes tails of 15 cm at both ends.");
    }

    @Test
    void aClosedWarpStandsWithWhatIsCutFirst() {
        assertThat(sheet(with("closed-warp")).cutNote()).containsPattern("The warp takes \\d+\\.\\d m of");
        assertThat(sheet(with("darned-ends")).cutNote()).doesNotContain("The warp takes");
    }

    @Test
    void aBandIsNoYarnToBeMeasuredInWidths() {
        assertThat(sheet(with("faced-hem")).cuts())
                .filteredOn(cut -> cut.yarn().isEmpty())
                .isNotEmpty()
                .allMatch(cut -> cut.times().isEmpty());
    }

    @Test
    void whereNoClothIsTurnedBackNoHemHidesATrial() {
        assertThat(sentences(sheet(with("taped-edge")))).noneMatch(sentence -> sentence.contains("hem will hide"));
        assertThat(sentences(sheet(with("faced-hem")))).anyMatch(sentence -> sentence.contains("hem will hide"));
    }

    @Test
    void aHeadersStrandsAreNoButterflies() {
        Piece header = with("spread-header");
        assertThat(takes(header)).anyMatch(take -> take.contains("cut 3 strands of "));
        Piece few = header.withHabits(header.habits().withHandful(Length.parse("1 m")));
        assertThat(takes(few))
                .anyMatch(take -> take.matches(".*cut 6 butterflies of .*, 2 for each of the 3 strands\\..*"));
    }

    private static List<String> takes(Piece piece) {
        return sheet(piece).steps().stream().map(Step::take).toList();
    }

    /** The ordering cord alone protects no edge, so that nothing comes out last. */
    @Test
    void wasteIsSpokenOfOnlyWhereThereIsSome() {
        Piece panel = Pieces.panel();
        assertThat(sentences(sheet(panel))).anyMatch(sentence -> sentence.contains("Take the waste out"));
        Piece bare = panel.withStart(panel.start().without(Set.of("waste")));
        assertThat(sentences(sheet(bare)))
                .contains("Take out: ordering cord.")
                .noneMatch(sentence -> sentence.contains("Take the waste out"));
    }

    /** Half a millimetre is no sixteenth of an inch, and a gram and a half no tenth of an ounce. */
    @Test
    void whatIsThereIsNeverShownAsNothing() {
        Shown inches = new Shown(UnitSystem.INCHES, Locale.UK);
        assertThat(inches.height(0.4)).isEqualTo("¹⁄₆₄ in");
        assertThat(inches.height(0.9)).isEqualTo("¹⁄₁₆ in");
        assertThat(inches.height(0)).isEqualTo("0 in");
        assertThat(inches.mass(1)).isEqualTo("0.04 oz");
        assertThat(inches.mass(28.35)).isEqualTo("1 oz");
    }

    @Test
    void aLoomWithoutANameIsNotNamed() {
        Piece panel = Pieces.panel();
        assertThat(sheet(panel.withLoom(panel.loom().withName(" "))).facts())
                .extracting(Fact::name)
                .doesNotContain("Loom");
    }
}
