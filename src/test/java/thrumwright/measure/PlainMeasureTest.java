package thrumwright.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is read at a glance comes to the same as what is taken apart, as it is where another space stands behind it. */
class PlainMeasureTest {
    private static final String SIGNS = "0123456789012345678901234567890123456789..,/- ½";

    @Test
    void isReadAsAllLengthsAre() {
        Random random = new Random(7);
        int plain = 0;
        for (int i = 0; i < 20_000; i++) {
            String text = number(random) + " " + Unit.values()[random.nextInt(6)].symbol();
            Outcome taken = Outcome.ofLength(text + " ");
            assertThat(Outcome.ofLength(text)).as(text).isEqualTo(taken);
            plain += PlainMeasure.of(text, ' ').isPresent() ? 1 : 0;
        }
        assertThat(plain).isGreaterThan(4_000);
    }

    @Test
    void isReadAsAllSettsAre() {
        Random random = new Random(8);
        int plain = 0;
        for (int i = 0; i < 20_000; i++) {
            String text = number(random) + "/" + Unit.values()[random.nextInt(6)].symbol();
            Outcome taken = Outcome.ofSett(text + " ");
            assertThat(Outcome.ofSett(text)).as(text).isEqualTo(taken);
            plain += PlainMeasure.of(text, '/').isPresent() ? 1 : 0;
        }
        assertThat(plain).isGreaterThan(4_000);
    }

    private static String number(Random random) {
        StringBuilder number = new StringBuilder();
        for (int count = 1 + random.nextInt(6); count > 0; count--) {
            number.append(SIGNS.charAt(random.nextInt(SIGNS.length())));
        }
        return number.toString();
    }

    /** @param said the text of the measure, or why there is none */
    private record Outcome(double value, String said) {
        static Outcome ofLength(String typed) {
            try {
                Length length = Length.parse(typed);
                return new Outcome(length.mm(), length.text());
            } catch (BadMeasure e) {
                return new Outcome(-1, e.getMessage());
            }
        }

        static Outcome ofSett(String typed) {
            try {
                Sett sett = Sett.parse(typed);
                return new Outcome(sett.perMillimetre(), sett.text());
            } catch (BadMeasure e) {
                return new Outcome(-1, e.getMessage());
            }
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "12mm",
                "1 1/2 in",
                "1,5 cm",
                ".5 m",
                "5. m",
                "1234567890 mm",
                "٣ mm",
                "12 MM",
                " 12 mm",
                "12",
                "-1 mm"
            })
    void leavesTheRest(String text) {
        assertThat(PlainMeasure.of(text, ' ')).isEmpty();
    }

    @Test
    void isHeldToTheRange() {
        assertThatThrownBy(() -> Length.parse("2000 m")).isInstanceOf(BadMeasure.class);
        assertThat(Length.parse("1000 m").mm()).isEqualTo(Length.MOST);
    }
}
