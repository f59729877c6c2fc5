package thrumwright.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import org.junit.jupiter.api.Test;

class SpreadTest {
    private static final double HAIR = 1e-9;

    @Test
    void labelsKeepTheirOrderAndNeverOverlap() {
        RandomGenerator random = RandomGeneratorFactory.of("L64X128MixRandom").create(3);
        for (int i = 0; i < 500; i++) {
            double[] wanted =
                    random.doubles(random.nextInt(1, 30), 0, 100).sorted().toArray();
            double apart = random.nextDouble(0.5, 12);
            double[] placed = Spread.apart(wanted, apart, 0, 100);
            for (int j = 1; j < placed.length; j++) {
                assertThat(placed[j] - placed[j - 1]).isGreaterThanOrEqualTo(apart - HAIR);
            }
            assertThat(placed[0]).isGreaterThanOrEqualTo(0);
            if ((placed.length - 1) * apart <= 100) {
                assertThat(placed[placed.length - 1]).isLessThanOrEqualTo(100 + HAIR);
            }
        }
    }

    @Test
    void labelsWithRoomEnoughStayWhereTheyAreWanted() {
        double[] wanted = {5, 20, 60};
        assertThat(Spread.apart(wanted, 10, 0, 100)).isEqualTo(wanted);
    }

    @Test
    void aCrowdAtTheTopIsPushedDown() {
        double[] placed = Spread.apart(new double[] {99, 99, 99}, 10, 0, 100);
        assertThat(Arrays.stream(placed).max().orElseThrow()).isCloseTo(100, within(1.0));
        assertThat(placed[0]).isCloseTo(79, within(1.0));
    }
}
