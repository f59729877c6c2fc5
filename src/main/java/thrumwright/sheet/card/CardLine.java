package thrumwright.sheet.card;

import java.util.List;
import java.util.Optional;

/**
 * A line of a card that is about no block: where the work begins, the design, the stop line.
 *
 * @param number of its step; empty where no step is about it
 * @param parts in large letters, one after another
 * @param notes what is read from close by
 */
public record CardLine(Optional<Integer> number, List<CardSaying> parts, List<String> notes) {
    public CardLine {
        parts = List.copyOf(parts);
        notes = List.copyOf(notes);
    }
}
