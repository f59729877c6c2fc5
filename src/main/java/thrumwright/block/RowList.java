package thrumwright.block;

import java.util.AbstractList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.RandomAccess;

/**
 * The rows of a block, each the other way than the one before. They are made when they are asked for, so that thousands take no
 * room.
 */
final class RowList extends AbstractList<Row> implements RandomAccess {
    private final int count;
    private final Row first;
    private final Row second;

    private RowList(int count, Row first, Row second) {
        this.count = count;
        this.first = first;
        this.second = second;
    }

    @Override
    public int size() {
        return count;
    }

    @Override
    public Row get(int index) {
        Objects.checkIndex(index, count);
        Row alike = index % 2 == 0 ? first : second;
        return new Row(index + 1, alike.shed(), alike.from(), alike.lean());
    }

    /** Plain picks: sides and sheds alternate. */
    static List<Row> plain(int count, Course before, Optional<Side> from, Optional<Shed> first) {
        Side side = from.orElse(before.side());
        Shed shed = first.orElseGet(before::nextShed);
        return new RowList(
                count,
                new Row(1, Optional.of(shed), side, Optional.empty()),
                new Row(2, Optional.of(shed.other()), side.other(), Optional.empty()));
    }

    /** Rows without a shed: sides alternate, and stitches lean the other way in every second row if countered. */
    static List<Row> worked(int count, Course before, Use use, Optional<Lean> first, boolean countered) {
        Side side = use.from().orElse(before.side());
        return new RowList(
                count,
                new Row(1, Optional.empty(), side, first),
                new Row(2, Optional.empty(), side.other(), countered ? first.map(Lean::other) : first));
    }

    /** The lean of the first row after reflection: the last row comes first, turned over. */
    static Lean mirroredFirst(Lean first, int rows, boolean countered) {
        Lean last = countered && rows % 2 == 0 ? first.other() : first;
        return last.other();
    }
}
