package thrumwright.block;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import thrumwright.testing.WorkedPanel;

/** Every value of the worked panel in the computing method (docs/method.md), to the digit printed there. */
class WorkedPanelTest {
    private static final double PRINTED = 0.0006;
    private final Setting cord = WorkedPanel.with(WorkedPanel.cord());
    private final Setting weft = WorkedPanel.with(WorkedPanel.weft());

    @Test
    void diametersFollowFromTheCount() {
        assertThat(WorkedPanel.cord().diameter()).isCloseTo(0.786345, within(1e-6));
        assertThat(WorkedPanel.cord().diameter() / 3).isCloseTo(0.262115, within(1e-6));
        assertThat(WorkedPanel.weft().diameter()).isEqualTo(2);
        assertThat(WorkedPanel.weft().beaten()).isEqualTo(1);
    }

    @Test
    void cordOnWarp() {
        assertThat(Math.sin(cord.wrapAngle())).isCloseTo(0.471807, within(1e-6));
        assertThat(cord.space() / cord.spacing()).isCloseTo(1.113519, within(1e-6));
        assertThat(cord.turn(cord.beaten())).isCloseTo(2.592509, within(2e-6));
    }

    @Test
    void weftOnWarp() {
        assertThat(Math.sin(weft.wrapAngle())).isCloseTo(0.535904, within(1e-6));
        assertThat(weft.space() / weft.spacing()).isCloseTo(1.147374, within(1e-6));
        assertThat(weft.turn(weft.beaten())).isCloseTo(2.978851, within(2e-6));
    }

    @Test
    void orderingCord() {
        assertLength(
                new OrderingCord(Tag.of("o"), Use.of(MaterialRole.WARP_CORD), 3, Optional.empty()),
                cord,
                1112.838,
                2.359);
    }

    /** Three picks as a plain band, 790.599 + 5.185, and once round the edge end at either tie, 2π · 1.572691. */
    @Test
    void orderingCordWithoutPosts() {
        Setting bare =
                new Setting(cord.ends(), cord.spacing(), cord.warp(), cord.relaxed(), cord.beaten(), Optional.empty());
        assertLength(
                new OrderingCord(Tag.of("o"), Use.of(MaterialRole.WARP_CORD), 3, Optional.empty()),
                bare,
                805.665,
                2.359);
    }

    @Test
    void plainBands() {
        assertLength(band(12), weft, 3291.310, 12);
        assertLength(band(6), cord, 1594.160, 4.718);
        assertLength(band(6), weft, 1644.166, 6);
    }

    @ParameterizedTest
    @CsvSource({"1, 1, 541.234, 1.573", "2, 1, 1085.855, 3.145", "1, 2, 508.058, 1.573"})
    void twining(int rows, int group, double length, double height) {
        Twining twining = new Twining(Tag.of("t"), Use.of(MaterialRole.WARP_CORD), rows, group, Lean.S, false);
        assertLength(twining, cord, length, height);
    }

    @ParameterizedTest
    @CsvSource({
        "2, 1, 1, 704.953, 3",
        "3, 2, 1, 1138.011, 4",
        "4, 2, 1, 686.913, 3",
        "3, 1, 1, 467.929, 2.5",
        "2, 1, 2, 1414.013, 6"
    })
    void soumak(int over, int under, int rows, double length, double height) {
        Soumak soumak = new Soumak(Tag.of("s"), Use.of(MaterialRole.WEFT), rows, over, under, Lean.S, false);
        assertLength(soumak, weft, length, height);
    }

    @Test
    void halfHitchesOnSingleEnds() {
        assertLength(new HalfHitch(Tag.of("h"), Use.of(MaterialRole.WEFT), 1, 1), weft, 1094.576, 3);
    }

    /**
     * The method prints 960.037, which leaves out the way across each pair: both wraps lead back to where they began,
     * and from there the next pair is 2s away, not s. The 36 missing spaces of 3.333 mm are 120 mm.
     */
    @Test
    void halfHitchesOnPairs() {
        HalfHitch pairs = new HalfHitch(Tag.of("h"), Use.of(MaterialRole.WARP_CORD), 1, 2);
        assertLength(pairs, cord, 960.037 + 36 * WorkedPanel.SPACING, 1.573);
    }

    /** Two parts of 36 ends: 6 (72 − 2) · 3.824581 + 2 · 5 · 2.978850. */
    @Test
    void aBandWithASlit() {
        Amount six = new Amount.Picks(6);
        SlitBand band = new SlitBand(Tag.of("s"), Use.of(MaterialRole.WEFT), 30, six, Optional.empty());
        assertLength(band, weft, 1636.112, 6);
    }

    /** 18 groups: 18 (8.418 + 2) + 3 · 54 · 3.333 + 17 · 4.316 + 3.446. */
    @Test
    void hemstitching() {
        assertLength(hemstitching(4, 2), weft, 804.340, 0);
    }

    /**
     * A thread three to four times as long as the weaving is wide, for groups of three ends round three picks (C. Moreo,
     * ‘Hemstitching’, a weaver's glossary); three times for groups of four round two (‘Hemstitch’, Sage Creek Farm, 2011).
     */
    @ParameterizedTest
    @CsvSource({"3, 3", "4, 2"})
    void hemstitchingKeepsToThePublishedRule(int group, int picks) {
        double width = WorkedPanel.ENDS * WorkedPanel.SPACING;

        assertThat(hemstitching(group, picks).length(weft)).isBetween(3 * width, 4 * width);
    }

    private static Hemstitching hemstitching(int group, int picks) {
        return new Hemstitching(Tag.of("h"), Use.of(MaterialRole.WEFT), group, picks, Hemstitching.Round.FIRST);
    }

    private static PlainBand band(int picks) {
        return new PlainBand(
                Tag.of("b"),
                Use.of(MaterialRole.WEFT),
                PlainBand.Purpose.PLAIN,
                new Amount.Picks(picks),
                Optional.empty());
    }

    private static void assertLength(YarnBlock block, Setting setting, double length, double height) {
        assertThat(block.length(setting)).isCloseTo(length, within(PRINTED));
        assertThat(block.height(setting)).isCloseTo(height, within(PRINTED));
    }
}
