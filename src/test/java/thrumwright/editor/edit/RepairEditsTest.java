package thrumwright.editor.edit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import thrumwright.block.Amount;
import thrumwright.block.HemFold;
import thrumwright.block.Material;
import thrumwright.block.MaterialRole;
import thrumwright.block.PlainBand;
import thrumwright.block.Shed;
import thrumwright.block.Support;
import thrumwright.block.Tag;
import thrumwright.block.Turning;
import thrumwright.block.WarpFinish;
import thrumwright.block.YarnBlock;
import thrumwright.editor.text.Texts;
import thrumwright.measure.Length;
import thrumwright.piece.Design;
import thrumwright.piece.End;
import thrumwright.piece.MeasuredStep;
import thrumwright.piece.Measures;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;
import thrumwright.piece.Top;
import thrumwright.plan.Plan;
import thrumwright.plan.finding.Finding;
import thrumwright.plan.finding.Finding.Code;
import thrumwright.plan.finding.Findings;
import thrumwright.plan.finding.Severity;
import thrumwright.plan.words.RepairWords;
import thrumwright.store.PieceFile;
import thrumwright.store.Unknown;
import thrumwright.testing.Pieces;
import thrumwright.testing.RandomPieces;
import thrumwright.testing.Seeds;

class RepairEditsTest {
    /** All others leave a choice to the weaver, or are nothing that a change of the piece could mend. */
    private static final Set<Code> WITH_REPAIR = EnumSet.of(
            Code.SAME_SHED,
            Code.OTHER_COLOUR,
            Code.OTHER_COLOUR_MEANT,
            Code.NOTHING_HOLDS,
            Code.NO_WASTE,
            Code.NO_STIFF_BAND,
            Code.HEM_SHALLOW,
            Code.HEM_DEEP,
            Code.FIRST_TURN_TOO_DEEP,
            Code.MITRES_MEET,
            Code.SLEEVE_TOO_NARROW,
            Code.HEM_SHALLOW_FOR_A_STRIP,
            Code.BAND_TOO_NARROW,
            Code.BAND_TOO_NARROW_FOR_SUPPORT,
            Code.SEVERAL_FOLDS,
            Code.SEVERAL_FINISHES,
            Code.HEMS_DIFFER,
            Code.HEMS_DIFFER_MEANT,
            Code.DOES_NOT_FIT,
            Code.FREE_WARP_SHORT,
            Code.FREE_WARP_SHORT_FOR_HANDS,
            Code.LOOPS_DO_NOT_FIT,
            Code.NOTHING_HERE,
            Code.WIDTHS_OF_WARP,
            Code.HEM_COMES_DEEPER,
            Code.HEM_COMES_SHALLOWER,
            Code.NO_ROOM_LEFT,
            Code.WIDTH_DIFFERS,
            Code.YARN_LEFT);

    private final Texts texts = Texts.of(Locale.UK);
    private final RepairEdits repairs =
            new RepairEdits(new Edits(texts.phrases(), texts.words()), new RepairWords(Locale.UK));
    private final Piece panel = Pieces.panel();

    /** Afterwards the finding is gone, and no problem is there that wasn't there before. */
    @Test
    void aRepairMendsWhatItIsForAndNothingElseBreaks() {
        RandomPieces pieces = new RandomPieces(41);
        Map<Code, Integer> named = new EnumMap<>(Code.class);
        Map<Code, Integer> offered = new EnumMap<>(Code.class);
        List<Piece> rare =
                List.of(narrowWithMitres(), deep(), measured("start/stiff", "58 mm"), measured("start/waste", "18 cm"));
        int count = Seeds.of(3000, 1000);
        for (int i = 0; i < count + rare.size(); i++) {
            Plan plan = Plan.of(i < count ? pieces.next() : rare.get(i - count));
            for (Finding finding : Findings.of(plan).all()) {
                named.merge(finding.code(), finding.repairs().size(), Integer::sum);
                for (Edit edit : repairs.all(plan, finding)) {
                    offered.merge(finding.code(), 1, Integer::sum);
                    checkMends(plan, finding, edit);
                }
            }
        }
        assertThat(sum(offered)).as("most of what is named is offered too").isGreaterThan(sum(named) * 4 / 5);
        assertThat(offered.keySet()).containsExactlyInAnyOrderElementsOf(WITH_REPAIR);
    }

    /** Hems that are too deep and have one band alone to change are rare too. */
    private Piece deep() {
        PlainBand facing = (PlainBand) panel.start().block("facing").orElseThrow();
        return withStart(panel.start().replaced(facing.withAmount(new Amount.Picks(180))));
    }

    /** Corners that meet are rare among random pieces. */
    private Piece narrowWithMitres() {
        HemFold fold = new HemFold(Tag.of("fold"), new Turning.Mitred(), Optional.empty());
        PlainBand facing = (PlainBand) panel.start().block("facing").orElseThrow();
        PlainBand high = facing.withAmount(new Amount.Picks(30));
        return withStart(panel.start().replaced(fold).replaced(high))
                .withWarp(panel.warp().withWidth(Length.parse("45 mm")));
    }

    private Piece measured(String step, String height) {
        MeasuredStep measured = MeasuredStep.nothing(step).withHeight(Optional.of(Length.parse(height)));
        return panel.withMeasures(Measures.NONE.with(measured));
    }

    /** The start's hem comes back to 14.4 mm; first planned stays what it was, however often it is made up for. */
    @Test
    void whatWasMeasuredIsMadeUpFor() {
        Piece over = measured("start/stiff", "64.65 mm");
        Piece after = repaired(over, Code.HEM_COMES_DEEPER, "give Facing 2 picks, 4 fewer");
        assertThat(Plan.asWoven(after).start().hem().orElseThrow().depth()).isBetween(14.3, 14.5);
        assertThat(Plan.asWoven(after).budget().startLine())
                .isCloseTo(Plan.of(panel).budget().startLine(), org.assertj.core.api.Assertions.within(0.1));
        assertThat(after.measures().of("start/facing").planned()).contains(6);
        MeasuredStep corrected = after.measures().of("start/stiff").withHeight(Optional.empty());
        Piece back = repaired(
                after.withMeasures(after.measures().with(corrected)),
                Code.HEM_COMES_SHALLOWER,
                "give Facing 6 picks, 4 more");
        assertThat(back).isEqualTo(panel);
    }

    @Test
    void theMeasuredWidthIsPlannedWith() {
        Piece narrow = panel.withMeasures(
                Measures.NONE.with(MeasuredStep.nothing("start/stiff").withWidth(Optional.of(Length.parse("23 cm")))));
        assertThat(repaired(narrow, Code.WIDTH_DIFFERS, "plan with 23 cm, the width that was measured")
                        .warp()
                        .woven())
                .contains(Length.parse("23 cm"));
    }

    private static int sum(Map<Code, Integer> counts) {
        return counts.values().stream().mapToInt(Integer::intValue).sum();
    }

    private static void checkMends(Plan before, Finding finding, Edit edit) {
        Plan after = Plan.of(edit.change().apply(before.piece()));
        assertThat(Findings.of(after).all()).as(edit.name()).noneMatch(other -> RepairEdits.same(other, finding));
        assertThat(Findings.of(after).all().stream()
                        .filter(other -> other.severity() == Severity.PROBLEM)
                        .filter(other ->
                                Findings.of(before).all().stream().noneMatch(had -> RepairEdits.same(had, other))))
                .as(edit.name())
                .isEmpty();
        assertThat(edit.name()).isNotBlank().doesNotContain("{").doesNotEndWith(".");
    }

    /** The one repair of a piece's one finding, done. */
    private Piece repaired(Piece piece, Code code, String name) {
        Plan plan = Plan.of(piece);
        Finding finding = Findings.of(plan).all().stream()
                .filter(found -> found.code() == code)
                .findFirst()
                .orElseThrow();
        Edit edit = repairs.of(plan, finding).orElseThrow();
        assertThat(edit.name()).isEqualTo(name);
        return edit.change().apply(piece);
    }

    private Piece withStart(End start) {
        return panel.withStart(start);
    }

    @Test
    void theStripesYarnIsTaken() {
        YarnBlock facing = (YarnBlock) panel.start().block("facing").orElseThrow();
        YarnBlock other = facing.withUse(facing.use().with(new Material.OfRole(MaterialRole.WARP_CORD)));
        Piece after = repaired(
                withStart(panel.start().replaced(other)), Code.OTHER_COLOUR, "use the first stripe’s yarn, Teal wool");
        assertThat(after.start().block("facing")).contains(facing);
    }

    @Test
    void aPickIsAddedBeforeAShedThatIsAskedFor() {
        PlainBand facing = (PlainBand) panel.start().block("facing").orElseThrow();
        PlainBand asked = new PlainBand(
                facing.tag(), facing.use(), facing.purpose(), facing.amount(), Optional.of(Shed.OVER_FIRST));
        Piece piece = withStart(panel.start().replaced(asked));
        assertThat(repaired(piece, Code.SAME_SHED, "add a pick to Stiff band")
                        .start()
                        .block("stiff"))
                .contains(((PlainBand) panel.start().block("stiff").orElseThrow()).withAmount(new Amount.Picks(7)));
    }

    @Test
    void whatIsMissingIsPutWhereItBelongs() {
        Piece bare = withStart(panel.start().without(Set.of("waste", "twining", "stiff")));
        Piece held = repaired(bare, Code.NOTHING_HOLDS, "add a row of twining at the outer edge");
        Piece stiff = repaired(held, Code.NO_STIFF_BAND, "add a stiff band of 6 picks");
        Piece whole = repaired(stiff, Code.NO_WASTE, "add a waste band of 12 picks outside the edge");
        assertThat(whole).isEqualTo(panel);
    }

    @Test
    void atATopOfItsOwnEverythingIsPutTheOtherWayRound() {
        End top = panel.end(Place.TOP);
        Piece bare = panel.withTop(new Top.OnItsOwn(top.without(Set.of("waste", "twining", "stiff"))));
        Piece held = repaired(bare, Code.NOTHING_HOLDS, "add a row of twining at the outer edge");
        Piece stiff = repaired(held, Code.NO_STIFF_BAND, "add a stiff band of 6 picks");
        Piece whole = repaired(stiff, Code.NO_WASTE, "add a waste band of 12 picks outside the edge");
        assertThat(whole.end(Place.TOP).blocks().stream()
                        .map(block -> texts.words().kind(block)))
                .containsExactlyElementsOf(top.blocks().stream()
                        .map(block -> texts.words().kind(block))
                        .toList());
    }

    @Test
    void aTopThatFollowsGetsBackWhatWasLeftOut() {
        Piece without = panel.withTop(new Top.FollowsStart(Set.of("ordering", "waste")));
        assertThat(repaired(without, Code.NO_WASTE, "repeat Waste band at the top"))
                .isEqualTo(panel);
    }

    @Test
    void theDesignIsShortenedByWhatItIsTooHigh() {
        Design design = panel.design();
        Piece high = panel.withDesign(new Design(
                Length.parse("60 cm"),
                design.firstYarnId(),
                design.lastYarnId(),
                design.lastShed(),
                design.lastSide(),
                0));
        double left = Plan.of(high).budget().left();
        String height = Length.of(Math.floor(600 + left) / 10, thrumwright.measure.Unit.CENTIMETRE)
                .text();
        Piece after = repaired(high, Code.DOES_NOT_FIT, "shorten the design to " + height);
        assertThat(Plan.of(after).budget().left()).isBetween(0.0, 1.0);
    }

    private static Piece high(Piece piece, String clearance, String workingRoom) {
        return piece.withLoom(piece.loom()
                .withClearance(Optional.of(Length.parse(clearance)))
                .withWorkingRoom(Optional.of(Length.parse(workingRoom))));
    }

    private List<String> names(Piece piece, Code code) {
        Plan plan = Plan.of(piece);
        return repairs
                .all(
                        plan,
                        Findings.of(plan).all().stream()
                                .filter(found -> found.code() == code)
                                .findFirst()
                                .orElseThrow())
                .stream()
                .map(Edit::name)
                .toList();
    }

    /** What was asked for free below and above is taken back first, down to what is usual: 10 cm and 15 cm for a hem. */
    @Test
    void whatIsTooHighGetsBackWhatIsLeftFree() {
        double left = Plan.of(high(panel, "10 cm", "15 cm")).budget().left() / 10;
        double most = Math.floor(left * 10) / 10;
        assertThat(names(high(panel, cm(left + 12), "15 cm"), Code.DOES_NOT_FIT))
                .first()
                .isEqualTo("begin " + cm(most + 10) + " above the lower bar");
        assertThat(names(high(panel, "10 cm", cm(left + 17)), Code.DOES_NOT_FIT))
                .first()
                .isEqualTo("keep only " + cm(most + 15) + " free above the top");
        Piece either = high(panel, cm(left / 2 + 12), cm(left / 2 + 17));
        assertThat(names(either, Code.DOES_NOT_FIT))
                .hasSize(3)
                .last()
                .asString()
                .startsWith("shorten the design to ");
        Piece both = high(panel, cm(12), cm(left + 16))
                .withDesign(panel.design()
                        .withHeight(Length.parse(cm(panel.design().height().mm() / 10 + left - 0.2))));
        assertThat(names(both, Code.DOES_NOT_FIT))
                .first()
                .isEqualTo("keep free what is usual: 10 cm below, 15 cm above");
    }

    /** Both ends get what their fringes need, and the design keeps all that is left. */
    @Test
    void fringesGetTheirWarpAtBothEnds() {
        WarpFinish fringe = new WarpFinish(Tag.of("fringe"), WarpFinish.Kind.PLIED, 4, Length.parse("16 cm"));
        End bare = panel.start().without(Set.of("fold", "facing"));
        Piece low = high(withStart(bare.with(0, fringe)), "6 cm", "5 cm");
        Piece high = low.withDesign(panel.design().withHeight(Length.parse("45 cm")));
        Plan plan = Plan.of(high);
        assertThat(plan.start().finish().orElseThrow().free()).isLessThan(210);
        Piece after = high;
        for (int i = 0; i < 2 && codes(after).contains(Code.FREE_WARP_SHORT); i++) {
            after = firstRepair(after, Code.FREE_WARP_SHORT);
        }
        Plan mended = Plan.of(after);
        assertThat(codes(after)).doesNotContain(Code.FREE_WARP_SHORT, Code.DOES_NOT_FIT);
        double spare = Math.min(
                mended.budget().left(),
                mended.top().finish().orElseThrow().free()
                        - mended.top().finish().orElseThrow().needed());
        assertThat(spare).isBetween(0.0, 1.0);
    }

    private static List<Code> codes(Piece piece) {
        return Findings.of(Plan.of(piece)).all().stream().map(Finding::code).toList();
    }

    private Piece firstRepair(Piece piece, Code code) {
        Plan plan = Plan.of(piece);
        return Findings.of(plan).all().stream()
                .filter(found -> found.code() == code)
                .flatMap(found -> repairs.of(plan, found).stream())
                .findFirst()
                .orElseThrow()
                .change()
                .apply(piece);
    }

    private static String cm(double centimetres) {
        return Length.of(Math.round(centimetres * 10) / 10.0, thrumwright.measure.Unit.CENTIMETRE)
                .text();
    }

    @Test
    void anotherColourCanBeMeant() {
        YarnBlock facing = (YarnBlock) panel.start().block("facing").orElseThrow();
        YarnBlock other = facing.withUse(facing.use().with(new Material.OfRole(MaterialRole.WARP_CORD)));
        Piece unlike = withStart(panel.start().replaced(other));
        assertThat(names(unlike, Code.OTHER_COLOUR)).last().isEqualTo("I mean it like this");
        Plan plan = Plan.of(unlike);
        Piece meant = unlike;
        for (Finding finding : Findings.of(plan).all()) {
            List<Edit> all = finding.code() == Code.OTHER_COLOUR ? repairs.all(plan, finding) : List.of();
            meant = all.isEmpty() ? meant : all.get(all.size() - 1).change().apply(meant);
        }
        assertThat(Findings.of(Plan.of(meant)).all())
                .extracting(Finding::code)
                .doesNotContain(Code.OTHER_COLOUR)
                .contains(Code.OTHER_COLOUR_MEANT);
        Piece again = repaired(meant, Code.OTHER_COLOUR_MEANT, "tell me of it again");
        assertThat(Findings.of(Plan.of(again)).all())
                .extracting(Finding::code)
                .contains(Code.OTHER_COLOUR, Code.OTHER_COLOUR_MEANT);
    }

    @Test
    void hemsAreMadeAlikeAtATopOfItsOwn() {
        PlainBand facing = (PlainBand) panel.end(Place.TOP).block("facing").orElseThrow();
        Piece deeper =
                panel.withTop(new Top.OnItsOwn(panel.end(Place.TOP).replaced(facing.withAmount(new Amount.Picks(11)))));
        Piece after = repaired(deeper, Code.HEMS_DIFFER, "give Facing 6 picks, 5 fewer");
        Plan plan = Plan.of(after);
        assertThat(Math.abs(plan.start().hem().orElseThrow().depth()
                        - plan.top().hem().orElseThrow().depth()))
                .isLessThanOrEqualTo(1);
    }

    @Test
    void theFacingGivesWayToABar() {
        HemFold bar =
                new HemFold(Tag.of("fold"), Optional.empty(), Optional.of(new Support.RoundBar(Length.parse("15 mm"))));
        Piece after = repaired(
                withStart(panel.start().replaced(bar)), Code.SLEEVE_TOO_NARROW, "give Facing 22 picks, 16 more");
        assertThat(Plan.of(after).start().hem().orElseThrow().depth()).isBetween(29.56, 31.6);
    }

    /** 14.389 of cloth, 10 of warp ends and 5 beyond them, less 3 to the first seam: 26.389. */
    @Test
    void aBandGetsTheWidthThatItNeeds() {
        HemFold narrow = HemFold.once(Tag.of("fold"))
                .withTurning(new Turning.Faced(Length.parse("2 cm"), Optional.of(Length.parse("1 mm"))));
        Piece after =
                repaired(withStart(panel.start().replaced(narrow)), Code.BAND_TOO_NARROW, "take a band 2.7 cm wide");
        HemFold fold = (HemFold) after.start().block("fold").orElseThrow();
        assertThat(fold.band().orElseThrow().thick()).isEqualTo(1);
    }

    @Test
    void aRepairIsOneStepThatCanBeTakenBack() {
        Session session = new Session(
                new PieceFile(withStart(panel.start().without(Set.of("waste"))), Unknown.none()), Optional.empty());
        Finding finding = session.findings().all().get(0);
        Edit edit = repairs.of(session.plan(), finding).orElseThrow();
        Piece before = session.piece();
        session.edit(edit);
        assertThat(session.findings().all()).isEmpty();
        assertThat(session.history().names()).isEqualTo(List.of("add a waste band of 12 picks outside the edge"));
        session.undo();
        assertThat(session.piece()).isEqualTo(before);
    }
}
