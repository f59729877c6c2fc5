package thrumwright.piece;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import thrumwright.yarn.Yarn;

/**
 * The looms and yarns of one weaver, kept from piece to piece.
 *
 * @param looms those used last first; no two of one name
 * @param yarns those used last first; no two of one name
 */
public record Stash(List<Loom> looms, List<Yarn> yarns) {
    /** More are more than anybody looks through. */
    public static final int MOST = 60;

    public Stash {
        looms = List.copyOf(looms);
        yarns = List.copyOf(yarns);
    }

    public static Stash empty() {
        return new Stash(List.of(), List.of());
    }

    /** With the loom and the yarns of a piece, as they are in it, in front of all others. */
    public Stash with(Piece piece) {
        return new Stash(
                joined(List.of(piece.loom()), looms, Loom::name), numbered(joined(single(piece), yarns, Yarn::name)));
    }

    /** A bundle is wound anew for each piece; its strands' yarns are kept. */
    private static List<Yarn> single(Piece piece) {
        return piece.yarns().stream().filter(yarn -> yarn.bundle().isEmpty()).toList();
    }

    private static <T> List<T> joined(List<T> first, List<T> then, Function<T, String> name) {
        List<T> all = new ArrayList<>(first);
        for (T each : then) {
            if (first.stream().noneMatch(other -> name.apply(other).equalsIgnoreCase(name.apply(each)))) {
                all.add(each);
            }
        }
        return all.subList(0, Math.min(MOST, all.size()));
    }

    /** Two pieces may call two yarns by one id. What one piece measured of them while weaving is that piece's. */
    private static List<Yarn> numbered(List<Yarn> yarns) {
        List<Yarn> all = new ArrayList<>();
        for (Yarn yarn : yarns) {
            all.add(yarn.withId("yarn-" + (all.size() + 1)).withUsage(java.util.Optional.empty()));
        }
        return all;
    }
}
