package thrumwright.store;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import thrumwright.block.Shed;
import thrumwright.block.Side;
import thrumwright.measure.Phrase;
import thrumwright.measure.UnitSystem;
import thrumwright.piece.Design;
import thrumwright.piece.End;
import thrumwright.piece.Habits;
import thrumwright.piece.Meant;
import thrumwright.piece.MeasuredStep;
import thrumwright.piece.Measures;
import thrumwright.piece.Piece;
import thrumwright.piece.Portion;
import thrumwright.piece.Stripes;
import thrumwright.piece.Ticks;
import thrumwright.piece.Top;
import thrumwright.piece.Warp;
import thrumwright.yarn.Yarn;

/** How a piece stands in a file. */
final class PieceFormats {
    private static final ValueType<Portion> PORTION = Types.parsed("like.portion", Portion::parse, Portion::text);
    private static final ValueType<List<Stripes.Stripe>> OTHERS =
            Types.list(other(), "other", Stripes.MOST, Optional.empty());
    static final Format<Piece> PIECE = piece();

    private PieceFormats() {}

    /** What the parts are woven with; what is left out is the warp's yarn. */
    private record Materials(Optional<String> cord, Optional<String> waste) {
        static Optional<Materials> of(Piece piece) {
            return Optional.of(new Materials(Optional.of(piece.cordId()), Optional.of(piece.wasteId())));
        }
    }

    private record LastPick(Optional<Shed> shed, Optional<Side> side) {
        static final LastPick UNKNOWN = new LastPick(Optional.empty(), Optional.empty());
    }

    private static Format<Piece> piece() {
        var piece = new Declared<Piece>();
        var version = piece.version("thrumwright", PieceFile.VERSION, "piece");
        var title = piece.needed("title", Types.text("like.title"), Piece::title);
        var note = piece.spare("note", Types.text("like.text"), "", Piece::note);
        var destiny = piece.together(DestinyFormats.DESTINY, Piece::destiny);
        var loom = piece.needed("loom", LoomFormats.LOOM, Piece::loom);
        var warped = piece.needed("warp", LoomFormats.WARP, Piece::warp);
        var yarns = piece.needed("yarns", YarnFormats.YARNS, Piece::yarns);
        var parts = piece.optional("materials", materials(), Materials::of);
        var design = piece.needed("design", design(), Piece::design);
        var habits = piece.optional("habits", LoomFormats.HABITS, value -> Optional.of(value.habits()));
        var from = piece.needed("start", BlockFormats.END, Piece::start);
        var top = piece.optional("top", top(), value -> Optional.of(value.top()));
        var ticks = piece.spare("done", TickFormats.TICKS, List.of(), PieceFormats::ticked);
        var measures = piece.spare("measured", TickFormats.MEASURES, List.of(), PieceFormats::measured);
        var meant = piece.spare("meant", TickFormats.MEANT, List.of(), PieceFormats::meant);
        return piece.as(in -> {
            version.of(in);
            Habits own = habits.of(in).orElseGet(() -> Habits.usual(UnitSystem.METRIC));
            List<Yarn> all = yarns.of(in);
            in.yarnsAre(ids(all));
            Warp warp = warped.of(in);
            End start = from.of(in);
            Optional<Materials> materials = parts.of(in);
            return new Piece(
                    title.of(in),
                    note.of(in),
                    destiny.of(in),
                    loom.of(in),
                    warp,
                    all,
                    materials.flatMap(Materials::cord).orElse(warp.yarnId()),
                    materials.flatMap(Materials::waste).orElse(warp.yarnId()),
                    design.of(in),
                    own,
                    start,
                    top.of(in).orElseGet(() -> Top.FollowsStart.withoutOrderingCords(start)),
                    new Ticks(ticks.of(in)),
                    new Measures(measures.of(in)),
                    new Meant(meant.of(in)));
        });
    }

    private static List<Ticks.Stepped> ticked(Piece piece) {
        return piece.ticks().steps();
    }

    private static List<MeasuredStep> measured(Piece piece) {
        return piece.measures().all();
    }

    private static List<Meant.Told> meant(Piece piece) {
        return piece.meant().all();
    }

    static Set<String> ids(List<Yarn> yarns) {
        return yarns.stream().map(Yarn::id).collect(Collectors.toUnmodifiableSet());
    }

    private static Format<Materials> materials() {
        var materials = new Declared<Materials>();
        var cord = materials.optional("cord", Types.YARN, Materials::cord);
        var waste = materials.optional("waste", Types.YARN, Materials::waste);
        return materials.as(in -> new Materials(cord.of(in), waste.of(in)));
    }

    private static Format<Design> design() {
        var design = new Declared<Design>();
        var height = design.needed("height", Types.LENGTH, Design::height);
        var first = design.needed("firstStripe", Types.YARN, Design::firstYarnId);
        var last = design.needed("lastStripe", Types.YARN, Design::lastYarnId);
        var lastPick = design.spare(
                "lastPick", lastPick(), LastPick.UNKNOWN, value -> new LastPick(value.lastShed(), value.lastSide()));
        var relaxing = design.spare("relaxing", Types.number(0, 0.5), 0.0, Design::relaxing);
        var part =
                design.optional("firstPart", PORTION, value -> value.stripes().first());
        var others = design.spare(
                "others", OTHERS, List.of(), value -> value.stripes().others());
        return design.as(in -> {
            LastPick pick = lastPick.of(in);
            Stripes stripes = new Stripes(part.of(in), others.of(in));
            return new Design(
                    height.of(in), first.of(in), last.of(in), pick.shed(), pick.side(), relaxing.of(in), stripes);
        });
    }

    private static Format<Stripes.Stripe> other() {
        var other = new Declared<Stripes.Stripe>();
        var yarn = other.needed("yarn", Types.YARN, Stripes.Stripe::yarnId);
        var part = other.needed("part", PORTION, Stripes.Stripe::part);
        return other.as(in -> new Stripes.Stripe(yarn.of(in), part.of(in)));
    }

    private static Format<LastPick> lastPick() {
        var pick = new Declared<LastPick>();
        var shed = pick.optional("shed", Choices.SHED, LastPick::shed);
        var side = pick.optional("side", Choices.SIDE, LastPick::side);
        return pick.as(in -> new LastPick(shed.of(in), side.of(in)));
    }

    private static Format<Top> top() {
        var follows = new Declared<Top.FollowsStart>();
        var start = follows.needed("follows", Types.only("start"), value -> "start");
        var leftOut = follows.spare(
                "leavingOut",
                Types.TEXTS,
                List.of(),
                value -> value.leftOut().stream().sorted().toList());
        var own = new Declared<Top.OnItsOwn>();
        var blocks = own.needed("blocks", BlockFormats.END, Top.OnItsOwn::end);
        return new OneOf<>(
                new Phrase("file.top"),
                List.of(
                        OneOf.Branch.of("follows", Top.FollowsStart.class, follows.as(in -> {
                            start.of(in);
                            return new Top.FollowsStart(Set.copyOf(leftOut.of(in)));
                        })),
                        OneOf.Branch.of("blocks", Top.OnItsOwn.class, own.as(in -> new Top.OnItsOwn(blocks.of(in))))));
    }
}
