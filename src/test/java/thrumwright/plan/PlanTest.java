package thrumwright.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import thrumwright.block.Amount;
import thrumwright.block.Block;
import thrumwright.block.HalfHitch;
import thrumwright.block.HemFold;
import thrumwright.block.Lean;
import thrumwright.block.MaterialRole;
import thrumwright.block.PlainBand;
import thrumwright.block.Row;
import thrumwright.block.Setting;
import thrumwright.block.Shed;
import thrumwright.block.Side;
import thrumwright.block.Soumak;
import thrumwright.block.SpreadHeader;
import thrumwright.block.Support;
import thrumwright.block.Tag;
import thrumwright.block.Twining;
import thrumwright.block.Use;
import thrumwright.block.WarpFinish;
import thrumwright.block.WrappedTassels;
import thrumwright.measure.Length;
import thrumwright.measure.Sett;
import thrumwright.piece.Design;
import thrumwright.piece.End;
import thrumwright.piece.Habits;
import thrumwright.piece.Loom;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;
import thrumwright.piece.Top;
import thrumwright.piece.Warp;
import thrumwright.plan.finding.Finding;
import thrumwright.plan.finding.Findings;
import thrumwright.plan.finding.Repair;
import thrumwright.plan.words.FindingWords;
import thrumwright.testing.Pieces;
import thrumwright.testing.WorkedPanel;
import thrumwright.yarn.Sample;
import thrumwright.yarn.Yarn;

class PlanTest {
    private final Piece panel = Pieces.panel();
    private final Plan plan = Plan.of(panel);

    /** Worked panel of the computing method: T 2.786345, H 13.790764, finished depth 14.388718. */
    @Test
    void theHemOfTheWorkedPanel() {
        Hem hem = plan.start().hem().orElseThrow();
        assertThat(hem.thickness()).isCloseTo(2.786345, within(1e-6));
        assertThat(hem.cloth()).isCloseTo(13.790764, within(2e-6));
        assertThat(hem.depth()).isCloseTo(14.388718, within(2e-6));
        assertThat(hem.layers()).isEqualTo(2);
        assertThat(hem.gain()).isCloseTo((1 - Math.PI / 4) * 2.786345, within(1e-6));
        assertThat(plan.top().hem().orElseThrow().depth()).isCloseTo(hem.depth(), within(1e-9));
    }

    /** Three strands of cord that aren't beaten are 2.1547 cords thick: D = 2.480683 of 3.333333, and three tails at each side. */
    @Test
    void aSpreadHeaderIsAsThickAsItsStrands() {
        SpreadHeader header =
                new SpreadHeader(Tag.of("header"), Use.of(MaterialRole.WARP_CORD), 4, 3, Optional.empty());
        Piece spread = panel.withStart(panel.start().with(0, header));
        BlockPlan planned = Plan.of(spread).start().block("header").orElseThrow();
        Work work = planned.work().orElseThrow();
        assertThat(planned.comesOut()).isTrue();
        assertThat(planned.height()).isCloseTo(4 * 2.1547 * 0.786345, within(1e-5));
        assertThat(work.setting().gauge()).isCloseTo(2.480683, within(1e-5));
        assertThat(work.cut().exact()).isCloseTo(3709.212, within(1e-3));
        assertThat(work.cut().hanging()).isCloseTo(3 * 300, within(1e-9));
        assertThat(work.cut().butterflies()).isEqualTo(new Butterflies(3, 1580));
        assertThat(codes(spread)).doesNotContain(Finding.Code.SPREADS_LITTLE);
        SpreadHeader thin = new SpreadHeader(Tag.of("header"), Use.of(MaterialRole.WARP_CORD), 4, 1, Optional.empty());
        assertThat(codes(panel.withStart(panel.start().with(0, thin)))).contains(Finding.Code.SPREADS_LITTLE);
        SpreadHeader thick =
                new SpreadHeader(Tag.of("header"), Use.of(MaterialRole.WARP_CORD), 4, 12, Optional.empty());
        assertThat(codes(panel.withStart(panel.start().with(0, thick)))).contains(Finding.Code.TOO_THICK);
    }

    @Test
    void aHemTurnedTwiceBendsTwoLayers() {
        HemFold twice = new HemFold(Tag.of("fold"), Optional.of(Length.parse("6 mm")), Optional.empty());
        Hem hem = Plan.of(panel.withStart(panel.start().replaced(twice)))
                .start()
                .hem()
                .orElseThrow();
        assertThat(hem.layers()).isEqualTo(3);
        assertThat(hem.stacked()).isCloseTo(3 * 2.786345, within(1e-5));
        assertThat(hem.depth()).isCloseTo(13.790764 - 6 + (1 - Math.PI / 4) * 3 * 2.786345, within(1e-5));
    }

    /** 2·depth ≥ πb + 12 mm (quilt-guild and conservation guidance on hanging sleeves): a bar of 15 mm needs 29.56 mm. */
    @Test
    void aSleeveNeedsItsDepth() {
        assertThat(Hem.Sleeve.of(new Support.RoundBar(Length.parse("15 mm"))).depth())
                .isCloseTo((Math.PI * 15 + 12) / 2, within(1e-9));
        HemFold barred =
                new HemFold(Tag.of("fold"), Optional.empty(), Optional.of(new Support.RoundBar(Length.parse("15 mm"))));
        assertThat(codes(panel.withStart(panel.start().replaced(barred)))).contains(Finding.Code.SLEEVE_TOO_NARROW);
    }

    @Test
    void aSoundPieceHasNoFindings() {
        assertThat(Findings.of(plan).all()).isEmpty();
    }

    @Test
    void shedsGoOnThroughTheWholeEnd() {
        Shed last = null;
        Side at = Side.LEFT;
        for (BlockPlan block : plan.start().blocks()) {
            for (Row row : block.work().map(Work::rows).orElse(List.of())) {
                assertThat(row.from()).isEqualTo(at);
                at = row.to();
                if (row.shed().isPresent()) {
                    assertThat(row.shed().get()).isNotEqualTo(last);
                    last = row.shed().get();
                }
            }
        }
    }

    @Test
    void theTopGoesOnFromTheLastPickOfTheDesign() {
        BlockPlan soumak = plan.top().block("soumak").orElseThrow();
        assertThat(soumak.work().orElseThrow().begins()).isEqualTo(Side.LEFT);
        BlockPlan facing = plan.top().block("facing").orElseThrow();
        Row first = facing.work().orElseThrow().rows().get(0);
        assertThat(first.shed()).contains(Shed.UNDER_FIRST);
        assertThat(first.from()).isEqualTo(Side.RIGHT);
    }

    @Test
    void theTopRepeatsTheStartBackwards() {
        assertThat(plan.top().blocks().stream().map(block -> block.block().id()))
                .containsExactly("fold", "soumak", "facing", "stiff", "twining", "waste");
        assertThat(((Twining) panel.end(Place.TOP).block("twining").orElseThrow()).first())
                .isEqualTo(Lean.S);
        assertThat(((Soumak) panel.end(Place.TOP).block("soumak").orElseThrow()).first())
                .isEqualTo(Lean.S);
    }

    @Test
    void theWarpBudgetAddsUp() {
        Budget budget = plan.budget();
        assertThat(budget.startLine()).isCloseTo(40 + plan.start().height(), within(1e-9));
        assertThat(budget.stopLine()).isCloseTo(700 - 120 - plan.top().height(), within(1e-9));
        assertThat(budget.left())
                .isCloseTo(
                        700
                                - 40
                                - 120
                                - 300
                                - plan.start().height()
                                - plan.top().height(),
                        within(1e-9));
        assertThat(plan.start().height()).isCloseTo(2.359036 + 12 + 1.572691 + 4.718072 + 6 + 3, within(1e-5));
        assertThat(plan.start().comingOut()).isCloseTo(2.359036 + 12, within(1e-5));
        assertThat(plan.top().onLoom()).isCloseTo(budget.designEnds(), within(1e-9));
    }

    /** Cut = exact × 1.03 + two tails of 15 cm, up to the next centimetre; widths up to the next half. */
    @ParameterizedTest
    @CsvSource({
        "ordering, 1112.838, 1450, 6.5",
        "waste, 3291.310, 3700, 15.5",
        "twining, 541.234, 860, 4",
        "stiff, 1594.160, 1950, 8.5",
        "facing, 1644.166, 2000, 8.5",
        "soumak, 704.953, 1030, 4.5"
    })
    void cutsOfTheWorkedPanel(String id, double exact, double cut, double widths) {
        Cut planned = plan.start().block(id).orElseThrow().work().orElseThrow().cut();
        assertThat(planned.exact()).isCloseTo(exact, within(0.0006));
        assertThat(planned.length()).isCloseTo(cut, within(1e-6));
        assertThat(planned.widths()).isEqualTo(widths);
    }

    @Test
    void aLongYarnIsSharedIntoEqualButterflies() {
        Habits habits = panel.habits();
        Butterflies two = Butterflies.of(5000, habits);
        assertThat(two.count()).isEqualTo(2);
        assertThat(two.each()).isCloseTo(2530, within(1e-6));
        assertThat(Butterflies.of(4000, habits).count()).isEqualTo(1);
        assertThat(Butterflies.of(4001, habits).count()).isEqualTo(2);
        assertThat(Butterflies.of(7950, habits).count()).isEqualTo(2);
        assertThat(Butterflies.of(7951, habits).count()).isEqualTo(3);
    }

    /**
     * 82 cm at 30 ends per 10 cm: 246 ends; for 4 m of rug each is 4 m + 4 × 10 cm + 60 cm + 15 % of 4 m = 5.6 m long (published
     * rug-warp worksheet, whose four extra edge ends are a habit of its own).
     */
    @Test
    void warpOfThePublishedWorksheet() {
        Loom loom = panel.loom();
        Piece rug = panel.withWarp(new Warp(Length.parse("82 cm"), Sett.parse("30/10 cm"), "cord"))
                .withLoom(loom.withWarpPerEnd(Optional.of(Length.parse("5.6 m"))));
        assertThat(rug.warp().ends()).isEqualTo(246);
        assertThat(Plan.of(rug).warpYarn()).isCloseTo(246 * (4 + 4 * 0.10 + 0.6 + 0.15 * 4) * 1000, within(1e-6));
    }

    /** 21 in at 4 ends/in: 84 ends, 68 in each: 158.7 yd (published rug project). */
    @Test
    void warpOfThePublishedRug() {
        Loom loom = panel.loom();
        Piece rug = panel.withWarp(new Warp(Length.parse("21 in"), Sett.parse("4/in"), "cord"))
                .withLoom(loom.withWarpPerEnd(Optional.of(Length.parse("68 in"))));
        assertThat(rug.warp().ends()).isEqualTo(84);
        assertThat(Plan.of(rug).warpYarn() / 914.4).isCloseTo(158.7, within(0.05));
    }

    /**
     * Weft of 8 picks per cm over 220 cm, 0.55 m each: 968 m (published weft worksheet). Laid flat; woven 55 cm wide at 3 ends per
     * cm it takes more, by no more than the crimp of a stretched warp. Half of it, since a band is at most 2 m high.
     */
    @Test
    void weftOfThePublishedWorksheet() {
        Yarn eightInACentimetre = panel.yarn("weft").withSample(Optional.of(new Sample(8, Length.parse("1 cm"))));
        Setting wide = panel.withWarp(new Warp(Length.parse("55 cm"), Sett.parse("3/cm"), "cord"))
                .setting(eightInACentimetre);
        PlainBand band = new PlainBand(
                Tag.of("p"),
                Use.of(MaterialRole.WEFT),
                PlainBand.Purpose.PLAIN,
                new Amount.Height(Length.parse("110 cm")),
                Optional.empty());
        assertThat(band.rowCount(wide)).isEqualTo(8 * 110);
        double flat = 968e3 / 2 * (wide.ends() - 1) / wide.ends();
        assertThat(band.length(wide)).isBetween(flat, flat * 1.25);
    }

    /** Half hitches on pairs take about 3 × the width (Alpacas Magazine, Spring 2010, p. 113): a flat lower figure. */
    @Test
    void halfHitchesTakeMoreThanThePublishedLowerFigure() {
        HalfHitch pairs = new HalfHitch(Tag.of("h"), Use.of(MaterialRole.WARP_CORD), 1, 2);
        double widths = pairs.length(WorkedPanel.with(WorkedPanel.cord())) / 240;
        assertThat(widths).isBetween(3.0, 4.6);
    }

    /** Picks per inch are twice the beads per inch up one rib (R. Mezoff, weaving notes, 2021): floats touch when 2t = d. */
    @Test
    void picksAreTwiceTheBeads() {
        double picks = 25.4 / WorkedPanel.weft().beaten();
        double beads = 25.4 / WorkedPanel.weft().diameter();
        assertThat(picks).isCloseTo(2 * beads, within(1e-9));
    }

    @Test
    void groupsOfWarpEndsAreEvenAndSymmetrical() {
        WarpFinish fringe = new WarpFinish(Tag.of("f"), WarpFinish.Kind.KNOTTED, 4, Length.parse("8 cm"));
        for (int ends = 2; ends < 300; ends++) {
            List<Integer> groups = fringe.groups(ends);
            assertThat(groups.stream().mapToInt(Integer::intValue).sum()).isEqualTo(ends);
            int least = groups.stream().mapToInt(Integer::intValue).min().orElseThrow();
            int most = groups.stream().mapToInt(Integer::intValue).max().orElseThrow();
            assertThat(most - least).isLessThanOrEqualTo(1);
            int different = 0;
            for (int i = 0; i < groups.size(); i++) {
                different += groups.get(i).equals(groups.get(groups.size() - 1 - i)) ? 0 : 1;
            }
            assertThat(different).isLessThanOrEqualTo(2);
        }
    }

    /** A single end has nothing to be knotted or plied with, and two can't be plaited. */
    @Test
    void noGroupIsTooSmallToBeWorked() {
        for (WarpFinish.Kind kind : List.of(WarpFinish.Kind.KNOTTED, WarpFinish.Kind.PLIED, WarpFinish.Kind.PLAITED)) {
            for (int size = kind == WarpFinish.Kind.PLAITED ? 3 : 2; size < 9; size++) {
                WarpFinish fringe = new WarpFinish(Tag.of("f"), kind, size, Length.parse("8 cm"));
                for (int ends = size; ends < 100; ends++) {
                    assertThat(fringe.groups(ends)).allMatch(group -> group >= Math.max(2, fringe.leastPerGroup()));
                }
            }
        }
    }

    /** The tight trefoil: 15.66 < L/d < 16.372 (Denne, Diao, Sullivan, Geom. Topol. 10 (2006)). */
    @Test
    void aKnotTakesNoMoreThanTheTrefoil() {
        assertThat(WarpFinish.KNOT).isGreaterThan(15.66).isLessThanOrEqualTo(16.372);
        WarpFinish fringe = new WarpFinish(Tag.of("f"), WarpFinish.Kind.PLIED, 7, Length.parse("30 cm"));
        assertThat(fringe.freeWarp(1)).isCloseTo(300 * 1.25 + 16.372 * 3, within(1e-9));
    }

    @Test
    void eachFindingIsFound() {
        assertThat(codes(panel.withStart(End.empty()))).contains(Finding.Code.NOTHING_HERE);
        assertThat(codes(panel.withStart(panel.start().without(Set.of("twining")))))
                .contains(Finding.Code.NOTHING_HOLDS);
        assertThat(codes(panel.withStart(panel.start().without(Set.of("waste")))))
                .contains(Finding.Code.NO_WASTE);
        assertThat(codes(panel.withStart(panel.start().without(Set.of("stiff")))))
                .contains(Finding.Code.NO_STIFF_BAND);
        assertThat(codes(panel.withStart(panel.start().without(Set.of("facing", "stiff")))))
                .contains(Finding.Code.HEM_SHALLOW);
        assertThat(codes(panel.withDesign(design("40 mm", Optional.of(Shed.OVER_FIRST)))))
                .contains(Finding.Code.HEM_DEEP);
        assertThat(codes(panel.withDesign(design("30 cm", Optional.empty()))))
                .containsExactly(Finding.Code.LAST_PICK_ASSUMED);
        assertThat(codes(panel.withDesign(design("60 cm", Optional.of(Shed.OVER_FIRST)))))
                .containsExactly(Finding.Code.DOES_NOT_FIT);
        assertThat(codes(panel.withWarp(new Warp(Length.parse("24 cm"), Sett.parse("6/cm"), "cord"))))
                .contains(Finding.Code.TOO_THICK);
        assertThat(codes(withoutPosts())).containsExactly(Finding.Code.NO_POSTS);
    }

    @Test
    void theFindingsThatTakeAnotherStack() {
        Block teal = ((PlainBand) panel.start().block("facing").orElseThrow()).withUse(Use.of(MaterialRole.WARP_CORD));
        assertThat(codes(panel.withStart(panel.start().replaced(teal)))).contains(Finding.Code.OTHER_COLOUR);
        PlainBand stiff = (PlainBand) panel.start().block("stiff").orElseThrow();
        PlainBand sameShed = new PlainBand(
                Tag.of("more"), stiff.use(), stiff.purpose(), stiff.amount(), Optional.of(Shed.OVER_FIRST));
        int after = panel.start().indexOf("stiff") + 1;
        assertThat(codes(panel.withStart(panel.start().with(after, sameShed)))).contains(Finding.Code.SAME_SHED);
        WarpFinish fringe = new WarpFinish(Tag.of("f"), WarpFinish.Kind.KNOTTED, 4, Length.parse("30 cm"));
        assertThat(codes(panel.withStart(panel.start().with(2, fringe)))).contains(Finding.Code.FREE_WARP_SHORT);
        HemFold deep = new HemFold(Tag.of("fold"), Optional.of(Length.parse("9 mm")), Optional.empty());
        assertThat(codes(panel.withStart(panel.start().replaced(deep)))).contains(Finding.Code.FIRST_TURN_TOO_DEEP);
        End less = panel.end(Place.TOP).without(Set.of("facing"));
        assertThat(codes(panel.withTop(new Top.OnItsOwn(less)))).contains(Finding.Code.HEMS_DIFFER);
        assertThat(codes(panel.withStart(panel.start().with(0, HemFold.once(Tag.of("other"))))))
                .contains(Finding.Code.SEVERAL_FOLDS, Finding.Code.HEM_EMPTY);
    }

    /** A slat needs b + h and half the ease, a strip 5 mm of hem above and below (CCI Notes 13/4). */
    @Test
    void aHemMustBeDeepEnoughForWhatItTakes() {
        assertThat(Hem.Sleeve.of(new Support.Slat(Length.parse("25 mm"), Length.parse("5 mm")))
                        .depth())
                .isCloseTo(25 + 5 + 6, within(1e-9));
        assertThat(Hem.Sleeve.of(new Support.Strip(Length.parse("20 mm"))).depth())
                .isCloseTo(30, within(1e-9));
        for (Support support : List.of(
                new Support.Slat(Length.parse("25 mm"), Length.parse("5 mm")),
                new Support.Strip(Length.parse("20 mm")))) {
            HemFold fold = new HemFold(Tag.of("fold"), Optional.empty(), Optional.of(support));
            assertThat(codes(panel.withStart(panel.start().replaced(fold)))).contains(Finding.Code.SLEEVE_TOO_NARROW);
        }
    }

    /** Each tassel takes its helix, a loop of twice the wrapping's height, and two tails; all of them count in the totals. */
    @Test
    void wrappedTasselsTakeYarn() {
        WrappedTassels tassels =
                new WrappedTassels(Tag.of("t"), Use.of(MaterialRole.WEFT), 6, 12, Length.parse("8 cm"));
        Plan plan =
                Plan.of(panel.withStart(panel.start().without(Set.of("fold")).with(2, tassels))
                        .withTop(new Top.OnItsOwn(End.empty())));
        Plan without =
                Plan.of(panel.withStart(panel.start().without(Set.of("fold"))).withTop(new Top.OnItsOwn(End.empty())));
        Wrapping wrapping = plan.start().finish().orElseThrow().wrapping().orElseThrow();
        double turn = Math.hypot(Math.PI * (3 * 0.786345 + 1), 1);

        assertThat(wrapping.count()).isEqualTo(12);
        assertThat(wrapping.height()).isCloseTo(12, within(1e-9));
        assertThat(wrapping.each().exact()).isCloseTo(12 * turn, within(1e-4));
        assertThat(wrapping.each().hanging()).isCloseTo(2 * 12 + 2 * 150, within(1e-9));
        assertThat(weft(plan) - weft(without)).isCloseTo(12 * wrapping.each().length(), within(1e-6));
        assertThat(codes(panel.withStart(panel.start().with(2, tassels.withTurns(80)))))
                .contains(Finding.Code.WRAPPING_TOO_HIGH);
    }

    /** Seventy-two ends in twos can be plied and not plaited. */
    @Test
    void aPlaitNeedsThreeEnds() {
        assertThat(codes(fringed(WarpFinish.Kind.PLAITED, 2))).contains(Finding.Code.GROUP_TOO_SMALL);
        assertThat(codes(fringed(WarpFinish.Kind.PLAITED, 3))).doesNotContain(Finding.Code.GROUP_TOO_SMALL);
        assertThat(codes(fringed(WarpFinish.Kind.PLIED, 2))).doesNotContain(Finding.Code.GROUP_TOO_SMALL);
        assertThat(codes(fringed(WarpFinish.Kind.PLIED, 1))).contains(Finding.Code.GROUP_TOO_SMALL);
    }

    private Piece fringed(WarpFinish.Kind kind, int group) {
        return panel.withStart(panel.start()
                .without(Set.of("fold"))
                .with(2, new WarpFinish(Tag.of("fringe"), kind, group, Length.parse("8 cm"))));
    }

    /** Tails are trimmed off; the helix and its ease hang with the piece. */
    @Test
    void theWrappingOfTasselsIsWeighed() {
        WrappedTassels tassels =
                new WrappedTassels(Tag.of("t"), Use.of(MaterialRole.WEFT), 6, 12, Length.parse("8 cm"));
        Piece bare = panel.withStart(panel.start().without(Set.of("fold")));
        Plan with = Plan.of(bare.withStart(bare.start().with(2, tassels)).withTop(new Top.OnItsOwn(End.empty())));
        Plan without = Plan.of(bare.withTop(new Top.OnItsOwn(End.empty())));
        Cut each = with.start().finish().orElseThrow().wrapping().orElseThrow().each();
        double metres = 12 * (each.exact() + each.ease()) / 1000;
        assertThat(Weight.of(with).ends() - Weight.of(without).ends())
                .isCloseTo(metres * panel.yarn("weft").tex() / 1000, within(1e-9));
    }

    @Test
    void onlyOneFinishCountsAtAnEnd() {
        WarpFinish fringe = new WarpFinish(Tag.of("f"), WarpFinish.Kind.KNOTTED, 4, Length.parse("8 cm"));
        WrappedTassels tassels =
                new WrappedTassels(Tag.of("t"), Use.of(MaterialRole.WEFT), 6, 12, Length.parse("8 cm"));
        Piece both = panel.withStart(panel.start().with(2, fringe).with(3, tassels));
        Finding finding = Findings.of(Plan.of(both)).all().stream()
                .filter(found -> found.code() == Finding.Code.SEVERAL_FINISHES)
                .findFirst()
                .orElseThrow();
        assertThat(finding.blockId()).contains("f");
        assertThat(finding.repair()).contains(new Repair.TakeAway(Place.START, List.of("t"), true));
        assertThat(codes(panel.withStart(panel.start().with(2, fringe)))).doesNotContain(Finding.Code.SEVERAL_FINISHES);
    }

    private static double weft(Plan plan) {
        return plan.totals().stream()
                .filter(total -> total.yarn().id().equals("weft"))
                .mapToDouble(YarnTotal::length)
                .sum();
    }

    @Test
    void stockThatRunsOutIsSaid() {
        var cord = panel.warpYarn();
        var little = cord.withStock(Optional.of(Length.parse("60 m")));
        assertThat(codes(panel.withYarns(
                        List.of(little, panel.yarns().get(1), panel.yarns().get(2)))))
                .containsExactly(Finding.Code.STOCK_SHORT);
    }

    private Design design(String height, Optional<Shed> shed) {
        Design design = panel.design();
        return new Design(Length.parse(height), design.firstYarnId(), design.lastYarnId(), shed, design.lastSide(), 0);
    }

    private Piece withoutPosts() {
        Loom loom = panel.loom();
        return panel.withLoom(loom.withUprights(Optional.empty()));
    }

    private static List<Finding.Code> codes(Piece piece) {
        List<Finding> findings = Findings.of(Plan.of(piece)).all();
        assertThat(findings)
                .allSatisfy(
                        finding -> assertThat(FindingWords.of(piece, Locale.UK).say(finding))
                                .endsWith(".")
                                .doesNotContain("{"));
        return findings.stream().map(Finding::code).toList();
    }
}
