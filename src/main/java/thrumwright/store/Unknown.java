package thrumwright.store;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import thrumwright.measure.Phrase;

/**
 * Fields of a file that this version doesn't know. They are kept by the object in which they stood, that of a block or a
 * yarn by its id, and written again there.
 */
public final class Unknown {
    private static final Unknown NONE = new Unknown(Map.of(), Map.of(), List.of());

    private final Map<String, Node> fields;
    private final Map<String, Unknown> deeper;
    private final List<Phrase> own;

    private Unknown(Map<String, Node> fields, Map<String, Unknown> deeper, List<Phrase> own) {
        this.fields = fields;
        this.own = List.copyOf(own);
        this.deeper = new LinkedHashMap<>();
        for (Map.Entry<String, Unknown> each : deeper.entrySet()) {
            if (!each.getValue().isEmpty()) {
                this.deeper.put(each.getKey(), each.getValue());
            }
        }
    }

    /**
     * @param deeper by the names of the fields in which the objects stand, with # and its id for one of a list
     * @param own what is to be said of the fields
     */
    static Unknown of(Map<String, Node> fields, Map<String, Unknown> deeper, List<Phrase> own) {
        return new Unknown(fields, deeper, own);
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
        return Unknown.of(fields, moved, own);
    }

    /** The same, of which something else is to be said. */
    Unknown told(UnaryOperator<Phrase> how) {
        Map<String, Unknown> other = new LinkedHashMap<>();
        deeper.forEach((place, inner) -> other.put(place, inner.told(how)));
        return Unknown.of(fields, other, own.stream().map(how).toList());
    }

    /** What is to be said of fields that nobody marked as their own: where each stands, and which name was meant perhaps. */
    public List<Phrase> notices() {
        List<Phrase> notices = new ArrayList<>(own);
        for (Unknown inner : deeper.values()) {
            notices.addAll(inner.notices());
        }
        return List.copyOf(notices);
    }

    public boolean isEmpty() {
        return fields.isEmpty() && deeper.isEmpty();
    }
}
