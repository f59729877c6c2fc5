package thrumwright.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import thrumwright.measure.Length;
import thrumwright.measure.Sett;
import thrumwright.piece.Loom;
import thrumwright.piece.LoomKind;
import thrumwright.piece.Piece;
import thrumwright.piece.Pitch;
import thrumwright.piece.Sheds;
import thrumwright.piece.Warp;
import thrumwright.testing.Pieces;
import thrumwright.yarn.Thickness;

/** Warps and worksheets that others published, on each kind of loom. Each names its source. */
class PublishedWarpsTest {
    private static final double INCH = 25.4;
    private static final double YARD = 914.4;
    private static final double POUND = 453.59237;

    private static Piece warped(LoomKind kind, String width, String sett, String open) {
        Piece panel = Pieces.panel();
        Warp warp = new Warp(Length.parse(width), Sett.parse(sett), "cord");
        Loom loom = panel.loom().leavingAsUsual().withOpen(Length.parse(open));
        return panel.withWarp(warp).withLoom(loom.withKind(kind));
    }

    private static Piece with(Piece piece, String perEnd) {
        return piece.withLoom(piece.loom().withWarpPerEnd(Optional.of(Length.parse(perEnd))));
    }

    private static LoomKind rollers(String waste) {
        return new LoomKind.Rollers(Length.parse(waste));
    }

    private static LoomKind nails(String pitch) {
        return new LoomKind.Pegged(Sett.parse(pitch), LoomKind.Peg.NAILS);
    }

    /** 8 ends an inch over 14 in on a nail frame of 20 in: 64 yd with two spare ('How to weave on a loom', webcasty.com, 2013). */
    @Test
    void nailFrame() {
        Plan plan = Plan.of(warped(nails("4/in"), "14 in", "8/in", "20 in"));
        assertThat(plan.piece().warp().ends()).isEqualTo(112);
        assertThat(plan.warpYarn() / YARD + 2).isCloseTo(64, within(0.7));
    }

    /**
     * A rug of 3 × 5 ft takes about ¾ lb of warp (P. Collingwood's figure, as quoted in 'How much yarn do you need to weave a rug'): carpet warp of 1,600 yd/lb [project] at 12 ends an inch
     * ('Mad City Mike', 2011), the rug's height and 24 in [scanlin] an end, and a tenth of a pound left over.
     */
    @Test
    void rugOfThreeByFiveFeet() {
        Piece rug = with(warped(new LoomKind.BarToBar(), "3 ft", "12/in", "60 in"), "84 in");
        double yards = Plan.of(rug).warpYarn() / YARD;
        assertThat(yards).isCloseTo(432 * 84 / 36.0, within(1e-6));
        assertThat(yards / 1600).isCloseTo(0.75, within(0.15));
    }

    /** 6 ends an inch over 9 in make 54, 8 make 72 (*Alpacas Magazine*, Spring 2010, p. 116). */
    @Test
    void endsOfTheMagazinesTapestry() {
        assertThat(warped(new LoomKind.BarToBar(), "9 in", "6/in", "20 in")
                        .warp()
                        .ends())
                .isEqualTo(54);
        assertThat(warped(new LoomKind.BarToBar(), "9 in", "8/in", "20 in")
                        .warp()
                        .ends())
                .isEqualTo(72);
    }

    /** 3 ft at 12 ends an inch: 432 warp threads, to which the weaver adds eight for the edges ('Mad City Mike', 2011). */
    @Test
    void endsOfAKitchenRug() {
        assertThat(warped(rollers("36 in"), "36 in", "12/in", "40 in").warp().ends())
                .isEqualTo(432);
    }

    /** 8 ends an inch over 7 in, 70 in and 20 in of loom waste: 56 ends, 140 yd ('Weaving calculations for balanced weave'). */
    @Test
    void scarfWithTwentyInchesOfWaste() {
        Plan plan = Plan.of(with(warped(rollers("20 in"), "7 in", "8/in", "30 in"), "90 in"));
        assertThat(plan.piece().warp().ends()).isEqualTo(56);
        assertThat(plan.warpYarn() / YARD).isCloseTo(140, within(1e-6));
        assertThat(plan.budget().open() / INCH).isCloseTo(70, within(1e-9));
    }

    /** 180 in for two scarves and 20 in of waste: 200 in an end ('The sloppy math', Dashing Mouse Designs). */
    @Test
    void twoScarvesOnATableLoom() {
        Plan plan = Plan.of(with(warped(rollers("20 in"), "15 in", "10/in", "30 in"), "200 in"));
        assertThat(plan.budget().open() / INCH).isCloseTo(180, within(1e-9));
    }

    /** Two runners of 46 in each and a yard of waste: 128 in an end ('Calculate yarn', All Fiber Arts). */
    @Test
    void twoRunnersWithAYardOfWaste() {
        Plan plan = Plan.of(with(warped(rollers("36 in"), "19.5 in", "20/in", "30 in"), "128 in"));
        assertThat(plan.budget().open() / INCH).isCloseTo(92, within(1e-9));
    }

    /** Loom waste of 18 to 22 in, or 22 to 26 in if tied on at both ends ('Doing a loom waste audit', Yarnworker). */
    @Test
    void usualWasteIsWithinTheAudit() {
        Piece piece = Pieces.panel().withHabits(thrumwright.piece.Habits.usual(thrumwright.measure.UnitSystem.INCHES));
        LoomKind usual = thrumwright.piece.LoomKinds.of("rollers", piece);
        assertThat(((LoomKind.Rollers) usual).waste().mm() / INCH).isBetween(18.0, 26.0);
    }

    /** 6 in of the waste lie in front and 11 in behind (the same audit): so much hangs free above the top. */
    @Test
    void wasteLiesBehindAsInTheAudit() {
        Plan plan = Plan.of(with(warped(rollers("17 in"), "7 in", "8/in", "30 in"), "90 in"));
        assertThat(plan.room().behind() / INCH).isCloseTo(11, within(1e-9));
    }

    /**
     * On a frame with leashes 24 in were lost, 17 at the top and 7 below, and 4 to 5 in more could have been woven
     * (T. M. Scanlin, 'Tapestry is off the loom', 2008). Ours leaves free as much as could not be woven.
     */
    @Test
    void frameWithLeashesLosesTwentyInches() {
        Piece piece = warped(new LoomKind.BarToBar(), "12 in", "8/in", "60 in");
        Piece leashed = piece.withHabits(thrumwright.piece.Habits.usual(thrumwright.measure.UnitSystem.INCHES))
                .withLoom(piece.loom().withSheds(Sheds.STICK_AND_LEASHES));
        Budget budget = Plan.of(leashed).budget();
        assertThat(budget.workingRoom() / INCH).isCloseTo(12, within(1e-9));
        assertThat((budget.clearance() + budget.workingRoom()) / INCH).isBetween(16.0, 24.0);
    }

    /**
     * A path of 50 in round the pegs of an inkle loom gives 39.5 in woven: 10.5 in can't be ('Warp yarn calculation',
     * Lofty Fiber). Round a joining bar what stays free is taken from the way round in the same manner.
     */
    @Test
    void aWayRoundIsWovenButForWhatStaysFree() {
        Piece piece = with(warped(new LoomKind.JoiningBar(Length.parse("2 in")), "3 in", "8/in", "20 in"), "50 in");
        Loom loom = piece.loom()
                .withClearance(Optional.of(Length.parse("4.5 in")))
                .withWorkingRoom(Optional.of(Length.parse("6 in")));
        Budget budget = Plan.of(piece.withLoom(loom)).budget();
        assertThat((budget.open() - budget.clearance() - budget.workingRoom()) / INCH)
                .isCloseTo(39.5, within(1e-9));
    }

    /**
     * A rug frame of 1914 has 49 double-headed tacks ½ in apart, through each of which one warp thread is run (‘The loom or rug
     * frame’, 1914): 24 in, 49 threads.
     */
    @Test
    void rugFrameOfNineteenFourteen() {
        LoomKind.Pegged tacks = new LoomKind.Pegged(Sett.parse("2/in"), LoomKind.Peg.NOTCHES);
        assertThat(warped(tacks, "24.5 in", "2/in", "49 in").warp().ends()).isEqualTo(49);
        assertThat(new Pitch(tacks).steps(Sett.parse("2/in"))).isEqualTo(1);
    }

    /** Nails every half inch, warp from nail to nail: on a rug frame of 2 × 3 ft (an answer to weavers, 2007). */
    @Test
    void nailsEveryHalfInch() {
        assertThat(new Pitch(new LoomKind.Pegged(Sett.parse("2/in"), LoomKind.Peg.NAILS)).steps(Sett.parse("4/in")))
                .isEqualTo(1);
    }

    /** 68 in an end, 30 of them waste and take-up, for a rug of 34 in with fringes of an inch ([project]). */
    @Test
    void rugOfThePublishedProject() {
        Plan plan = Plan.of(with(warped(rollers("30 in"), "21 in", "4/in", "30 in"), "68 in"));
        assertThat(plan.budget().open() / INCH).isBetween(36.0, 38.5);
        assertThat(plan.warpYarn() / YARD).isCloseTo(158.7, within(0.05));
    }

    /** Four feet of loom lose about 40 in of each warp end on beams (M. Lane, 'Warping a vertical tapestry loom'): more than ours. */
    @Test
    void beamsOfATapestryLoomLoseMore() {
        Plan plan = Plan.of(with(warped(rollers("40 in"), "20 in", "8/in", "30 in"), "88 in"));
        assertThat(plan.budget().open() / INCH).isCloseTo(48, within(1e-9));
    }

    @Test
    void warpIsWeighed() {
        Piece rug = warped(new LoomKind.BarToBar(), "3 ft", "4/in", "60 in");
        Piece cotton = rug.withYarns(rug.yarns().stream()
                .map(yarn -> yarn.id().equals("cord") ? yarn.withThickness(Thickness.parse("800 yd/lb")) : yarn)
                .toList());
        Plan plan = Plan.of(with(cotton, "84 in"));
        YarnTotal total = plan.totals().stream()
                .filter(each -> each.yarn().id().equals("cord"))
                .findFirst()
                .orElseThrow();
        assertThat(total.inWarp() / 1e6 * total.yarn().tex() / POUND).isCloseTo(336.0 / 800, within(1e-3));
    }
}
