package thrumwright.store;

import java.util.List;
import java.util.Optional;
import thrumwright.measure.Phrase;
import thrumwright.yarn.Colour;
import thrumwright.yarn.Firmness;
import thrumwright.yarn.Sample;
import thrumwright.yarn.Skein;
import thrumwright.yarn.Thickness;
import thrumwright.yarn.Usage;
import thrumwright.yarn.Yarn;

/** How yarns stand in a file. */
final class YarnFormats {
    static final int MOST_YARNS = 200;

    private static final ValueType<Integer> PICKS = Types.whole(1, 100_000);
    static final ValueType<List<Yarn>> YARNS = Types.list(yarn(), "yarn", MOST_YARNS, Optional.of(Yarn::id));

    private YarnFormats() {}

    private static Format<Yarn> yarn() {
        var yarn = new Declared<Yarn>();
        var id = yarn.needed("id", Types.id("like.yarn-id"), Yarn::id);
        var name = yarn.optional("name", Types.text("like.yarn-name"), value -> Optional.of(value.name()));
        var colour = yarn.needed("colour", Types.parsed("like.colour", Colour::parse, Colour::text), Yarn::colour);
        var fibre = yarn.needed("fibre", Choices.FIBRE, Yarn::fibre);
        var thickness = yarn.needed("thickness", thickness(), Yarn::thickness);
        var firmness = yarn.usual("firmness", Choices.FIRMNESS, Firmness.SOFT, Yarn::firmness);
        var sample = yarn.optional("sample", sample(), Yarn::sample);
        var stock = yarn.optional("stock", Types.LENGTH, Yarn::stock);
        var used = yarn.optional("used", usage(), Yarn::usage);
        var also = yarn.optional("also", thickness(), Yarn::alsoTold);
        var skein = yarn.optional("skein", Types.parsed("like.skein", Skein::parse, Skein::text), Yarn::skein);
        return yarn.as(in -> new Yarn(
                id.of(in),
                name.of(in).orElse(id.of(in)),
                colour.of(in),
                fibre.of(in),
                thickness.of(in),
                firmness.of(in),
                sample.of(in),
                stock.of(in),
                used.of(in),
                also.of(in),
                skein.of(in)));
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
