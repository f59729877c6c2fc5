package thrumwright.output.vector;

import java.awt.geom.PathIterator;
import java.util.Arrays;

/**
 * A path in the fineness of files: its figures, each drawn without lifting the pen. Points that fall together with the one
 * before are left out; curves stay curves, and all are cubic.
 */
public final class PathFigures {
    static final byte MOVE = PathIterator.SEG_MOVETO;
    static final byte LINE = PathIterator.SEG_LINETO;
    static final byte CURVE = PathIterator.SEG_CUBICTO;
    static final byte CLOSE = PathIterator.SEG_CLOSE;
    /** A hundredth of a point is 1/7200 inch, finer than printers print. */
    static final int HUNDREDTHS = 100;
    /** What lies half-way goes up, wherever on the page it was worked out. */
    private static final double HALF = 0.5 + 1e-8;

    private static final int MOST = 6;

    private final double[] point = new double[MOST];
    private byte[] kinds = new byte[1 << 10];
    private double[] places = new double[1 << 12];
    /** Where each figure begins among the segments, and among the coordinates. */
    private int[] figures = new int[1 << 7];

    private int[] figurePlaces = new int[1 << 7];
    private int size;
    private int used;
    private int figureCount;
    private boolean evenOdd;

    /**
     * How many hundredths of a point a length is.
     *
     * @param length points, either sign
     */
    public static int hundredths(double length) {
        return (int) Math.floor(length * HUNDREDTHS + HALF);
    }

    /** How many coordinates a segment has. */
    static int count(byte kind) {
        return switch (kind) {
            case CURVE -> MOST;
            case CLOSE -> 0;
            default -> 2;
        };
    }

    /** Takes a path instead of the one before. */
    public void read(PathIterator path) {
        size = 0;
        used = 0;
        figureCount = 0;
        evenOdd = path.getWindingRule() == PathIterator.WIND_EVEN_ODD;
        for (; !path.isDone(); path.next()) {
            segment(path.currentSegment(point));
        }
    }

    private void segment(int kind) {
        switch (kind) {
            case PathIterator.SEG_MOVETO -> {
                figure();
                add(MOVE);
            }
            case PathIterator.SEG_LINETO -> {
                if (!together(used - 2)) {
                    add(LINE);
                }
            }
            case PathIterator.SEG_QUADTO -> {
                cubic();
                add(CURVE);
            }
            case PathIterator.SEG_CUBICTO -> add(CURVE);
            default -> close();
        }
    }

    /** A line back to where the figure began is drawn by closing it. */
    private void close() {
        int begin = figurePlaces[figureCount - 1];
        System.arraycopy(places, begin, point, 0, 2);
        if (kinds[size - 1] == LINE && together(used - 2)) {
            size--;
            used -= 2;
        }
        add(CLOSE);
    }

    private void figure() {
        if (figureCount == figures.length) {
            figures = Arrays.copyOf(figures, 2 * figureCount);
            figurePlaces = Arrays.copyOf(figurePlaces, 2 * figureCount);
        }
        figures[figureCount] = size;
        figurePlaces[figureCount++] = used;
    }

    private void add(byte kind) {
        int count = count(kind);
        if (size == kinds.length) {
            kinds = Arrays.copyOf(kinds, 2 * size);
        }
        if (used + count > places.length) {
            places = Arrays.copyOf(places, 2 * places.length);
        }
        kinds[size++] = kind;
        System.arraycopy(point, 0, places, used, count);
        used += count;
    }

    /** After a figure is closed the next point is compared with its last, which only keeps a point more. */
    private boolean together(int at) {
        return hundredths(point[0] - places[at]) == 0 && hundredths(point[1] - places[at + 1]) == 0;
    }

    /** The same curve as a cubic one. */
    private void cubic() {
        double overX = point[0];
        double overY = point[1];
        point[4] = point[2];
        point[5] = point[3];
        point[0] = places[used - 2] + (overX - places[used - 2]) * 2 / 3;
        point[1] = places[used - 1] + (overY - places[used - 1]) * 2 / 3;
        point[2] = point[4] + (overX - point[4]) * 2 / 3;
        point[3] = point[5] + (overY - point[5]) * 2 / 3;
    }

    public boolean evenOdd() {
        return evenOdd;
    }

    /** How many figures there are. */
    public int figures() {
        return figureCount;
    }

    /** Where a figure begins: points, either sign. */
    public double x(int figure) {
        return places[figurePlaces[figure]];
    }

    /** Where a figure begins: points, either sign. */
    public double y(int figure) {
        return places[figurePlaces[figure] + 1];
    }

    /** Whether figures filled one by one look as if they were filled together: none is a hole in another. */
    public boolean separable() {
        if (figureCount < 2) {
            return true;
        }
        double sign = Math.signum(turning(0));
        for (int i = 1; i < figureCount; i++) {
            if (Math.signum(turning(i)) * sign < 0) {
                return false;
            }
        }
        return !evenOdd;
    }

    /** Twice the area within the corners of a figure, below 0 if it is drawn the other way round. */
    private double turning(int figure) {
        int end = placesEnd(figure + 1);
        double sum = 0;
        double x = x(figure);
        double y = y(figure);
        for (int i = figurePlaces[figure] + 2; i + 3 < end; i += 2) {
            sum += (places[i] - x) * (places[i + 3] - y) - (places[i + 2] - x) * (places[i + 1] - y);
        }
        return sum;
    }

    /**
     * The figure after the last that goes on in the same direction across the page, like the floats of one row.
     *
     * @param first of the row
     */
    public int rowEnd(int first) {
        int way = 0;
        int next = first + 1;
        for (; next < figureCount; next++) {
            int step = Integer.signum(hundredths(x(next) - x(next - 1)));
            if (way != 0 && step == -way) {
                return next;
            }
            way = way == 0 ? step : way;
        }
        return next;
    }

    private int placesEnd(int figure) {
        return figure == figureCount ? used : figurePlaces[figure];
    }

    byte[] kinds(int first, int next) {
        return Arrays.copyOfRange(kinds, figures[first], next == figureCount ? size : figures[next]);
    }

    /** All places of some figures, from where the first begins: points. */
    double[] fromStart(int first, int next) {
        double[] from = Arrays.copyOfRange(places, figurePlaces[first], placesEnd(next));
        double x = from[0];
        double y = from[1];
        for (int i = 0; i < from.length; i += 2) {
            from[i] -= x;
            from[i + 1] -= y;
        }
        return from;
    }

    /**
     * The box round some figures, from where they begin: least x and y, greatest x and y.
     *
     * @param spare how much wider on all sides: points, 0 or more
     */
    public double[] box(int first, int next, double spare) {
        double[] box = {0, 0, 0, 0};
        double[] from = fromStart(first, next);
        for (int i = 0; i < from.length; i += 2) {
            box[0] = Math.min(box[0], from[i]);
            box[1] = Math.min(box[1], from[i + 1]);
            box[2] = Math.max(box[2], from[i]);
            box[3] = Math.max(box[3], from[i + 1]);
        }
        return new double[] {box[0] - spare, box[1] - spare, box[2] + spare, box[3] + spare};
    }
}
