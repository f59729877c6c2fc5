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
    }

    /** The soft side of a hook-and-loop strip, sewn to the hem's back. */
    record Strip(Length width) implements Support {
        public Strip {
            check(width, "support.strip");
        }
    }

    private static void check(Length size, String key) {
        Objects.requireNonNull(size);
        if (!(size.mm() > 0 && size.mm() <= 200)) {
            throw new BadMeasure(key, Map.of("size", size));
        }
    }

    /** Diameter or width. */
    default Length size() {
        if (this instanceof RoundBar bar) {
            return bar.diameter();
        }
        return this instanceof Slat slat ? slat.width() : ((Strip) this).width();
    }

    /** How far it stands out, mm; a strip lies flat. */
    default double thick() {
        if (this instanceof RoundBar bar) {
            return bar.diameter().mm();
        }
        return this instanceof Slat slat ? slat.thickness().mm() : 0;
    }

    /** The kinds of support. */
    enum Kind {
        BAR,
        SLAT,
        STRIP
    }

    default Kind kind() {
        if (this instanceof RoundBar) {
            return Kind.BAR;
        }
        return this instanceof Slat ? Kind.SLAT : Kind.STRIP;
    }
}
