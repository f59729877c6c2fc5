package thrumwright.block;

import java.util.Map;
import java.util.Objects;
import thrumwright.measure.BadMeasure;
import thrumwright.measure.Length;

/** What a hem is to take so that the piece can hang. */
public sealed interface Support {
    /** A round bar that slides in. */
    record RoundBar(Length diameter) implements Support {
        public RoundBar {
            check(diameter, "support.bar");
        }

        @Override
        public Length size() {
            return diameter;
        }

        @Override
        public RoundBar withSize(Length other) {
            return new RoundBar(other);
        }

        @Override
        public double thick() {
            return diameter.mm();
        }

        @Override
        public Kind kind() {
            return Kind.BAR;
        }
    }

    /** A flat slat that slides in. */
    record Slat(Length width, Length thickness) implements Support {
        public Slat {
            check(width, "support.slat-width");
            check(thickness, "support.slat-thickness");
            if (thickness.mm() > width.mm()) {
                throw new BadMeasure("support.slat", Map.of("width", width, "thickness", thickness));
            }
        }

        @Override
        public Length size() {
            return width;
        }

        @Override
        public Slat withSize(Length other) {
            return new Slat(other, thickness);
        }

        @Override
        public double thick() {
            return thickness.mm();
        }

        @Override
        public Kind kind() {
            return Kind.SLAT;
        }
    }

    /** The soft side of a hook-and-loop strip, sewn to the hem's back. */
    record Strip(Length width) implements Support {
        public Strip {
            check(width, "support.strip");
        }

        @Override
        public Length size() {
            return width;
        }

        @Override
        public Strip withSize(Length other) {
            return new Strip(other);
        }

        @Override
        public double thick() {
            return 0;
        }

        @Override
        public Kind kind() {
            return Kind.STRIP;
        }
    }

    private static void check(Length size, String key) {
        Objects.requireNonNull(size);
        if (!(size.mm() > 0 && size.mm() <= 200)) {
            throw new BadMeasure(key, Map.of("size", size));
        }
    }

    /** Diameter or width. */
    Length size();

    /** The same kind with another such size. */
    Support withSize(Length other);

    /** How far it stands out, mm, 0 or more; a strip lies flat. */
    double thick();

    Kind kind();

    /** The kinds of support. */
    enum Kind {
        BAR,
        SLAT,
        STRIP
    }
}
