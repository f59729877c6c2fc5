package thrumwright.testing;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import thrumwright.block.Amount;
import thrumwright.block.Block;
import thrumwright.block.HalfHitch;
import thrumwright.block.HemFold;
import thrumwright.block.Hemstitching;
import thrumwright.block.KnotRows;
import thrumwright.block.Lean;
import thrumwright.block.Material;
import thrumwright.block.MaterialRole;
import thrumwright.block.OpenWarp;
import thrumwright.block.OrderingCord;
import thrumwright.block.PlainBand;
import thrumwright.block.Shed;
import thrumwright.block.Side;
import thrumwright.block.SlitBand;
import thrumwright.block.Soumak;
import thrumwright.block.SpreadHeader;
import thrumwright.block.Support;
import thrumwright.block.Tag;
import thrumwright.block.TurnedEnds;
import thrumwright.block.Turning;
import thrumwright.block.Twining;
import thrumwright.block.Use;
import thrumwright.block.WarpFinish;
import thrumwright.block.WarpLoops;
import thrumwright.block.WovenEdge;
import thrumwright.block.WrappedTassels;
import thrumwright.measure.Length;
import thrumwright.measure.Sett;
import thrumwright.measure.Unit;
import thrumwright.measure.UnitSystem;
import thrumwright.piece.Design;
import thrumwright.piece.Destiny;
import thrumwright.piece.EdgeCord;
import thrumwright.piece.End;
import thrumwright.piece.Habits;
import thrumwright.piece.Label;
import thrumwright.piece.Loom;
import thrumwright.piece.LoomKind;
import thrumwright.piece.LoomKinds;
import thrumwright.piece.MadeFor;
import thrumwright.piece.Meant;
import thrumwright.piece.MeasuredStep;
import thrumwright.piece.Measures;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;
import thrumwright.piece.Portion;
import thrumwright.piece.Sheds;
import thrumwright.piece.Stripes;
import thrumwright.piece.Ticks;
import thrumwright.piece.Top;
import thrumwright.piece.Warp;
import thrumwright.plan.BlockPlan;
import thrumwright.plan.EndPlan;
import thrumwright.plan.Plan;
import thrumwright.yarn.Bundle;
import thrumwright.yarn.Colour;
import thrumwright.yarn.CountSystem;
import thrumwright.yarn.Fibre;
import thrumwright.yarn.Firmness;
import thrumwright.yarn.Sample;
import thrumwright.yarn.Skein;
import thrumwright.yarn.Strands;
import thrumwright.yarn.Thickness;
import thrumwright.yarn.Usage;
import thrumwright.yarn.Yarn;

/** Pieces of every sort from a seed: the same seed, the same pieces. */
public final class RandomPieces {
    private static final String[] NAMES = {
        "Tide",
        "Samphire & reed",
        "½ hitch “test”",
        "Ebb\\flow",
        "Überlange Bezeichnung für ein sehr langes Band aus Wolle",
        "Mud"
    };

    private final RandomGenerator random;
    /** For what came later, so that a seed still gives the piece that it gave. */
    private final RandomGenerator later;

    /** The same for kinds of loom. */
    private final RandomGenerator looms;

    private int made;
    private int slits;
    private int measuredNext;
    private int told;
    private int wound;

    public RandomPieces(long seed) {
        this.random = RandomGeneratorFactory.of("L64X128MixRandom").create(seed);
        this.later = RandomGeneratorFactory.of("L64X128MixRandom").create(~seed);
        this.looms = RandomGeneratorFactory.of("L64X128MixRandom").create(seed + 1_000_003);
    }

    public RandomGenerator random() {
        return random;
    }

    public Piece next() {
        return next(random.nextInt(0, 14));
    }

    /** @param blocks of the start */
    public Piece next(int blocks) {
        List<Yarn> yarns = new ArrayList<>();
        for (int i = 0; i < random.nextInt(1, 6); i++) {
            yarns.add(yarn("y" + i));
        }
        boolean inches = random.nextBoolean();
        Habits usual = Habits.usual(inches ? UnitSystem.INCHES : UnitSystem.METRIC);
        End start = end(blocks, yarns);
        Piece piece = new Piece(
                name(),
                random.nextBoolean() ? "" : name() + " " + name(),
                destiny(),
                loom(),
                warp(yarns),
                yarns,
                any(yarns),
                any(yarns),
                design(yarns),
                new Habits(
                        usual.units(),
                        random.nextBoolean() ? Habits.WidthsOf.LOOM : Habits.WidthsOf.WARP,
                        usual.step(),
                        length(50, 200),
                        length(50, 200),
                        random.nextInt(0, 11) / 100.0,
                        usual.handful(),
                        usual.overlap()),
                start,
                top(start, yarns),
                Ticks.NONE,
                Measures.NONE,
                Meant.NOTHING);
        return meant(measured(onItsLoom(striped(wound(piece))).withTicks(ticks(start))));
    }

    /** Of every fourth it is told how much of the design is woven in which yarn; not random, as above. */
    private static Piece striped(Piece piece) {
        if (piece.yarns().size() % 4 != 3) {
            return piece;
        }
        Design design = piece.design();
        Stripes.Stripe other = new Stripes.Stripe(piece.yarns().get(1).id(), Portion.parse("12.5 %"));
        boolean inches = piece.habits().units() == UnitSystem.INCHES;
        Optional<Portion> first = inches ? Optional.of(Portion.parse("1/4 in")) : Optional.empty();
        return piece.withDesign(design.withStripes(new Stripes(first, List.of(other))));
    }

    /** Every third weaves its first stripe with a bundle, every ninth all of its stiff parts too; not random, as above. */
    private Piece wound(Piece piece) {
        wound = (wound + 1) % 9;
        if (wound % 3 != 0) {
            return piece;
        }
        List<Yarn> yarns = new ArrayList<>(piece.yarns());
        List<Strands> parts = new ArrayList<>();
        for (Yarn yarn : yarns.subList(0, Math.min(2, yarns.size()))) {
            parts.add(new Strands(yarn, parts.size() + 1 + wound / 3));
        }
        yarns.add(Yarn.wound("bundle", "Blend of " + yarns.size(), new Bundle(parts)));
        Piece blended = piece.withYarns(yarns).withDesign(piece.design().withFirstYarn("bundle"));
        return wound == 0 ? blended.withCord("bundle") : blended;
    }

    /** Of every third one all colours are meant, in the start or the top. */
    private Piece meant(Piece piece) {
        int whose = looms.nextInt(6);
        if (whose >= Place.values().length) {
            return piece;
        }
        Place place = Place.values()[whose];
        Meant meant = piece.meant();
        for (Block block : piece.end(place).blocks()) {
            meant = meant.with(new Meant.Told("other-colour", place.step(block.id())))
                    .with(new Meant.Told("hems-differ", place.step(block.id())));
        }
        return piece.withMeant(meant);
    }

    /** Every second one is on a loom of another kind, and its sheds are made in any way. */
    private Piece onItsLoom(Piece piece) {
        Sheds sheds = Sheds.values()[looms.nextInt(Sheds.values().length)];
        List<LoomKind> kinds = LoomKinds.all(piece);
        LoomKind kind = kinds.get(looms.nextBoolean() ? 0 : looms.nextInt(kinds.size()));
        Loom loom = piece.loom().withSheds(sheds).withKind(kind);
        return piece.withLoom(looms.nextInt(3) == 0 ? loom.leavingAsUsual() : loom);
    }

    /** In every fourth piece every third block was measured; not random, so that what else is random stays as it was. */
    private Piece measured(Piece piece) {
        measuredNext = (measuredNext + 1) % 4;
        Measures measures = Measures.NONE;
        EndPlan planned = Plan.of(piece).start();
        for (int i = 1; i < planned.blocks().size() && measuredNext == 0; i += 3) {
            BlockPlan block = planned.blocks().get(i);
            Unit unit = i % 2 == 0 ? Unit.CENTIMETRE : Unit.INCH;
            Length reached = Length.of(Math.max(0, planned.reach(block) + i - 4) / unit.millimetres() + 0.1, unit);
            measures = measures.with(new MeasuredStep(
                    "start/" + block.block().id(),
                    Optional.of(reached),
                    Optional.of(Length.of(0.95 * piece.warp().clothWidth(), Unit.MILLIMETRE)),
                    i % 2 == 0 ? Optional.empty() : Optional.of(Length.parse("5.5 cm")),
                    Optional.empty()));
        }
        return piece.withMeasures(measures);
    }

    /** Some rows of every third block; not random, so that what else is random stays as it was. */
    private static Ticks ticks(End start) {
        Ticks ticks = Ticks.NONE;
        for (int i = 0; i < start.blocks().size(); i += 3) {
            for (int row = 0; row <= i; row++) {
                ticks = ticks.with(
                        "start/" + start.blocks().get(i).id(),
                        LocalDateTime.of(2026, 11, 28, 14, 5).plusMinutes(row));
            }
        }
        return ticks;
    }

    /** Every fourth yarn has a second measure. */
    private Optional<Thickness> alsoTold() {
        told = (told + 1) % 4;
        return told == 0 ? Optional.of(Thickness.parse("225 m/100 g")) : Optional.empty();
    }

    /** One after the other, so that what else is random stays as it was. */
    private Destiny destiny() {
        made++;
        int use = made % (MadeFor.values().length + 1);
        Optional<MadeFor> madeFor = use == 0 ? Optional.empty() : Optional.of(MadeFor.values()[use - 1]);
        EdgeCord cord = new EdgeCord(
                EdgeCord.Along.values()[made % 3], Length.parse(made % 2 == 0 ? "4 mm" : "1/4 in"), made % 5 == 0);
        return new Destiny(
                madeFor,
                made % 4 == 0 ? Optional.of(Length.parse(made % 8 == 0 ? "0 cm" : "2 in")) : Optional.empty(),
                made % 5 < 2,
                made % 7 < 3 ? Optional.of(cord) : Optional.empty(),
                made % 3 == 0 ? Optional.of(new Label("", made % 2 == 0 ? "2026" : "")) : Optional.empty());
    }

    private Top top(End start, List<Yarn> yarns) {
        if (random.nextInt(3) == 0) {
            return new Top.OnItsOwn(end(random.nextInt(0, 8), yarns));
        }
        List<Block> blocks = start.blocks();
        boolean none = blocks.isEmpty() || random.nextBoolean();
        return new Top.FollowsStart(
                none
                        ? Set.of()
                        : Set.of(blocks.get(random.nextInt(blocks.size())).id()));
    }

    private Warp warp(List<Yarn> yarns) {
        double thick = yarns.get(0).diameter();
        double spacing = Math.max(0.6, thick * random.nextDouble(1.8, 6));
        double width = random.nextDouble(40, 600);
        return new Warp(
                length(width, width + 1),
                Sett.parse(String.format(Locale.ROOT, "%.2f/10 cm", 100 / spacing)),
                yarns.get(0).id(),
                random.nextInt(4) == 0 ? Optional.of(length(width * 0.85, width * 1.05)) : Optional.empty());
    }

    private Loom loom() {
        Optional<Loom.Uprights> posts =
                random.nextBoolean() ? Optional.of(new Loom.Uprights(length(8, 60), length(1, 60))) : Optional.empty();
        return new Loom(name(), length(400, 2500), posts, length(0, 200), length(20, 250), length(500, 3000));
    }

    private Design design(List<Yarn> yarns) {
        return new Design(
                length(30, 1500),
                any(yarns),
                any(yarns),
                random.nextBoolean() ? Optional.empty() : Optional.of(shed()),
                random.nextBoolean() ? Optional.empty() : Optional.of(side()),
                random.nextInt(0, 5) / 100.0);
    }

    private Yarn yarn(String id) {
        Thickness thickness = switch (random.nextInt(3)) {
            case 0 -> new Thickness.Measured(length(0.3, 3));
            case 1 -> new Thickness.Wraps(random.nextInt(3, 20), Length.parse("1 cm"));
            default -> new Thickness.Counted(random.nextInt(4, 30), random.nextInt(1, 9), CountSystem.COTTON);
        };
        return new Yarn(
                id,
                name(),
                new Colour(random.nextInt(0x1000000)),
                Fibre.values()[random.nextInt(4)],
                thickness,
                Firmness.values()[random.nextInt(3)],
                random.nextInt(4) == 0
                        ? Optional.of(new Sample(random.nextInt(5, 40), length(5, 30)))
                        : Optional.empty(),
                random.nextInt(3) == 0 ? Optional.of(length(1000, 500_000)) : Optional.empty(),
                random.nextInt(4) == 0
                        ? Optional.of(new Usage(random.nextInt(1, 30), length(500, 20_000)))
                        : Optional.empty(),
                alsoTold(),
                Optional.of(Skein.parse("100 g")).filter(skein -> told == 1));
    }

    private End end(int blocks, List<Yarn> yarns) {
        List<Block> all = new ArrayList<>();
        for (int i = 0; i < blocks; i++) {
            all.add(block("b" + i, yarns));
        }
        return new End(all);
    }

    private Block block(String id, List<Yarn> yarns) {
        Tag tag = new Tag(
                id, random.nextInt(4) == 0 ? name() : "", random.nextInt(6) == 0 ? "Now {block}: {height}." : "");
        Lean lean = random.nextBoolean() ? Lean.S : Lean.Z;
        Optional<Shed> shed = random.nextInt(5) == 0 ? Optional.of(shed()) : Optional.empty();
        int under = random.nextInt(1, 4);
        return switch (random.nextInt(16)) {
            case 0 -> new OrderingCord(tag, use(yarns), random.nextInt(1, 5), shed);
            case 1, 2 ->
                slit(new PlainBand(
                        tag,
                        use(yarns),
                        PlainBand.Purpose.values()[random.nextInt(4)],
                        random.nextBoolean()
                                ? new Amount.Picks(random.nextInt(1, 40))
                                : new Amount.Height(length(1, 40)),
                        shed));
            case 3 ->
                new Twining(tag, use(yarns), random.nextInt(1, 5), random.nextInt(1, 4), lean, random.nextBoolean());
            case 4 ->
                new Soumak(
                        tag,
                        use(yarns),
                        random.nextInt(1, 4),
                        under + random.nextInt(1, 4),
                        under,
                        lean,
                        random.nextBoolean());
            case 5 -> new HalfHitch(tag, use(yarns), random.nextInt(1, 4), random.nextInt(1, 4));
            case 6 -> new HemFold(tag, turning(), support());
            case 7 -> new OpenWarp(tag, length(1, 40));
            case 8 ->
                new KnotRows(
                        tag,
                        random.nextInt(1, 5),
                        random.nextInt(2, 9),
                        random.nextBoolean(),
                        random.nextBoolean() ? Optional.of(length(5, 40)) : Optional.empty(),
                        length(20, 200));
            case 9 -> turned(new TurnedEnds(tag, random.nextInt(1, 7), random.nextBoolean(), side(), length(20, 200)));
            case 10 ->
                new WrappedTassels(tag, use(yarns), random.nextInt(2, 9), random.nextInt(1, 40), length(20, 200));
            case 12 -> new SpreadHeader(tag, use(yarns), random.nextInt(1, 6), random.nextInt(1, 5), shed);
            case 13 ->
                new Hemstitching(
                        tag,
                        use(yarns),
                        random.nextInt(1, 7),
                        random.nextInt(1, 5),
                        Hemstitching.Round.values()[random.nextInt(2)]);
            case 14 -> new WovenEdge(tag, random.nextInt(2, 9), side(), length(20, 200));
            case 11 -> new WarpLoops(tag, WarpLoops.Held.values()[random.nextInt(5)], length(1, 12));
            default ->
                new WarpFinish(tag, WarpFinish.Kind.values()[random.nextInt(4)], random.nextInt(1, 9), length(20, 200));
        };
    }

    /** Of every other one the ends hang. */
    private Block turned(TurnedEnds ends) {
        return ends.withFringe(ends.over() % 2 == 0);
    }

    /** Every eighth plain band has slits, so that what else is random stays as it was. */
    private Block slit(PlainBand band) {
        slits = (slits + 1) % 8;
        return slits == 0
                ? new SlitBand(
                        band.tag(), band.use(), 2 + band.tag().id().length() * 5, band.amount(), band.firstShed())
                : band;
    }

    private Turning turning() {
        return switch (random.nextInt(6)) {
            case 0, 1 -> new Turning.Twice(length(2, 12));
            case 2 -> new Turning.Mitred();
            case 3 ->
                new Turning.Faced(
                        length(10, 60), random.nextBoolean() ? Optional.of(length(0.2, 2)) : Optional.empty());
            default -> new Turning.Once();
        };
    }

    private Optional<Support> support() {
        return switch (random.nextInt(8)) {
            case 0 -> Optional.of(new Support.RoundBar(length(5, 25)));
            case 1 -> Optional.of(new Support.Slat(length(15, 40), length(2, 8)));
            case 2 -> Optional.of(new Support.Strip(length(10, 40)));
            default -> Optional.empty();
        };
    }

    private Use use(List<Yarn> yarns) {
        Material material = random.nextInt(4) == 0
                ? new Material.Own(any(yarns))
                : new Material.OfRole(MaterialRole.values()[random.nextInt(3)]);
        return new Use(
                        material,
                        random.nextInt(3) == 0,
                        random.nextInt(5) == 0 ? Optional.of(side()) : Optional.empty())
                .withByItself(later.nextInt(5) == 0);
    }

    private Shed shed() {
        return random.nextBoolean() ? Shed.OVER_FIRST : Shed.UNDER_FIRST;
    }

    private Side side() {
        return random.nextBoolean() ? Side.LEFT : Side.RIGHT;
    }

    private String any(List<Yarn> yarns) {
        return yarns.get(random.nextInt(yarns.size())).id();
    }

    private String name() {
        return NAMES[random.nextInt(NAMES.length)];
    }

    private Length length(double least, double most) {
        double mm = random.nextDouble(least, most);
        return switch (random.nextInt(3)) {
            case 0 -> Length.of(Math.rint(mm * 100) / 100, Unit.MILLIMETRE);
            case 1 -> Length.of(Math.max(Math.rint(mm * 10) / 100, 0.01), Unit.CENTIMETRE);
            default -> Length.parse(Math.max(1, Math.round(mm / 25.4 * 16)) + "/16 in");
        };
    }
}
