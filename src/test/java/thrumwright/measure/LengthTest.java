package thrumwright.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import thrumwright.testing.Seeds;

class LengthTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "12 mm | 12",
                "1.5 cm | 15",
                "1,5 cm | 15",
                "2m | 2000",
                "1/2 in | 12.7",
                "½ in | 12.7",
                "1 1/2 in | 38.1",
                "1½\" | 38.1",
                "3⅜ inches | 85.725",
                "1 yd 4 in | 1016",
                "5 ft 6 in | 1676.4",
                "0 mm | 0",
                ".5 cm | 5",
                ",5 cm | 5",
                "1¹³⁄₁₆ in | 46.0375",
                "1 ¹³⁄₁₆ in | 46.0375",
                "¹³⁄₁₆\" | 20.6375",
                "1 13⁄16 in | 46.0375",
                "13⁄16 in | 20.6375",
                "13∕16 in | 20.6375",
                "³/₁₆ in | 4.7625",
                "⅟₁₆ in | 1.5875",
                "¼ in | 6.35",
                "¾ in | 19.05",
                "⅛ in | 3.175",
                "2⅝ in | 66.675",
                "2 ⅞ in | 73.025",
                "1 yd 4½ in | 1028.7",
                "2 yd ³⁄₁₆ in | 1833.5625",
                "⅖ m | 400",
                "1⅓ yd | 1219.2",
                "half inch | 12.7",
                "Half an inch | 12.7",
                "a quarter of an inch | 6.35",
                "three-quarter inch | 19.05",
                "2 and a half inches | 63.5",
                "1 and three quarters in | 44.45"
            })
    void readsWhatWeaversType(String typed, double mm) {
        assertThat(Length.parse(typed).mm()).isCloseTo(mm, within(1e-9));
        assertThat(Length.parse(typed).text()).isEqualTo(typed.strip());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                " ",
                "12",
                "mm",
                "-3 mm",
                "−3 mm",
                "1/0 in",
                "1.5 1/2 in",
                "12 parsecs",
                "1 in 4 yd",
                "1 in 2 in",
                "NaN mm",
                "1e9 mm",
                "9999 m",
                "12 mm mm",
                "1//2 in",
                "¹³ in",
                "1¹³ in",
                "₁₆ in",
                "1⁄ in",
                "¹³⁄₀ in",
                "1.5¹⁄₂ in",
                "12 cm²",
                "1.234,5 mm"
            })
    void refusesTheRestWithASentence(String typed) {
        assertThatThrownBy(() -> Length.parse(typed))
                .isInstanceOf(BadMeasure.class)
                .hasMessageMatching("(?s).*[.]");
    }

    @Test
    void aBareNumberTakesTheUsualUnitAndKeepsIt() {
        Length length = Length.parse("1 1/2", Unit.INCH);
        assertThat(length.mm()).isCloseTo(38.1, within(1e-9));
        assertThat(Length.parse(length.text())).isEqualTo(length);
    }

    @Test
    void equalMeansTypedAlike() {
        assertThat(Length.parse("1 cm")).isNotEqualTo(Length.parse("10 mm")).isEqualTo(Length.parse("1  cm"));
        assertThat(Length.parse("1\u00a0cm"))
                .isEqualTo(Length.parse("1\u202fcm"))
                .isEqualTo(Length.parse("1 cm"));
        assertThat(Sett.parse("30/10\u00a0cm")).isEqualTo(Sett.parse("30/10 cm"));
    }

    @ParameterizedTest
    @CsvSource({
        "3/cm, 3.3333333333",
        "8/in, 3.175",
        "8 per inch, 3.175",
        "30/10 cm, 3.3333333333",
        "4/½ in, 3.175",
        "25 ends/10 cm, 4",
        "7½/in, 3.3866666667"
    })
    void readsSetts(String typed, double spacing) {
        assertThat(Sett.parse(typed).spacing()).isCloseTo(spacing, within(1e-9));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"", "3", "3/", "/cm", "three/cm", "3/0 cm", "0/cm", "1000/cm", "3/kg", "1//2 in", "3/ /2 in"})
    void refusesOtherSetts(String typed) {
        assertThatThrownBy(() -> Sett.parse(typed)).isInstanceOf(BadMeasure.class);
    }

    @Test
    void showsInTheUnitsOfThePiece() {
        Shown metric = new Shown(UnitSystem.METRIC);
        Shown inches = new Shown(UnitSystem.INCHES);
        assertThat(metric.height(2.359)).isEqualTo("2.4 mm");
        assertThat(metric.height(14.39)).isEqualTo("1.4 cm");
        assertThat(metric.cut(1450)).isEqualTo("145 cm");
        assertThat(metric.cut(3000)).isEqualTo("300 cm");
        assertThat(metric.cut(3700)).isEqualTo("3.7 m");
        assertThat(metric.cut(3701)).isEqualTo("3.71 m");
        assertThat(inches.height(12.7)).isEqualTo("½ in");
        assertThat(inches.height(20.6)).isEqualTo("¹³⁄₁₆ in");
        assertThat(inches.cut(25.4 * 40.5)).isEqualTo("40½ in");
        assertThat(inches.cut(25.4 * 80)).isEqualTo("80 in");
        assertThat(metric.halves(6.5)).isEqualTo("6½");
        assertThat(new Shown(UnitSystem.METRIC, Locale.GERMANY).height(145)).isEqualTo("14,5 cm");
    }

    /** What is cut by the metre is said in metres, wherever it is said; inches stay inches. */
    @Test
    void cutsOfMoreThanThreeMetresAreInMetres() {
        for (double mm = 1; mm < 30_000; mm += 37.3) {
            assertThat(new Shown(UnitSystem.METRIC).cut(mm)).endsWith(mm > 3000 ? " m" : " cm");
            assertThat(new Shown(UnitSystem.INCHES).cut(mm)).matches("[0-9]*[½¼¾⅛⅜⅝⅞]? in");
        }
    }

    /** Cutting by what is shown must never fall short. */
    @ParameterizedTest
    @ValueSource(strings = {"METRIC", "INCHES"})
    void aCutIsNeverShownShorterThanItIs(UnitSystem system) {
        RandomGenerator random = RandomGeneratorFactory.of("L64X128MixRandom").create(3);
        Shown shown = new Shown(system);
        for (int i = 0; i < 5000; i++) {
            double mm = random.nextDouble(1, 20_000);
            assertThat(Length.parse(shown.cut(mm)).mm())
                    .isGreaterThan(mm - 0.011)
                    .isLessThan(mm + 26);
        }
    }

    /** Whatever a length is shown as can be copied and typed back. */
    @ParameterizedTest
    @CsvSource({"METRIC, en-GB", "METRIC, de-DE", "INCHES, en-GB", "INCHES, de-DE", "INCHES, fr-CA"})
    void whatIsShownCanBeTypedBack(UnitSystem system, String place) {
        Shown shown = new Shown(system, Locale.forLanguageTag(place));
        RandomGenerator random = RandomGeneratorFactory.of("L64X128MixRandom").create(16);
        for (int i = 0; i < 20_000; i++) {
            double mm = Math.pow(10, random.nextDouble(-1, 5));
            typedBack(shown.height(mm), mm, system == UnitSystem.INCHES ? 25.4 / 32 : 0.5);
            typedBack(shown.cut(mm), mm, system == UnitSystem.INCHES ? 25.4 : 10);
            typedBack(shown.total(mm), mm, system == UnitSystem.INCHES ? 914.4 / 20 : 50);
            typedBack(shown.fine(mm), mm, system == UnitSystem.INCHES ? 0.0127 : 0.005);
        }
        for (int sixteenths = 1; sixteenths < 400; sixteenths++) {
            double mm = sixteenths * 25.4 / 16;
            assertThat(Length.parse(new Shown(UnitSystem.INCHES).height(mm)).mm())
                    .isCloseTo(mm, within(1e-9));
        }
    }

    /** @param within half of what is told apart, or all of it where it is rounded up, mm */
    private static void typedBack(String said, double mm, double within) {
        assertThat(Length.parse(said).mm()).as(said).isCloseTo(mm, within(within + 1e-6));
    }

    /** What was typed is kept; what is seen has the decimal sign of the place. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "12.5 cm | 12,5 cm | 12.5 cm",
                "12,5 cm | 12,5 cm | 12.5 cm",
                ".5 cm | ,5 cm | .5 cm",
                "1 1/2 in | 1 1/2 in | 1 1/2 in",
                "30/10 cm | 30/10 cm | 30/10 cm",
                "7.5 wraps in 2,5 cm | 7,5 wraps in 2,5 cm | 7.5 wraps in 2.5 cm"
            })
    void theDecimalSignThatIsSeenIsThatOfThePlace(String typed, String german, String british) {
        assertThat(new Shown(UnitSystem.METRIC, Locale.GERMANY).typed(typed)).isEqualTo(german);
        assertThat(new Shown(UnitSystem.METRIC, Locale.UK).typed(typed)).isEqualTo(british);
    }

    @Test
    void farTooMuchTypedIsRefusedAtOnce() {
        String raised = "\u00b9".repeat(10_000) + " mm";
        assertThatThrownBy(() -> Length.parse(raised))
                .isInstanceOf(BadMeasure.class)
                .hasMessageContaining("characters");
    }

    /** Whatever the program makes up is the same when it is read from the file that it was written to. */
    @Test
    void whatIsMadeUpIsWhatItSays() {
        RandomGenerator random = RandomGeneratorFactory.of("L64X128MixRandom").create(31);
        for (int i = 0; i < Seeds.of(1_000_000, 20_000); i++) {
            Unit unit = Unit.values()[random.nextInt(Unit.values().length)];
            double amount = random.nextBoolean() ? random.nextInt(2000) / 16.0 : random.nextDouble(0, 1000);
            Length made = Length.of(amount, unit);
            assertThat(Length.parse(made.text()).mm()).as(made.text()).isEqualTo(made.mm());
            assertThat(made.mm()).isCloseTo(amount * unit.millimetres(), within(0.0005 * unit.millimetres() + 1e-9));
        }
    }

    @ParameterizedTest
    @CsvSource({"0.0625, ¹⁄₁₆ in", "2.1875, 2³⁄₁₆ in", "0.5, ½ in", "3, 3 in", "0.1, 0.1 in"})
    void sixteenthsOfAnInchAreFractions(double inches, String text) {
        Length made = Length.of(inches, Unit.INCH);
        assertThat(made.text()).isEqualTo(text);
        assertThat(made.mm()).isEqualTo(inches * 25.4);
    }

    /** Back and forth between the units of a piece, what was typed stays what it is. */
    @Test
    void aThousandTogglesOfUnitsChangeNothing() {
        Length typed = Length.parse("1 3/16 in");
        double before = typed.mm();
        for (int i = 0; i < 1000; i++) {
            Shown shown = new Shown(i % 2 == 0 ? UnitSystem.METRIC : UnitSystem.INCHES);
            typed = Length.parse(shown.typed(typed.text()));
        }
        assertThat(typed.mm()).isEqualTo(before);
    }
}
