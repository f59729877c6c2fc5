package thrumwright.sheet;

import java.util.ArrayList;
import java.util.List;
import thrumwright.piece.Piece;
import thrumwright.piece.Warp;

/**
 * How many warp ends lie between marks on the bar, from the left.
 *
 * @param apart from mark to mark, mm, more than 0
 * @param ends between each mark and the next; the last may be fewer
 */
public record WarpMarks(double apart, List<Integer> ends) {
    private static final double METRIC = 20;

    public WarpMarks {
        ends = List.copyOf(ends);
    }

    /** Every inch, or every two centimetres. */
    public static WarpMarks of(Piece piece) {
        double apart = piece.habits().units().length(METRIC, 1);
        return new WarpMarks(apart, between(piece.warp(), apart));
    }

    private static List<Integer> between(Warp warp, double apart) {
        List<Integer> ends = new ArrayList<>();
        int counted = 0;
        for (int mark = 1; counted < warp.ends(); mark++) {
            int upTo = (int)
                    Math.min(warp.ends(), Math.round(mark * apart * warp.sett().perMillimetre()));
            ends.add(upTo - counted);
            counted = upTo;
        }
        return ends;
    }

    /** A run of marks that have as many ends each. */
    public record Run(int marks, int ends) {}

    /** Marks that have as many ends as the one before are told together. */
    public List<Run> runs() {
        List<Run> runs = new ArrayList<>();
        for (int count : ends) {
            Run last = runs.isEmpty() ? new Run(0, -1) : runs.get(runs.size() - 1);
            if (last.ends() == count) {
                runs.set(runs.size() - 1, new Run(last.marks() + 1, count));
            } else {
                runs.add(new Run(1, count));
            }
        }
        return runs;
    }
}
