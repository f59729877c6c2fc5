package thrumwright.editor.form;

import thrumwright.block.Block;
import thrumwright.block.Cases;
import thrumwright.block.HalfHitch;
import thrumwright.block.HemFold;
import thrumwright.block.Hemstitching;
import thrumwright.block.KnotRows;
import thrumwright.block.Lean;
import thrumwright.block.OpenWarp;
import thrumwright.block.OrderingCord;
import thrumwright.block.PlainBand;
import thrumwright.block.Side;
import thrumwright.block.SlitBand;
import thrumwright.block.Soumak;
import thrumwright.block.SpreadHeader;
import thrumwright.block.Support;
import thrumwright.block.TurnedEnds;
import thrumwright.block.Turning;
import thrumwright.block.Twining;
import thrumwright.block.WarpFinish;
import thrumwright.block.WarpLoops;
import thrumwright.block.WovenEdge;
import thrumwright.block.WrappedTassels;
import thrumwright.block.YarnBlock;
import thrumwright.editor.edit.HemEdits;
import thrumwright.editor.form.FieldColumn.Section;

/** The fields that a kind of block has beside its name and amount; adds them and answers with those added last. */
record KindFields(BlockFields fields) implements Cases<Section<? extends Block>> {
    @Override
    public Section<? extends Block> orderingCord(OrderingCord orderingCord) {
        shed(fields.section(YarnBlock.class));
        return yarn();
    }

    @Override
    public Section<? extends Block> plainBand(PlainBand plainBand) {
        fields.section(PlainBand.class)
                .oneOf(
                        "block.purpose",
                        "purpose",
                        PlainBand.Purpose.values(),
                        PlainBand::purpose,
                        PlainBand::withPurpose);
        fields.wasteAdvice();
        shed(fields.section(YarnBlock.class));
        return byItself(yarn());
    }

    @Override
    public Section<? extends Block> slitBand(SlitBand slitBand) {
        fields.section(SlitBand.class).whole("block.part", SlitBand::endsPerPart, SlitBand::withEndsPerPart);
        shed(fields.section(YarnBlock.class));
        return yarn();
    }

    /** It always comes out again. */
    @Override
    public Section<? extends Block> spreadHeader(SpreadHeader spreadHeader) {
        fields.section(SpreadHeader.class).whole("block.strands", SpreadHeader::strands, SpreadHeader::withStrands);
        shed(fields.section(YarnBlock.class));
        return byItself(fields.yarn());
    }

    @Override
    public Section<? extends Block> twining(Twining twining) {
        fields.section(Twining.class)
                .whole("block.group", Twining::endsPerGroup, Twining::withEndsPerGroup)
                .oneOf("block.twist", "twist", Lean.values(), Twining::first, Twining::withFirst)
                .flag("block.countered", Twining::countered, Twining::withCountered);
        return yarn();
    }

    @Override
    public Section<? extends Block> soumak(Soumak soumak) {
        fields.section(Soumak.class)
                .whole("block.over", Soumak::over, Soumak::withOver)
                .whole("block.under", Soumak::under, Soumak::withUnder)
                .oneOf("block.slant", "twist", Lean.values(), Soumak::first, Soumak::withFirst)
                .flag("block.countered", Soumak::countered, Soumak::withCountered);
        return byItself(yarn());
    }

    @Override
    public Section<? extends Block> halfHitch(HalfHitch halfHitch) {
        fields.section(HalfHitch.class).whole("block.group", HalfHitch::endsPerGroup, HalfHitch::withEndsPerGroup);
        return byItself(yarn());
    }

    @Override
    public Section<? extends Block> hemstitching(Hemstitching hemstitching) {
        fields.section(Hemstitching.class)
                .whole("block.group", Hemstitching::endsPerGroup, Hemstitching::withEndsPerGroup)
                .whole("block.round-picks", Hemstitching::picks, Hemstitching::withPicks)
                .oneOf(
                        "block.round-which",
                        "round",
                        Hemstitching.Round.values(),
                        Hemstitching::round,
                        Hemstitching::withRound);
        return yarn();
    }

    private void shed(Section<YarnBlock> section) {
        section.choice("block.shed", fields::sheds, YarnBlock::firstShed, YarnBlock::withFirstShed);
    }

    private Section<YarnBlock> yarn() {
        return fields.yarn()
                .flag(
                        "block.comes-out",
                        YarnBlock::comesOut,
                        (part, out) -> part.withUse(part.use().withComesOut(out)));
    }

    /** Of a kind whose yarn can go on from a neighbour or into one. */
    private static Section<YarnBlock> byItself(Section<YarnBlock> section) {
        return section.flag(
                "block.by-itself",
                part -> part.use().byItself(),
                (part, alone) -> part.withUse(part.use().withByItself(alone)));
    }

    /** Only its amount. */
    @Override
    public Section<? extends Block> openWarp(OpenWarp openWarp) {
        return fields.section(OpenWarp.class);
    }

    @Override
    public Section<? extends Block> hemFold(HemFold hemFold) {
        Section<HemFold> fold = fields.section(HemFold.class);
        HemEdits hems = new HemEdits(fields.desk().texts().phrases());
        turning(fold, hems);
        fold.oneOrNone(
                "block.support",
                "support",
                "choice.nothing",
                Support.Kind.values(),
                part -> part.support().map(Support::kind),
                (part, kind) -> HemEdits.withSupport(part, kind, fields.units()));
        fold.lengthOrNone("block.support-size", part -> part.support().map(Support::size), HemEdits::withSupportSize);
        fold.lengthOrNone("block.slat-thickness", HemEdits::slatThickness, hems::withSlatThickness);
        fields.foldAdvice();
        return fold;
    }

    private void turning(Section<HemFold> fold, HemEdits hems) {
        fold.oneOf(
                "block.turning",
                "turning",
                Turning.Kind.values(),
                part -> part.turning().kind(),
                (part, kind) -> HemEdits.turned(part, kind, fields.units()));
        fold.lengthOrNone("block.first-turn", HemFold::firstTurn, HemEdits::withFirstTurn);
        fold.lengthOrNone("block.band-width", part -> part.band().map(Turning.Faced::width), HemEdits::withBandWidth);
        fold.lengthOrNone("block.band-thickness", HemEdits::bandThickness, hems::withBandThickness);
    }

    @Override
    public Section<? extends Block> warpFinish(WarpFinish warpFinish) {
        return fields.section(WarpFinish.class)
                .oneOf("block.finish", "finish", WarpFinish.Kind.values(), WarpFinish::kind, WarpFinish::withKind)
                .whole("block.group", WarpFinish::endsPerGroup, WarpFinish::withEndsPerGroup);
    }

    @Override
    public Section<? extends Block> knotRows(KnotRows knotRows) {
        Section<KnotRows> knots = fields.section(KnotRows.class)
                .whole("block.knot-rows", KnotRows::rows, KnotRows::withRows)
                .whole("block.group", KnotRows::endsPerGroup, KnotRows::withEndsPerGroup)
                .flag("block.split", KnotRows::split, KnotRows::withSplit);
        knots.lengthOrNone("block.apart", KnotRows::apart, KnotRows::withApart);
        return knots;
    }

    @Override
    public Section<? extends Block> turnedEnds(TurnedEnds turnedEnds) {
        return fields.section(TurnedEnds.class)
                .whole("block.turned-over", TurnedEnds::over, TurnedEnds::withOver)
                .flag("block.both-ways", TurnedEnds::bothWays, TurnedEnds::withBothWays)
                .flag("block.then-fringe", TurnedEnds::fringe, TurnedEnds::withFringe)
                .oneOf("block.from", "side", Side.values(), TurnedEnds::from, TurnedEnds::withFrom);
    }

    @Override
    public Section<? extends Block> wovenEdge(WovenEdge wovenEdge) {
        return fields.section(WovenEdge.class)
                .whole("block.through", WovenEdge::through, WovenEdge::withThrough)
                .oneOf("block.from", "side", Side.values(), WovenEdge::from, WovenEdge::withFrom);
    }

    @Override
    public Section<? extends Block> wrappedTassels(WrappedTassels wrappedTassels) {
        return fields.material(fields.section(WrappedTassels.class)
                .whole("block.turns", WrappedTassels::turns, WrappedTassels::withTurns)
                .whole("block.group", WrappedTassels::endsPerGroup, WrappedTassels::withEndsPerGroup));
    }

    @Override
    public Section<? extends Block> warpLoops(WarpLoops warpLoops) {
        return fields.section(WarpLoops.class)
                .oneOf("block.round", "held", WarpLoops.Held.values(), WarpLoops::round, WarpLoops::withRound)
                .length("block.round-thick", WarpLoops::thick, WarpLoops::withThick);
    }
}
