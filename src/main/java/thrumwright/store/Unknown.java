package thrumwright.store;

import java.util.HashMap;
import java.util.Map;

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

    public boolean isEmpty() {
        return byPlace.isEmpty();
    }
}
