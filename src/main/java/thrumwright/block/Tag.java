package thrumwright.block;

import java.util.Objects;

/**
 * What every block carries whatever its kind.
 *
 * @param id its lasting name within the end; not empty
 * @param label the weaver's own name for it; empty: it is called by the name of its kind
 * @param words the weaver's own wording of its step, a sentence a line, with places as in {@link OwnWords}; empty: the
 *     program's wording
 */
public record Tag(String id, String label, String words) {
    public Tag {
        Objects.requireNonNull(label);
        Objects.requireNonNull(words);
        if (id.isBlank()) {
            throw new IllegalArgumentException("a block needs an id");
        }
    }

    /** With the program's wording. */
    public Tag(String id, String label) {
        this(id, label, "");
    }

    public static Tag of(String id) {
        return new Tag(id, "");
    }

    public Tag withId(String other) {
        return new Tag(other, label, words);
    }

    public Tag withLabel(String other) {
        return new Tag(id, other, words);
    }

    public Tag withWords(String other) {
        return new Tag(id, label, other);
    }
}
