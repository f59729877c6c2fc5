package thrumwright.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import thrumwright.measure.Length;
import thrumwright.measure.Shown;
import thrumwright.measure.UnitSystem;
import thrumwright.piece.Piece;
import thrumwright.plan.Plan;
import thrumwright.testing.Pieces;

/** Numbers have the decimal sign of the place where the program runs, and what is shown can be typed. */
class NumbersByLocaleTest {
    private final Locale usual = Locale.getDefault(Locale.Category.FORMAT);

    @AfterEach
    void asBefore() {
        Locale.setDefault(Locale.Category.FORMAT, usual);
    }

    // decimal signs: Unicode CLDR, the JDK's locale data; where it is neither comma nor point, a point
    @ParameterizedTest
    @CsvSource({
        "en-GB, '14.5 cm'",
        "de-DE, '14,5 cm'",
        "fr-CA, '14,5 cm'",
        "de-CH, '14.5 cm'",
        "ar-EG-u-nu-arab, '14.5 cm'",
        "fa-IR, '14.5 cm'"
    })
    void aHeightHasTheDecimalSignOfThePlace(String place, String shown) {
        Locale.setDefault(Locale.Category.FORMAT, Locale.forLanguageTag(place));
        assertThat(new Shown(UnitSystem.METRIC).height(145)).isEqualTo(shown);
    }

    @Test
    void whatIsShownAnywhereIsReadAnywhere() {
        for (Locale locale : Locale.getAvailableLocales()) {
            Shown shown = new Shown(UnitSystem.METRIC, locale);
            assertThat(Length.parse(shown.height(45.25)).mm()).as("%s", locale).isCloseTo(45.25, within(0.8));
            assertThat(Length.parse(shown.cut(3702)).mm()).as("%s", locale).isCloseTo(3702, within(11.0));
            for (UnitSystem system : UnitSystem.values()) {
                assertThat(Length.parse(new Shown(system, locale).fine(1.25)).mm())
                        .as("%s", locale)
                        .isCloseTo(1.25, within(0.02));
            }
        }
    }

    @Test
    void theStepsOfAPieceHaveItToo() {
        Piece piece = Pieces.panel();
        String british = words(piece);
        Locale.setDefault(Locale.Category.FORMAT, Locale.GERMANY);
        String german = words(piece);
        assertThat(german).contains("1,6 mm").doesNotContain("1.6 mm").isNotEqualTo(british);
        assertThat(british).contains("1.6 mm").doesNotContain("1,6 mm");
    }

    private static String words(Piece piece) {
        StringBuilder all = new StringBuilder();
        for (Step step : StepSheet.of(Plan.of(piece), Locale.UK).steps()) {
            all.append(step.take()).append(step.sentences()).append(step.reach());
        }
        return all.toString();
    }
}
