package thrumwright.yarn;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import thrumwright.measure.Length;
import thrumwright.measure.Refused;

/** Several strands as one weft. */
class BundleTest {
    private static final Colour TEAL = Colour.parse("#1f5a66");
    private static final Colour MIST = Colour.parse("#d8c9b0");

    private static Yarn wool(String id, String thickness, Firmness firmness) {
        return new Yarn(id, id, TEAL, Fibre.WOOL, Thickness.parse(thickness), firmness);
    }

    private static Yarn of(Strands... parts) {
        return Yarn.wound("bundle", "Bundle", new Bundle(List.of(parts)));
    }

    /** By hand: 13 wraps in 1 cm are 0.769231 mm; times R(5) = 2.7013 that is 2.077923, half of it beaten. */
    @Test
    void fiveStrandsOfAFineWool() {
        Yarn fine = wool("fine", "13 wraps in 1 cm", Firmness.SOFT);
        Yarn five = of(new Strands(fine, 5));
        assertThat(five.diameter()).isCloseTo(2.077923, within(1e-6));
        assertThat(five.beaten()).isCloseTo(1.038962, within(1e-6));
        assertThat(five.tex()).isCloseTo(5 * fine.tex(), within(1e-9));
        assertThat(five.firmness()).isEqualTo(Firmness.SOFT);
        assertThat(five.plies()).isEqualTo(5);
    }

    /** By hand: √((3·0.591716 + 4)/4) = 1.201577, times R(4) = 2.4142; κ = (3·0.295858 + 4)/(3·0.591716 + 4) = 0.846311. */
    @Test
    void strandsOfUnequalYarns() {
        Yarn fine = wool("fine", "13 wraps in 1 cm", Firmness.SOFT);
        Yarn four = of(new Strands(fine, 3), new Strands(wool("stout", "2 mm", Firmness.HARD), 1));
        assertThat(four.diameter()).isCloseTo(2.900847, within(2e-6));
        assertThat(four.beaten() / four.diameter()).isCloseTo(0.846311, within(1e-6));
        assertThat(four.firmness()).isEqualTo(Firmness.MEDIUM);
    }

    /**
     * A published tapestry has bundles of five strands of a worsted of 3,360 yd to the pound in 8 ends an inch of 12/12 seine
     * twine (‘Exploring images for tapestry weaving’, 2020), and a weft should be as thick as the space between the ends (K.
     * Todd-Hooker, ‘Choosing warp and weft’, American Tapestry Alliance).
     */
    @Test
    void fiveStrandsOfWorstedFillTheGapAtEightEndsAnInch() {
        Yarn twine = new Yarn("warp", "warp", MIST, Fibre.COTTON, Thickness.parse("12/12 Ne"), Firmness.HARD);
        Yarn five = of(new Strands(wool("worsted", "3360 yd/lb", Firmness.MEDIUM), 5));
        double gap = 25.4 / 8 - twine.diameter();
        assertThat(five.diameter() / gap).isBetween(0.95, 1.1);
    }

    /** A strand by itself is that yarn. */
    @Test
    void oneStrandIsItsYarn() {
        Yarn fine = wool("fine", "8/2 Nm", Firmness.MEDIUM);
        Yarn one = of(new Strands(fine, 1));
        assertThat(one.diameter()).isEqualTo(fine.diameter());
        assertThat(one.beaten()).isCloseTo(fine.beaten(), within(1e-12));
        assertThat(one.tex()).isEqualTo(fine.tex());
        assertThat(one.colour()).isEqualTo(fine.colour());
    }

    @Test
    void aSampleOfTheBundleOverrulesItsStrands() {
        Yarn five = of(new Strands(wool("fine", "13 wraps in 1 cm", Firmness.SOFT), 5));
        assertThat(five.withSample(Optional.of(new Sample(10, Length.parse("9 mm"))))
                        .beaten())
                .isCloseTo(0.9, within(1e-12));
    }

    /** Half black, half white: the mean of the light is 0.5, which sRGB writes as 188 (IEC 61966-2-1). */
    @Test
    void coloursBlendByTheirLight() {
        Yarn black = wool("black", "1 mm", Firmness.SOFT).withColour(Colour.parse("#000000"));
        Yarn white = wool("white", "1 mm", Firmness.SOFT).withColour(Colour.parse("#ffffff"));
        assertThat(of(new Strands(black, 2), new Strands(white, 2)).colour().text())
                .isEqualTo("#bcbcbc");
    }

    @Test
    void strandsOfOneYarnLieApart() {
        Yarn teal = wool("teal", "1 mm", Firmness.SOFT);
        Yarn mist = wool("mist", "1 mm", Firmness.SOFT).withColour(MIST);
        List<Colour> laid = new Bundle(List.of(new Strands(teal, 3), new Strands(mist, 2))).colours();
        assertThat(laid).hasSize(5).containsExactly(TEAL, MIST, TEAL, MIST, TEAL);
        List<Colour> all = new ArrayList<>(laid);
        all.removeIf(TEAL::equals);
        assertThat(all).hasSize(2);
    }

    @Test
    void whatCannotBeWoundIsRefused() {
        Yarn fine = wool("fine", "1 mm", Firmness.SOFT);
        Yarn bundle = of(new Strands(fine, 2));
        assertThatThrownBy(() -> new Strands(fine, 0))
                .isInstanceOf(Refused.class)
                .hasMessage("“0” can't be so many strands; give 1 to 60.");
        assertThatThrownBy(() -> new Strands(bundle, 1))
                .hasMessage("“Bundle” is wound from strands itself; wind from single yarns.");
        assertThatThrownBy(() -> Yarn.wound("fine", "Fine", new Bundle(List.of(new Strands(fine, 1)))))
                .hasMessage("“Fine” can't be wound from itself; choose another yarn.");
        assertThatThrownBy(() -> of(new Strands(fine, 1), new Strands(fine, 2)))
                .hasMessage("“fine” is there twice; give all its strands in one place.");
        assertThatThrownBy(() -> new Bundle(List.of())).hasMessageContaining("at least one strand");
    }
}
