package thrumwright.block;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import thrumwright.measure.BadMeasure;

class SlitBandTest {
    private static final Setting SETTING = new Setting(72, 10 / 3.0, 0.786345, 2, 1, Optional.empty());

    private static SlitBand band(int endsPerPart, int picks) {
        return new SlitBand(
                Tag.of("s"),
                Use.of(MaterialRole.WEFT),
                endsPerPart,
                new Amount.Picks(picks),
                Optional.of(Shed.OVER_FIRST));
    }

    /**
     * T. M. Scanlin, ‘Finishing Tapestry with Hem or Turn-back’, 2015: two slits in a landscape of 19 in, 3 to 8 in apart. At 8 ends an
     * inch that is 152 ends.
     */
    @Test
    void aTurnBackOfNineteenInchesHasTwoSlits() {
        List<Integer> parts = band(50, 8).parts(19 * 8);

        assertThat(parts).containsExactly(51, 51, 50);
        assertThat(parts).allSatisfy(part -> assertThat(part / 8.0).isBetween(3.0, 8.0));
    }

    /** By hand: D = 1.786345, ℓ = 3.824581, turn(1) = 2.978850; 3 picks in two parts of 36 ends. */
    @Test
    void eachPartIsWovenByItself() {
        double each = 3 * 35 * 3.824581 + 2 * 2.978850;

        assertThat(band(30, 3).length(SETTING)).isCloseTo(2 * each, within(1e-3));
        assertThat(band(30, 3).lengthOfEach(SETTING)).isCloseTo(each, within(1e-3));
        assertThat(band(30, 3).lengths(SETTING)).isEqualTo(2);
    }

    /** With an odd number of ends to its left a part begins in the other way, so that the whole warp is in one shed. */
    @Test
    void allPartsLieInOneShed() {
        Setting few = new Setting(10, 4, 1, 1, 1, Optional.empty());
        SlitBand band = band(3, 1);

        assertThat(band.parts(10)).containsExactly(4, 3, 3);
        List<Boolean> front = band.strands(few, band.rows(few, Course.beginning())).stream()
                .flatMap(strand -> strand.legs().get(0).route().visits().stream())
                .map(visit -> visit.sense() == thrumwright.cord.Sense.CLOCKWISE)
                .toList();
        for (int i = 1; i < front.size(); i++) {
            assertThat(front.get(i)).isNotEqualTo(front.get(i - 1));
        }
    }

    /** A part has at least two ends, and a narrow warp none but one. */
    @Test
    void aNarrowWarpIsNotDivided() {
        assertThat(band(30, 3).parts(3)).containsExactly(3);
        assertThat(band(2, 3).parts(7)).containsExactly(3, 2, 2);
        assertThatThrownBy(() -> band(1, 3))
                .isInstanceOf(BadMeasure.class)
                .hasMessage("Between two slits lie 2 to 500 warp ends, not 1.");
    }
}
