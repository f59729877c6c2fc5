package thrumwright.yarn;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import thrumwright.measure.Length;

/** How yarn is sold. */
class SkeinTest {
    @ParameterizedTest
    @CsvSource({
        "85 m, 85000, 0",
        "100 g, 0, 100",
        "1/2 lb, 0, 226.796185",
        "4 oz, 0, 113.3980925",
        "200 yd, 182880, 0",
        "1.5 kg, 0, 1500"
    })
    void lengthsAndMassesAreRead(String typed, double mm, double grams) {
        assertThat(Skein.parse(typed).mm()).isCloseTo(mm, within(1e-6));
        assertThat(Skein.parse(typed).grams()).isCloseTo(grams, within(1e-6));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "a ball", "0 g", "100", "x g", "1000 kg"})
    void otherThingsAreRefused(String typed) {
        assertThatThrownBy(() -> Skein.parse(typed)).hasMessageContaining("says neither how long nor how heavy");
    }

    /** 225 m for 100 g: 450 m take two skeins, a millimetre more takes three. */
    @Test
    void skeinsAreCountedUp() {
        Yarn yarn = new Yarn("a", "A", new Colour(0), Fibre.WOOL, Thickness.parse("225 m/100 g"), Firmness.SOFT)
                .withSkein(Optional.of(Skein.parse("100 g")));
        assertThat(yarn.skeins(Length.parse("450 m").mm())).contains(2);
        assertThat(yarn.skeins(450_001)).contains(3);
        assertThat(yarn.withSkein(Optional.empty()).skeins(450_000)).isEmpty();
    }
}
