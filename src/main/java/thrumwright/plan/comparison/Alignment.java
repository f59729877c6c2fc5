package thrumwright.plan.comparison;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToIntBiFunction;

/** Sets two lists side by side so that what is most alike stands in one line and both keep their order. */
final class Alignment {
    /** A line of both lists; at least one side is there. */
    record Line<T>(Optional<T> left, Optional<T> right) {}

    private Alignment() {}

    /**
     * @param likeness how alike two items are: more than 0 if they may stand in one line; of all ways to set the lists
     *     side by side the one with the highest sum is taken
     */
    static <T> List<Line<T>> of(List<T> left, List<T> right, ToIntBiFunction<T, T> likeness) {
        int[][] best = best(left, right, likeness);
        List<Line<T>> lines = new ArrayList<>();
        int i = 0;
        int j = 0;
        while (i < left.size() || j < right.size()) {
            if (i < left.size() && j < right.size() && together(best, i, j, likeness(left, right, i, j, likeness))) {
                lines.add(new Line<>(Optional.of(left.get(i++)), Optional.of(right.get(j++))));
            } else if (j == right.size() || i < left.size() && best[i][j] == best[i + 1][j]) {
                lines.add(new Line<>(Optional.of(left.get(i++)), Optional.empty()));
            } else {
                lines.add(new Line<>(Optional.empty(), Optional.of(right.get(j++))));
            }
        }
        return lines;
    }

    private static boolean together(int[][] best, int i, int j, int likeness) {
        return likeness > 0 && best[i][j] == best[i + 1][j + 1] + likeness;
    }

    /** The highest sum for what is left from each pair of places on. */
    private static <T> int[][] best(List<T> left, List<T> right, ToIntBiFunction<T, T> likeness) {
        int[][] best = new int[left.size() + 1][right.size() + 1];
        for (int i = left.size() - 1; i >= 0; i--) {
            for (int j = right.size() - 1; j >= 0; j--) {
                int alike = likeness(left, right, i, j, likeness);
                int together = alike > 0 ? best[i + 1][j + 1] + alike : 0;
                best[i][j] = Math.max(together, Math.max(best[i + 1][j], best[i][j + 1]));
            }
        }
        return best;
    }

    private static <T> int likeness(List<T> left, List<T> right, int i, int j, ToIntBiFunction<T, T> likeness) {
        return likeness.applyAsInt(left.get(i), right.get(j));
    }
}
