package thrumwright.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import thrumwright.measure.Length;
import thrumwright.measure.Sett;
import thrumwright.piece.Loom;
import thrumwright.piece.Piece;
import thrumwright.piece.Warp;
import thrumwright.plan.words.Recommendations;
import thrumwright.testing.Pieces;
import thrumwright.yarn.CountSystem;
import thrumwright.yarn.Fibre;
import thrumwright.yarn.Firmness;
import thrumwright.yarn.Thickness;

/** Worked examples from weavers' handbooks and notes, each with its source beside it. */
class PublishedChecksTest {
    private static final double INCH = 25.4;
    private static final double YARD = 914.4;
    private static final double POUND = 453.592;

    private static Piece warped(String width, String sett, String perEnd, Thickness thickness) {
        Piece panel = Pieces.panel();
        Loom loom = panel.loom();
        return panel.withWarp(new Warp(Length.parse(width), Sett.parse(sett), "cord"))
                .withLoom(loom.withWarpPerEnd(Optional.of(Length.parse(perEnd))))
                .withYarns(panel.yarns().stream()
                        .map(yarn -> yarn.id().equals("cord") ? yarn.withThickness(thickness) : yarn)
                        .toList());
    }

    /**
     * Cotton 8/2 lies 52 to the inch by Ashenhurst's rule, 0.9·√(yd/lb), and the closest plain weave of it in both directions
     * has 26 ends to the inch ('Ashenhurst's formula', Weavers' notes, faena.medievaltextiles.org, 1999). MeasuredStep so thick, hard
     * warp and hard weft come out at just that: a hard weft has as much room as its own thickness between two ends.
     */
    @Test
    void theClosestSettIsAshenhursts() {
        Thickness measured = new Thickness.Wraps(52, Length.parse("1 in"));
        Piece panel = Pieces.panel();
        Piece hard = panel.withYarns(panel.yarns().stream()
                .map(yarn -> yarn.withThickness(measured).withFirmness(Firmness.HARD))
                .toList());
        assertThat(new Recommendations(hard, Locale.UK).sett().get(1).value() * INCH)
                .isCloseTo(26, within(1e-9));
    }

    /**
     * Of firm single yarns 0.9·√(yd/lb) lie in an inch (T. R. Ashenhurst, as quoted by P. Osterkamp, 'Ashenhurst's Rule').
     * Peirce's packing makes them a little thinner: never more than a tenth.
     */
    @ParameterizedTest
    @ValueSource(doubles = {2, 4, 8, 10, 20, 30})
    void singlesAreAsThickAsAshenhurstSays(double count) {
        double inAnInch =
                INCH / new Thickness.Counted(count, 1, CountSystem.COTTON).diameter(Fibre.COTTON, Firmness.HARD);
        double rule = 0.9 * Math.sqrt(840 * count);
        assertThat(inAnInch).isBetween(rule, 1.1 * rule);
    }

    /**
     * Wound about a ruler, yarns lie about 0.7 as close as by Ashenhurst's rule (P. Osterkamp, as above): plied yarns are rounder
     * than they are full. Ours, the circle about the plies, lies between the rule and the ruler.
     */
    @ParameterizedTest
    @CsvSource({"8, 2", "10, 2", "3, 2", "5, 2", "20, 2", "8, 4"})
    void pliedYarnsLieBetweenTheRuleAndTheRuler(double count, int plies) {
        double inAnInch =
                INCH / new Thickness.Counted(count, plies, CountSystem.COTTON).diameter(Fibre.COTTON, Firmness.HARD);
        double rule = 0.9 * Math.sqrt(840 * count / plies);
        assertThat(inAnInch).isBetween(0.7 * rule, rule);
    }

    /** Cotton 3/2 runs 1,260 yd to the pound, linen 20/2 3,000, worsted 2/10 2,800 (B. Elkins, 'What do the numbers mean?'). */
    @ParameterizedTest
    @CsvSource({"3, 2, COTTON, 1260", "20, 2, LINEN_LEA, 3000", "10, 2, WORSTED, 2800"})
    void yardsInAPound(double count, int plies, CountSystem system, double yards) {
        double tex = new Thickness.Counted(count, plies, system).tex(Fibre.COTTON, Firmness.HARD);
        assertThat(tex).isCloseTo(CountSystem.YARDS_PER_POUND.tex(yards), within(yards * 1e-4));
    }

    /**
     * Wool of 12 to 18 wraps to the inch runs 250 to 350 m for 100 g, of 11 to 15 wraps 200 to 250, of 9 to 12 wraps 120 to 200
     * ('Yarn weight and wpi', a published table of yarn weights). In the middle of each ours lies within; the finest and the
     * thickest sorts of that table are up to twice as light or heavy as ours, so that masses by wraps are rough.
     */
    @ParameterizedTest
    @CsvSource({"15, 250, 350", "13, 200, 250", "10.5, 120, 200"})
    void softWoolWeighsAsItsWrapsSay(double wraps, double least, double most) {
        double tex = new Thickness.Wraps(wraps, Length.parse("1 in")).tex(Fibre.WOOL, Firmness.SOFT);
        assertThat(1e5 / tex).isBetween(least, most);
    }

    /**
     * The same table the other way round: a soft wool given by its length in 100 g, in the middle of what the table has for a
     * sort, lies as many times to the inch as the table says. By the plies of a hard cord it would be half as thick.
     */
    @ParameterizedTest
    @CsvSource({"400, 14, 24", "300, 12, 18", "225, 11, 15", "160, 9, 12"})
    void softWoolLiesOnARulerAsItsLengthSays(double metres, double least, double most) {
        double wraps = INCH / soft(metres).diameter(Fibre.WOOL, Firmness.SOFT);
        assertThat(wraps).isBetween(least, most);
    }

    /**
     * A table of wraps and yards to a pound ('Measuring wraps per inch', a spinner's table): 6–8 wraps 400–500, 9–11 800–1,000,
     * 12–15 1,200–1,800, 16–18 2,000–2,400. Its own middles lie on no square law; ours lie above each by less than a quarter.
     */
    @ParameterizedTest
    @CsvSource({"450, 7", "900, 10", "1500, 13.5", "2200, 17"})
    void softWoolByItsYardsToAPoundIsWithinAQuarterOfItsWraps(double yards, double wraps) {
        Thickness counted = new Thickness.Counted(yards, 1, CountSystem.YARDS_PER_POUND);
        assertThat(INCH / counted.diameter(Fibre.WOOL, Firmness.SOFT)).isBetween(wraps, wraps * 1.25);
    }

    /** Told by its wraps or by its length in a mass, it is the same yarn, however firm. */
    @ParameterizedTest
    @EnumSource(Firmness.class)
    void bothWaysToOneYarnAgree(Firmness firmness) {
        for (double metres : new double[] {50, 225, 600, 2000}) {
            double diameter = soft(metres).diameter(Fibre.WOOL, firmness);
            Thickness wrapped = new Thickness.Wraps(INCH / diameter, Length.parse("1 in"));
            assertThat(1e5 / wrapped.tex(Fibre.WOOL, firmness)).isCloseTo(metres, within(1e-6));
        }
        assertThat(soft(225).diameter(Fibre.WOOL, Firmness.SOFT)).isCloseTo(1.897, within(1e-3));
    }

    private static Thickness soft(double metres) {
        return new Thickness.Counted(metres, 1, CountSystem.METRES_PER_100_GRAMS);
    }

    /**
     * Cotton 8/2 of 3,360 yd to the pound lies about 36½ to the inch on a ruler, 0.7 × 52 (P. Osterkamp, as above): weighed by its
     * wraps it is no lighter than by its count, and at most two thirds heavier, since two plies fill less of their circle than six.
     */
    @Test
    void hardCottonWeighsAboutAsItsWrapsSay() {
        double byWraps = new Thickness.Wraps(36.5, Length.parse("1 in")).tex(Fibre.COTTON, Firmness.HARD);
        double byCount = new Thickness.Counted(8, 2, CountSystem.COTTON).tex(Fibre.COTTON, Firmness.HARD);
        assertThat(byWraps / byCount).isBetween(1.0, 5.0 / 3);
    }

    /**
     * Four table cloths 48 in wide at 48 to the inch: 2,304 ends of 7½ yd are 17,280 yd, of a yarn of 8,400 yd to the pound 2.057 lb
     * (J. Weaves, 'Two trains left the station', 2014).
     */
    @Test
    void warpOfThePublishedTableCloths() {
        Piece cloths =
                warped("48 in", "48/in", "7 1/2 yd", new Thickness.Counted(8400, 1, CountSystem.YARDS_PER_POUND));
        assertThat(cloths.warp().ends()).isEqualTo(2304);
        Plan plan = Plan.of(cloths);
        assertThat(plan.warpYarn() / YARD).isCloseTo(17_280, within(1e-6));
        assertThat(plan.warpYarn() / 1e6 * cloths.warpYarn().tex() / POUND).isCloseTo(2.057, within(0.0005));
    }

    /**
     * A runner 19½ in wide at 20 to the inch has 390 ends, of 3½ yd each 1,365 yd ('Calculate yarn', All Fiber Arts); a scarf 7 in
     * wide at 8 has 56, of 90 in each 140 yd ('Weaving calculations for balanced weave', a weaver's journal).
     */
    @ParameterizedTest
    @CsvSource({"19 1/2 in, 20/in, 3 1/2 yd, 390, 1365", "7 in, 8/in, 90 in, 56, 140"})
    void warpOfPublishedProjects(String width, String sett, String perEnd, int ends, double yards) {
        Piece project = warped(width, sett, perEnd, new Thickness.Counted(8, 2, CountSystem.COTTON));
        assertThat(project.warp().ends()).isEqualTo(ends);
        assertThat(Plan.of(project).warpYarn() / YARD).isCloseTo(yards, within(1e-6));
    }
}
