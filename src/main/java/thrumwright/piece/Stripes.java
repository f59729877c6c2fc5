package thrumwright.piece;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How much of the design is woven in which yarn, as far as the weaver told. What the others leave is the first and the last
 * stripe's: half each, or what the first was told to take and the rest.
 *
 * @param first how much the first stripe's yarn takes; empty: not told
 * @param others further yarns
 */
public record Stripes(Optional<Portion> first, List<Stripe> others) {
    /** Nothing told. */
    public static final Stripes NONE = new Stripes(Optional.empty(), List.of());

    /** More yarns are more than anybody tells the shares of. */
    public static final int MOST = 12;

    public Stripes {
        others = List.copyOf(others);
    }

    /** A further yarn, and how much of the design it takes. */
    public record Stripe(String yarnId, Portion part) {}

    public boolean told() {
        return first.isPresent() || !others.isEmpty();
    }

    /**
     * Share of the design that was told, 0 or more.
     *
     * @param height of the design, mm, more than 0
     */
    public double share(double height) {
        return first.map(part -> part.of(height)).orElse(0.0)
                + others.stream().mapToDouble(each -> each.part().of(height)).sum();
    }

    public Stripes withFirst(Optional<Portion> other) {
        return new Stripes(other, others);
    }

    /**
     * With another yarn at a place, or none there; with one more where the place is the next.
     *
     * @param at from 0 to their number
     */
    public Stripes with(int at, Optional<Stripe> other) {
        List<Stripe> all = new ArrayList<>(others);
        if (at < all.size()) {
            all.remove(at);
        }
        other.ifPresent(stripe -> all.add(at, stripe));
        return new Stripes(first, all);
    }
}
