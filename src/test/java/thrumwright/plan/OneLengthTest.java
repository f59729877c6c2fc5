package thrumwright.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import thrumwright.block.Amount;
import thrumwright.block.Block;
import thrumwright.block.Course;
import thrumwright.block.HemFold;
import thrumwright.block.Hemstitching;
import thrumwright.block.Lean;
import thrumwright.block.MaterialRole;
import thrumwright.block.OpenWarp;
import thrumwright.block.Passing;
import thrumwright.block.PlainBand;
import thrumwright.block.Row;
import thrumwright.block.Shed;
import thrumwright.block.Side;
import thrumwright.block.Soumak;
import thrumwright.block.Tag;
import thrumwright.block.Twining;
import thrumwright.block.Use;
import thrumwright.block.YarnBlock;
import thrumwright.cord.Route;
import thrumwright.cord.Sense;
import thrumwright.cord.TautCord;
import thrumwright.cord.Visit;
import thrumwright.measure.Length;
import thrumwright.piece.End;
import thrumwright.piece.Piece;
import thrumwright.piece.Top;
import thrumwright.testing.Pieces;
import thrumwright.testing.RandomPieces;
import thrumwright.testing.Seeds;

/** Neighbours of one yarn, one ending where the next begins: nothing is cut between. */
class OneLengthTest {
    private static final Use WEFT = Use.of(MaterialRole.WEFT);
    private static final Block FOLD = HemFold.once(Tag.of("fold"));

    /**
     * 6 picks of facing and a row of soumak on the worked panel: 1644.166 and 704.953 of the method's exact values; 3 % of ease
     * and two tails of 15 cm once, rounded up to 1 cm: 2720 mm, and to half a width of 24 cm: 11.5.
     */
    @Test
    void facingAndSoumakAreOneLength() {
        EndPlan end = Plan.of(Pieces.panel()).start();
        Work facing = work(end, "facing");
        Work soumak = work(end, "soumak");
        Cut cut = facing.toCut().orElseThrow();
        assertThat(cut.exact()).isEqualTo(2349.119, within(0.001));
        assertThat(cut.ease()).isEqualTo(70.474, within(0.001));
        assertThat(cut.hanging()).isEqualTo(300);
        assertThat(cut.length()).isEqualTo(2720);
        assertThat(cut.widths()).isEqualTo(11.5);
        assertThat(soumak.toCut()).isEmpty();
        assertThat(facing.tails()).containsExactly(facing.begins());
        assertThat(soumak.tails()).containsExactly(soumak.ends());
        assertThat(end.cut(facing.yarn())).isEqualTo(2720);
        assertThat(end.each("soumak")).isZero();
    }

    /**
     * Soumak brings the yarn to the front inside the edge end. From there it can go round that end and under it; over it, it would
     * only lie back along its own float.
     */
    @Test
    void afterSoumakItGoesOnIntoAPickUnderTheEdgeEndAlone() {
        Piece panel = Pieces.panel();
        for (Side side : Side.values()) {
            for (Shed shed : Shed.values()) {
                EndPlan top = Plan.of(panel.withDesign(Pieces.ending(panel.design(), shed, side)))
                        .top();
                Row first = work(top, "facing").rows().get(0);
                boolean under = first.meets(panel.warp().ends()).orElseThrow() == Passing.UNDER;
                assertThat(work(top, "facing").toCut().isEmpty()).isEqualTo(under);
                assertThat(work(top, "facing").oneLength().cutFrom().map(Block::id))
                        .isEqualTo(under ? Optional.empty() : Optional.of("soumak"));
            }
        }
    }

    /**
     * The turn between two bands is the one between two picks of a band: 4 and 6 picks in one length take what 10 take at once,
     * 10(N−1)ℓ + 9·turn(t).
     */
    @Test
    void theTurnBetweenTwoIsCut() {
        EndPlan two = start(band("plain", WEFT), facing(WEFT));
        EndPlan one = start(band("plain", WEFT).withExtent(new Amount.Picks(10)));
        assertThat(work(two, "plain").oneLength().cut().exact())
                .isEqualTo(work(one, "plain").cut().exact(), within(1e-9));
    }

    /** Held against the peg engine: half way round the edge end, up from the middle of the soumak row to that of the pick. */
    @Test
    void theTurnAfterSoumakIsTheEngines() {
        EndPlan end = start(soumak(WEFT), band("plain", WEFT).withFirstShed(Optional.of(Shed.OVER_FIRST)));
        Work soumak = work(end, "soumak");
        Work plain = work(end, "plain");
        double engine = TautCord.along(Route.of(
                        List.of(Visit.of(0, soumak.setting().radius(), Sense.CLOCKWISE)), Route.FRONT, Route.BACK))
                .length();
        double turn = Math.hypot(engine, 1.5 + 0.5);
        assertThat(soumak.oneLength().cut().exact())
                .isEqualTo(soumak.cut().exact() + turn + plain.cut().exact(), within(1e-9));
    }

    /** Whichever of the two says so, and as well in the top, where the other comes first. */
    @Test
    void aBlockMayHaveItsYarnCutByItself() {
        for (Block alone : List.of(facing(WEFT.withByItself(true)), soumak(WEFT.withByItself(true)))) {
            Plan plan = Plan.of(Pieces.panel().withStart(Pieces.hemmed().replaced(alone)));
            assertThat(lengths(plan.start())).hasSize(6);
            assertThat(lengths(plan.top())).hasSize(5);
        }
    }

    @Test
    void aFoldIsOnlyALine() {
        assertThat(lengths(facing(WEFT), FOLD, soumak(WEFT))).hasSize(1);
    }

    @Test
    void bareWarpPartsAYarn() {
        assertThat(lengths(facing(WEFT), new OpenWarp(Tag.of("open"), Length.parse("5 mm")), soumak(WEFT)))
                .hasSize(2);
    }

    @Test
    void threeAreOneLength() {
        assertThat(lengths(facing(WEFT), soumak(WEFT), band("plain", WEFT))).hasSize(1);
    }

    @Test
    void itMustBeginWhereTheOtherEnds() {
        assertThat(lengths(facing(WEFT), soumak(WEFT.withFrom(Optional.of(Side.RIGHT)))))
                .hasSize(2);
        assertThat(lengths(facing(WEFT), soumak(WEFT.withFrom(Optional.of(Side.LEFT)))))
                .hasSize(1);
    }

    @Test
    void whatComesOutIsNoLengthWithWhatStays() {
        assertThat(lengths(band("out", WEFT.withComesOut(true)), facing(WEFT))).hasSize(2);
    }

    @Test
    void aFoldedYarnAndAThreadOnANeedleAreCutByThemselves() {
        assertThat(lengths(facing(WEFT), new Twining(Tag.of("twining"), WEFT, 1, 1, Lean.Z, false)))
                .hasSize(2);
        assertThat(lengths(facing(WEFT), new Hemstitching(Tag.of("stitching"), WEFT, 4, 2, Hemstitching.Round.LAST)))
                .hasSize(2);
    }

    /** Going back in the shed of the pick before, the yarn would hold nothing at the edge. */
    @Test
    void inOneShedItIsCut() {
        YarnBlock same = band("plain", WEFT).withFirstShed(Optional.of(Shed.UNDER_FIRST));
        assertThat(lengths(facing(WEFT), same)).hasSize(2);
        assertThat(lengths(facing(WEFT), same.withFirstShed(Optional.of(Shed.OVER_FIRST))))
                .hasSize(1);
    }

    private static double turns(EndPlan end) {
        double turns = 0;
        List<Work> works = works(end);
        for (int i = 1; i < works.size(); i++) {
            turns += works.get(i).toCut().isEmpty() ? works.get(i - 1).onward(works.get(i)) : 0;
        }
        return turns;
    }

    /** Every yarn is cut once, and every yarn in the cloth is in a cut. */
    @Test
    void whatIsCutIsWhatIsWoven() {
        for (int seed = 0; seed < Seeds.of(1000); seed++) {
            Plan plan = Plan.of(new RandomPieces(seed).next());
            for (EndPlan end : List.of(plan.start(), plan.top())) {
                double woven = works(end).stream()
                        .mapToDouble(work -> work.cut().exact())
                        .sum();
                double cut = lengths(end).stream().mapToDouble(Cut::exact).sum();
                assertThat(cut).isEqualTo(woven + turns(end), within(1e-6 * Math.max(1, woven)));
                for (Work work : works(end)) {
                    assertThat(work.oneLength().cut().exact())
                            .isGreaterThanOrEqualTo(work.cut().exact() - 1e-9);
                }
            }
        }
    }

    private static List<Cut> lengths(Block... blocks) {
        return lengths(start(blocks));
    }

    private static EndPlan start(Block... blocks) {
        Piece piece = Pieces.panel().withTop(new Top.OnItsOwn(End.empty())).withStart(new End(List.of(blocks)));
        Plan plan = Plan.of(piece);
        assertThat(plan.start().before()).isEqualTo(Course.beginning());
        return plan.start();
    }

    private static List<Cut> lengths(EndPlan end) {
        return works(end).stream().flatMap(work -> work.toCut().stream()).toList();
    }

    private static List<Work> works(EndPlan end) {
        return end.blocks().stream().flatMap(block -> block.work().stream()).toList();
    }

    private static Work work(EndPlan end, String id) {
        return end.block(id).flatMap(BlockPlan::work).orElseThrow();
    }

    private static PlainBand facing(Use use) {
        return Pieces.band("facing", use, PlainBand.Purpose.FACING, 6);
    }

    private static PlainBand band(String id, Use use) {
        return new PlainBand(Tag.of(id), use, PlainBand.Purpose.PLAIN, new Amount.Picks(4), Optional.empty());
    }

    private static Soumak soumak(Use use) {
        return new Soumak(Tag.of("soumak"), use, 1, 2, 1, Lean.Z, false);
    }
}
