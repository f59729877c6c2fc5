package thrumwright.block;

import java.util.Objects;

/**
 * What tells one block of an end from another.
 *
 * @param id unique within an end, not blank
 * @param label the weaver's own name for it; empty: the usual name of its kind
 */
public record Tag(String id, String label) {
    public Tag {
        Objects.requireNonNull(label);
        if (id.isBlank()) {
            throw new IllegalArgumentException("a block needs an id");
        }
    }

    public static Tag of(String id) {
        return new Tag(id, "");
    }
}
