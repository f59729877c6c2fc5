package thrumwright.store;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.UnaryOperator;

/**
 * Fields of a file that this version doesn't know. They are kept by the object in which they stood, that of a block or a
 * yarn by its id, and written again there.
 */
public final class Unknown {
    private static final Unknown NONE = new Unknown(Map.of(), Map.of());

    private final Map<String, Node> fields;
    private final Map<String, Unknown> deeper;

    private Unknown(Map<String, Node> fields, Map<String, Unknown> deeper) {
        this.fields = fields;
        this.deeper = new LinkedHashMap<>(deeper);
        this.deeper.values().removeIf(Unknown::isEmpty);
    }

    /** @param deeper by the names of the fields in which the objects stand, with # and its id for one of a list */
    static Unknown of(Map<String, Node> fields, Map<String, Unknown> deeper) {
        return new Unknown(fields, deeper);
    }

    public static Unknown none() {
        return NONE;
    }

    /** Those of the object itself. */
    Map<String, Node> fields() {
        return fields;
    }

    /** Those of an object within. */
    Unknown within(String place) {
        return deeper.getOrDefault(place, NONE);
    }

    /** The same with the objects within at other places. */
    Unknown moved(UnaryOperator<String> where) {
        Map<String, Unknown> moved = new LinkedHashMap<>();
        deeper.forEach((place, inner) -> moved.put(where.apply(place), inner));
        return Unknown.of(fields, moved);
    }

    public boolean isEmpty() {
        return fields.isEmpty() && deeper.isEmpty();
    }
}
