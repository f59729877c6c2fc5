package thrumwright.cord;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TautCordTest {
    /** Open belt, pulleys of 1.6 m and 0.5 m, 12 m apart: 27.3239 m (machine-design worked example; the belt problem). */
    @Test
    void openBelt() {
        Visit big = new Visit(0, 0, 0.8, Sense.CLOCKWISE, 0);
        Visit small = new Visit(12, 0, 0.25, Sense.CLOCKWISE, 0);
        assertThat(belt(big, small)).isCloseTo(27.3239, within(5e-5));
    }

    /** Crossed belt, pulleys of 0.45 m and 0.20 m, 1.95 m apart: 4.97531 m (machine-design worked example). */
    @Test
    void crossedBelt() {
        Visit big = new Visit(0, 0, 0.225, Sense.CLOCKWISE, 0);
        Visit small = new Visit(1.95, 0, 0.1, Sense.ANTICLOCKWISE, 0);
        assertThat(belt(big, small)).isCloseTo(4.97531, within(5e-6));
    }

    /** A belt: round one pulley, round the other, and back to where it began. */
    private static double belt(Visit one, Visit other) {
        Route route = Route.of(List.of(one, other, one), Route.FRONT + Math.PI / 2, Route.FRONT + Math.PI / 2);
        return TautCord.along(route).length();
    }

    /** Straight warp at p/D = 1, 1.5, 2, 3, 4, 5: ℓ/p derived from F. T. Peirce, J. Textile Inst. 28 (1937) T45. */
    @ParameterizedTest
    @CsvSource({"1, 1.570796", "1.5, 1.231841", "2, 1.127825", "3, 1.056088", "4, 1.031416", "5, 1.020067"})
    void plainWeaveOnAStraightWarp(double spacing, double crimped) {
        List<Visit> visits = new ArrayList<>();
        for (int i = 0; i < 11; i++) {
            visits.add(Visit.of(i * spacing, 0.5, i % 2 == 0 ? Sense.CLOCKWISE : Sense.ANTICLOCKWISE));
        }
        double length =
                TautCord.along(Route.of(visits, Route.FRONT, Route.FRONT)).length();
        assertThat(length / (10 * spacing)).isCloseTo(crimped, within(1e-6));
    }

    /**
     * The square jam: p/D = 0.866, crimp 0.2092 (Peirce 1937, as quoted by N. Balasubramanian, 'Yarn and cloth'). Both
     * systems are crimped alike there, so the cord runs round a peg of radius D/2 … with no straight part: each pick is
     * an arc of 60° to each side, and the pegs of alternate height stand p apart.
     */
    @Test
    void squareJam() {
        double spacing = Math.sqrt(3) / 2;
        List<Visit> visits = new ArrayList<>();
        for (int i = 0; i < 5; i++) {
            boolean over = i % 2 == 0;
            double z = over ? -0.25 : 0.25;
            visits.add(new Visit(i * spacing, z, 0.5 - 1e-12, over ? Sense.CLOCKWISE : Sense.ANTICLOCKWISE, 0));
        }
        double length =
                TautCord.along(Route.of(visits, Route.FRONT, Route.FRONT)).length();
        assertThat(spacing).isCloseTo(0.866, within(5e-4));
        assertThat(length / (4 * spacing) - 1).isCloseTo(0.2092, within(5e-5));
    }

    @Test
    void extraTurnsAddWholeCircles() {
        Visit once = new Visit(3, 0, 2, Sense.CLOCKWISE, 2);
        assertThat(TautCord.along(Route.of(List.of(once), Route.FRONT, Route.BACK))
                        .length())
                .isCloseTo(2 * Math.PI + 2 * 4 * Math.PI, within(1e-9));
    }

    @Test
    void aPegThatWouldPushTheCordTheWrongWayIsLeftOut() {
        Visit left = Visit.of(0, 1, Sense.CLOCKWISE);
        Visit low = new Visit(10, -5, 1, Sense.CLOCKWISE, 0);
        Visit right = Visit.of(20, 1, Sense.CLOCKWISE);
        Route past = Route.of(List.of(left, low, right), Route.FRONT, Route.FRONT);
        assertThat(TautCord.along(past).length()).isCloseTo(20, within(1e-12));
    }

    @Test
    void pegsThatOverlapAreRefused() {
        Visit one = Visit.of(0, 2, Sense.CLOCKWISE);
        Visit other = Visit.of(3, 2, Sense.ANTICLOCKWISE);
        Route route = new Route(List.of(one, other), OptionalDouble.empty(), OptionalDouble.empty());
        assertThatThrownBy(() -> TautCord.along(route)).isInstanceOf(IllegalArgumentException.class);
    }

    /** The sections join without a gap and without a corner, whatever the pegs. */
    @Test
    void theCordIsSmooth() {
        RandomGenerator random = RandomGeneratorFactory.of("L64X128MixRandom").create(11);
        for (int i = 0; i < 500; i++) {
            List<Visit> visits = new ArrayList<>();
            for (int peg = 0; peg < 8; peg++) {
                Sense sense = random.nextBoolean() ? Sense.CLOCKWISE : Sense.ANTICLOCKWISE;
                visits.add(new Visit(
                        peg * 10, random.nextDouble(-3, 3), random.nextDouble(0.2, 3), sense, random.nextInt(2)));
            }
            TautCord cord = TautCord.along(new Route(visits, OptionalDouble.empty(), OptionalDouble.empty()));
            for (int s = 1; s < cord.sections().size(); s++) {
                assertJoined(cord.sections().get(s - 1), cord.sections().get(s));
            }
        }
    }

    private static void assertJoined(PathSection before, PathSection after) {
        PathSection.Spot end = before.at(1);
        PathSection.Spot begin = after.at(0);
        assertThat(Math.hypot(end.x() - begin.x(), end.z() - begin.z())).isLessThan(1e-9);
        double hair = 1e-5;
        PathSection.Spot earlier = before.at(1 - hair / before.length());
        PathSection.Spot later = after.at(hair / after.length());
        double corner = Math.atan2(end.z() - earlier.z(), end.x() - earlier.x())
                - Math.atan2(later.z() - begin.z(), later.x() - begin.x());
        assertThat(Math.abs(Math.IEEEremainder(corner, 2 * Math.PI))).isLessThan(1e-3);
    }
}
