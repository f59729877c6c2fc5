package thrumwright.block;

import java.util.Objects;

/** Which yarn a block is woven with. */
public sealed interface Material {
    /** Whatever yarn plays that part in the piece. */
    record OfRole(MaterialRole role) implements Material {
        public OfRole {
            Objects.requireNonNull(role);
        }
    }

    /** A yarn of the block's own. */
    record Own(String yarnId) implements Material {
        public Own {
            Objects.requireNonNull(yarnId);
        }
    }
}
