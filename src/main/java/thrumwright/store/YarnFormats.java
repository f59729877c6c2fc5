package thrumwright.store;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import thrumwright.measure.Length;
import thrumwright.measure.Phrase;
import thrumwright.yarn.Bundle;
import thrumwright.yarn.Colour;
import thrumwright.yarn.Fibre;
import thrumwright.yarn.Firmness;
import thrumwright.yarn.Sample;
import thrumwright.yarn.Skein;
import thrumwright.yarn.Strands;
import thrumwright.yarn.Thickness;
import thrumwright.yarn.Usage;
import thrumwright.yarn.Yarn;

/** How yarns stand in a file. */
final class YarnFormats {
    static final int MOST_YARNS = 200;
    private static final int MOST_PARTS = 20;
    private static final ValueType<List<Strands>> PARTS =
            Types.list(strands(), "strands", MOST_PARTS, Optional.empty());

    private static final ValueType<Integer> PICKS = Types.whole(1, 100_000);
    private static final ValueType<Colour> COLOUR = Types.parsed("like.colour", Colour::parse, Colour::text);
    private static final String WOUND = "wound";
    static final ValueType<List<Yarn>> YARNS =
            new Resolved(Types.list(yarn(), "yarn", MOST_YARNS, Optional.of(Yarn::id)));

    private YarnFormats() {}

    /** Yarns of which some are bundles of others, wherever in the list those stand. */
    private record Resolved(ValueType<List<Yarn>> list) implements ValueType<List<Yarn>> {
        @Override
        public Phrase like() {
            return list.like();
        }

        @Override
        public List<Yarn> read(Fields in, String name) throws FileProblem {
            in.yarnsIn(name, WOUND);
            List<Yarn> all = list.read(in, name);
            return all.stream()
                    .map(yarn -> yarn.woundFrom(part -> all.stream()
                            .filter(other -> other.id().equals(part.id()))
                            .findFirst()
                            .orElseThrow()))
                    .toList();
        }

        @Override
        public Node node(List<Yarn> value, Unknown around, String name) {
            return list.node(value, around, name);
        }
    }

    private static Format<Yarn> yarn() {
        var yarn = new Declared<Yarn>();
        var id = yarn.needed("id", Types.id("like.yarn-id"), Yarn::id);
        var name = yarn.optional("name", Types.text("like.yarn-name"), value -> Optional.of(value.name()));
        var wound = yarn.optional(WOUND, PARTS, value -> value.bundle().map(Bundle::parts));
        var colour = alone(yarn, "colour", COLOUR, Yarn::colour);
        var fibre = alone(yarn, "fibre", Choices.FIBRE, Yarn::fibre);
        var thickness = alone(yarn, "thickness", thickness(), Yarn::thickness);
        var firmness = yarn.optional("firmness", Choices.FIRMNESS, value -> single(value, Yarn::firmness));
        var sample = yarn.optional("sample", sample(), Yarn::sample);
        var stock = yarn.optional("stock", Types.LENGTH, Yarn::stock);
        var used = yarn.optional("used", usage(), Yarn::usage);
        var also = yarn.optional("also", thickness(), Yarn::alsoTold);
        var skein = yarn.optional("skein", Types.parsed("like.skein", Skein::parse, Skein::text), Yarn::skein);
        Set<String> names = yarn.names();
        return yarn.as(in -> {
            String called = name.of(in).orElse(id.of(in));
            Optional<List<Strands>> parts = wound.of(in);
            if (parts.isPresent()) {
                Yarn bundle = bundle(id.of(in), called, parts.get(), sample.of(in), used.of(in));
                in.without(names, WOUND);
                return bundle;
            }
            return new Yarn(
                    id.of(in),
                    called,
                    colour.of(in),
                    fibre.of(in),
                    thickness.of(in),
                    firmness.of(in).orElse(Firmness.SOFT),
                    sample.of(in),
                    stock.of(in),
                    used.of(in),
                    also.of(in),
                    skein.of(in));
        });
    }

    private static Yarn bundle(
            String id, String name, List<Strands> parts, Optional<Sample> sample, Optional<Usage> used) {
        Yarn bare = Yarn.wound(id, name, new Bundle(parts));
        return new Yarn(
                id,
                name,
                bare.colour(),
                bare.fibre(),
                bare.thickness(),
                bare.firmness(),
                sample,
                Optional.empty(),
                used,
                Optional.empty(),
                Optional.empty());
    }

    /** What is said of a yarn that is no bundle; of a bundle its strands say it. */
    private static <V> Declared.Entry<V> alone(
            Declared<Yarn> yarn, String name, ValueType<V> type, Function<Yarn, V> kept) {
        yarn.optional(name, type, value -> single(value, kept));
        return in -> in.needed(name, type);
    }

    private static <V> Optional<V> single(Yarn yarn, Function<Yarn, V> kept) {
        return yarn.bundle().isPresent() ? Optional.empty() : Optional.of(kept.apply(yarn));
    }

    /** The yarn of a strand is only known by its id until all have been read. */
    private static Format<Strands> strands() {
        var strands = new Declared<Strands>();
        var yarn = strands.needed("yarn", Types.STRAND, part -> part.yarn().id());
        var count = strands.needed("strands", Types.whole(1, Strands.MOST), Strands::count);
        return strands.as(in -> new Strands(unknown(yarn.of(in)), count.of(in)));
    }

    private static Yarn unknown(String id) {
        Thickness any = new Thickness.Measured(Length.parse("1 mm"));
        return new Yarn(id, id, new Colour(0), Fibre.WOOL, any, Firmness.SOFT);
    }

    private static Format<Sample> sample() {
        var sample = new Declared<Sample>();
        var picks = sample.needed("picks", PICKS, Sample::picks);
        var height = sample.needed("height", Types.LENGTH, Sample::height);
        return sample.as(in -> new Sample(picks.of(in), height.of(in)));
    }

    private static Format<Usage> usage() {
        var usage = new Declared<Usage>();
        var picks = usage.needed("picks", PICKS, Usage::picks);
        var length = usage.needed("length", Types.LENGTH, Usage::length);
        return usage.as(in -> new Usage(picks.of(in), length.of(in)));
    }

    private static Format<Thickness> thickness() {
        var measured = new Declared<Thickness.Measured>();
        var diameter = measured.needed("diameter", Types.LENGTH, Thickness.Measured::diameter);
        var wound = new Declared<Thickness.Wraps>();
        var wraps = wound.needed("wraps", Types.number(0.01, 10_000), Thickness.Wraps::wraps);
        var over = wound.needed("in", Types.LENGTH, Thickness.Wraps::over);
        return new OneOf<>(
                new Phrase("file.thickness"),
                Optional.of("thickness"),
                List.of(
                        OneOf.Branch.of(
                                "diameter",
                                Thickness.Measured.class,
                                measured.as(in -> new Thickness.Measured(diameter.of(in)))),
                        OneOf.Branch.of(
                                "wraps",
                                Thickness.Wraps.class,
                                wound.as(in -> new Thickness.Wraps(wraps.of(in), over.of(in)))),
                        OneOf.Branch.of("count", Thickness.Counted.class, counted())));
    }

    private static Format<Thickness.Counted> counted() {
        var counted = new Declared<Thickness.Counted>();
        var count = counted.needed("count", Types.number(0.001, 1_000_000), Thickness.Counted::number);
        var plies = counted.usual("plies", Types.whole(1, Thickness.MOST_PLIES), 1, Thickness.Counted::plies);
        var system = counted.needed("system", Choices.COUNT, Thickness.Counted::system);
        return counted.as(in -> new Thickness.Counted(count.of(in), plies.of(in), system.of(in)));
    }
}
