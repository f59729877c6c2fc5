package thrumwright.weaver;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import thrumwright.block.Side;

/** A yarn's way past warp ends, counted from 0 at the left. Twice the same is once: the yarn stays where it is. */
final class Passes {
    private final List<Pass> passes = new ArrayList<>();

    /** In front of a warp end, or behind it. */
    record Pass(int end, boolean front) {}

    Passes past(int end, boolean front) {
        Pass pass = new Pass(end, front);
        if (passes.isEmpty() || !last().equals(pass)) {
            passes.add(pass);
        }
        return this;
    }

    /** Past all ends from one to another, both included, on one face. */
    Passes past(int from, int to, boolean front) {
        int step = from <= to ? 1 : -1;
        for (int end = from; end != to + step; end += step) {
            past(end, front);
        }
        return this;
    }

    Pass first() {
        return passes.get(0);
    }

    Pass last() {
        return passes.get(passes.size() - 1);
    }

    /** Whether it comes by the end that it meets first on its other face too. */
    boolean goesRoundFirst() {
        return passes.contains(new Pass(first().end(), !first().front()));
    }

    boolean isEmpty() {
        return passes.isEmpty();
    }

    /** From where it first meets a warp end. */
    Passes after(int end) {
        Passes rest = new Passes();
        passes.stream().dropWhile(pass -> pass.end() != end).forEach(pass -> rest.past(pass.end(), pass.front()));
        return rest;
    }

    /** Led in from the side and out to the other side, on the face where it lies. */
    Passes fromSideToSide(Side from, int ends) {
        int in = from == Side.LEFT ? 0 : ends - 1;
        Passes whole = new Passes().past(in, first().end(), first().front());
        passes.forEach(pass -> whole.past(pass.end(), pass.front()));
        return whole.past(last().end(), ends - 1 - in, last().front());
    }

    /** Those past some neighbouring ends only, from one to before another. */
    Passes among(int from, int to) {
        Passes some = new Passes();
        passes.stream()
                .filter(pass -> pass.end() >= from && pass.end() < to)
                .forEach(pass -> some.past(pass.end(), pass.front()));
        return some;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Passes way && passes.equals(way.passes);
    }

    @Override
    public int hashCode() {
        return passes.hashCode();
    }

    @Override
    public String toString() {
        return passes.stream()
                .map(pass -> (pass.front() ? "+" : "-") + pass.end())
                .collect(Collectors.joining(" "));
    }
}
