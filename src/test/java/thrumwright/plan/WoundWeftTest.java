package thrumwright.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import thrumwright.measure.Length;
import thrumwright.measure.Refused;
import thrumwright.measure.Unit;
import thrumwright.piece.Piece;
import thrumwright.piece.Stash;
import thrumwright.sheet.CutLine;
import thrumwright.sheet.StepSheet;
import thrumwright.sheet.YarnLine;
import thrumwright.testing.Pieces;
import thrumwright.testing.RandomPieces;
import thrumwright.testing.Seeds;
import thrumwright.yarn.Bundle;
import thrumwright.yarn.Colour;
import thrumwright.yarn.Fibre;
import thrumwright.yarn.Firmness;
import thrumwright.yarn.Skein;
import thrumwright.yarn.Strands;
import thrumwright.yarn.Thickness;
import thrumwright.yarn.Yarn;

/** A weft of several strands in a whole piece. */
class WoundWeftTest {
    private static Yarn fine(String id, String name, String colour) {
        Thickness thickness = Thickness.parse("13 wraps in 1 cm");
        return new Yarn(id, name, Colour.parse(colour), Fibre.WOOL, thickness, Firmness.SOFT);
    }

    /** The worked panel with its weft wound from three strands and two. */
    private static Piece panel() {
        Piece panel = Pieces.panel();
        List<Yarn> yarns = new ArrayList<>(panel.yarns());
        Yarn silt = fine("silt", "Silt", "#6f6255");
        Yarn mist = fine("mist", "Mist", "#d8c9b0").withSkein(Optional.of(Skein.parse("10 m")));
        yarns.add(silt);
        yarns.add(mist);
        yarns.replaceAll(yarn -> yarn.id().equals("weft")
                ? Yarn.wound("weft", "Blend", new Bundle(List.of(new Strands(silt, 3), new Strands(mist, 2))))
                : yarn);
        return panel.withYarns(yarns);
    }

    private static double cutOf(Plan plan, String id) {
        Yarn yarn = plan.piece().yarn(id);
        return plan.start().cut(yarn) + plan.top().cut(yarn);
    }

    private static YarnTotal total(Plan plan, String id) {
        return plan.totals().stream()
                .filter(total -> total.yarn().id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void theStrandsYarnsAreBought() {
        Plan plan = Plan.of(panel());
        double cut = cutOf(plan, "weft");
        assertThat(cut).isPositive();
        assertThat(total(plan, "silt").inEnds()).isCloseTo(3 * cut, within(1e-6));
        assertThat(total(plan, "mist").inEnds()).isCloseTo(2 * cut, within(1e-6));
        assertThat(plan.totals()).noneMatch(total -> total.yarn().bundle().isPresent());
    }

    /** Whatever is cut, warped, woven in the design and sewn on weighs as much as all yarns that are told together. */
    @Test
    void theWeightsOfTheYarnsAreThatOfAllThatIsCut() {
        RandomPieces pieces = new RandomPieces(417);
        int wound = 0;
        for (int i = 0; i < Math.max(30, Seeds.of(1000)); i++) {
            Plan plan = Plan.of(pieces.next());
            double told = plan.totals().stream().mapToDouble(YarnTotal::grams).sum();
            double cut = plan.piece().yarns().stream()
                    .mapToDouble(yarn -> cutOf(plan, yarn.id()) * yarn.tex())
                    .sum();
            double design = DesignWeft.of(plan.piece()).grams();
            double cord = plan.sewnCord()
                    .map(sewn -> sewn.yarnLength() * sewn.yarn().tex())
                    .orElse(0.0);
            double all = design
                    + (cut + cord + plan.warpYarn() * plan.piece().warpYarn().tex()) / 1e6;
            assertThat(told).isCloseTo(all, within(1e-9 * all));
            wound += plan.piece().yarns().stream()
                            .anyMatch(yarn -> yarn.bundle().isPresent() && cutOf(plan, yarn.id()) > 0)
                    ? 1
                    : 0;
        }
        assertThat(wound).isGreaterThan(3);
    }

    /** Woven, a bundle is a yarn of its diameter and its beaten thickness, and no closed form knows more of it. */
    @Test
    void aBundleIsWovenLikeAYarnOfItsThickness() {
        Piece wound = panel();
        Yarn bundle = wound.yarn("weft");
        Length diameter = Length.of(bundle.diameter(), Unit.MILLIMETRE);
        Piece plain = wound.withYarns(wound.yarns().stream()
                .map(yarn -> yarn == bundle
                        ? new Yarn(
                                "weft",
                                "Plain",
                                bundle.colour(),
                                Fibre.WOOL,
                                new Thickness.Measured(diameter),
                                Firmness.SOFT)
                        : yarn)
                .toList());
        List<BlockPlan> one = Plan.of(wound).start().blocks();
        List<BlockPlan> other = Plan.of(plain).start().blocks();
        for (int i = 0; i < one.size(); i++) {
            assertThat(one.get(i).height()).isCloseTo(other.get(i).height(), within(1e-3));
            assertThat(exact(one.get(i))).isCloseTo(exact(other.get(i)), within(1e-3 * exact(other.get(i))));
        }
    }

    /** To the thousandth of a mm, to which a diameter can be typed. */
    private static double exact(BlockPlan block) {
        return block.work().map(work -> work.cut().exact()).orElse(0.0);
    }

    @Test
    void whatIsChangedOnAStrandIsChangedInItsBundle() {
        Piece piece = panel();
        Piece thicker = piece.withYarns(piece.yarns().stream()
                .map(yarn -> yarn.id().equals("silt") ? yarn.withThickness(Thickness.parse("2 mm")) : yarn)
                .toList());
        assertThat(thicker.yarn("weft").diameter())
                .isGreaterThan(piece.yarn("weft").diameter());
        assertThat(thicker.uses("silt")).isTrue();
    }

    @Test
    void aStrandThatIsMissingIsRefused() {
        Piece piece = panel();
        List<Yarn> fewer =
                piece.yarns().stream().filter(yarn -> !yarn.id().equals("mist")).toList();
        assertThatThrownBy(() -> piece.withYarns(fewer))
                .isInstanceOf(Refused.class)
                .hasMessage("“Blend” is wound from “Mist”, which isn't among the yarns.");
    }

    @Test
    void theShelfKeepsTheStrandsAndNotTheBundle() {
        Stash stash = Stash.empty().with(panel());
        assertThat(stash.yarns())
                .extracting(Yarn::name)
                .contains("Silt", "Mist")
                .doesNotContain("Blend");
    }

    /** What a strand is used for is what its bundle is used for. */
    @Test
    void aStrandIsTakenByWhatItsBundleIsWovenInto() {
        Plan plan = Plan.of(panel());
        assertThat(plan.start().taking(plan.piece().yarn("silt")))
                .isNotEmpty()
                .isEqualTo(plan.start().taking(plan.piece().yarn("weft")));
    }

    @Test
    void theSheetSaysEachStrand() {
        StepSheet sheet = StepSheet.of(Plan.of(panel()), Locale.UK);
        CutLine cut = sheet.cuts().stream()
                .filter(line -> line.what().equals("Blend"))
                .findFirst()
                .orElseThrow();
        assertThat(cut.shared())
                .startsWith("3 strands of Silt and 2 strands of Mist, each ")
                .contains(cut.length());
        assertThat(sheet.cutNote()).contains("lay them side by side");
        assertThat(sheet.steps().get(cut.step() - 1).take())
                .startsWith("Blend (3 strands of Silt and 2 strands of Mist): cut ");
        YarnLine mist = sheet.yarns().stream()
                .filter(line -> line.what().equals("Mist"))
                .findFirst()
                .orElseThrow();
        assertThat(mist.uses()).contains("facing");
        assertThat(mist.buy()).contains("of 10 m");
        assertThat(StepSheet.of(Plan.of(Pieces.panel()), Locale.UK).cutNote()).doesNotContain("strands");
    }
}
