package thrumwright.output.page;

import java.util.ArrayList;
import java.util.List;

/**
 * Parts one below the other on as few pages as they need, with none nearly empty but the last, and of the ways to do that the
 * one that parts least of what belongs together.
 */
public final class EvenPages {
    private static final double LEAST_FILL = 0.5;
    private static final double PAGE = 1000;
    private static final double EMPTY = 5000;
    private static final double PARTED = 100;

    private final Pages pages;
    private final List<Part> parts = new ArrayList<>();
    private final List<Boolean> begins = new ArrayList<>();

    public EvenPages(Pages pages) {
        this.pages = pages;
    }

    /** Adds parts that should stay on one page; they are parted where that leaves a page half empty. */
    public void add(List<? extends Part> together) {
        for (int i = 0; i < together.size(); i++) {
            parts.add(together.get(i));
            begins.add(i == 0);
        }
    }

    /** All of them, from where the pages are now. */
    public List<List<PlacedPart>> placed() {
        int[] next = breaks();
        int from = 0;
        while (from < parts.size()) {
            int to = next[from];
            parts.subList(from, to).forEach(pages::add);
            from = to;
            if (from < parts.size()) {
                pages.newPage();
            }
        }
        return pages.pages();
    }

    /** For each part, if it begins a page, with which part the page after that begins at best. */
    private int[] breaks() {
        double[] heights =
                parts.stream().mapToDouble(part -> part.height(pages.width())).toArray();
        double[] cost = new double[parts.size() + 1];
        int[] next = new int[parts.size()];
        for (int from = parts.size() - 1; from >= 0; from--) {
            cost[from] = Double.MAX_VALUE;
            best(from, from == 0 ? pages.left() : pages.height(), heights, cost, next);
        }
        return next;
    }

    /** Finds where a page ends at best that begins with a part and has so much room, points. */
    private void best(int from, double room, double[] heights, double[] cost, int[] next) {
        double taken = 0;
        for (int to = from + 1; to <= parts.size(); to++) {
            taken += heights[to - 1];
            if (taken > room && to > from + 1) {
                return;
            }
            double all = PAGE + ending(to, taken + pages.height() - room) + cost[to];
            if (all <= cost[from]) {
                cost[from] = all;
                next[from] = to;
            }
        }
    }

    /** What it costs to end a page before a part, of which so many points are taken. */
    private double ending(int before, double taken) {
        if (before == parts.size()) {
            return 0;
        }
        double empty = taken < LEAST_FILL * pages.height() ? EMPTY : 0;
        return empty + (begins.get(before) ? 0 : PARTED);
    }
}
