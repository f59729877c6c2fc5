package thrumwright.editor.edit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import thrumwright.block.HemFold;
import thrumwright.block.Support;
import thrumwright.block.Tag;
import thrumwright.block.Turning;
import thrumwright.measure.BadMeasure;
import thrumwright.measure.Length;
import thrumwright.measure.Phrases;
import thrumwright.measure.UnitSystem;

class HemEditsTest {
    private final HemEdits edits = new HemEdits(Phrases.of("thrumwright.editor.texts", Locale.UK));
    private final HemFold once = HemFold.once(Tag.of("fold"));

    private static Optional<Length> of(String typed) {
        return Optional.of(Length.parse(typed));
    }

    @Test
    void anotherWayToTurnBringsUsualSizes() {
        assertThat(HemEdits.turned(once, Turning.Kind.TWICE, UnitSystem.METRIC).firstTurn())
                .isEqualTo(of("5 mm"));
        assertThat(HemEdits.turned(once, Turning.Kind.TWICE, UnitSystem.INCHES).firstTurn())
                .isEqualTo(of("1/4 in"));
        assertThat(HemEdits.turned(once, Turning.Kind.FACED, UnitSystem.METRIC).turning())
                .isEqualTo(new Turning.Faced(Length.parse("25 mm"), Optional.empty()));
        assertThat(HemEdits.turned(once, Turning.Kind.MITRED, UnitSystem.METRIC).mitred())
                .isTrue();
    }

    @Test
    void theWayItIsTurnedAlreadyKeepsItsSizes() {
        HemFold twice = HemEdits.withFirstTurn(once, of("9 mm"));

        assertThat(HemEdits.turned(twice, Turning.Kind.TWICE, UnitSystem.METRIC))
                .isEqualTo(twice);
    }

    @Test
    void aHemThatLosesItsFirstTurnOrBandIsTurnedOnce() {
        HemFold twice = HemEdits.withFirstTurn(once, of("9 mm"));
        HemFold faced = HemEdits.withBandWidth(once, of("3 cm"));

        assertThat(HemEdits.withFirstTurn(twice, Optional.empty())).isEqualTo(once);
        assertThat(HemEdits.withBandWidth(faced, Optional.empty())).isEqualTo(once);
        // an empty field of another way to turn says nothing
        assertThat(HemEdits.withFirstTurn(faced, Optional.empty())).isEqualTo(faced);
        assertThat(HemEdits.withBandWidth(twice, Optional.empty())).isEqualTo(twice);
    }

    @Test
    void aBandKeepsItsThicknessWhenItsWidthChanges() {
        HemFold thick = edits.withBandThickness(HemEdits.withBandWidth(once, of("3 cm")), of("2 mm"));

        assertThat(HemEdits.bandThickness(HemEdits.withBandWidth(thick, of("4 cm"))))
                .isEqualTo(of("2 mm"));
    }

    @Test
    void aThicknessNeedsAWidthFirst() {
        assertThatThrownBy(() -> edits.withBandThickness(once, of("2 mm")))
                .isInstanceOf(BadMeasure.class)
                .hasMessage("Say first how wide the band is.");
        assertThatThrownBy(() -> edits.withSlatThickness(once, of("5 mm")))
                .isInstanceOf(BadMeasure.class)
                .hasMessage("Say first how wide the slat is.");
        assertThat(edits.withBandThickness(once, Optional.empty())).isEqualTo(once);
        assertThat(edits.withSlatThickness(once, Optional.empty())).isEqualTo(once);
    }

    @Test
    void anotherSupportIsAsWideAsTheOneBefore() {
        HemFold bar = HemEdits.withSupportSize(once, of("15 mm"));

        assertThat(bar.support()).contains(new Support.RoundBar(Length.parse("15 mm")));
        assertThat(HemEdits.withSupport(bar, Optional.of(Support.Kind.SLAT), UnitSystem.METRIC)
                        .support())
                .contains(new Support.Slat(Length.parse("15 mm"), Length.parse("5 mm")));
        assertThat(HemEdits.withSupport(once, Optional.of(Support.Kind.STRIP), UnitSystem.INCHES)
                        .support())
                .contains(new Support.Strip(Length.parse("3/4 in")));
        assertThat(HemEdits.withSupport(bar, Optional.empty(), UnitSystem.METRIC)
                        .support())
                .isEmpty();
    }

    @Test
    void whatGetsAThicknessBecomesASlatAndASlatThatLosesItABar() {
        HemFold bar = HemEdits.withSupportSize(once, of("15 mm"));
        HemFold slat = edits.withSlatThickness(bar, of("4 mm"));

        assertThat(slat.support()).contains(new Support.Slat(Length.parse("15 mm"), Length.parse("4 mm")));
        assertThat(HemEdits.slatThickness(slat)).isEqualTo(of("4 mm"));
        assertThat(HemEdits.withSupportSize(slat, of("2 cm")).support())
                .contains(new Support.Slat(Length.parse("2 cm"), Length.parse("4 mm")));
        assertThat(edits.withSlatThickness(slat, Optional.empty())).isEqualTo(bar);
    }
}
