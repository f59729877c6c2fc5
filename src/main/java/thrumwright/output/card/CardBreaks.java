package thrumwright.output.card;

import java.util.ArrayList;
import java.util.List;

/**
 * Divides the rows of an end between cards, at the border of two blocks, so that all are filled alike.
 *
 * @param height of a page, points
 */
record CardBreaks(CardContent content, double height) {
    /** From one row up to but without another. */
    record Run(int from, int to) {}

    /** Room for what says on which card it goes on, points. */
    static final double EDGE = 20;

    /** The fewest cards that hold all, evenly filled. */
    List<Run> runs() {
        List<Run> fewest = runs(height);
        if (fewest.size() == 1) {
            return fewest;
        }
        double low = 0;
        double high = height;
        List<Run> best = fewest;
        for (int i = 0; i < 20; i++) {
            double middle = (low + high) / 2;
            List<Run> tried = runs(middle);
            if (tried.size() == fewest.size() && fit(tried)) {
                best = tried;
                high = middle;
            } else {
                low = middle;
            }
        }
        return best;
    }

    /** Whether every card can hold what is on it. */
    boolean fit(List<Run> runs) {
        return runs.stream().allMatch(run -> needed(run) <= height);
    }

    private List<Run> runs(double most) {
        List<Run> runs = new ArrayList<>();
        int all = content.faces().size();
        int from = 0;
        while (from < all || runs.isEmpty()) {
            int to = Math.min(all, from + 1);
            while (to < all && needed(new Run(from, to + 1)) <= most) {
                to++;
            }
            runs.add(new Run(from, to));
            from = to;
        }
        return runs;
    }

    /** What a card with those rows takes, points. */
    double needed(Run run) {
        return content.height(run.from(), run.to()) + around(run);
    }

    /** What stands above and below the rows. */
    private double around(Run run) {
        boolean first = run.from() == 0;
        boolean last = run.to() == content.faces().size();
        double head = first && last ? content.around().one() : content.around().several();
        return head + (first ? content.beginHeight() : EDGE) + (last ? content.afterHeight() : EDGE);
    }
}
