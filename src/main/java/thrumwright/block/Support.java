package thrumwright.block;

import java.util.Objects;
import thrumwright.measure.BadMeasure;
import thrumwright.measure.Length;

/** What a hem is to take so that the piece can hang. */
public sealed interface Support {
    /** A round bar that slides in. */
    record RoundBar(Length diameter) implements Support {
        public RoundBar {
            check(diameter, "A bar is thicker");
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
            check(width, "A slat is wider");
            check(thickness, "A slat is thicker");
            if (thickness.mm() > width.mm()) {
                throw new BadMeasure("A slat is wider than it is thick, not “" + width + "” by “" + thickness + "”.");
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
            check(width, "A strip is wider");
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

    private static void check(Length size, String what) {
        Objects.requireNonNull(size);
        if (!(size.mm() > 0 && size.mm() <= 200)) {
            throw new BadMeasure(what + " than 0 and at most 20 cm, not “" + size + "”.");
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
