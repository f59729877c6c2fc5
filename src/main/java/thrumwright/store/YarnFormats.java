package thrumwright.store;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
    private static final ValueType<Integer> PICKS = Types.whole(1, 100_000);
    private static final String WOUND = "wound";

    private static final ValueType<Colour> COLOUR = new Single.Parsed<>("like.colour") {
        @Override
        Colour parsed(String text) {
            return Colour.parse(text);
        }

        @Override
        String text(Colour colour) {
            return colour.text();
        }
    };

    private static final ValueType<Skein> SKEIN = new Single.Parsed<>("like.skein") {
        @Override
        Skein parsed(String text) {
            return Skein.parse(text);
        }

        @Override
        String text(Skein skein) {
            return skein.text();
        }
    };

    /** The yarn of a strand is only known by its id until all have been read. */
    private static final Format<Strands> STRANDS = new Declared<>() {
        private final Entry<String> yarn = needed("yarn", Types.STRAND);
        private final Entry<Integer> count = needed("strands", Types.whole(1, Strands.MOST));

        @Override
        public Strands make(Fields in) throws FileProblem {
            return new Strands(unknown(yarn.of(in)), count.of(in));
        }

        private Yarn unknown(String id) {
            Thickness any = new Thickness.Measured(Length.parse("1 mm"));
            return new Yarn(id, id, new Colour(0), Fibre.WOOL, any, Firmness.SOFT);
        }

        @Override
        public void write(Strands strands, Writing out) {
            out.put(yarn, strands.yarn().id()).put(count, strands.count());
        }
    };

    private static final Format<Sample> SAMPLE = new Declared<>() {
        private final Entry<Integer> picks = needed("picks", PICKS);
        private final Entry<Length> height = needed("height", Types.LENGTH);

        @Override
        public Sample make(Fields in) throws FileProblem {
            return new Sample(picks.of(in), height.of(in));
        }

        @Override
        public void write(Sample sample, Writing out) {
            out.put(picks, sample.picks()).put(height, sample.height());
        }
    };

    private static final Format<Usage> USAGE = new Declared<>() {
        private final Entry<Integer> picks = needed("picks", PICKS);
        private final Entry<Length> length = needed("length", Types.LENGTH);

        @Override
        public Usage make(Fields in) throws FileProblem {
            return new Usage(picks.of(in), length.of(in));
        }

        @Override
        public void write(Usage usage, Writing out) {
            out.put(picks, usage.picks()).put(length, usage.length());
        }
    };

    static final ValueType<List<Yarn>> YARNS = new Resolved();

    private YarnFormats() {}

    /** Yarns of which some are bundles of others, wherever in the list those stand. */
    private static final class Resolved implements ValueType<List<Yarn>> {
        private final ValueType<List<Yarn>> list = new Listed.ById<>(new Yarns(), "yarn", MOST_YARNS) {
            @Override
            String id(Yarn yarn) {
                return yarn.id();
            }
        };

        @Override
        public Phrase like() {
            return list.like();
        }

        @Override
        public List<Yarn> read(Fields in, String name, Node there) throws FileProblem {
            in.yarnsIn(name, WOUND);
            List<Yarn> all = list.read(in, name, there);
            List<Yarn> wound = new ArrayList<>(all.size());
            for (Yarn yarn : all) {
                wound.add(yarn.bundle().isPresent() ? yarn.woundFrom(part -> among(all, part.id())) : yarn);
            }
            return wound;
        }

        private static Yarn among(List<Yarn> all, String id) {
            return all.stream()
                    .filter(other -> other.id().equals(id))
                    .findFirst()
                    .orElseThrow();
        }

        @Override
        public Node node(List<Yarn> value, Unknown around, String name) {
            return list.node(value, around, name);
        }
    }

    private static final class Yarns extends Declared<Yarn> {
        private final Entry<String> id = needed("id", Types.id("like.yarn-id"));
        private final Entry<Optional<String>> name = optional("name", Types.text("like.yarn-name"));
        private final Entry<Optional<List<Strands>>> wound =
                optional(WOUND, new Listed<>(STRANDS, "strands", MOST_PARTS));
        private final Entry<Colour> colour = needed("colour", COLOUR);
        private final Entry<Fibre> fibre = needed("fibre", Choices.FIBRE);
        private final Entry<Thickness> thickness = needed("thickness", ThicknessFormats.THICKNESS);
        private final Entry<Firmness> firmness = usual("firmness", Choices.FIRMNESS, Firmness.SOFT);
        private final Entry<Optional<Sample>> sample = optional("sample", SAMPLE);
        private final Entry<Optional<Length>> stock = optional("stock", Types.LENGTH);
        private final Entry<Optional<Usage>> used = optional("used", USAGE);
        private final Entry<Optional<Thickness>> also = optional("also", ThicknessFormats.THICKNESS);
        private final Entry<Optional<Skein>> skein = optional("skein", SKEIN);

        @Override
        public Yarn make(Fields in) throws FileProblem {
            Optional<String> said = name.of(in);
            String own = id.of(in);
            String called = said.orElse(own);
            Optional<List<Strands>> parts = wound.of(in);
            if (parts.isPresent()) {
                Yarn bundle = bundle(own, called, parts.get(), sample.of(in), used.of(in));
                in.without(this, WOUND);
                return bundle;
            }
            return new Yarn(
                    own,
                    called,
                    colour.of(in),
                    fibre.of(in),
                    thickness.of(in),
                    firmness.of(in),
                    sample.of(in),
                    stock.of(in),
                    used.of(in),
                    also.of(in),
                    skein.of(in));
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

        @Override
        public void write(Yarn yarn, Writing out) {
            out.put(id, yarn.id()).put(name, Optional.of(yarn.name()));
            out.put(wound, yarn.bundle().map(Bundle::parts));
            if (yarn.bundle().isEmpty()) {
                writeAlone(yarn, out);
            }
            out.put(sample, yarn.sample()).put(stock, yarn.stock()).put(used, yarn.usage());
            out.put(also, yarn.alsoTold()).put(skein, yarn.skein());
        }

        /** What is said of a yarn that is no bundle; of a bundle its strands say it. */
        private void writeAlone(Yarn yarn, Writing out) {
            out.put(colour, yarn.colour()).put(fibre, yarn.fibre());
            out.put(thickness, yarn.thickness()).put(firmness, yarn.firmness());
        }
    }
}
