package thrumwright.store;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import thrumwright.block.Support;
import thrumwright.block.Turning;
import thrumwright.measure.Length;
import thrumwright.measure.Phrase;

/** How a hem's turning and what it takes stand in a file. */
final class HemFormats {
    static final Format<Turning> TURNING = turning();
    static final Format<Optional<Support>> SUPPORT = support();

    private HemFormats() {}

    private static Format<Turning> turning() {
        var turning = new Declared<Turning>();
        var first = turning.optional(
                "firstTurn",
                Types.LENGTH,
                value -> value instanceof Turning.Twice twice ? Optional.of(twice.first()) : Optional.empty());
        var mitred = turning.spare("mitred", Types.FLAG, false, value -> value instanceof Turning.Mitred);
        var band = turning.optional(
                "band", faced(), value -> value instanceof Turning.Faced faced ? Optional.of(faced) : Optional.empty());
        return turning.as(in -> {
            Optional<Length> twice = first.of(in);
            Optional<Turning> once = mitred.of(in) ? Optional.of(new Turning.Mitred()) : Optional.empty();
            Optional<Turning.Faced> faced = band.of(in);
            List<Turning> all = Stream.of(twice.map(Turning.Twice::new), once, faced)
                    .<Turning>flatMap(Optional::stream)
                    .toList();
            if (all.size() > 1) {
                throw in.problem(new Phrase("file.turning"));
            }
            return all.isEmpty() ? new Turning.Once() : all.get(0);
        });
    }

    private static Format<Turning.Faced> faced() {
        var band = new Declared<Turning.Faced>();
        var width = band.needed("width", Types.LENGTH, Turning.Faced::width);
        var thickness = band.optional("thickness", Types.LENGTH, Turning.Faced::thickness);
        return band.as(in -> new Turning.Faced(width.of(in), thickness.of(in)));
    }

    private static Format<Optional<Support>> support() {
        var bar = new Declared<Support.RoundBar>();
        var diameter = bar.needed("bar", Types.LENGTH, Support.RoundBar::diameter);
        var strip = new Declared<Support.Strip>();
        var width = strip.needed("strip", Types.LENGTH, Support.Strip::width);
        var flat = new Declared<Support.Slat>();
        var slat = flat.needed("slat", slat(), value -> value);
        return new OneOf<Support>(
                        new Phrase("file.support"),
                        List.of(
                                OneOf.Branch.of(
                                        "bar",
                                        Support.RoundBar.class,
                                        bar.as(in -> new Support.RoundBar(diameter.of(in)))),
                                OneOf.Branch.of(
                                        "strip", Support.Strip.class, strip.as(in -> new Support.Strip(width.of(in)))),
                                OneOf.Branch.of("slat", Support.Slat.class, flat.as(slat::of))))
                .orNone();
    }

    private static Format<Support.Slat> slat() {
        var slat = new Declared<Support.Slat>();
        var width = slat.needed("width", Types.LENGTH, Support.Slat::width);
        var thickness = slat.needed("thickness", Types.LENGTH, Support.Slat::thickness);
        return slat.as(in -> new Support.Slat(width.of(in), thickness.of(in)));
    }
}
