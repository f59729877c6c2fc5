package thrumwright.block;

import java.util.Objects;
import java.util.Optional;

/**
 * How a block uses its yarn.
 *
 * @param comesOut whether it is taken out again in the end
 * @param from the side at which it must begin; empty: where the row before ended
 * @param byItself whether its yarn is cut for it alone, even where a neighbour's could go on
 */
public record Use(Material material, boolean comesOut, Optional<Side> from, boolean byItself) {
    public Use {
        Objects.requireNonNull(material);
        Objects.requireNonNull(from);
    }

    /** Going on with a neighbour's yarn where it can. */
    public Use(Material material, boolean comesOut, Optional<Side> from) {
        this(material, comesOut, from, false);
    }

    public static Use of(MaterialRole role) {
        return new Use(new Material.OfRole(role), false, Optional.empty());
    }

    public static Use comingOut(MaterialRole role) {
        return new Use(new Material.OfRole(role), true, Optional.empty());
    }

    /** The same use of another material. */
    public Use with(Material other) {
        return new Use(other, comesOut, from, byItself);
    }

    Use unforced() {
        return from.isEmpty() ? this : withFrom(Optional.empty());
    }

    public Use withComesOut(boolean other) {
        return new Use(material, other, from, byItself);
    }

    public Use withFrom(Optional<Side> other) {
        return new Use(material, comesOut, other, byItself);
    }

    public Use withByItself(boolean other) {
        return new Use(material, comesOut, from, other);
    }
}
