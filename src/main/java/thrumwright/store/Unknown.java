package thrumwright.store;

import java.util.HashMap;
import java.util.Map;
import java.util.function.UnaryOperator;

/**
 * Fields of a file that this version doesn't know. They are kept by the place where they stood, that of a block or a
 * yarn by its id, and written again there.
 */
public final class Unknown {
    private final Map<String, Map<String, Node>> byPlace;

    Unknown(Map<String, Map<String, Node>> byPlace) {
        this.byPlace = new HashMap<>(byPlace);
    }

    public static Unknown none() {
        return new Unknown(Map.of());
    }

    Map<String, Node> at(String place) {
        return byPlace.getOrDefault(place, Map.of());
    }

    /** What stands within a place, as seen from there. */
    Unknown within(String place) {
        Map<String, Map<String, Node>> inner = new HashMap<>();
        byPlace.forEach((at, fields) -> {
            if (at.equals(place) || at.startsWith(place + "/")) {
                inner.put(at.substring(place.length()), fields);
            }
        });
        return new Unknown(inner);
    }

    /** The same at other places. */
    Unknown moved(UnaryOperator<String> where) {
        Map<String, Map<String, Node>> moved = new HashMap<>();
        byPlace.forEach((at, fields) -> moved.put(where.apply(at), fields));
        return new Unknown(moved);
    }

    public boolean isEmpty() {
        return byPlace.isEmpty();
    }
}
