package thrumwright.plan.words;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import thrumwright.measure.Length;
import thrumwright.measure.Sett;
import thrumwright.measure.UnitSystem;
import thrumwright.piece.Beginnings;
import thrumwright.piece.Habits;
import thrumwright.piece.Piece;
import thrumwright.piece.Structure;
import thrumwright.piece.Warp;
import thrumwright.plan.Plan;
import thrumwright.plan.words.Advice.Topic;
import thrumwright.store.Structures;
import thrumwright.testing.Pieces;
import thrumwright.yarn.CountSystem;
import thrumwright.yarn.Sample;
import thrumwright.yarn.Thickness;
import thrumwright.yarn.Yarn;

class RecommendationsTest {
    private final Piece panel = Pieces.panel();
    private final Recommendations advice = new Recommendations(panel, Locale.UK);
    private final Yarn weft = panel.yarn("weft");

    /** 1 ÷ (0.786345 + 2) and 1 ÷ (0.786345 + 1). */
    @Test
    void theSettLeavesRoomForOneWeft() {
        Advice sett = advice.sett().get(0);
        assertThat(sett.topic()).isEqualTo(Topic.SETT);
        assertThat(sett.value()).isCloseTo(0.358893, within(1e-6));
        assertThat(sett.told())
                .isEqualTo(
                        "Between two ends there should be room for one weft: 0.79 mm of warp and 2 mm of Teal wool make "
                                + "2.79 mm from end to end, a sett of 3.6/cm. [K. Todd-Hooker, ‘Choosing warp and weft’, "
                                + "American Tapestry Alliance]");
        assertThat(advice.sett().get(1).value()).isCloseTo(0.559802, within(1e-6));
        assertThat(advice.sett().get(1).sentence()).contains("0.79 mm", "1 mm", "1.79 mm", "5.6/cm");
    }

    @Test
    void whatIsSaidOfTheClosestSettIsWhatThePlanFinds() {
        double closest = advice.sett().get(1).value();
        for (double ends : new double[] {closest * 0.999, closest * 1.001}) {
            Warp warp = new Warp(panel.warp().width(), Sett.parse(String.format(Locale.ROOT, "%.6f/mm", ends)), "cord");
            assertThat(panel.withWarp(warp).setting(weft).jammed()).isEqualTo(ends > closest);
        }
    }

    /** 3.333333 − 0.786345 = 2.546989 for a weft of 2 mm: 1.27. */
    @Test
    void theGapIsHeldAgainstTheWeft() {
        assertThat(advice.gap(weft).value()).isCloseTo(1.273494, within(1e-6));
        assertThat(advice.gap(weft).sentence()).contains("suits the sett", "2.55 mm");
        assertThat(withSett("2/cm").gap(weft).sentence()).contains("thin for this sett");
        assertThat(withSett("5/cm").gap(weft).sentence()).contains("thick for this sett");
    }

    /**
     * On cotton 12/6, three strands of a singles suit 10 ends per inch, while a worsted-weight yarn at 6 per inch makes a loose
     * cloth (R. Mezoff, weaving notes, 2014 and 2018). That such a singles runs 1,800 yd to the pound and a worsted-weight
     * two-ply 900 is from memory.
     */
    @Test
    void publishedExamplesAreJudgedAsTheirWeaverDid() {
        Yarn threeStrands = weft.withThickness(new Thickness.Counted(600, 3, CountSystem.YARDS_PER_POUND));
        Yarn worstedWeight = weft.withThickness(new Thickness.Counted(900, 2, CountSystem.YARDS_PER_POUND));
        assertThat(withSett("10/in").gap(threeStrands).sentence()).contains("suits the sett");
        assertThat(withSett("6/in").gap(worstedWeight).sentence()).contains("The cloth will be loose");
    }

    private Recommendations withSett(String sett) {
        return new Recommendations(panel.withWarp(panel.warp().withSett(Sett.parse(sett))), Locale.UK);
    }

    @Test
    void picksAndCoverageFollowTheSample() {
        assertThat(advice.picks(weft).value()).isEqualTo(1.0);
        assertThat(advice.picks(weft).sentence()).contains("picks stand 10/cm", "5/cm");
        assertThat(advice.coverage(weft).value()).isEqualTo(1.0);
        Yarn sampled = weft.withSample(Optional.of(new Sample(20, Length.parse("25 mm"))));
        assertThat(advice.picks(sampled).value()).isCloseTo(0.8, within(1e-12));
        assertThat(advice.coverage(sampled).value()).isCloseTo(0.8, within(1e-12));
        assertThat(advice.coverage(sampled).sentence()).contains("80 %", "shows through");
        assertThat(advice.coverage(panel.yarn("cord")).value()).isCloseTo(0.5, within(1e-12));
    }

    @Test
    void depthsOfHems() {
        assertThat(advice.bar(15).value()).isCloseTo(29.561945, within(1e-6));
        assertThat(advice.bar(15).sentence())
                .isEqualTo("A bar of 1.5 cm needs a hem 3 cm deep: (π × 1.5 cm + 1.2 cm) ÷ 2.");
        assertThat(advice.slat(30, 5).value()).isEqualTo(41);
        assertThat(advice.strip(20).value()).isEqualTo(30);
        Habits inches = Habits.usual(UnitSystem.INCHES);
        assertThat(new Recommendations(panel.withHabits(inches), Locale.UK)
                        .strip(50.8)
                        .sentence())
                .isEqualTo(
                        "A hook-and-loop strip 2 in wide needs a hem 2⅜ in deep: 2 in + 2 × ³⁄₁₆ in of its backing.");
    }

    /** Three quarters of an inch to an inch (J. Bellairs; N. Granquist), and scrap headings 2 to 4 in (Alpacas Magazine). */
    @Test
    void hemsAndScrapHeadingsStandBesideThePublishedOnes() {
        assertThat(advice.hem(14.4).sentence())
                .isEqualTo(
                        "This hem comes out 1.4 cm deep. Published hems are 1.9 cm to 2.5 cm; a shorter one suits a small"
                                + " piece and thin cloth.");
        assertThat(advice.hem(25.4).sentence())
                .isEqualTo("This hem comes out 2.5 cm deep; published hems are 1.9 cm to 2.5 cm or more.");
        assertThat(advice.scrap(12).sentence()).contains("1.2 cm high", "published 5.1 cm to 10.2 cm high");
        Recommendations inches = new Recommendations(panel.withHabits(Habits.usual(UnitSystem.INCHES)), Locale.UK);
        assertThat(inches.hem(14.4).sentence()).contains("Published hems are ¾ in to 1 in");
        assertThat(inches.scrap(12).sentence()).contains("published 2 in to 4 in high");
    }

    @Test
    void theLibraryHasAHemOfAnInch() {
        Structure inch = Structures.builtIn().byId("inch-hem").orElseThrow();
        for (UnitSystem units : UnitSystem.values()) {
            Plan plan = Plan.of(Beginnings.with(inch, units));
            assertThat(plan.start().hem().orElseThrow().depth()).isBetween(24.0, 27.5);
        }
    }
}
