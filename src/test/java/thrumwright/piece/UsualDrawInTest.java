package thrumwright.piece;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import thrumwright.measure.Length;
import thrumwright.measure.Sett;
import thrumwright.plan.Plan;
import thrumwright.sheet.Fact;
import thrumwright.sheet.StepSheet;
import thrumwright.testing.Pieces;

/** The usual draw-in is that of published projects, and a measured one takes its place. */
class UsualDrawInTest {
    /**
     * A weft-faced rug on 21 in came out 19½ in (published rug project, 4 ends per inch); a rag rug on 27 in 25 in (published 2009,
     * 8 ends per inch); one on 29 in loses an inch at either side by its end.
     */
    @ParameterizedTest
    @CsvSource({"21, 4, 19.5", "27, 8, 25", "29, 8, 27"})
    void publishedWidthsComeOutSo(double warp, int sett, double cloth) {
        Warp on = new Warp(Length.parse(warp + " in"), Sett.parse(sett + "/in"), "cord");
        assertThat(on.usualWidth() / 25.4).isCloseTo(cloth, within(0.12));
    }

    private static String assumed(Piece piece) {
        return StepSheet.of(Plan.of(piece), Locale.UK).facts().stream()
                .filter(fact -> fact.name().equals("That assumes"))
                .map(Fact::value)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void theSheetSaysWhatTheFinishedSizeAssumes() {
        Piece panel = Pieces.panel();
        assertThat(assumed(panel))
                .startsWith("no draw-in")
                .contains("about 7 % narrower, here 22.3 cm", "no shortening");
        Piece measured = panel.withWarp(panel.warp().withWoven(Optional.of(Length.parse("22.8 cm"))))
                .withDesign(panel.design().withRelaxing(0.02));
        assertThat(assumed(measured)).isEqualTo("the width measured on the loom; 2 % of shortening off the loom");
        assertThat(Plan.of(measured).finishedWidth()).isCloseTo(228, within(0.01));
    }

    /** A width that can't be right is neither believed nor called measured. */
    @Test
    void anUnlikelyWidthIsNotCalledMeasured() {
        Piece panel = Pieces.panel();
        Piece mistaken = panel.withWarp(panel.warp().withWoven(Optional.of(Length.parse("5 cm"))));
        assertThat(assumed(mistaken)).startsWith("no draw-in");
    }
}
