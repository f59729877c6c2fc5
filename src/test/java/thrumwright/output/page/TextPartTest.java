package thrumwright.output.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import thrumwright.drawing.Fonts;
import thrumwright.measure.UnitSystem;
import thrumwright.piece.Piece;
import thrumwright.plan.Plan;
import thrumwright.sheet.Step;
import thrumwright.sheet.StepSheet;
import thrumwright.testing.RandomPieces;
import thrumwright.testing.Seeds;

/** Where lines are broken. */
class TextPartTest {
    private final Type type = new Type(Fonts.load(), 1, 1);

    private List<String> lines(String text, double width) {
        return new TextPart(text, type.body(), Color.BLACK)
                .lines(width).stream().map(line -> line.replace('\u00a0', '_')).toList();
    }

    @Test
    void aNumberStaysBesideItsUnitAndItsFraction() {
        double narrow = TextPart.width("above the bar.", type.body());

        assertThat(lines("It stands 8¹⁄₁₆ in above the bar.", narrow))
                .containsExactly("It stands", "8¹⁄₁₆_in above", "the bar.");
        assertThat(lines("It stands at 8 1/16 in above it", narrow))
                .contains("8_1/16_in")
                .noneMatch(line -> line.endsWith("8"));
        assertThat(lines("Leave 15 cm, then 2½ × the width", narrow)).contains("Leave 15_cm,", "then 2½_× the");
    }

    @Test
    void aLetterStaysBesideItsStroke() {
        double narrow = TextPart.width("stroke in Z (", type.body());

        assertThat(lines("like the stroke in Z ( / ).", narrow)).containsExactly("like the", "stroke in", "Z_(_/_).");
        assertThat(lines("like the stroke in S ( \\ ).", narrow)).contains("S_(_\\_).");
    }

    /** Whatever is said, at whatever width. */
    @Test
    void noLineBeginsWithAUnitOrAStroke() {
        RandomPieces pieces = new RandomPieces(811);
        for (int i = 0; i < Seeds.of(100); i++) {
            Piece piece = pieces.next();
            UnitSystem units = i % 2 == 0 ? UnitSystem.INCHES : UnitSystem.METRIC;
            Plan plan = Plan.of(piece.withHabits(piece.habits().withUnits(units)));
            double width = 90 + 23 * (i % 11);
            for (Step step : StepSheet.of(plan, Locale.UK).steps()) {
                for (String sentence : step.sentences()) {
                    assertThat(String.join("|", lines(sentence, width)))
                            .as(sentence)
                            .doesNotContainPattern("[\\d½¼¾⅛⅜⅝⅞₀-₉]\\|(mm|cm|m|in|yd|g|oz|%|×)(?![\\p{L}\\d])")
                            .doesNotContainPattern("[ZS] ?\\||\\([ _]?\\||\\|\\d+/\\d");
                }
            }
        }
    }
}
