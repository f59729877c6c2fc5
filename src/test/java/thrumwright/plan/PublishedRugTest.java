package thrumwright.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import thrumwright.measure.Length;
import thrumwright.measure.Sett;
import thrumwright.piece.Piece;
import thrumwright.piece.Warp;
import thrumwright.plan.finding.Finding;
import thrumwright.plan.finding.Findings;
import thrumwright.plan.words.Recommendations;
import thrumwright.testing.Pieces;
import thrumwright.yarn.CountSystem;
import thrumwright.yarn.Sample;
import thrumwright.yarn.Thickness;
import thrumwright.yarn.Yarn;

/**
 * A published weft-faced rug (the project whose warp {@link PlanTest} checks): 4 ends per inch over 21 in, 21 picks per inch,
 * finished 19½ in wide and 34 in long; warp a four-ply cotton of 1,600 yd to the pound, weft a two-ply rug wool of 260 yd to
 * the pound, 57 + 226 + 212 = 495 yd of it.
 */
class PublishedRugTest {
    private final Piece rug = rug();
    private final Yarn weft = rug.yarn("weft");

    private static Piece rug() {
        Piece panel = Pieces.panel();
        return panel.withWarp(new Warp(
                        Length.parse("21 in"), Sett.parse("4/in"), "cord", Optional.of(Length.parse("19 1/2 in"))))
                .withYarns(panel.yarns().stream()
                        .map(yarn -> yarn.id().equals("cord")
                                ? yarn.withThickness(new Thickness.Counted(1600, 4, CountSystem.YARDS_PER_POUND))
                                : yarn.withThickness(new Thickness.Counted(260, 2, CountSystem.YARDS_PER_POUND))
                                        .withSample(Optional.of(new Sample(21, Length.parse("1 in")))))
                        .toList());
    }

    /** 1 − 19.5 ÷ 21 = 7.1 %: a usual draw-in, and no caution. */
    @Test
    void itsDrawInIsUsual() {
        assertThat(rug.warp().drawIn()).isCloseTo(0.0714, within(1e-4));
        assertThat(Findings.of(Plan.of(rug)).all())
                .extracting(Finding::code)
                .doesNotContain(Finding.Code.DRAWS_IN, Finding.Code.WOVEN_WIDTH_UNLIKELY);
    }

    /** What a project tells one to buy is never short: the weft takes not more than that, and more than three quarters of it. */
    @Test
    void itsWeftIsEnoughAndNotFarTooMuch() {
        double yards = rug.setting(weft).plain(21 * 34) * (1 + rug.ease(weft)) / 914.4;
        assertThat(yards).isBetween(0.75 * 495, 495.0);
    }

    /** The picks alone, laid flat, would take 714 × 19½ in = 386.75 yd; the weave adds the crimp of a stretched warp. */
    @Test
    void theWeaveTakesMoreThanTheWidth() {
        double yards = rug.setting(weft).plain(21 * 34) / 914.4;
        assertThat(yards).isBetween(386.75 * 83 / 84, 386.75 * 1.2);
    }

    /** Such a wool goes in at this sett: nothing is jammed, and the gap is not too tight for it. */
    @Test
    void itsWeftGoesInAtItsSett() {
        assertThat(rug.setting(weft).jammed()).isFalse();
        assertThat(new Recommendations(rug, Locale.UK).gap(weft).value()).isGreaterThan(1 - Recommendations.GAP_PLAY);
    }
}
