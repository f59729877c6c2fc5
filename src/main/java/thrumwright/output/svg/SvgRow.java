package thrumwright.output.svg;

import java.util.ArrayList;
import java.util.List;
import thrumwright.output.vector.Outline;

/** Outlines that follow each other across the page, in one colour. */
final class SvgRow {
    /** A row of fewer is told each time. */
    private static final int WORTH_A_NAME = 8;
    /** So many in a row at the same distance are told by doubling. */
    private static final int WORTH_DOUBLING = 4;

    private static final double NEAR = 0.0075;
    /** What lies no farther off is in the same place in another row: points. */
    private static final double ALIKE = 0.05;

    private final SvgSymbols symbols;
    private final StringBuilder out;
    private final List<Placed> row = new ArrayList<>();

    /** An outline and where it begins, points. */
    record Placed(Outline outline, double x, double y) {}

    /** What something looks like, wherever it lies; a row takes the paint that it is given. */
    private record Look(String paint, List<Outline> outlines, List<Long> places) {}

    /** So many of an outline, each as far from the last. */
    private record Run(Outline outline, int level, long stepX, long stepY) {}

    SvgRow(SvgSymbols symbols, StringBuilder out) {
        this.symbols = symbols;
        this.out = out;
    }

    /** Writes what has been painted with one paint, as SVG says it: a name for all of it, so that it may come again. */
    void write(String paint, List<Placed> painted) {
        Placed first = painted.get(0);
        Look look = look(paint, painted);
        if (symbols.knows(look)) {
            symbols.use(out, look, first.x(), first.y());
            out.append('\n');
            return;
        }
        begin(look, first, " " + paint);
        for (Placed each : painted) {
            if (!goesOn(each.x())) {
                row();
            }
            row.add(each);
        }
        row();
        out.append("</g>\n");
    }

    private void begin(Object thing, Placed first, String attributes) {
        out.append("<g id=\"").append(symbols.drawn(thing, first.x(), first.y()));
        out.append('"').append(attributes).append('>');
    }

    /** Whether another goes on in the same direction. */
    private boolean goesOn(double x) {
        int size = row.size();
        return size < 2
                || (row.get(1).x() - row.get(0).x()) * (x - row.get(size - 1).x()) >= -NEAR;
    }

    private void row() {
        if (row.size() < WORTH_A_NAME) {
            items();
        } else {
            named();
        }
        row.clear();
    }

    private void named() {
        Placed first = row.get(0);
        Look look = look("", row);
        if (symbols.knows(look)) {
            symbols.use(out, look, first.x(), first.y());
            return;
        }
        begin(look, first, "");
        items();
        out.append("</g>");
    }

    private static Look look(String paint, List<Placed> painted) {
        Placed first = painted.get(0);
        List<Long> places = new ArrayList<>();
        for (Placed each : painted) {
            places.add(Math.round((each.x() - first.x()) / ALIKE));
            places.add(Math.round((each.y() - first.y()) / ALIKE));
        }
        return new Look(paint, painted.stream().map(Placed::outline).toList(), places);
    }

    private void items() {
        for (int i = 0, next; i < row.size(); i = next) {
            next = runEnd(i);
            if (next - i < WORTH_DOUBLING) {
                next = i + 1;
                block(0, i);
            } else {
                run(i, next);
            }
        }
    }

    private int runEnd(int first) {
        int next = first + 1;
        while (next < row.size()
                && row.get(next).outline().equals(row.get(first).outline())
                && (next < first + 2 || steady(first, next))) {
            next++;
        }
        return next;
    }

    private boolean steady(int first, int next) {
        double steps = next - first;
        return near(row.get(first).x() + steps * stepX(first), row.get(next).x())
                && near(row.get(first).y() + steps * stepY(first), row.get(next).y());
    }

    private static boolean near(double a, double b) {
        return Math.abs(a - b) < NEAR;
    }

    private double stepX(int i) {
        return row.get(i + 1).x() - row.get(i).x();
    }

    private double stepY(int i) {
        return row.get(i + 1).y() - row.get(i).y();
    }

    private void run(int first, int next) {
        for (int i = first; i < next; ) {
            int level = Integer.SIZE - 1 - Integer.numberOfLeadingZeros(next - i);
            block(level, i);
            i += 1 << level;
        }
    }

    /** Two to the power of the level, from one on: half of them, and the same again. */
    private void block(int level, int first) {
        Placed placed = row.get(first);
        if (level == 0) {
            symbols.outline(out, placed.outline(), placed.x(), placed.y());
            return;
        }
        Run run = new Run(placed.outline(), level, Math.round(100 * stepX(first)), Math.round(100 * stepY(first)));
        if (symbols.knows(run)) {
            symbols.use(out, run, placed.x(), placed.y());
            return;
        }
        begin(run, placed, "");
        block(level - 1, first);
        block(level - 1, first + (1 << level - 1));
        out.append("</g>");
    }
}
