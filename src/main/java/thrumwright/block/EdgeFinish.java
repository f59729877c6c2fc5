package thrumwright.block;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import thrumwright.measure.BadMeasure;
import thrumwright.measure.Length;
import thrumwright.yarn.Packing;

/**
 * What becomes of the warp ends once the piece is off the loom. It has no height in the stack; it stands at the edge that
 * stays.
 */
public sealed interface EdgeFinish extends Block
        permits WarpFinish, KnotRows, TurnedEnds, WovenEdge, WrappedTassels, WarpLoops {
    /**
     * An overhand knot takes at most so many bundle diameters of each end: the tight trefoil, closed (Denne, Diao,
     * Sullivan, Geom. Topol. 10 (2006)); an upper figure for the open knot.
     */
    double KNOT = 16.372;
    /** How an overhand knot is tied: see {@link Block#stages}. */
    List<String> KNOT_STAGES = List.of("knot.stage.loop", "knot.stage.through", "knot.stage.tight");
    /** Free warp that the hands need to work any finish, mm (from memory). */
    double HANDS = 150;

    /** The answer that those cases have for this kind. */
    <R> R of(FinishCases<R> cases);

    @Override
    default <R> R of(Cases<R> cases) {
        return of((FinishCases<R>) cases);
    }

    @Override
    default Optional<EdgeFinish> finish() {
        return Optional.of(this);
    }

    /** How long it hangs, or how far the ends lie back. */
    @Override
    default Optional<Amount> extent() {
        return length().map(Amount.Height::new);
    }

    @Override
    default EdgeFinish withExtent(Amount other) {
        return withLength(other.length());
    }

    /** Whether it closes the edge, so that no warp end is cut. */
    default boolean closed() {
        return false;
    }

    @Override
    default List<String> ownPlaces() {
        return places();
    }

    /** Places of most finishes, and these. */
    static List<String> places(String... more) {
        List<String> places = new ArrayList<>(List.of("group", "groups", "sizes", "hanging", "free"));
        places.addAll(List.of(more));
        return places;
    }

    /** Warp ends that are worked together; 1 where they go one by one. */
    int endsPerGroup();

    /** How many warp ends a group needs at least to be worked so, 1 or more. */
    default int leastPerGroup() {
        return 1;
    }

    /** The side at which it is begun, where it matters; else empty. */
    default Optional<Side> begins() {
        return Optional.empty();
    }

    /** The length that the weaver chose: how long the fringe hangs, or how far the ends lie back; empty if there is none. */
    Optional<Length> length();

    /** Whether something of them hangs at the edge when the piece is done. */
    boolean hangs();

    /** The same finish with another such length; one that has none stays as it is. */
    EdgeFinish withLength(Length other);

    /**
     * Free warp that each end needs beyond the edge, mm, and never less than the hands need.
     *
     * @param warp the warp yarn on its own warp
     */
    double freeWarp(Setting warp);

    /**
     * How far it reaches beyond the edge once it is done, mm, 0 or more.
     *
     * @param warp the warp yarn on its own warp
     */
    default double beyond(Setting warp) {
        return hangs() ? length().map(Length::mm).orElse(0.0) : 0;
    }

    /**
     * The sizes of the groups from the left: m = round(N/g) of them, differing by at most one, the larger outside; fewer where one
     * would be a single end or too small to be worked.
     */
    default List<Integer> groups(int ends) {
        int count = groupCount(ends);
        int larger = ends % count;
        List<Integer> sizes = new ArrayList<>(Collections.nCopies(count, ends / count));
        for (int i = 0; i < larger / 2; i++) {
            sizes.set(i, ends / count + 1);
            sizes.set(count - 1 - i, ends / count + 1);
        }
        if (larger % 2 != 0) {
            sizes.set(count / 2, ends / count + 1);
        }
        return sizes;
    }

    private int groupCount(int ends) {
        int least = Math.min(endsPerGroup(), Math.max(2, leastPerGroup()));
        return Math.max(1, Math.min((int) Math.round((double) ends / endsPerGroup()), ends / least));
    }

    /** Size of the largest group on so many ends: ⌈N/m⌉. */
    default int largestGroup(int ends) {
        int count = groupCount(ends);
        return (ends + count - 1) / count;
    }

    /** Diameter of one group's bundle, mm, more than 0; as is that of a warp end. */
    default double bundle(double warpDiameter) {
        return warpDiameter * Packing.ratio(endsPerGroup());
    }

    /** @throws BadMeasure unless the length is more than 0 and at most 1 m */
    static void checkLength(Length length) {
        if (!(length.mm() > 0 && length.mm() <= 1000)) {
            throw new BadMeasure("finish.length", Map.of("length", length));
        }
    }
}
