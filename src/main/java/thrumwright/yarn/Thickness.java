package thrumwright.yarn;

import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import thrumwright.measure.BadMeasure;
import thrumwright.measure.Decimals;
import thrumwright.measure.Length;
import thrumwright.measure.UnitSystem;

/** What the weaver knows of a yarn's thickness, and the relaxed diameter that follows. */
public sealed interface Thickness permits Thickness.Measured, Thickness.Wraps, Thickness.Counted, Bundle {
    /** The most plies that a count may name. */
    int MOST_PLIES = Packing.MOST;
    /** The share of a hard single's section that is fibre (Peirce). */
    double FILLING = 0.60;

    /** Relaxed diameter, mm, above 0: measured, or from the count and the share of the yarn that is fibre. */
    double diameter(Fibre fibre, Firmness firmness);

    /**
     * Mass per length, g/km, above 0: from the count where there is one, else from the diameter and the share of it that is
     * fibre, which is a rough figure. The same share serves both ways, so that a yarn told by its wraps and the same yarn told
     * by its length in a mass come out alike.
     */
    double tex(Fibre fibre, Firmness firmness);

    /** As it could be typed. */
    String text();

    /**
     * Reads {@code 0.8 mm}, {@code 5 wraps in 1 cm}, {@code 10 wpi}, {@code 12/6 Ne}, {@code 8/2 cotton} or {@code 3360 yd/lb}.
     *
     * @throws BadMeasure if it is none of these
     */
    static Thickness parse(String typed) {
        return ThicknessText.parse(typed);
    }

    /**
     * As {@link #parse(String)}, for the yarns of one piece: a count without its system, such as {@code 8/2}, is in the one by
     * which such yarns are sold ({@link CountSystem#usual}), and a number alone is a diameter in mm or inches.
     *
     * @throws BadMeasure if it is no thickness
     */
    static Thickness parse(String typed, Fibre fibre, UnitSystem units) {
        return ThicknessText.parse(typed, fibre, units);
    }

    /** Measured across. */
    record Measured(Length diameter) implements Thickness {
        @Override
        public String text() {
            return diameter.text();
        }

        public Measured {
            if (!(diameter.mm() >= 0.02 && diameter.mm() <= 100)) {
                throw new BadMeasure("thickness.range", Map.of("diameter", diameter));
            }
        }

        @Override
        public double diameter(Fibre fibre, Firmness firmness) {
            return diameter.mm();
        }

        @Override
        public double tex(Fibre fibre, Firmness firmness) {
            return texOf(diameter.mm(), fibre, firmness);
        }
    }

    /** Wound side by side round a ruler, just touching. */
    record Wraps(double wraps, Length over) implements Thickness {
        @Override
        public String text() {
            return Decimals.plain(wraps, 3, Locale.ROOT) + " wraps in " + over;
        }

        public Wraps {
            Objects.requireNonNull(over);
            double diameter = over.mm() / wraps;
            if (!(wraps > 0 && diameter >= 0.02 && diameter <= 100)) {
                throw new BadMeasure("thickness.wraps", Map.of());
            }
        }

        @Override
        public double diameter(Fibre fibre, Firmness firmness) {
            return over.mm() / wraps;
        }

        @Override
        public double tex(Fibre fibre, Firmness firmness) {
            return texOf(diameter(fibre, firmness), fibre, firmness);
        }
    }

    /**
     * By its count, such as 12/6 Ne: d = √(4·tex·10⁻³/(π·ρ·φ)) (Peirce). A hard yarn fills 0.60 of each of its singles, whose
     * diameter is taken times the packing ratio of the plies; of a softer one, and of a hard one told by its length in a mass
     * without its plies, φ is the share of the whole yarn ({@link Firmness#filling}).
     */
    record Counted(double number, int plies, CountSystem system) implements Thickness {
        @Override
        public String text() {
            String size = Decimals.plain(number, 3, Locale.ROOT);
            return size + (plies == 1 ? "" : "/" + plies) + " " + system.symbol();
        }

        public Counted {
            Objects.requireNonNull(system);
            if (!(number > 0 && number <= 1_000_000)) {
                throw new BadMeasure("thickness.count", Map.of());
            }
            if (plies < 1 || plies > MOST_PLIES) {
                throw new BadMeasure("thickness.plies", Map.of("most", MOST_PLIES));
            }
        }

        @Override
        public double diameter(Fibre fibre, Firmness firmness) {
            boolean singlesKnown = plies > 1 || system.ofTheSingle();
            return firmness == Firmness.HARD && singlesKnown
                    ? diameterOf(tex() / plies, fibre, FILLING) * Packing.ratio(plies)
                    : diameterOf(tex(), fibre, firmness.filling());
        }

        @Override
        public double tex(Fibre fibre, Firmness firmness) {
            return tex();
        }

        private double tex() {
            return system.tex(number) * (system.ofTheSingle() ? plies : 1);
        }
    }

    private static double diameterOf(double tex, Fibre fibre, double filling) {
        return Math.sqrt(4 * tex * 1e-3 / (Math.PI * fibre.density() * filling));
    }

    private static double texOf(double diameter, Fibre fibre, Firmness firmness) {
        return Math.PI * diameter * diameter * fibre.density() * firmness.filling() / 4 * 1e3;
    }
}
