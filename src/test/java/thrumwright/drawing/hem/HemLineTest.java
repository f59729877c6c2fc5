package thrumwright.drawing.hem;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import thrumwright.block.HemFold;
import thrumwright.block.Turning;
import thrumwright.measure.Length;
import thrumwright.piece.Piece;
import thrumwright.plan.Hem;
import thrumwright.plan.Plan;
import thrumwright.testing.Pieces;

/** How the cloth of a hem runs while it is folded. */
class HemLineTest {
    private static Hem hem(boolean twice) {
        Piece panel = Pieces.panel();
        if (twice) {
            HemFold other = (HemFold) panel.start().blocks().stream()
                    .filter(HemFold.class::isInstance)
                    .findFirst()
                    .orElseThrow();
            panel = panel.withStart(panel.start().replaced(other.withTurning(new Turning.Twice(Length.parse("4 mm")))));
        }
        return Plan.of(panel).start().hem().orElseThrow();
    }

    /** Cloth that is folded keeps its length: whatever lies d mm apart along it is d apart along the line. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 0.4, Math.PI / 2, 2.5, Math.PI})
    void theClothKeepsItsLength(double angle) {
        for (boolean twice : new boolean[] {false, true}) {
            Hem hem = hem(twice);
            HemLine line = HemLine.turned(hem, angle);
            double step = 0.01;
            for (double u = 0; u < hem.cloth() + 5; u += step) {
                double[] from = line.at(u);
                double[] to = line.at(u + step);
                assertThat(Math.hypot(to[0] - from[0], to[1] - from[1])).isCloseTo(step, within(1e-4));
                assertThat(Math.hypot(
                                Math.cos(from[2]) - (to[0] - from[0]) / step,
                                Math.sin(from[2]) - (to[1] - from[1]) / step))
                        .isLessThan(0.02);
            }
        }
    }

    /** Not turned at all it lies straight, turned wholly it lies as it is sewn. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 3, 9, 13})
    void itBeginsStraightAndEndsFolded(double u) {
        Hem hem = hem(false);

        assertThat(HemLine.turned(hem, 0).at(u)[0]).isCloseTo(0, within(1e-9));
        assertThat(HemLine.turned(hem, 0).at(u)[1]).isCloseTo(u - hem.cloth(), within(1e-9));
        assertThat(HemLine.turned(hem, Math.PI).at(u))
                .containsExactly(HemLine.flat(hem).at(u), within(1e-9));
    }
}
