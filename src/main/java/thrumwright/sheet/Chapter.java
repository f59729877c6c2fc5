package thrumwright.sheet;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import thrumwright.piece.Place;

/**
 * A part of the work.
 *
 * @param opening what to know before its first step
 */
public record Chapter(Kind kind, String title, List<String> opening, List<Step> steps) {
    /** The parts of the work in order. */
    public enum Kind {
        START,
        DESIGN,
        TOP,
        OFF_LOOM
    }

    public Chapter {
        opening = List.copyOf(opening);
        steps = List.copyOf(steps);
    }

    /** The end that it is about, if it is about one. */
    public Optional<Place> place() {
        return switch (kind) {
            case START -> Optional.of(Place.START);
            case TOP -> Optional.of(Place.TOP);
            case DESIGN, OFF_LOOM -> Optional.empty();
        };
    }

    /** The numbers of its steps by the identity of the blocks that they show. */
    public Map<String, Integer> numbers() {
        Map<String, Integer> numbers = new HashMap<>();
        for (Step step : steps) {
            step.picture().ifPresent(shown -> numbers.put(shown.blockId(), step.number()));
        }
        return numbers;
    }
}
