package thrumwright.yarn;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import thrumwright.measure.UnitSystem;

class YarnTest {
    /** 30 tex = Ne 19.7; Ne 10 = worsted 15; 8/2 cotton = 3360 yd/lb (ASTM D2260). */
    @Test
    void countsAgree() {
        assertThat(CountSystem.COTTON.tex(19.7)).isCloseTo(30, within(0.05));
        assertThat(CountSystem.COTTON.tex(10)).isCloseTo(CountSystem.WORSTED.tex(15), within(0.001));
        double eightTwo = new Thickness.Counted(8, 2, CountSystem.COTTON).tex(Fibre.COTTON, Firmness.HARD);
        assertThat(eightTwo).isCloseTo(CountSystem.YARDS_PER_POUND.tex(3360), within(0.001));
    }

    /** The factors of ASTM D2260, worked anew from the definitions in yards, pounds and metres. */
    @Test
    void factorsFollowFromTheDefinitions() {
        double texOfAYardPerPound = 453.59237 / 0.9144 * 1000;
        assertThat(CountSystem.YARDS_PER_POUND.tex(1)).isCloseTo(texOfAYardPerPound, within(1.0));
        assertThat(CountSystem.COTTON.tex(1)).isCloseTo(texOfAYardPerPound / 840, within(1e-3));
        assertThat(CountSystem.WORSTED.tex(1)).isCloseTo(texOfAYardPerPound / 560, within(1e-3));
        assertThat(CountSystem.LINEN_LEA.tex(1)).isCloseTo(texOfAYardPerPound / 300, within(5e-3));
        assertThat(CountSystem.WOOLLEN_RUN.tex(1)).isCloseTo(texOfAYardPerPound / 1600, within(1e-3));
        assertThat(CountSystem.METRIC.tex(1)).isEqualTo(1000);
        assertThat(CountSystem.DENIER.tex(9)).isCloseTo(1, within(1e-12));
        assertThat(CountSystem.METRES_PER_100_GRAMS.tex(100)).isEqualTo(1000);
    }

    /** With Ne 1 cotton the rule gives 1/28 inch within 0.5 % (F. T. Peirce, J. Textile Inst. 28 (1937) T45). */
    @Test
    void cottonOfCountOne() {
        double inches = new Thickness.Counted(1, 1, CountSystem.COTTON).diameter(Fibre.COTTON, Firmness.HARD) / 25.4;
        assertThat(inches).isCloseTo(1.0 / 28, within(0.005 / 28));
    }

    /** Ne 10 at 0.91 g/cm³ is 0.2874 mm thick (textbook exercise, solved examination paper): 1.52 × 0.60 ≈ 0.912. */
    @Test
    void cottonOfCountTen() {
        double diameter = new Thickness.Counted(10, 1, CountSystem.COTTON).diameter(Fibre.COTTON, Firmness.HARD);
        assertThat(diameter * Math.sqrt(1.52 * 0.60 / 0.91)).isCloseTo(0.2874, within(5e-5));
    }

    /** As weavers write them; what is missing is what such a yarn is sold by (common practice, no source). */
    @ParameterizedTest
    @CsvSource({
        "8/2, COTTON, METRIC, 8/2 Ne",
        "20/6, COTTON, INCHES, 20/6 Ne",
        "12/15, COTTON, METRIC, 12/15 Ne",
        "20/2, WOOL, METRIC, 20/2 Nm",
        "20/2, WOOL, INCHES, 20/2 worsted",
        "16/2, LINEN, METRIC, 16/2 lea",
        "60/2, SILK, INCHES, 60/2 Nm",
        "10 wpi, WOOL, METRIC, 10 wraps in 1 in",
        "12 WPI, WOOL, INCHES, 12 wraps in 1 in",
        "8/2 cotton, WOOL, METRIC, 8/2 Ne",
        "1800 ypp, WOOL, INCHES, 1800 yd/lb",
        "1.5, WOOL, METRIC, 1.5 mm",
        "1/16, WOOL, INCHES, 1/16 in",
        "0.8 mm, COTTON, INCHES, 0.8 mm"
    })
    void readsNumbersAsWeaversWriteThem(String typed, Fibre fibre, UnitSystem units, String meant) {
        assertThat(Thickness.parse(typed, fibre, units).text()).isEqualTo(meant);
        assertThat(Thickness.parse(meant).text()).isEqualTo(meant);
    }

    /** Circles in a circle, n = 5, 7, 19: 2.7013, 3, 4.8637 (published packing table). */
    @ParameterizedTest
    @CsvSource({"5, 2.7013", "7, 3", "19, 4.8637"})
    void bundles(int strands, double ratio) {
        assertThat(Packing.ratio(strands)).isEqualTo(ratio);
    }

    /** The closed forms for three, four, five and thirteen circles, as a check on the table. */
    @Test
    void bundlesWithAClosedForm() {
        assertThat(Packing.ratio(3)).isCloseTo(1 + 2 / Math.sqrt(3), within(5e-5));
        assertThat(Packing.ratio(4)).isCloseTo(1 + Math.sqrt(2), within(5e-5));
        assertThat(Packing.ratio(5)).isCloseTo(1 + 1 / Math.sin(Math.PI / 5), within(5e-5));
        assertThat(Packing.ratio(13)).isCloseTo(2 + Math.sqrt(5), within(5e-5));
        assertThat(Packing.ratio(19)).isCloseTo(1 + Math.sqrt(2) + Math.sqrt(6), within(5e-5));
    }

    @Test
    void biggerBundlesAreNeverThinner() {
        for (int n = 2; n < 60; n++) {
            assertThat(Packing.ratio(n)).isGreaterThanOrEqualTo(Packing.ratio(n - 1));
        }
    }
}
