package thrumwright.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import thrumwright.block.Amount;
import thrumwright.block.Block;
import thrumwright.block.MaterialRole;
import thrumwright.block.PlainBand;
import thrumwright.block.Setting;
import thrumwright.block.Tag;
import thrumwright.block.Use;
import thrumwright.block.WarpFinish;
import thrumwright.block.WarpLoops;
import thrumwright.measure.Length;
import thrumwright.measure.Unit;
import thrumwright.piece.Design;
import thrumwright.piece.End;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;
import thrumwright.piece.Top;
import thrumwright.plan.finding.Finding;
import thrumwright.plan.finding.Finding.Code;
import thrumwright.plan.finding.Findings;
import thrumwright.testing.Pieces;

class ClosedWarpTest {
    private final Piece closed = closed(loops(WarpLoops.Held.ROD, "3 mm"), heading());
    private final Plan plan = Plan.of(closed);

    private static Piece closed(Block... blocks) {
        return Pieces.panel()
                .withStart(new End(List.of(blocks)))
                .withTop(Top.FollowsStart.withoutOrderingCords(End.empty()));
    }

    private static WarpLoops loops(WarpLoops.Held round, String thick) {
        return new WarpLoops(Tag.of("loops"), round, Length.parse(thick));
    }

    private static PlainBand heading() {
        return new PlainBand(
                Tag.of("heading"),
                Use.of(MaterialRole.WARP_CORD),
                PlainBand.Purpose.PLAIN,
                new Amount.Picks(4),
                Optional.empty());
    }

    private static List<Code> codes(Piece piece) {
        return Findings.of(Plan.of(piece)).all().stream().map(Finding::code).toList();
    }

    /** By hand as in docs/method.md: r = 1.893172, half a turn 5.947576, with one space along the rod 6.817974. */
    @Test
    void theWarpIsWoundInOneLength() {
        ClosedWarp warp = plan.closedWarp().orElseThrow();
        assertThat(warp.apart()).isCloseTo(300 + 8 * 0.786345, within(1e-5));
        assertThat(warp.each()).isCloseTo(warp.apart() + 3, within(1e-9));
        assertThat(warp.lowerLoops()).isEqualTo(35);
        assertThat(warp.upperLoops()).isEqualTo(36);
        assertThat(warp.turns()).isCloseTo(71 * 6.817974, within(1e-3));
        assertThat(warp.endsBelow()).isTrue();
        assertThat(plan.warpYarn()).isCloseTo(72 * 309.29076 + 71 * 6.817974 + 300, within(0.01));
        assertThat(plan.totals().get(0).inWarp()).isCloseTo(plan.warpYarn(), within(1e-9));
    }

    /** Over every end the yarn passes one loop more: together they lead through all ends, whatever their number. */
    @Test
    void loopsBelowAndAboveJoinAllEnds() {
        for (int ends = 2; ends < 40; ends++) {
            assertThat(WarpLoops.loops(ends, true) + WarpLoops.loops(ends, false))
                    .isEqualTo(ends - 1);
        }
    }

    /** The upper loops stand where the piece ends: nothing is kept free above it, and the design must end just there. */
    @Test
    void theWorkingRoomIsWovenFull() {
        Budget budget = plan.budget();
        assertThat(budget.workingRoom()).isZero();
        assertThat(budget.stopLine()).isEqualTo(budget.designEnds());
        assertThat(budget.left()).isCloseTo(700 - 40 - 300 - 8 * 0.786345, within(1e-5));
        assertThat(plan.start().free()).isCloseTo(40, within(1e-9));
        assertThat(plan.start().finish().orElseThrow().needed()).isZero();
    }

    /** An end that is closed needs no waste, no twining and no free warp; it is said how the shed closes. */
    @Test
    void nothingIsMissedThatAClosedWarpDoesWithout() {
        assertThat(codes(closed)).containsExactly(Code.SHED_CLOSES);
        Design high = closed.design();
        Piece tall = closed.withDesign(new Design(
                Length.parse("66 cm"),
                high.firstYarnId(),
                high.lastYarnId(),
                high.lastShed(),
                high.lastSide(),
                high.relaxing()));
        assertThat(codes(tall)).containsExactly(Code.LOOPS_DO_NOT_FIT, Code.SHED_CLOSES);
    }

    @Test
    void aFringeCantHangOnLoops() {
        WarpFinish fringe = new WarpFinish(Tag.of("fringe"), WarpFinish.Kind.KNOTTED, 4, Length.parse("8 cm"));
        assertThat(codes(closed(loops(WarpLoops.Held.ROD, "3 mm"), fringe, heading())))
                .contains(Code.FINISH_ON_LOOPS);
        assertThat(codes(closed(fringe, loops(WarpLoops.Held.ROD, "3 mm"), heading())))
                .contains(Code.FINISH_ON_LOOPS);
    }

    @Test
    void whatComesOutWouldLetTheLoopsHang() {
        PlainBand waste = Pieces.band("waste", Use.comingOut(MaterialRole.WASTE), PlainBand.Purpose.WASTE, 12);
        assertThat(codes(closed(loops(WarpLoops.Held.ROD, "3 mm"), waste, heading())))
                .contains(Code.OUT_OF_LOOPS);
    }

    /** Round 6 mm half a turn of 10.660 and one space make 11.169, and the loops stand out (11.169 + 6 − 3.333)/2. */
    @Test
    void aThickRodLeavesLongLoops() {
        Setting warp = closed.setting(closed.warpYarn());
        assertThat(loops(WarpLoops.Held.ROD, "6 mm").standOut(warp)).isCloseTo(6.918, within(1e-3));
        assertThat(codes(closed(loops(WarpLoops.Held.ROD, "6 mm"), heading()))).contains(Code.LOOPS_STAND_OUT);
        assertThat(codes(closed(loops(WarpLoops.Held.CORD_STAYS, "6 mm"), heading())))
                .doesNotContain(Code.LOOPS_STAND_OUT);
    }

    /** Lifted in the middle of a gap, an end as long as that gap is stretched by 2 %: 150 mm open by 15. */
    @Test
    void theShedClosesTowardsTheLoops() {
        double up = ClosingShed.opening(150);
        assertThat(2 * Math.hypot(75, up)).isCloseTo(150 * (1 + ClosingShed.STRETCH), within(1e-9));
        assertThat(up).isCloseTo(15.07, within(0.01));
        assertThat(plan.closingShed().hands()).isCloseTo(149.26, within(0.01));
        assertThat(plan.closingShed().needle()).isCloseTo(39.80, within(0.01));
    }

    /**
     * S. Martin Maffei, ‘Four selvedge warping’: with another warp linked in above, the weaving goes ‘to the top of the middle
     * warp’ in a shed. By hand as in docs/method.md.
     */
    @Test
    void aLinkedWarpKeepsTheShedOpen() {
        Piece linked = closed(loops(WarpLoops.Held.LINKED, "5 mm"), heading());
        Plan planned = Plan.of(linked);
        Setting warp = linked.setting(linked.warpYarn());

        assertThat(codes(closed)).contains(Code.SHED_CLOSES);
        assertThat(codes(linked)).doesNotContain(Code.SHED_CLOSES, Code.LOOPS_STAND_OUT);
        assertThat(planned.linked()).isEqualTo(planned.closingShed().hands());
        assertThat(planned.top().loops().orElseThrow().slip(warp)).isCloseTo(4.872908, within(1e-5));
        assertThat(plan.linked()).isZero();
        assertThat(plan.top().loops().orElseThrow().slip(warp)).isZero();
    }

    /** Close below the upper bar there is no room for a linked warp that would keep the shed open. */
    @Test
    void aShortLinkedWarpLeavesTheShedToClose() {
        Piece linked = closed(loops(WarpLoops.Held.LINKED, "5 mm"), heading());
        Plan planned = Plan.of(linked);
        double more = planned.budget().open()
                - planned.budget().designEnds()
                - planned.budget().top()
                - 50;
        Piece high = linked.withDesign(
                linked.design().withHeight(Length.of(linked.design().height().mm() + more, Unit.MILLIMETRE)));

        assertThat(Plan.of(high).linked()).isCloseTo(50, within(1e-3));
        assertThat(codes(high)).contains(Code.SHED_CLOSES);
    }

    /** With one end open the warp isn't wound in one length, and takes what it takes on the loom. */
    @Test
    void oneClosedEndLeavesTheOtherToBeCut() {
        Piece half = closed.withTop(new Top.OnItsOwn(Pieces.panel().end(Place.TOP)));
        Plan cut = Plan.of(half);
        assertThat(cut.closedWarp()).isEmpty();
        assertThat(cut.warpYarn()).isCloseTo(72 * 800, within(1e-9));
        assertThat(cut.budget().closed()).isFalse();
        assertThat(cut.budget().workingRoom()).isCloseTo(120, within(1e-9));
        assertThat(codes(half)).isEmpty();
    }
}
