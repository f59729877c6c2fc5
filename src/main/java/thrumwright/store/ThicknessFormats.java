package thrumwright.store;

import java.util.List;
import java.util.Optional;
import thrumwright.measure.Length;
import thrumwright.measure.Phrase;
import thrumwright.yarn.CountSystem;
import thrumwright.yarn.Thickness;

/** How the measures of a yarn's thickness stand in a file. */
final class ThicknessFormats {
    private static final Format<Thickness.Measured> MEASURED = new Declared<>() {
        private final Entry<Length> diameter = needed("diameter", Types.LENGTH);

        @Override
        public Thickness.Measured make(Fields in) throws FileProblem {
            return new Thickness.Measured(diameter.of(in));
        }

        @Override
        public void write(Thickness.Measured measured, Writing out) {
            out.put(diameter, measured.diameter());
        }
    };

    private static final Format<Thickness.Wraps> WRAPS = new Declared<>() {
        private final Entry<Double> wraps = needed("wraps", Types.number(0.01, 10_000));
        private final Entry<Length> over = needed("in", Types.LENGTH);

        @Override
        public Thickness.Wraps make(Fields in) throws FileProblem {
            return new Thickness.Wraps(wraps.of(in), over.of(in));
        }

        @Override
        public void write(Thickness.Wraps wound, Writing out) {
            out.put(wraps, wound.wraps()).put(over, wound.over());
        }
    };

    private static final Format<Thickness.Counted> COUNTED = new Declared<>() {
        private final Entry<Double> count = needed("count", Types.number(0.001, 1_000_000));
        private final Entry<Integer> plies = usual("plies", Types.whole(1, Thickness.MOST_PLIES), 1);
        private final Entry<CountSystem> system = needed("system", Choices.COUNT);

        @Override
        public Thickness.Counted make(Fields in) throws FileProblem {
            return new Thickness.Counted(count.of(in), plies.of(in), system.of(in));
        }

        @Override
        public void write(Thickness.Counted counted, Writing out) {
            out.put(count, counted.number()).put(plies, counted.plies()).put(system, counted.system());
        }
    };

    static final Format<Thickness> THICKNESS = new OneOf<>(
            new Phrase("file.thickness"),
            Optional.of("thickness"),
            List.of(
                    OneOf.Branch.of("diameter", Thickness.Measured.class, MEASURED),
                    OneOf.Branch.of("wraps", Thickness.Wraps.class, WRAPS),
                    OneOf.Branch.of("count", Thickness.Counted.class, COUNTED)));

    private ThicknessFormats() {}
}
