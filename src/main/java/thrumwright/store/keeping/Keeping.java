package thrumwright.store.keeping;

import java.nio.file.Path;
import java.util.Objects;
import java.util.Optional;

/**
 * All by which an evening's work is kept.
 *
 * @param keeper of what isn't saved
 * @param claims on files that are open; empty: nobody else works here
 * @param earlier versions of what is saved; empty: none are kept
 */
public record Keeping(Keeper keeper, Optional<Claims> claims, Optional<Earlier> earlier) {
    public Keeping {
        Objects.requireNonNull(keeper);
        Objects.requireNonNull(claims);
        Objects.requireNonNull(earlier);
    }

    /** @param folder the program's own, which need not be there yet */
    public static Keeping in(Path folder) {
        return new Keeping(
                Keeper.in(folder.resolve("journals")),
                Optional.of(new Claims(folder.resolve("claims"))),
                Optional.of(new Earlier(folder.resolve("earlier"))));
    }

    /** Keeps nothing but what is saved. */
    public static Keeping nowhere() {
        return new Keeping(Keeper.nowhere(), Optional.empty(), Optional.empty());
    }
}
