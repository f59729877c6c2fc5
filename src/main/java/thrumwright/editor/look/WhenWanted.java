package thrumwright.editor.look;

import java.util.Optional;
import java.util.function.Supplier;

/**
 * Something that is made when it is first wanted.
 *
 * @param <T> what that is
 */
public final class WhenWanted<T> {
    private Optional<T> made = Optional.empty();

    /** It, made now if it isn't there yet. */
    public T get(Supplier<T> make) {
        if (made.isEmpty()) {
            made = Optional.of(make.get());
        }
        return made.get();
    }

    /** It, if it was wanted before. */
    public Optional<T> made() {
        return made;
    }
}
