package thrumwright.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import thrumwright.block.Amount;
import thrumwright.block.Lean;
import thrumwright.block.MaterialRole;
import thrumwright.block.OrderingCord;
import thrumwright.block.PlainBand;
import thrumwright.block.Tag;
import thrumwright.block.Twining;
import thrumwright.block.Use;
import thrumwright.measure.Length;
import thrumwright.measure.Sett;
import thrumwright.measure.UnitSystem;
import thrumwright.piece.Design;
import thrumwright.piece.Destiny;
import thrumwright.piece.End;
import thrumwright.piece.Habits;
import thrumwright.piece.Loom;
import thrumwright.piece.Meant;
import thrumwright.piece.Measures;
import thrumwright.piece.Piece;
import thrumwright.piece.Ticks;
import thrumwright.piece.Top;
import thrumwright.piece.Warp;
import thrumwright.yarn.Colour;
import thrumwright.yarn.Fibre;
import thrumwright.yarn.Firmness;
import thrumwright.yarn.Thickness;
import thrumwright.yarn.Yarn;

/**
 * Hand rules for cutting, all measured by holding yarn across the loom (common practice, no source): on a 12 in warp at 8
 * ends per inch on a small pipe loom with posts of 26.7 mm standing 25 mm off the warp, hard cotton cord of 0.61 mm, soft
 * weft of 10 wraps per inch, tails of five inches. A rule that a weaver trusts is never short, so no cut may exceed its
 * rule by more than 5 %, and none may fall below half of it.
 */
class HandRulesTest {
    @ParameterizedTest
    @CsvSource({"ordering, 4", "waste, 10", "twining, 3", "stiff, 8"})
    void cutsKeepToTheHandRules(String block, double loomWidths) {
        Plan plan = Plan.of(piece());
        double cut = plan.start()
                .block(block)
                .orElseThrow()
                .work()
                .orElseThrow()
                .cut()
                .length();
        double rule = loomWidths * plan.piece().reference();
        assertThat(cut).isLessThanOrEqualTo(rule * 1.05).isGreaterThanOrEqualTo(rule * 0.5);
    }

    private static Piece piece() {
        Yarn cord = yarn("cord", Fibre.COTTON, new Thickness.Measured(Length.parse("0.61 mm")), Firmness.HARD);
        Yarn weft = yarn("weft", Fibre.WOOL, new Thickness.Wraps(10, Length.parse("1 in")), Firmness.SOFT);
        Habits usual = Habits.usual(UnitSystem.INCHES);
        Length tail = Length.parse("5 in");
        return new Piece(
                "Rules",
                "",
                Destiny.UNSAID,
                new Loom(
                        "Small pipe loom",
                        Length.parse("30 in"),
                        Optional.of(new Loom.Uprights(Length.parse("26.7 mm"), Length.parse("25 mm"))),
                        Length.parse("2 in"),
                        Length.parse("5 in"),
                        Length.parse("36 in")),
                new Warp(Length.parse("12 in"), Sett.parse("8/in"), "cord"),
                List.of(cord, weft),
                "cord",
                "weft",
                new Design(Length.parse("12 in"), "weft", "weft", Optional.empty(), Optional.empty(), 0),
                new Habits(
                        UnitSystem.INCHES,
                        Habits.WidthsOf.LOOM,
                        usual.step(),
                        tail,
                        tail,
                        usual.ease(),
                        usual.handful(),
                        usual.overlap()),
                new End(List.of(
                        new OrderingCord(
                                Tag.of("ordering"), Use.comingOut(MaterialRole.WARP_CORD), 3, Optional.empty()),
                        new PlainBand(
                                Tag.of("waste"),
                                Use.comingOut(MaterialRole.WASTE),
                                PlainBand.Purpose.WASTE,
                                new Amount.Height(Length.parse("1/2 in")),
                                Optional.empty()),
                        new Twining(Tag.of("twining"), Use.of(MaterialRole.WARP_CORD), 1, 1, Lean.Z, false),
                        new PlainBand(
                                Tag.of("stiff"),
                                Use.of(MaterialRole.WARP_CORD),
                                PlainBand.Purpose.STIFF,
                                new Amount.Picks(6),
                                Optional.empty()))),
                new Top.FollowsStart(Set.of()),
                Ticks.NONE,
                Measures.NONE,
                Meant.NOTHING);
    }

    private static Yarn yarn(String id, Fibre fibre, Thickness thickness, Firmness firmness) {
        return new Yarn(id, id, new Colour(0xffffff), fibre, thickness, firmness);
    }
}
