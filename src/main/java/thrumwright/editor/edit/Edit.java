package thrumwright.editor.edit;

import java.util.Objects;
import java.util.function.UnaryOperator;

/**
 * A named change.
 *
 * @param name what it does, in the user's words
 * @param change from the state before to the state after
 */
public record Edit(String name, UnaryOperator<State> change) {
    public Edit {
        Objects.requireNonNull(name);
        Objects.requireNonNull(change);
    }
}
