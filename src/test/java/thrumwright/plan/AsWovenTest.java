package thrumwright.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import thrumwright.measure.Length;
import thrumwright.measure.Unit;
import thrumwright.piece.MeasuredStep;
import thrumwright.piece.Measures;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;
import thrumwright.piece.Top;
import thrumwright.plan.finding.Finding;
import thrumwright.plan.finding.Findings;
import thrumwright.plan.words.FindingWords;
import thrumwright.testing.Pieces;
import thrumwright.testing.RandomPieces;
import thrumwright.testing.Seeds;

/** What follows from heights that were measured on the loom. */
class AsWovenTest {
    private static final double EXACT = 1e-9;
    /** Lengths are written to a thousandth of their unit. */
    private static final double WRITTEN = 0.001;

    private static Piece measured(Piece piece, String step, double mm) {
        MeasuredStep height = piece.measures().of(step).withHeight(Optional.of(Length.of(mm, Unit.MILLIMETRE)));
        return piece.withMeasures(piece.measures().with(height));
    }

    private static List<String> said(Piece piece, Finding.Code... codes) {
        return Findings.of(Plan.of(piece)).all().stream()
                .filter(finding -> List.of(codes).contains(finding.code()))
                .map(FindingWords.of(piece, Locale.UK)::say)
                .toList();
    }

    /**
     * The worked panel, begun 40 mm above the bar: the stiff band is planned up to 40 + 2.359 + 12 + 1.573 + 4.718 = 60.650.
     * At 64.65 it is 4 mm high.
     */
    @Test
    void fourMillimetresOverMoveAllThatFollows() {
        Piece piece = measured(Pieces.panel(), "start/stiff", 64.65);
        Plan planned = Plan.of(piece);
        Plan woven = Plan.asWoven(piece);
        assertThat(planned.start().reach(planned.start().block("stiff").orElseThrow()))
                .isEqualTo(60.650, within(0.001));
        assertThat(woven.start().reach(woven.start().block("facing").orElseThrow()))
                .isEqualTo(70.650, within(0.001));
        assertThat(woven.budget().startLine()).isEqualTo(73.650, within(0.001));
        // 14.389 planned
        assertThat(woven.start().hem().orElseThrow().depth()).isEqualTo(18.389, within(0.001));
        assertThat(woven.start().block("twining")).isEqualTo(planned.start().block("twining"));
        // the top follows: its stiff band comes out 4 mm higher too, and the design must stop as much lower
        assertThat(woven.top().height()).isEqualTo(planned.top().height() + 4, within(0.001));
        assertThat(woven.top().hem().orElseThrow().depth()).isEqualTo(18.389, within(0.001));
        assertThat(woven.budget().stopLine()).isEqualTo(planned.budget().stopLine() - 4, within(0.001));
        assertThat(woven.budget().left()).isEqualTo(planned.budget().left() - 8, within(0.001));
        assertThat(said(piece, Finding.Code.HEM_COMES_DEEPER))
                .containsExactly("4 mm over: the hem of the start will be 1.8 cm deep instead of 1.4 cm."
                        + " 4 picks fewer in Facing bring it to 1.4 cm.");
    }

    /** Nothing is left in the hem that could make up for it, and where it lies is all that follows. */
    @Test
    void whereTheHemIsWovenItIsOnlySaid() {
        Piece piece = measured(measured(Pieces.panel(), "start/stiff", 64.65), "start/facing", 70.65);
        assertThat(said(piece, Finding.Code.HEM_COMES_DEEPER))
                .containsExactly("4 mm over: the hem of the start will be 1.8 cm deep instead of 1.4 cm.");
        assertThat(said(measured(Pieces.panel(), "start/waste", 57), Finding.Code.COMES_HIGHER))
                .containsExactly("2.6 mm over: the design begins 7.2 cm above the lower bar.");
    }

    /** What can't be is told and not reckoned with. */
    @Test
    void impossibleHeightsAreNotReckonedWith() {
        Piece piece = measured(measured(Pieces.panel(), "start/stiff", 60), "start/facing", 58);
        assertThat(Plan.asWoven(piece).budget().startLine()).isEqualTo(69, within(0.001));
        assertThat(said(piece, Finding.Code.HEIGHT_UNLIKELY))
                .containsExactly(
                        "Facing in the start: the height 5.8 cm isn't reckoned with. It must be above 6 cm, which was"
                                + " reached before, and not above 70 cm.");
        assertThat(HeightRange.of(piece, "start/stiff")).isEqualTo(new HeightRange(40, 58));
        assertThat(HeightRange.of(piece, "top/facing")).isEqualTo(new HeightRange(58, 700));
    }

    /** A facing that is measured lower than a stiff band as planned squeezes both. */
    @Test
    void whatLeavesNothingOfTheMeasuredBlockIsShared() {
        Piece piece = measured(measured(Pieces.panel(), "start/twining", 55.932), "start/facing", 59.932);
        Plan woven = Plan.asWoven(piece);
        double share = 4 / (4.718 + 6);
        assertThat(woven.start().block("stiff").orElseThrow().height()).isEqualTo(4.718 * share, within(0.001));
        assertThat(woven.start().block("facing").orElseThrow().height()).isEqualTo(6 * share, within(0.001));
    }

    /** The design as it ended is where the top begins. */
    @Test
    void whereTheDesignEndedTheTopBegins() {
        Piece piece = measured(Pieces.panel(), Measures.DESIGN, 560);
        Plan woven = Plan.asWoven(piece);
        assertThat(woven.top().onLoom()).isEqualTo(560, within(EXACT));
        assertThat(woven.budget().left()).isEqualTo(Plan.of(piece).budget().stopLine() - 560, within(EXACT));
        assertThat(said(measured(piece, Measures.DESIGN, 600), Finding.Code.NO_ROOM_LEFT))
                .containsExactly(
                        "What was measured leaves 4.7 cm too little for the top and the hands. End the design 55.3 cm"
                                + " above the lower bar.");
    }

    private static Piece random(int seed) {
        Piece piece = new RandomPieces(seed).next();
        Piece bare = piece.withMeasures(Measures.NONE);
        // high enough that no measured height is beyond it
        return bare.withLoom(bare.loom()
                        .withWarpPerEnd(Optional.of(Length.parse("90 m")))
                        .withOpen(Length.parse("20 m")))
                .withTop(new Top.OnItsOwn(bare.end(Place.TOP)));
    }

    private static List<BlockPlan> high(EndPlan end) {
        return end.blocks().stream().filter(block -> block.height() > 0.01).toList();
    }

    @Test
    void measuredAsPlannedChangesNothing() {
        for (int seed = 0; seed < Seeds.of(300); seed++) {
            Piece piece = random(seed);
            Plan plan = Plan.of(piece);
            for (Place place : Place.values()) {
                for (BlockPlan block : high(plan.end(place))) {
                    piece = measured(
                            piece,
                            place.step(block.block().id()),
                            plan.above(place, plan.end(place).reach(block)));
                }
            }
            Plan woven = Plan.asWoven(piece);
            if (plan.budget().designEnds() + plan.top().height() < 20_000) {
                same(plan, woven, 0, WRITTEN);
            }
            assertThat(said(
                            piece,
                            Finding.Code.HEIGHT_UNLIKELY,
                            Finding.Code.HEM_COMES_DEEPER,
                            Finding.Code.COMES_HIGHER))
                    .as("piece " + seed)
                    .isEmpty();
        }
    }

    private static void same(Plan plan, Plan woven, double shift, double near) {
        for (Place place : Place.values()) {
            for (BlockPlan block : plan.end(place).blocks()) {
                BlockPlan now = woven.end(place).block(block.block().id()).orElseThrow();
                assertThat(woven.end(place).reach(now))
                        .isEqualTo(plan.end(place).reach(block) + shift, within(near));
            }
        }
        assertThat(woven.budget().designEnds()).isEqualTo(plan.budget().designEnds() + shift, within(near));
    }

    @Test
    void aShiftMovesEverythingAboveByAsMuchAndNothingBelow() {
        Random random = new Random(5);
        for (int seed = 0; seed < Seeds.of(300); seed++) {
            Piece piece = random(seed);
            Plan plan = Plan.of(piece);
            List<BlockPlan> high = high(plan.start());
            if (high.isEmpty()) {
                continue;
            }
            BlockPlan block = high.get(random.nextInt(high.size()));
            double shift = random.nextDouble(-0.9 * block.height(), 30);
            double reached = plan.start().reach(block) + shift;
            Plan woven = Plan.asWoven(measured(piece, "start/" + block.block().id(), reached));
            boolean above = false;
            for (BlockPlan each : plan.start().blocks()) {
                above |= each.block().id().equals(block.block().id());
                double now = woven.start()
                        .reach(woven.start().block(each.block().id()).orElseThrow());
                assertThat(now).isEqualTo(plan.start().reach(each) + (above ? shift : 0), within(WRITTEN));
            }
            for (BlockPlan each : plan.top().blocks()) {
                double now =
                        woven.top().reach(woven.top().block(each.block().id()).orElseThrow());
                assertThat(now).isEqualTo(plan.top().reach(each) + shift, within(WRITTEN));
            }
            assertThat(woven.budget().designEnds()).isEqualTo(plan.budget().designEnds() + shift, within(WRITTEN));
        }
    }

    @Test
    void whereNothingWasMeasuredItIsThePlan() {
        for (int seed = 0; seed < Seeds.of(100); seed++) {
            Piece piece = new RandomPieces(seed).next().withMeasures(Measures.NONE);
            assertThat(Plan.asWoven(piece)).isEqualTo(Plan.of(piece));
        }
    }
}
