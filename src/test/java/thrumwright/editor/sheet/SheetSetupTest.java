package thrumwright.editor.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import thrumwright.measure.Length;
import thrumwright.output.SheetSection;
import thrumwright.output.page.PageSetup;
import thrumwright.output.page.Paper;

class SheetSetupTest {
    /** Which countries use Letter: Unicode CLDR, supplemental data, paperSize “US-Letter”. */
    @ParameterizedTest
    @CsvSource({"en-US, LETTER", "fr-CA, LETTER", "es-MX, LETTER", "en-GB, A4", "de-DE, A4", "sv-SE, A4", "eo, A4"})
    void thePaperIsTheOneThatIsUsualWhereTheWeaverLives(String language, Paper paper) {
        assertThat(SheetChoice.usual(Locale.forLanguageTag(language)).paper()).isEqualTo(paper);
    }

    @Test
    void lengthsMayBeInAnyUnitAndAreKeptAsTyped() {
        SheetChoice choice =
                SheetChoice.usual(Locale.UK).withMargin(Length.parse("3/4 in")).withDistance(Length.parse("150 cm"));
        PageSetup setup = choice.look().setup();
        assertThat(setup.margin()).isCloseTo(19.05, within(1e-9));
        assertThat(setup.distance()).isCloseTo(1.5, within(1e-9));
        assertThat(choice.margin().text()).isEqualTo("3/4 in");
    }

    @Test
    void whatIsOutOfRangeIsRefusedAndChangesNothing() {
        SheetSetup setup = new SheetSetup(SheetChoice.usual(Locale.UK));
        AtomicInteger told = new AtomicInteger();
        setup.listen(told::incrementAndGet);
        assertThatThrownBy(() -> setup.change(choice -> choice.withMargin(Length.parse("5 cm")), null))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("Margins are 5 to 40 mm wide, or ¼ to 1½ in.");
        assertThatThrownBy(() -> setup.change(choice -> choice.withDistance(Length.parse("3 m")), null))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("The sheet hangs 0.4 to 2 m away, or 16 in to 6½ ft.");
        assertThat(setup.choice()).isEqualTo(SheetChoice.usual(Locale.UK));
        assertThat(told).hasValue(0);
    }

    @Test
    void whatIsTypedInOneGoCanBeTakenBackInOneGo() {
        SheetSetup setup = new SheetSetup(SheetChoice.usual(Locale.UK));
        Object run = new Object();
        setup.change(choice -> choice.withMargin(Length.parse("2 cm")), run);
        setup.change(choice -> choice.withMargin(Length.parse("25 mm")), run);
        setup.dropRun(run);
        assertThat(setup.choice().margin().text()).isEqualTo("14 mm");

        setup.change(choice -> choice.withMargin(Length.parse("2 cm")), run);
        setup.endRun();
        setup.dropRun(run);
        assertThat(setup.choice().margin().text()).isEqualTo("2 cm");
    }

    @Test
    void sectionsAreLeftOutOneByOneButTheLastStays() {
        SheetChoice choice = SheetChoice.usual(Locale.UK);
        assertThat(choice.sections()).containsExactly(SheetSection.CUTS, SheetSection.CARDS, SheetSection.BOOKLET);
        SheetChoice cards = choice.with(SheetSection.CUTS, false).with(SheetSection.BOOKLET, false);
        assertThat(cards.look().sections()).containsExactly(SheetSection.CARDS);
        assertThat(cards.with(SheetSection.CARDS, false)).isEqualTo(cards);
        assertThat(cards.with(SheetSection.RECORD, true).sections())
                .containsExactly(SheetSection.CARDS, SheetSection.RECORD);
    }
}
