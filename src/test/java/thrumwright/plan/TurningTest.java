package thrumwright.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import thrumwright.block.Block;
import thrumwright.block.HemFold;
import thrumwright.block.KnotRows;
import thrumwright.block.Support;
import thrumwright.block.Tag;
import thrumwright.block.Turning;
import thrumwright.block.WarpFinish;
import thrumwright.measure.BadMeasure;
import thrumwright.measure.Length;
import thrumwright.measure.Sett;
import thrumwright.piece.Piece;
import thrumwright.piece.Warp;
import thrumwright.plan.finding.Finding;
import thrumwright.plan.finding.Findings;
import thrumwright.testing.Pieces;
import thrumwright.testing.RandomPieces;
import thrumwright.testing.Seeds;

/** Hems with mitred corners and hems faced with a band, on the worked panel: H = 13.790762, T = 2.786345, W = 240. */
class TurningTest {
    private static final double CLOTH = 13.790762;
    private static final double THICK = 2.786345;

    private final Piece panel = Pieces.panel();

    private static Turning band(String width) {
        return new Turning.Faced(Length.parse(width), Optional.empty());
    }

    private Piece with(Turning turning) {
        return panel.withStart(
                panel.start().replaced(HemFold.once(Tag.of("fold")).withTurning(turning)));
    }

    private static Hem hem(Piece piece) {
        return Plan.of(piece).start().hem().orElseThrow();
    }

    private static SewnBand sewn(Piece piece) {
        return hem(piece).band().orElseThrow();
    }

    private static List<Finding.Code> codes(Piece piece) {
        return Findings.of(Plan.of(piece)).all().stream().map(Finding::code).toList();
    }

    @Test
    void aMitreBeginsWhereTheBendEnds() {
        Mitre mitre = hem(with(new Turning.Mitred())).mitre().orElseThrow();
        assertThat(mitre.back()).isCloseTo(Math.PI * THICK / 4, within(1e-5));
        assertThat(mitre.leg()).isCloseTo(CLOTH - Math.PI * THICK / 4, within(1e-5));
        assertThat(mitre.crease()).isCloseTo(Math.hypot(mitre.leg(), mitre.leg()), within(1e-9));
        assertThat(mitre.between(240)).isCloseTo(240 - 2 * mitre.leg(), within(1e-9));
        assertThat(codes(with(new Turning.Mitred()))).isEmpty();
    }

    /** The corner is reflected in the crease: its point comes to lie on neither the fold's bend nor beyond the hem. */
    /** A first turn as deep as what stays between edge and fold leaves nothing to fold, whatever rounding makes of the sums. */
    @Test
    void aFirstTurnAsDeepAsTheHemFoldsNothing() {
        Hem hem = hem(with(new Turning.Twice(Length.parse("5 mm"))));
        assertThat(withCloth(hem, 5 + 1e-12).folds()).isFalse();
        assertThat(withCloth(hem, 5 - 1e-12).folds()).isFalse();
        assertThat(withCloth(hem, 5.01).folds()).isTrue();
    }

    private static Hem withCloth(Hem hem, double cloth) {
        return new Hem(
                hem.blockId(),
                hem.foldLine(),
                cloth,
                hem.thickness(),
                hem.firstTurn(),
                hem.mitre(),
                hem.band(),
                hem.sleeve());
    }

    @Test
    void aTurnedCornerLiesWithinTheHem() {
        Hem hem = hem(with(new Turning.Mitred()));
        Mitre mitre = hem.mitre().orElseThrow();
        // from (0, back) at 45° the reflection of (x, y) is (y − back, x + back), y outwards from the fold's line
        double x = hem.cloth() - mitre.back();
        double y = mitre.back();
        assertThat(x).isCloseTo(mitre.leg(), within(1e-9));
        assertThat(y).isGreaterThanOrEqualTo(Math.PI * hem.thickness() / 4 - 1e-9);
        assertThat(x).isLessThan(panel.warp().clothWidth() / 2);
        assertThat(hem.stacked()).isCloseTo(2 * THICK, within(1e-5));
    }

    @Test
    void cornersThatMeetAreAProblem() {
        Piece narrow = with(new Turning.Mitred()).withWarp(new Warp(Length.parse("20 mm"), Sett.parse("3/cm"), "cord"));
        assertThat(codes(narrow)).contains(Finding.Code.MITRES_MEET);
    }

    /** u = 13.790762 + 0.214602 · 2.786345 = 14.388718; a band of 30 leaves 30 + 3 − 5 − u for the ends. */
    @Test
    void aBandCoversClothAndWarpEnds() {
        SewnBand band = sewn(with(band("30 mm")));
        assertThat(band.turned()).isCloseTo(14.388718, within(1e-5));
        assertThat(band.ends()).isCloseTo(28 - 14.388718, within(1e-5));
        assertThat(band.trimmed()).isTrue();
        assertThat(band.covers()).isTrue();
        Hem hem = hem(with(band("30 mm")));
        assertThat(hem.depth()).isEqualTo(33);
        assertThat(hem.layers()).isEqualTo(3);
        assertThat(hem.stacked()).isCloseTo(2 * THICK + 0.5, within(1e-5));
        assertThat(hem.gain()).isCloseTo((1 - Math.PI / 4) * THICK, within(1e-5));
        assertThat(codes(with(band("30 mm")))).isEmpty();
        assertThat(sewn(with(band("6 cm"))).ends()).isEqualTo(SewnBand.LONGEST);
    }

    /** 240 and 10 turned in at either end; 1.083 widths, rounded up to a half. */
    @Test
    void aBandIsCutLongerThanTheClothIsWide() {
        SewnBand band = sewn(with(band("30 mm")));
        assertThat(band.length()).isCloseTo(260, within(1e-9));
        assertThat(band.widths()).isEqualTo(1.5);
        // 3 cm × 0.05 cm × 26 cm of cotton, 60 % of π/4 of it filled
        assertThat(band.grams()).isCloseTo(3.9 * 1.52 * 0.60 * Math.PI / 4, within(1e-9));
        Plan without = Plan.of(panel);
        Plan plan = Plan.of(with(band("30 mm")));
        assertThat(plan.top().hem().orElseThrow().band()).isPresent();
        assertThat(Weight.of(plan).bands()).isCloseTo(2 * band.grams(), within(1e-9));
        assertThat(Weight.of(plan).total() - Weight.of(without).total()).isCloseTo(2 * band.grams(), within(1e-9));
        assertThat(BandTotal.of(List.of(plan, plan))).singleElement().satisfies(total -> {
            assertThat(total.length()).isCloseTo(4 * 260, within(1e-9));
            assertThat(total.grams()).isCloseTo(4 * band.grams(), within(1e-9));
        });
    }

    @Test
    void aBandThatDoesNotCoverIsAProblem() {
        assertThat(codes(with(band("26 mm")))).contains(Finding.Code.BAND_TOO_NARROW);
        assertThat(codes(with(band("27 mm")))).doesNotContain(Finding.Code.BAND_TOO_NARROW);
        assertThat(codes(with(band("20 cm")))).contains(Finding.Code.BAND_TOO_WIDE);
        HemFold bar = HemFold.once(Tag.of("fold"))
                .withTurning(band("28 mm"))
                .withSupport(Optional.of(new Support.RoundBar(Length.parse("15 mm"))));
        assertThat(codes(panel.withStart(panel.start().replaced(bar))))
                .contains(Finding.Code.BAND_TOO_NARROW_FOR_SUPPORT)
                .doesNotContain(Finding.Code.SLEEVE_TOO_NARROW);
    }

    /** What hangs in knots lies under the band as long as it is: knots of three bundle diameters and 20 mm below them. */
    @Test
    void aFinishSaysHowFarItsEndsReach() {
        Piece faced = with(band("50 mm"));
        Block knots = new WarpFinish(Tag.of("knots"), WarpFinish.Kind.KNOTTED, 4, Length.parse("20 mm"));
        SewnBand band = sewn(faced.withStart(faced.start().with(2, knots)));
        assertThat(band.trimmed()).isFalse();
        assertThat(band.ends()).isCloseTo(20 + 3 * 2.4142 * 0.786345, within(1e-3));
        Block rows = new KnotRows(Tag.of("knots"), 2, 4, false, Optional.empty(), Length.parse("20 mm"));
        double high = 3 * 2.4142 * 0.786345;
        assertThat(sewn(faced.withStart(faced.start().with(2, rows))).ends()).isCloseTo(1.5 * high + 20, within(1e-2));
        Block darned = new WarpFinish(Tag.of("knots"), WarpFinish.Kind.DARNED, 1, Length.parse("50 mm"));
        assertThat(sewn(faced.withStart(faced.start().with(2, darned))).ends()).isZero();
    }

    @Test
    void warpEndsAloneMayLieUnderABand() {
        HemFold fold = HemFold.once(Tag.of("tape")).withTurning(band("30 mm"));
        Piece taped = panel.withStart(panel.start()
                .without(Set.of("fold", "soumak", "facing", "stiff"))
                .with(2, fold));
        Hem hem = hem(taped);
        assertThat(hem.cloth()).isZero();
        assertThat(hem.folds()).isTrue();
        assertThat(hem.band().orElseThrow().ends()).isEqualTo(25);
        assertThat(codes(taped)).doesNotContain(Finding.Code.HEM_EMPTY, Finding.Code.NOTHING_HOLDS);
    }

    @Test
    void oddBandsAreRefused() {
        assertThatThrownBy(() -> band("21 cm")).isInstanceOf(BadMeasure.class).hasMessageContaining("at most 20 cm");
        assertThatThrownBy(() -> new Turning.Faced(Length.parse("3 cm"), Optional.of(Length.parse("2 cm"))))
                .isInstanceOf(BadMeasure.class)
                .hasMessageContaining("at most 10 mm");
    }

    /** On pieces of every sort a band that covers leaves room for its second seam, and never asks for less than it says. */
    @Test
    void bandsCoverWhatTheySay() {
        RandomPieces pieces = new RandomPieces(77);
        int met = 0;
        for (int i = 0; i < Seeds.of(2000); i++) {
            Plan plan = Plan.of(pieces.next());
            for (EndPlan end : List.of(plan.start(), plan.top())) {
                Optional<SewnBand> band = end.hem().flatMap(Hem::band);
                if (band.isPresent()) {
                    met++;
                    SewnBand one = band.get();
                    assertThat(one.length())
                            .isGreaterThanOrEqualTo(plan.finishedWidth() + 2 * SewnBand.TURNED_IN - 1e-6);
                    assertThat(one.covers())
                            .isEqualTo(one.turned() + one.ends() + SewnBand.BEYOND <= one.depth() + 1e-9);
                }
            }
        }
        assertThat(met).isGreaterThan(Seeds.of(50));
    }
}
