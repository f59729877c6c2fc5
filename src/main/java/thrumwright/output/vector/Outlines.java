package thrumwright.output.vector;

import java.nio.ByteBuffer;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.Map;

/** Outlines that were met, so that one that can't be told from an earlier one becomes the very same. */
public final class Outlines {
    /** So many outlines are remembered; then all are forgotten. */
    private static final int MOST = 1 << 13;
    /** So many outlines of the same build are looked at. */
    private static final int LATEST = 48;

    private final Fineness fineness;
    private final Map<Outline, Outline> known = new HashMap<>();
    private final Map<ByteBuffer, Deque<Outline>> builds = new HashMap<>();

    public Outlines(Fineness fineness) {
        this.fineness = fineness;
    }

    public Fineness fineness() {
        return fineness;
    }

    /** Some figures of a path as one outline. */
    public Outline of(PathFigures path, int first, int next) {
        byte[] kinds = path.kinds(first, next);
        double[] exact = path.fromStart(first, next);
        int[] places = new int[exact.length];
        for (int i = 0; i < exact.length; i++) {
            places[i] = PathFigures.hundredths(exact[i]);
        }
        return known.computeIfAbsent(new Outline(kinds, places), raw -> alike(Simpler.of(kinds, exact, fineness)));
    }

    private Outline alike(Outline fresh) {
        Deque<Outline> build = builds.computeIfAbsent(ByteBuffer.wrap(fresh.kinds()), kinds -> new ArrayDeque<>());
        for (Outline each : build) {
            if (each.near(fresh, fineness.grid())) {
                return each;
            }
        }
        build.addFirst(fresh);
        if (build.size() > LATEST) {
            build.removeLast();
        }
        return fresh;
    }

    /** Forgets all, if they have become many. */
    public void forget() {
        if (known.size() > MOST) {
            known.clear();
            builds.clear();
        }
    }
}
