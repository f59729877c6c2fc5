package thrumwright.drawing.yarn;

import java.util.ArrayList;
import java.util.List;
import thrumwright.block.Setting;
import thrumwright.block.YarnBlock;

/**
 * How a block repeats itself across a wide warp, or in many rows. All there is to see of it is on a warp with fewer ends: its
 * left edge, its right edge and enough between them to be shown again and again; and so with rows from below to above.
 *
 * @param ends number of warp ends, or rows
 * @param fewer number of warp ends of the narrow warp; the same where nothing can be left out
 * @param edge ends at either side that are not repeated
 * @param step ends that are repeated
 */
record Repetition(int ends, int fewer, int edge, int step) {
    /** About so many ends are repeated together. */
    private static final int TOGETHER = 32;

    /** Ends to spare beyond a yarn's longest float. */
    private static final int SPARE = 4;

    /**
     * Some neighbouring ends of the wide warp.
     *
     * @param from the first of them, counted from 0; below 0 for all that lies left of the warp as well
     * @param to the one after the last; beyond the number of ends for all that lies right of the warp as well
     * @param shift how many ends farther left the same is found on the narrow warp
     */
    record Slab(int from, int to, int shift) {
        /** The same part on the narrow warp, counted there: equal for all that are repeated. */
        Slab narrow() {
            return new Slab(
                    from == Integer.MIN_VALUE ? from : from - shift, to == Integer.MAX_VALUE ? to : to - shift, 0);
        }

        /** Its left edge, half way from the end before, mm from the left edge end; negative infinity for all that is there. */
        double left(double spacing) {
            return from == Integer.MIN_VALUE ? Double.NEGATIVE_INFINITY : (from - 0.5) * spacing;
        }

        /** Its right edge, mm from the left edge end; infinity for all that is there. */
        double right(double spacing) {
            return to == Integer.MAX_VALUE ? Double.POSITIVE_INFINITY : (to - 0.5) * spacing;
        }

        /** Of rows, its lower edge, mm above the block's; negative infinity for all that is there. */
        double low(double rowHeight) {
            return from == Integer.MIN_VALUE ? Double.NEGATIVE_INFINITY : from * rowHeight;
        }

        /** Of rows, its upper edge, mm above the block's lower one; infinity for all that is there. */
        double high(double rowHeight) {
            return to == Integer.MAX_VALUE ? Double.POSITIVE_INFINITY : to * rowHeight;
        }
    }

    static Repetition of(YarnBlock block, Setting setting) {
        int period = block.period();
        return of(setting.ends(), period, block.longestFloat() + SPARE);
    }

    /** Rows repeat by twos: the yarn goes there and back. */
    static Repetition ofRows(int rows) {
        return of(rows, 2, SPARE);
    }

    private static Repetition of(int ends, int period, int edge) {
        int step = (TOGETHER + period - 1) / period * period;
        int least = 2 * edge + 2 * step;
        int fewer = ends <= least ? ends : least + (ends - least) % period;
        return new Repetition(ends, fewer, edge, step);
    }

    boolean repeats() {
        return fewer < ends;
    }

    /** The whole warp in slabs, from the left to the right. */
    List<Slab> slabs() {
        if (!repeats()) {
            return List.of(new Slab(Integer.MIN_VALUE, Integer.MAX_VALUE, 0));
        }
        List<Slab> slabs = new ArrayList<>();
        slabs.add(new Slab(Integer.MIN_VALUE, edge, 0));
        int from = edge;
        for (; from + step <= ends - edge; from += step) {
            slabs.add(new Slab(from, from + step, from - edge));
        }
        slabs.add(new Slab(from, Integer.MAX_VALUE, ends - fewer));
        return slabs;
    }
}
