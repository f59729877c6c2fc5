package thrumwright.store;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import thrumwright.block.Amount;
import thrumwright.block.Block;
import thrumwright.block.HalfHitch;
import thrumwright.block.HemFold;
import thrumwright.block.Hemstitching;
import thrumwright.block.KnotRows;
import thrumwright.block.Lean;
import thrumwright.block.Material;
import thrumwright.block.OpenWarp;
import thrumwright.block.OrderingCord;
import thrumwright.block.OwnWords;
import thrumwright.block.PlainBand;
import thrumwright.block.Side;
import thrumwright.block.SlitBand;
import thrumwright.block.Soumak;
import thrumwright.block.SpreadHeader;
import thrumwright.block.Tag;
import thrumwright.block.TurnedEnds;
import thrumwright.block.Twining;
import thrumwright.block.Use;
import thrumwright.block.WarpFinish;
import thrumwright.block.WarpLoops;
import thrumwright.block.WovenEdge;
import thrumwright.block.WrappedTassels;
import thrumwright.measure.Phrase;
import thrumwright.piece.End;

/** How blocks stand in a file: one declaration a kind. */
final class BlockFormats {
    private static final ValueType<Integer> ROWS = Types.whole(1, Amount.MOST_ROWS);
    private static final ValueType<Integer> GROUP = Types.whole(1, 24);
    private static final ValueType<Integer> SEVERAL = Types.whole(2, 24);
    private static final Choices<Hemstitching.Round> ROUND = new Choices<Hemstitching.Round>()
            .with("first picks", Hemstitching.Round.FIRST)
            .with("last picks", Hemstitching.Round.LAST);
    private static final Format<Tag> TAG = tag();
    private static final Format<Material> MATERIAL = material();
    private static final Format<Use> USE = use();
    private static final Format<Amount> AMOUNT = amount();

    /** All kinds, in the order in which they are listed. */
    private static final List<Kind<?>> KINDS = List.of(
            orderingCord(),
            plainBand(),
            slitBand(),
            spreadHeader(),
            twining(),
            soumak(),
            halfHitches(),
            hemstitching(),
            hemFold(),
            openWarp(),
            warpFinish(),
            rowsOfKnots(),
            turnedEnds(),
            wovenEdge(),
            wrappedTassels(),
            warpLoops());

    private static final ValueType<String> KEY = Types.text(new Phrase(
            "like.one-of",
            Map.of("names", Choices.oneOf(KINDS.stream().map(Kind::key).toList()))));

    /** All that blocks of any kind may have. */
    private static final Set<String> ALL_FIELDS =
            KINDS.stream().flatMap(kind -> kind.format().names().stream()).collect(Collectors.toUnmodifiableSet());

    /** A block of any kind. */
    private static final Format<Block> BLOCK = new Format<>() {
        @Override
        public Set<String> names() {
            return ALL_FIELDS;
        }

        @Override
        public Block make(Fields in) throws FileProblem {
            Block made = kind(in).format().make(in);
            in.checked("words", () -> OwnWords.check(made));
            in.without(ALL_FIELDS, "block");
            return made;
        }

        @Override
        public void write(Block block, Writing out) {
            kind(block).write(block, out);
        }
    };

    /** A stack of blocks. */
    static final ValueType<End> END = new ValueType<>() {
        private final ValueType<List<Block>> blocks =
                Types.list(BLOCK, "block", End.MOST_BLOCKS, Optional.of(Block::id));

        @Override
        public Phrase like() {
            return blocks.like();
        }

        @Override
        public End read(Fields in, String name) throws FileProblem {
            return new End(blocks.read(in, name));
        }

        @Override
        public Node node(End end, Unknown around, String name) {
            return blocks.node(end.blocks(), around, name);
        }
    };

    private BlockFormats() {}

    static List<Kind<?>> kinds() {
        return KINDS;
    }

    /** @param key by which the kind is called in files */
    record Kind<B extends Block>(String key, Class<B> sort, Format<B> format) {
        private void write(Block block, Writing out) {
            format.write(sort.cast(block), out);
        }
    }

    /** What a kind declares, beside what all have. */
    private static final class OfKind<B extends Block> extends Declared<B> {
        private final String key;
        private final Class<B> sort;
        private final Entry<Tag> tag;

        OfKind(String key, Class<B> sort) {
            this.key = key;
            this.sort = sort;
            always("kind", Node.Text.of(key));
            this.tag = together(TAG, Block::tag);
        }

        Kind<B> made(Maker<B> maker) {
            return new Kind<>(key, sort, as(maker));
        }
    }

    private static Kind<?> kind(Fields in) throws FileProblem {
        String key = in.needed("kind", KEY);
        for (Kind<?> kind : KINDS) {
            if (kind.key().equals(key)) {
                return kind;
            }
        }
        throw in.mustBe("kind", KEY.like());
    }

    private static Kind<?> kind(Block block) {
        for (Kind<?> kind : KINDS) {
            if (kind.sort().isInstance(block)) {
                return kind;
            }
        }
        throw new IllegalStateException("no format for " + block);
    }

    private static Kind<OrderingCord> orderingCord() {
        var cord = new OfKind<>("ordering cord", OrderingCord.class);
        var picks = cord.usual("picks", ROWS, 1, OrderingCord::picks);
        var use = cord.together(USE, OrderingCord::use);
        var first = cord.optional("first", Choices.SHED, OrderingCord::firstShed);
        return cord.made(in -> new OrderingCord(cord.tag.of(in), use.of(in), picks.of(in), first.of(in)));
    }

    private static Kind<PlainBand> plainBand() {
        var band = new OfKind<>("plain band", PlainBand.class);
        var purpose = band.usual("for", Choices.PURPOSE, PlainBand.Purpose.PLAIN, PlainBand::purpose);
        var amount = band.together(AMOUNT, PlainBand::amount);
        var use = band.together(USE, PlainBand::use);
        var first = band.optional("first", Choices.SHED, PlainBand::firstShed);
        return band.made(in -> new PlainBand(band.tag.of(in), use.of(in), purpose.of(in), amount.of(in), first.of(in)));
    }

    private static Kind<SlitBand> slitBand() {
        var band = new OfKind<>("slit band", SlitBand.class);
        var part = band.usual("part", Types.whole(SlitBand.LEAST, SlitBand.MOST), 30, SlitBand::endsPerPart);
        var amount = band.together(AMOUNT, SlitBand::amount);
        var use = band.together(USE, SlitBand::use);
        var first = band.optional("first", Choices.SHED, SlitBand::firstShed);
        return band.made(in -> new SlitBand(band.tag.of(in), use.of(in), part.of(in), amount.of(in), first.of(in)));
    }

    private static Kind<SpreadHeader> spreadHeader() {
        var header = new OfKind<>("spread header", SpreadHeader.class);
        var picks = header.usual("picks", ROWS, 1, SpreadHeader::picks);
        var strands = header.usual("strands", Types.whole(1, SpreadHeader.MOST_STRANDS), 1, SpreadHeader::strands);
        var use = header.together(USE, SpreadHeader::use);
        var first = header.optional("first", Choices.SHED, SpreadHeader::firstShed);
        return header.made(
                in -> new SpreadHeader(header.tag.of(in), use.of(in), picks.of(in), strands.of(in), first.of(in)));
    }

    private static Kind<Twining> twining() {
        var twining = new OfKind<>("twining", Twining.class);
        var rows = twining.usual("rows", ROWS, 1, Twining::rows);
        var group = twining.usual("group", GROUP, 1, Twining::endsPerGroup);
        var twist = twining.usual("twist", Choices.LEAN, Lean.Z, Twining::first);
        var countered = twining.spare("countered", Types.FLAG, false, Twining::countered);
        var use = twining.together(USE, Twining::use);
        return twining.made(in ->
                new Twining(twining.tag.of(in), use.of(in), rows.of(in), group.of(in), twist.of(in), countered.of(in)));
    }

    private static Kind<Soumak> soumak() {
        var soumak = new OfKind<>("soumak", Soumak.class);
        var rows = soumak.usual("rows", ROWS, 1, Soumak::rows);
        var over = soumak.usual("over", SEVERAL, 2, Soumak::over);
        var under = soumak.usual("under", Types.whole(1, 23), 1, Soumak::under);
        var slant = soumak.usual("slant", Choices.LEAN, Lean.Z, Soumak::first);
        var countered = soumak.spare("countered", Types.FLAG, false, Soumak::countered);
        var use = soumak.together(USE, Soumak::use);
        return soumak.made(in -> new Soumak(
                soumak.tag.of(in), use.of(in), rows.of(in), over.of(in), under.of(in), slant.of(in), countered.of(in)));
    }

    private static Kind<HalfHitch> halfHitches() {
        var hitches = new OfKind<>("half hitches", HalfHitch.class);
        var rows = hitches.usual("rows", ROWS, 1, HalfHitch::rows);
        var group = hitches.usual("group", GROUP, 1, HalfHitch::endsPerGroup);
        var use = hitches.together(USE, HalfHitch::use);
        return hitches.made(in -> new HalfHitch(hitches.tag.of(in), use.of(in), rows.of(in), group.of(in)));
    }

    private static Kind<Hemstitching> hemstitching() {
        var stitching = new OfKind<>("hemstitching", Hemstitching.class);
        var group = stitching.usual("group", GROUP, 4, Hemstitching::endsPerGroup);
        var picks = stitching.usual("picks", Types.whole(1, Hemstitching.MOST_PICKS), 2, Hemstitching::picks);
        var round = stitching.usual("round", ROUND, Hemstitching.Round.FIRST, Hemstitching::round);
        var use = stitching.together(USE, Hemstitching::use);
        return stitching.made(
                in -> new Hemstitching(stitching.tag.of(in), use.of(in), group.of(in), picks.of(in), round.of(in)));
    }

    private static Kind<HemFold> hemFold() {
        var fold = new OfKind<>("hem fold", HemFold.class);
        var turning = fold.together(HemFormats.TURNING, HemFold::turning);
        var support = fold.together(HemFormats.SUPPORT, HemFold::support);
        return fold.made(in -> new HemFold(fold.tag.of(in), turning.of(in), support.of(in)));
    }

    private static Kind<OpenWarp> openWarp() {
        var open = new OfKind<>("open warp", OpenWarp.class);
        var height = open.needed("height", Types.LENGTH, OpenWarp::height);
        return open.made(in -> new OpenWarp(open.tag.of(in), height.of(in)));
    }

    private static Kind<WarpFinish> warpFinish() {
        var finish = new OfKind<>("warp finish", WarpFinish.class);
        var ends = finish.needed("ends", Choices.FINISH, WarpFinish::kind);
        var group = finish.usual("group", GROUP, 1, WarpFinish::endsPerGroup);
        var hanging = finish.needed("hanging", Types.LENGTH, WarpFinish::hanging);
        return finish.made(in -> new WarpFinish(finish.tag.of(in), ends.of(in), group.of(in), hanging.of(in)));
    }

    private static Kind<KnotRows> rowsOfKnots() {
        var knots = new OfKind<>("rows of knots", KnotRows.class);
        var rows = knots.usual("rows", Types.whole(1, KnotRows.MOST_ROWS), 1, KnotRows::rows);
        var group = knots.usual("group", SEVERAL, 2, KnotRows::endsPerGroup);
        var split = knots.spare("split", Types.FLAG, false, KnotRows::split);
        var apart = knots.optional("apart", Types.LENGTH, KnotRows::apart);
        var hanging = knots.needed("hanging", Types.LENGTH, KnotRows::hanging);
        return knots.made(in ->
                new KnotRows(knots.tag.of(in), rows.of(in), group.of(in), split.of(in), apart.of(in), hanging.of(in)));
    }

    private static Kind<TurnedEnds> turnedEnds() {
        var turned = new OfKind<>("turned ends", TurnedEnds.class);
        var over = turned.usual("over", Types.whole(1, TurnedEnds.MOST_OVER), 1, TurnedEnds::over);
        var bothWays = turned.spare("bothWays", Types.FLAG, false, TurnedEnds::bothWays);
        var fringe = turned.spare("fringe", Types.FLAG, false, TurnedEnds::fringe);
        var from = turned.usual("from", Choices.SIDE, Side.LEFT, TurnedEnds::from);
        var back = turned.needed("hanging", Types.LENGTH, TurnedEnds::back);
        return turned.made(in -> new TurnedEnds(
                turned.tag.of(in), over.of(in), bothWays.of(in), from.of(in), back.of(in), fringe.of(in)));
    }

    private static Kind<WovenEdge> wovenEdge() {
        var woven = new OfKind<>("woven edge", WovenEdge.class);
        var through = woven.usual("through", Types.whole(WovenEdge.LEAST, WovenEdge.MOST), 6, WovenEdge::through);
        var from = woven.usual("from", Choices.SIDE, Side.LEFT, WovenEdge::from);
        var back = woven.needed("hanging", Types.LENGTH, WovenEdge::back);
        return woven.made(in -> new WovenEdge(woven.tag.of(in), through.of(in), from.of(in), back.of(in)));
    }

    private static Kind<WrappedTassels> wrappedTassels() {
        var tassels = new OfKind<>("wrapped tassels", WrappedTassels.class);
        var group = tassels.usual("group", SEVERAL, 2, WrappedTassels::endsPerGroup);
        var turns = tassels.needed("turns", Types.whole(1, WrappedTassels.MOST_TURNS), WrappedTassels::turns);
        var hanging = tassels.needed("hanging", Types.LENGTH, WrappedTassels::hanging);
        var material = tassels.together(MATERIAL, block -> block.use().material());
        return tassels.made(in -> new WrappedTassels(
                tassels.tag.of(in),
                new Use(material.of(in), false, Optional.empty()),
                group.of(in),
                turns.of(in),
                hanging.of(in)));
    }

    private static Kind<WarpLoops> warpLoops() {
        var loops = new OfKind<>("warp loops", WarpLoops.class);
        var round = loops.usual("round", Choices.HELD, WarpLoops.Held.ROD, WarpLoops::round);
        var thick = loops.needed("thick", Types.LENGTH, WarpLoops::thick);
        return loops.made(in -> new WarpLoops(loops.tag.of(in), round.of(in), thick.of(in)));
    }

    private static Format<Tag> tag() {
        var tag = new Declared<Tag>();
        var id = tag.needed("id", Types.id("like.block-id"), Tag::id);
        var label = tag.spare("label", Types.text("like.text"), "", Tag::label);
        var words = tag.spare("words", Types.text("like.text"), "", Tag::words);
        return tag.as(in -> new Tag(id.of(in), label.of(in), words.of(in)));
    }

    private static Format<Use> use() {
        var use = new Declared<Use>();
        var material = use.together(MATERIAL, Use::material);
        var comesOut = use.spare("comesOut", Types.FLAG, false, Use::comesOut);
        var from = use.optional("from", Choices.SIDE, Use::from);
        var byItself = use.spare("cutByItself", Types.FLAG, false, Use::byItself);
        return use.as(in -> new Use(material.of(in), comesOut.of(in), from.of(in), byItself.of(in)));
    }

    private static Format<Material> material() {
        var part = new Declared<Material.OfRole>();
        var role = part.needed("of", Choices.ROLE, Material.OfRole::role);
        var own = new Declared<Material.Own>();
        var yarn = own.needed("yarn", Types.YARN, Material.Own::yarnId);
        return new OneOf<>(
                new Phrase("file.material", Map.of("parts", Choices.ROLE.like())),
                List.of(
                        OneOf.Branch.of("of", Material.OfRole.class, part.as(in -> new Material.OfRole(role.of(in)))),
                        OneOf.Branch.of("yarn", Material.Own.class, own.as(in -> new Material.Own(yarn.of(in))))));
    }

    private static Format<Amount> amount() {
        var picks = new Declared<Amount.Picks>();
        var count = picks.needed("picks", ROWS, Amount.Picks::count);
        var tall = new Declared<Amount.Height>();
        var height = tall.needed("height", Types.LENGTH, Amount.Height::height);
        return new OneOf<>(
                new Phrase("file.amount"),
                List.of(
                        OneOf.Branch.of("picks", Amount.Picks.class, picks.as(in -> new Amount.Picks(count.of(in)))),
                        OneOf.Branch.of(
                                "height", Amount.Height.class, tall.as(in -> new Amount.Height(height.of(in))))));
    }
}
