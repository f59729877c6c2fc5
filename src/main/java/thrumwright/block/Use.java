package thrumwright.block;

import java.util.Objects;
import java.util.Optional;

/**
 * How a block uses its yarn.
 *
 * @param comesOut whether it is taken out again in the end
 * @param from the side at which it must begin; empty: where the row before ended
 */
public record Use(Material material, boolean comesOut, Optional<Side> from) {
    public Use {
        Objects.requireNonNull(material);
        Objects.requireNonNull(from);
    }

    public static Use of(MaterialRole role) {
        return new Use(new Material.OfRole(role), false, Optional.empty());
    }

    public static Use comingOut(MaterialRole role) {
        return new Use(new Material.OfRole(role), true, Optional.empty());
    }

    /** The same use of another material. */
    public Use with(Material other) {
        return new Use(other, comesOut, from);
    }

    Use unforced() {
        return withFrom(Optional.empty());
    }

    public Use withComesOut(boolean other) {
        return new Use(material, other, from);
    }

    public Use withFrom(Optional<Side> other) {
        return new Use(material, comesOut, other);
    }
}
