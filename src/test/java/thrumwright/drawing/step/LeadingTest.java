package thrumwright.drawing.step;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import thrumwright.block.Amount;
import thrumwright.block.HalfHitch;
import thrumwright.block.Hemstitching;
import thrumwright.block.Lean;
import thrumwright.block.Leg;
import thrumwright.block.MaterialRole;
import thrumwright.block.OrderingCord;
import thrumwright.block.PlainBand;
import thrumwright.block.Side;
import thrumwright.block.Soumak;
import thrumwright.block.SpreadHeader;
import thrumwright.block.Strand;
import thrumwright.block.Tag;
import thrumwright.block.Twining;
import thrumwright.block.Use;
import thrumwright.block.YarnBlock;
import thrumwright.drawing.yarn.Detail;
import thrumwright.drawing.yarn.Stretch;
import thrumwright.drawing.yarn.Stretches;
import thrumwright.piece.End;
import thrumwright.plan.Plan;
import thrumwright.plan.Work;
import thrumwright.testing.Pieces;

/** A stage shows the block's own strands, as far as they are led by then. */
class LeadingTest {
    private static final Tag TAG = Tag.of("led");
    private static final Use CORD = Use.of(MaterialRole.WARP_CORD);

    static Stream<YarnBlock> blocks() {
        Use leftwards = CORD.withFrom(Optional.of(Side.RIGHT));
        return Stream.of(
                new OrderingCord(TAG, CORD, 3, Optional.empty()),
                new PlainBand(TAG, CORD, PlainBand.Purpose.STIFF, new Amount.Picks(6), Optional.empty()),
                new SpreadHeader(TAG, CORD, 4, 2, Optional.empty()),
                new Twining(TAG, CORD, 1, 1, Lean.Z, false),
                new Twining(TAG, leftwards, 2, 3, Lean.S, true),
                new Soumak(TAG, CORD, 1, 4, 2, Lean.Z, false),
                new Soumak(TAG, leftwards, 1, 2, 1, Lean.S, false),
                new HalfHitch(TAG, CORD, 1, 1),
                new HalfHitch(TAG, leftwards, 1, 2),
                new Hemstitching(TAG, CORD, 2, 3, Hemstitching.Round.FIRST),
                new Hemstitching(TAG, leftwards, 3, 2, Hemstitching.Round.LAST));
    }

    private static Work work(YarnBlock block) {
        Work whole = Plan.of(Pieces.panel().withStart(new End(List.of(block))))
                .start()
                .block("led")
                .orElseThrow()
                .work()
                .orElseThrow();
        return block.plainWeave() ? StepScene.shown(whole) : StepScene.closely(whole);
    }

    private static List<Led> stages(YarnBlock block) {
        Work work = work(block);
        int all = block.stages(work.rows().size()).size();
        return Stream.iterate(0, stage -> stage + 1)
                .limit(all)
                .map(stage -> Leading.of(work, stage))
                .toList();
    }

    private static double length(List<Strand> strands) {
        return strands.stream().mapToDouble(Strand::length).sum();
    }

    /** Every stage shows something to do: a way of the hand, a row that sets out, or what is done to the row; but the last may rest. */
    @ParameterizedTest
    @MethodSource("blocks")
    void everyStageHasSomethingToDo(YarnBlock block) {
        List<Led> stages = stages(block);

        for (Led led : stages.subList(0, stages.size() - 1)) {
            assertThat(led.ways().isEmpty() && led.sets().isEmpty() && led.push() == Led.Push.NONE)
                    .isFalse();
        }
        assertThat(stages).doesNotHaveDuplicates();
    }

    /** Where nothing is held open, what is laid are the block's own legs, one after the other. */
    @ParameterizedTest
    @MethodSource("blocks")
    void whatIsLaidAreItsOwnLegs(YarnBlock block) {
        if (block.plainWeave() || block instanceof HalfHitch) {
            return;
        }
        Work work = work(block);
        List<Strand> whole = work.block().strands(work.setting(), work.rows());
        for (Led led : stages(block)) {
            for (int i = 0; i < whole.size(); i++) {
                List<Leg> laid = led.strands().get(i).legs();
                assertThat(laid.subList(0, laid.size() - 1))
                        .isEqualTo(whole.get(i).legs().subList(0, laid.size() - 1));
            }
        }
    }

    /** A pick that is divided at the warp ends is as long as it was, and lies where it lay; an arc takes more. */
    @Test
    void aPickInAnArcTakesMoreThanOneThatIsBeaten() {
        PlainBand band = new PlainBand(TAG, CORD, PlainBand.Purpose.STIFF, new Amount.Picks(6), Optional.empty());
        Work work = work(band);
        Leg pick = band.strands(work.setting(), work.rows()).get(0).legs().get(0);
        List<Leg> beaten = Leading.of(work, 1).strands().get(0).legs();
        List<Leg> arched = Leading.of(work, 0).strands().get(0).legs();

        List<Leg> laid = beaten.subList(0, beaten.size() - 1);
        assertThat(length(List.of(new Strand(laid)))).isCloseTo(pick.length(), within(1e-6));
        assertThat(length(List.of(new Strand(arched.subList(0, laid.size()))))).isGreaterThan(pick.length() * 1.02);
    }

    /** The end that is brought through lies under the yarn itself: where they cross, that is drawn after it. */
    @Test
    void theEndOfAHitchGoesUnderItsOwnYarn() {
        HalfHitch hitch = new HalfHitch(TAG, CORD, 1, 2);
        Work work = work(hitch);
        List<Strand> strands = Leading.of(work, 1).strands();
        List<Stretch> drawn = Stretches.of(work.setting(), strands, false, Detail.FINE);

        Leg on = strands.get(1).legs().get(1);
        Leg before = strands.get(2).legs().get(0);
        assertThat(on.fromY()).isLessThan(before.toY());
        assertThat(on.toY()).isGreaterThan(before.toY());
        Stretch last = drawn.get(drawn.size() - 1);
        assertThat(last.front()).isTrue();
        assertThat(last.highX()).isLessThan(work.setting().span() + 1e-6);
    }

    /** In twining the back half comes to the front first, and then the other goes behind. */
    @Test
    void halvesOfATwiningChangePlacesOneAfterTheOther() {
        Twining twining = new Twining(TAG, CORD, 1, 1, Lean.Z, false);
        List<Led> stages = stages(twining);

        assertThat(frontAtTheEnd(twining, stages.get(0))).containsExactly(true, false);
        assertThat(frontAtTheEnd(twining, stages.get(1))).containsExactly(true, true);
        assertThat(frontAtTheEnd(twining, stages.get(2))).containsExactly(false, true);
    }

    /** Whether each half goes on to the hand in front. */
    private static List<Boolean> frontAtTheEnd(Twining twining, Led led) {
        Work work = work(twining);
        return led.strands().stream()
                .map(strand -> Stretches.of(work.setting(), List.of(strand), false, Detail.FINE))
                .map(stretches -> stretches.stream()
                        .max((a, b) -> Double.compare(a.highX(), b.highX()))
                        .orElseThrow()
                        .front())
                .toList();
    }
}
