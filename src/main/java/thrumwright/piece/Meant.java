package thrumwright.piece;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;

/**
 * What the weaver has seen a finding about and wants just so.
 *
 * @param all each once
 */
public record Meant(List<Told> all) {
    public static final Meant NOTHING = new Meant(List.of());

    /**
     * One of them.
     *
     * @param finding the finding's lasting name, as in {@code other-colour}
     * @param step the key of the step that it is about, as in {@link Ticks}
     */
    public record Told(String finding, String step) {}

    public Meant {
        all = List.copyOf(new LinkedHashSet<>(all));
    }

    public boolean has(Told told) {
        return all.contains(told);
    }

    public Meant with(Told told) {
        List<Told> more = new ArrayList<>(all);
        more.add(told);
        return new Meant(more);
    }

    public Meant without(Told told) {
        return new Meant(all.stream().filter(other -> !other.equals(told)).toList());
    }
}
