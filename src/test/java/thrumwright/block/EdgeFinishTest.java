package thrumwright.block;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Comparator;
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
    void loopsAskForNoFreeWarpAndHaveNoLength() {
        WarpLoops loops = new WarpLoops(TAG, WarpLoops.Held.CORD, Length.parse("2 mm"));
        assertThat(loops.freeWarp(new Setting(12, 3, 0.8, 0.8, 0.8, Optional.empty())))
                .isZero();
        assertThat(loops.withLength(HANGING)).isEqualTo(loops);
        assertThatThrownBy(() -> new WarpLoops(TAG, WarpLoops.Held.ROD, Length.parse("7 cm")))
                .isInstanceOf(BadMeasure.class)
                .hasMessage("What warp loops lie round is thicker than 0 and at most 6 cm, not “7 cm”.");
    }

    @Test
    void rowsOfKnotsCantLieInEachOther() {
        Setting warp = new Setting(12, 3, 0.8, 0.8, 0.8, Optional.empty());
        KnotRows close = new KnotRows(TAG, 2, 4, false, Optional.of(Length.parse("1 mm")), HANGING);

        assertThat(close.step(warp)).isEqualTo(close.knotHeight(warp));
    }

    /** One neighbour: out of its place, once round, and below its own way. */
    @Test
    void aTurnedEndGoesOnceRoundItsNeighbour() {
        Setting warp = new Setting(5, 4, 1, 1, 1, Optional.empty());

        assertThat(TurnedEnds.lengthRound(warp, 1))
                .isCloseTo(Math.PI / 2 + 4 - 1 + Math.hypot(2 * Math.PI, 2), within(1e-9));
    }

    /** After one row the ends lie at the back; after two they may hang again, below the worked edge. */
    @Test
    void endsHangAgainAfterASecondRow() {
        Setting warp = new Setting(5, 4, 1, 1, 1, Optional.empty());
        TurnedEnds damascus = new TurnedEnds(TAG, 1, true, Side.LEFT, HANGING, true);

        assertThat(damascus.hangs()).isTrue();
        assertThat(damascus.beyond(warp)).isCloseTo(5 + 80, within(1e-9));
        assertThat(damascus.withBothWays(false).hangs()).isFalse();
        assertThat(damascus.withFringe(false).beyond(warp)).isCloseTo(5, within(1e-9));
        assertThat(damascus.freeWarp(warp)).isEqualTo(damascus.withFringe(false).freeWarp(warp));
    }

    @Test
    void theLastEndHasNobodyToGoRound() {
        Setting warp = new Setting(5, 4, 1, 1, 1, Optional.empty());
        TurnedEnds turned = new TurnedEnds(TAG, 3, true, Side.LEFT, HANGING);

        List<Double> lengths =
                turned.strands(warp, 1).stream().map(Strand::length).toList();

        assertThat(lengths).hasSize(4).isSortedAccordingTo(Comparator.reverseOrder());
        assertThat(lengths.get(3)).isCloseTo(TurnedEnds.lengthRound(warp, 1), within(1e-9));
    }

    /** Through two neighbours: a quarter bend and on to the first, a space of plain weave to the second, and so at the back. */
    @Test
    void anEndIsWovenThroughItsNeighbours() {
        Setting warp = new Setting(6, 4, 1, 1, 1, Optional.empty());
        double first = Math.hypot(Math.PI / 2 + 4 - 1, 1);
        double space = Math.hypot(2 * (Math.PI / 6 + Math.sqrt(3)), 1);

        assertThat(WovenEdge.lengthThrough(warp, 2)).isCloseTo(first + space, within(1e-9));
        assertThat(WovenEdge.lengthThrough(warp, 3)).isCloseTo(first + 2 * space + Math.PI, within(1e-9));
    }

    /** Those that set out first are passed by fewer; each lies below all that pass it. */
    @Test
    void wovenEndsNearTheClothAsTheyAreWoven() {
        Setting warp = new Setting(8, 4, 1, 1, 1, Optional.empty());
        WovenEdge woven = new WovenEdge(TAG, 3, Side.LEFT, HANGING);

        List<Double> out = woven.strands(warp).stream()
                .map(strand -> strand.legs().get(0).fromY())
                .toList();

        assertThat(out).containsExactly(3.5, 2.5, 1.5, 0.5, 0.5, 0.5, 0.5);
        assertThat(woven.height(warp)).isEqualTo(4);
    }

    /** ‘No fringe for you!’, tuesdayweavers.blogspot.com, 2017: ‘8 inches of fringe are not too much’, through six ends. */
    @Test
    void aWovenEdgeKeepsTheEightInchesThatWereFoundToBeEnough() {
        Setting warp = new Setting(72, 10 / 3.0, 0.786345, 0.786345, 0.786345, Optional.empty());
        WovenEdge woven = new WovenEdge(TAG, 6, Side.LEFT, Length.parse("5 cm"));

        assertThat(woven.freeWarp(warp)).isCloseTo(8 * 25.4, within(1e-9));
        assertThat(WovenEdge.lengthThrough(warp, 6)).isLessThan(25.4);
    }

    @Test
    void refusesWhatCantBeWoven() {
        assertThatThrownBy(() -> new WovenEdge(TAG, 1, Side.LEFT, HANGING))
                .isInstanceOf(BadMeasure.class)
                .hasMessage("A warp end is woven through 2 to 12 neighbours, not 1.");
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
