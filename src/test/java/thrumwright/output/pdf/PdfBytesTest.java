package thrumwright.output.pdf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PdfBytesTest {
    @ParameterizedTest
    @CsvSource({
        "0, 0",
        "1, 1",
        "-1, -1",
        "0.5, .5",
        "-0.25, -.25",
        "0.05, .05",
        "10.1, 10.1",
        "100.99, 100.99",
        "0.004, 0",
        "-0.004, 0",
        "0.996, 1",
        "12345.67, 12345.67"
    })
    void numbersAreAsShortAsCanBe(double number, String written) {
        assertThat(new PdfBytes(1).number(number).toString()).isEqualTo(written + " ");
    }

    @Test
    void everyNumberIsWithinHalfAHundredth() {
        RandomGenerator random = RandomGeneratorFactory.of("L64X128MixRandom").create(7);
        for (int i = 0; i < 20_000; i++) {
            double number = random.nextGaussian() * Math.pow(10, random.nextInt(6));
            String written = new PdfBytes(1).number(number).toString();
            assertThat(written).matches("-?\\d*(\\.\\d{1,2})? ");
            assertThat(Double.parseDouble(written)).isCloseTo(number, within(0.005 + 1e-9));
        }
    }

    @Test
    void sharesKeepThreeDigits() {
        assertThat(new PdfBytes(1)
                        .share(1 / 255.0)
                        .share(0.9996)
                        .share(-0.707107)
                        .toString())
                .isEqualTo(".004 1 -.707 ");
    }

    @Test
    void textsAreAsciiOrUtf16() {
        assertThat(new PdfBytes(1).text("Ab)").toString()).isEqualTo("<416229>");
        assertThat(new PdfBytes(1).text("½").toString()).isEqualTo("<FEFF00BD>");
    }
}
