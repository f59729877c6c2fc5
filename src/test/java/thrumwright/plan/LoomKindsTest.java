package thrumwright.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import thrumwright.measure.Length;
import thrumwright.measure.Sett;
import thrumwright.piece.Datum;
import thrumwright.piece.Loom;
import thrumwright.piece.LoomKind;
import thrumwright.piece.LoomKinds;
import thrumwright.piece.Piece;
import thrumwright.piece.Pitch;
import thrumwright.piece.Place;
import thrumwright.piece.Warp;
import thrumwright.testing.Pieces;

/** What each kind of loom does to heights, free warp and lengths. */
class LoomKindsTest {
    private final Piece panel = Pieces.panel();

    private Piece on(LoomKind kind) {
        return panel.withLoom(panel.loom().withKind(kind).leavingAsUsual());
    }

    private static LoomKind.Pegged pegs(String pitch, LoomKind.Peg peg) {
        return new LoomKind.Pegged(Sett.parse(pitch), peg);
    }

    /** Two pipes of 22 mm, 70 cm apart: 2·(700 + 22) + π·(22 + d). */
    @Test
    void roundTheFrameAnEndIsOnceRound() {
        Plan plan = Plan.of(on(new LoomKind.RoundFrame(LoomKind.Spacer.CORD)));
        double warp = panel.warpYarn().diameter();
        assertThat(plan.room().perEnd()).isCloseTo(1444 + Math.PI * (22 + warp), within(1e-9));
        assertThat(plan.budget().open()).isEqualTo(plan.room().perEnd());
        assertThat(plan.warpYarn()).isCloseTo(72 * plan.room().perEnd(), within(1e-6));
    }

    @Test
    void roundTheFrameAPieceMayBeHigherThanTheOpening() {
        Piece high = on(new LoomKind.RoundFrame(LoomKind.Spacer.CORD))
                .withDesign(panel.design().withHeight(Length.parse("1.1 m")));
        assertThat(Plan.of(high).budget().left()).isPositive();
        assertThat(Plan.of(high.withLoom(high.loom().withKind(new LoomKind.BarToBar())))
                        .budget()
                        .left())
                .isNegative();
    }

    /** What isn't piece is shared: both ends together have the way round without the piece. */
    @Test
    void roundTheFrameBothEndsShareWhatIsFree() {
        Plan plan = Plan.of(on(new LoomKind.RoundFrame(LoomKind.Spacer.CORD)));
        double piece = plan.budget().designEnds()
                + plan.top().edge()
                - plan.budget().clearance()
                - plan.start().edge();
        assertThat(plan.freeRound()).isCloseTo(plan.room().perEnd() - piece, within(1e-9));
        assertThat(plan.start().free()).isCloseTo(plan.freeRound(), within(1e-9));
    }

    @Test
    void onceTheWarpTravelsHeightsAreSaidFromTheStartLine() {
        Plan plan = Plan.of(on(new LoomKind.RoundFrame(LoomKind.Spacer.CORD)));
        assertThat(plan.datum(Place.START)).isEqualTo(Datum.LOWER_BAR);
        assertThat(plan.datum(Place.TOP)).isEqualTo(Datum.START_LINE);
        assertThat(plan.above(Place.TOP, plan.budget().designEnds())).isCloseTo(300, within(1e-9));
        assertThat(Plan.of(panel).datum(Place.TOP)).isEqualTo(Datum.LOWER_BAR);
    }

    @Test
    void onRollersTheWasteIsLostAndTwoThirdsOfItLieFreeAtTheTop() {
        Loom loom = panel.loom()
                .withKind(new LoomKind.Rollers(Length.parse("51 cm")))
                .withWarpPerEnd(Optional.of(Length.parse("1.5 m")));
        Plan plan = Plan.of(panel.withLoom(loom));
        assertThat(plan.budget().open()).isCloseTo(990, within(1e-9));
        assertThat(plan.top().free())
                .isCloseTo(990 + 330 - plan.budget().designEnds() - plan.top().edge(), within(1e-9));
    }

    @Test
    void onRollersAWarpEndIsAsLongAsThePieceAsks() {
        Plan plan = Plan.of(on(new LoomKind.Rollers(Length.parse("60 cm"))));
        assertThat(plan.budget().left()).isBetween(0.0, 10.0);
    }

    /** To a nail come two ends, to a notch one; every k-th may be used. */
    @ParameterizedTest
    @CsvSource({
        "4/in, NAILS, 8/in, 1",
        "4/in, NAILS, 4/in, 2",
        "4/in, NOTCHES, 4/in, 1",
        "8/in, NOTCHES, 4/in, 2",
        "3/cm, PEGS, 2/cm, 3",
        "10/10 cm, NAILS, 2/cm, 1"
    })
    void aPitchAllowsSetts(String pitch, LoomKind.Peg peg, String sett, int steps) {
        assertThat(new Pitch(pegs(pitch, peg)).steps(Sett.parse(sett))).isEqualTo(steps);
    }

    @ParameterizedTest
    @CsvSource({
        "4/in, NAILS, 6/in, 4/in and 8/in",
        "4/in, NAILS, 10/in, 4/in and 8/in",
        "3/cm, NOTCHES, 2/cm, 1.5/cm and 3/cm",
        "4/in, NAILS, 0.3/in, 0.667/in and 0.727/in"
    })
    void otherSettsAreRefusedWithTheNearestTwo(String pitch, LoomKind.Peg peg, String sett, String nearest) {
        Piece piece = panel.withWarp(new Warp(Length.parse("50 cm"), Sett.parse(sett), "cord"));
        assertThatThrownBy(() -> piece.withLoom(panel.loom().withKind(pegs(pitch, peg))))
                .hasMessage("With " + pitch + " a sett of " + sett + " can’t be: the nearest that can are " + nearest
                        + ".");
    }

    @Test
    void everyKindThatIsOfferedFitsThePiece() {
        for (LoomKind kind : LoomKinds.all(panel)) {
            Plan plan = Plan.of(on(kind));
            assertThat(plan.budget().left()).as(kind.key()).isNotNegative();
            assertThat(plan.start().free()).as(kind.key()).isNotNegative();
        }
    }

    /** A warp round the frame asks for less free warp than one that is tied to bars, and a hem for less than a fringe. */
    @Test
    void usualFreeWarpFollowsKindAndFinish() {
        double tied = Plan.of(on(new LoomKind.BarToBar())).budget().clearance();
        double round = Plan.of(on(new LoomKind.RoundFrame(LoomKind.Spacer.CORD)))
                .budget()
                .clearance();
        assertThat(round).isLessThan(tied);
        assertThat(tied).isEqualTo(100);
    }
}
