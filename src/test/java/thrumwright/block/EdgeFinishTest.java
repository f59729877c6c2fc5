package thrumwright.block;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import thrumwright.measure.BadMeasure;
import thrumwright.measure.Length;

class EdgeFinishTest {
    private static final Tag TAG = Tag.of("e");
    private static final Length HANGING = Length.parse("8 cm");

    @Test
    void everySecondRowTiesTheHalvesOfNeighbours() {
        KnotRows lattice = new KnotRows(TAG, 3, 4, true, Optional.empty(), HANGING);

        assertThat(lattice.bunches(12, 0))
                .containsExactly(new KnotRows.Bunch(0, 4), new KnotRows.Bunch(4, 4), new KnotRows.Bunch(8, 4));
        assertThat(lattice.bunches(12, 1)).containsExactly(new KnotRows.Bunch(2, 4), new KnotRows.Bunch(6, 4));
        assertThat(lattice.bunches(12, 2)).isEqualTo(lattice.bunches(12, 0));
    }

    @Test
    void groupsThatDoNotPartAreTiedAgain() {
        KnotRows locked = new KnotRows(TAG, 2, 3, false, Optional.empty(), HANGING);

        assertThat(locked.bunches(10, 1)).isEqualTo(locked.bunches(10, 0));
    }

    /** The outer halves hang free past the second row; all others go through three knots. */
    @Test
    void outerHalvesMissEverySecondRow() {
        KnotRows lattice = new KnotRows(TAG, 3, 4, true, Optional.empty(), HANGING);
        Setting warp = new Setting(12, 3, 0.8, 0.8, 0.8, Optional.empty());

        List<Integer> knots = lattice.falls(warp).stream().map(Fall::knots).toList();

        assertThat(knots).containsExactly(2, 2, 3, 3, 3, 3, 3, 3, 3, 3, 2, 2);
    }

    @Test
    void rowsOfKnotsCantLieInEachOther() {
        Setting warp = new Setting(12, 3, 0.8, 0.8, 0.8, Optional.empty());
        KnotRows close = new KnotRows(TAG, 2, 4, false, Optional.of(Length.parse("1 mm")), HANGING);

        assertThat(close.step(warp)).isEqualTo(close.knotHeight(warp));
    }

    @Test
    void refusesWhatCantBeKnotted() {
        assertThatThrownBy(() -> new KnotRows(TAG, 1, 1, false, Optional.empty(), HANGING))
                .isInstanceOf(BadMeasure.class)
                .hasMessageContaining("At least 2");
        assertThatThrownBy(() -> new KnotRows(TAG, 41, 2, false, Optional.empty(), HANGING))
                .isInstanceOf(BadMeasure.class);
        assertThatThrownBy(() -> new KnotRows(TAG, 1, 2, false, Optional.of(Length.parse("1 m")), HANGING))
                .isInstanceOf(BadMeasure.class);
    }
}
