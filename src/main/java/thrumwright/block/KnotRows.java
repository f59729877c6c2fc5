package thrumwright.block;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import thrumwright.measure.BadMeasure;
import thrumwright.measure.Length;
import thrumwright.yarn.Packing;

/**
 * Warp ends tied to each other in rows of overhand knots: close together they lock the ends against the cloth; farther
 * apart, with groups that part and join, they make a lattice.
 *
 * @param rows 1 to {@link #MOST_ROWS}
 * @param endsPerGroup warp ends in a knot of the first row, 2 to 24
 * @param split whether in every second row each group parts, and its halves are tied to the neighbours' halves
 * @param apart from the knots of one row to those of the next; empty, or less than a knot is high: close together
 * @param hanging how long the fringe hangs below the last row
 */
public record KnotRows(Tag tag, int rows, int endsPerGroup, boolean split, Optional<Length> apart, Length hanging)
        implements EdgeFinish {
    /** The most rows. */
    public static final int MOST_ROWS = 40;
    /** How high an overhand knot stands, in bundle diameters: two turns and what they are wound about (model). */
    static final double KNOT_HIGH = 3;

    public KnotRows {
        Objects.requireNonNull(tag);
        Objects.requireNonNull(apart);
        Twining.checkGroup(endsPerGroup);
        if (endsPerGroup < 2) {
            throw new BadMeasure("knots.group", Map.of());
        }
        if (rows < 1 || rows > MOST_ROWS) {
            throw new BadMeasure("knots.rows", Map.of("most", MOST_ROWS, "rows", rows));
        }
        if (apart.isPresent() && !(apart.get().mm() > 0 && apart.get().mm() <= 500)) {
            throw new BadMeasure("knots.apart", Map.of("apart", apart.get()));
        }
        EdgeFinish.checkLength(hanging);
    }

    /**
     * Neighbouring warp ends in one knot.
     *
     * @param first counted from 0 at the left
     */
    public record Bunch(int first, int count) {
        boolean holds(int end) {
            return end >= first && end < first + count;
        }

        /** Where it hangs, mm from the left edge end. */
        public double middle(Setting warp) {
            return (first + (count - 1) / 2.0) * warp.spacing();
        }
    }

    /** The knots of a row, counted from 0 next to the cloth. */
    public List<Bunch> bunches(int ends, int row) {
        List<Bunch> whole = new ArrayList<>();
        int first = 0;
        for (int size : groups(ends)) {
            whole.add(new Bunch(first, size));
            first += size;
        }
        if (!split || row % 2 == 0) {
            return whole;
        }
        List<Bunch> joined = new ArrayList<>();
        for (int i = 1; i < whole.size(); i++) {
            int from = halfWay(whole.get(i - 1));
            joined.add(new Bunch(from, halfWay(whole.get(i)) - from));
        }
        return joined;
    }

    private static int halfWay(Bunch bunch) {
        return bunch.first() + (bunch.count() + 1) / 2;
    }

    /** How high a knot stands, mm, more than 0. */
    public double knotHeight(Setting warp) {
        return KNOT_HIGH * widest(warp);
    }

    private double widest(Setting warp) {
        return warp.warp() * Packing.ratio(largestGroup(warp.ends()));
    }

    /** From the middle of one row's knots to the next one's, mm, more than 0. */
    public double step(Setting warp) {
        return Math.max(knotHeight(warp), apart.map(Length::mm).orElse(0.0));
    }

    /** From the edge of the cloth to the middle of a row's knots, mm, more than 0; the first row stands against the edge. */
    public double down(Setting warp, int row) {
        return knotHeight(warp) / 2 + row * step(warp);
    }

    /** How each warp end falls from the edge, from the first to the last: straight from knot to knot. */
    public List<Fall> falls(Setting warp) {
        List<List<Bunch>> knots = new ArrayList<>();
        for (int row = 0; row < rows; row++) {
            knots.add(bunches(warp.ends(), row));
        }
        int[] next = new int[rows];
        List<Fall> falls = new ArrayList<>();
        for (int end = 0; end < warp.ends(); end++) {
            falls.add(fall(warp, knots, next, end));
        }
        return falls;
    }

    /** @param next for each row the bunch to look at first; ends come in order */
    private Fall fall(Setting warp, List<List<Bunch>> knots, int[] next, int end) {
        List<Fall.Spot> spots = new ArrayList<>();
        spots.add(new Fall.Spot(end * warp.spacing(), 0));
        for (int row = 0; row < rows; row++) {
            List<Bunch> bunches = knots.get(row);
            while (next[row] < bunches.size() - 1 && bunches.get(next[row] + 1).first() <= end) {
                next[row]++;
            }
            if (!bunches.isEmpty() && bunches.get(next[row]).holds(end)) {
                spots.add(new Fall.Spot(bunches.get(next[row]).middle(warp), down(warp, row)));
            }
        }
        int knotted = spots.size() - 1;
        double x = spots.get(knotted).x();
        spots.add(new Fall.Spot(x, down(warp, rows - 1) + hanging.mm()));
        return new Fall(spots, knotted);
    }

    /**
     * For groups of at most G ends, √(((G−1)s/2)² + (h/2)²) to the first knot, √(e² + (⌈G/2⌉s)²) from row to row (e where
     * they don't part), the knots, and the hanging end: what the end takes that goes farthest aside; where groups differ
     * by one, an upper figure.
     */
    @Override
    public double freeWarp(Setting warp) {
        int most = largestGroup(warp.ends());
        double gather = Math.hypot((most - 1) * warp.spacing() / 2, knotHeight(warp) / 2);
        int apart = split ? (most + 1) / 2 : 0;
        double aside = apart * warp.spacing();
        double between = (rows - 1) * Math.hypot(step(warp), aside);
        return Math.max(HANDS, gather + between + rows * KNOT * widest(warp) + hanging.mm());
    }

    @Override
    public double beyond(Setting warp) {
        return down(warp, rows - 1) + hanging.mm();
    }

    @Override
    public boolean hangs() {
        return true;
    }

    @Override
    public Optional<Length> length() {
        return Optional.of(hanging);
    }

    @Override
    public KnotRows withLength(Length other) {
        return new KnotRows(tag, rows, endsPerGroup, split, apart, other);
    }

    @Override
    public List<String> stages(int made) {
        List<String> stages = new ArrayList<>(EdgeFinish.KNOT_STAGES);
        if (rows > 1) {
            stages.add(split ? "knot-rows.stage.split" : "knot-rows.stage.same");
        }
        return stages;
    }

    @Override
    public String key() {
        return "knot-rows";
    }

    @Override
    public List<String> ownPlaces() {
        return EdgeFinish.places("rows", "apart");
    }

    @Override
    public <R> R of(FinishCases<R> cases) {
        return cases.knotRows(this);
    }

    /** Rows are counted from the cloth outwards at either end, so that a reflection changes nothing. */
    @Override
    public KnotRows mirrored() {
        return this;
    }

    @Override
    public KnotRows withTag(Tag other) {
        return new KnotRows(other, rows, endsPerGroup, split, apart, hanging);
    }

    public KnotRows withRows(int other) {
        return new KnotRows(tag, other, endsPerGroup, split, apart, hanging);
    }

    public KnotRows withEndsPerGroup(int other) {
        return new KnotRows(tag, rows, other, split, apart, hanging);
    }

    public KnotRows withSplit(boolean other) {
        return new KnotRows(tag, rows, endsPerGroup, other, apart, hanging);
    }

    public KnotRows withApart(Optional<Length> other) {
        return new KnotRows(tag, rows, endsPerGroup, split, other, hanging);
    }
}
