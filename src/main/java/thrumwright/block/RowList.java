package thrumwright.block;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Lists the rows of a block. */
final class RowList {
    private RowList() {}

    /** Plain picks: sides and sheds alternate. */
    static List<Row> plain(int count, Course before, Optional<Side> from, Optional<Shed> first) {
        Side side = from.orElse(before.side());
        Shed shed = first.orElseGet(before::nextShed);
        List<Row> rows = new ArrayList<>(count);
        for (int i = 1; i <= count; i++) {
            rows.add(new Row(i, Optional.of(shed), side, Optional.empty()));
            side = side.other();
            shed = shed.other();
        }
        return rows;
    }

    /** Rows without a shed: sides alternate, and stitches lean the other way in every second row if countered. */
    static List<Row> worked(int count, Course before, Use use, Optional<Lean> first, boolean countered) {
        Side side = use.from().orElse(before.side());
        Optional<Lean> lean = first;
        List<Row> rows = new ArrayList<>(count);
        for (int i = 1; i <= count; i++) {
            rows.add(new Row(i, Optional.empty(), side, lean));
            side = side.other();
            if (countered) {
                lean = lean.map(Lean::other);
            }
        }
        return rows;
    }

    /** The lean of the first row after reflection: the last row comes first, turned over. */
    static Lean mirroredFirst(Lean first, int rows, boolean countered) {
        Lean last = countered && rows % 2 == 0 ? first.other() : first;
        return last.other();
    }
}
