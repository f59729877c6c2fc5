package thrumwright.store;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thrumwright.block.Support;
import thrumwright.block.Turning;
import thrumwright.measure.Length;
import thrumwright.measure.Phrase;

/** How a hem's turning and what it takes stand in a file. */
final class HemFormats {
    private static final Format<Turning.Faced> FACED = new Declared<>() {
        private final Entry<Length> width = needed("width", Types.LENGTH);
        private final Entry<Optional<Length>> thickness = optional("thickness", Types.LENGTH);

        @Override
        public Turning.Faced make(Fields in) throws FileProblem {
            return new Turning.Faced(width.of(in), thickness.of(in));
        }

        @Override
        public void write(Turning.Faced faced, Writing out) {
            out.put(width, faced.width()).put(thickness, faced.thickness());
        }
    };

    static final Format<Turning> TURNING = new Declared<>() {
        private final Entry<Optional<Length>> first = optional("firstTurn", Types.LENGTH);
        private final Entry<Boolean> mitred = spare("mitred", Types.FLAG, false);
        private final Entry<Optional<Turning.Faced>> band = optional("band", FACED);

        @Override
        public Turning make(Fields in) throws FileProblem {
            Optional<Length> twice = first.of(in);
            boolean once = mitred.of(in);
            Optional<Turning.Faced> faced = band.of(in);
            List<Turning> all = new ArrayList<>();
            if (twice.isPresent()) {
                all.add(new Turning.Twice(twice.get()));
            }
            if (once) {
                all.add(new Turning.Mitred());
            }
            if (faced.isPresent()) {
                all.add(faced.get());
            }
            if (all.size() > 1) {
                throw in.problem(new Phrase("file.turning"));
            }
            return all.isEmpty() ? new Turning.Once() : all.get(0);
        }

        @Override
        public void write(Turning turning, Writing out) {
            out.put(first, turning instanceof Turning.Twice twice ? Optional.of(twice.first()) : Optional.empty());
            out.put(mitred, turning instanceof Turning.Mitred);
            out.put(band, turning instanceof Turning.Faced faced ? Optional.of(faced) : Optional.empty());
        }
    };

    private static final Format<Support.RoundBar> BAR = new Declared<>() {
        private final Entry<Length> diameter = needed("bar", Types.LENGTH);

        @Override
        public Support.RoundBar make(Fields in) throws FileProblem {
            return new Support.RoundBar(diameter.of(in));
        }

        @Override
        public void write(Support.RoundBar bar, Writing out) {
            out.put(diameter, bar.diameter());
        }
    };

    private static final Format<Support.Strip> STRIP = new Declared<>() {
        private final Entry<Length> width = needed("strip", Types.LENGTH);

        @Override
        public Support.Strip make(Fields in) throws FileProblem {
            return new Support.Strip(width.of(in));
        }

        @Override
        public void write(Support.Strip strip, Writing out) {
            out.put(width, strip.width());
        }
    };

    private static final Format<Support.Slat> SIZES = new Declared<>() {
        private final Entry<Length> width = needed("width", Types.LENGTH);
        private final Entry<Length> thickness = needed("thickness", Types.LENGTH);

        @Override
        public Support.Slat make(Fields in) throws FileProblem {
            return new Support.Slat(width.of(in), thickness.of(in));
        }

        @Override
        public void write(Support.Slat slat, Writing out) {
            out.put(width, slat.width()).put(thickness, slat.thickness());
        }
    };

    static final Format<Optional<Support>> SUPPORT = new OneOf<Support>(
                    new Phrase("file.support"),
                    List.of(
                            OneOf.Branch.of("bar", Support.RoundBar.class, BAR),
                            OneOf.Branch.of("strip", Support.Strip.class, STRIP),
                            OneOf.Branch.of("slat", Support.Slat.class, new Within<>("slat", SIZES))))
            .orNone();

    private HemFormats() {}
}
