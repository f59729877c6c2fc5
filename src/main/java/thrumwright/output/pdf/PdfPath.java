package thrumwright.output.pdf;

import java.awt.geom.PathIterator;
import java.util.Arrays;

/**
 * A path in the fineness of the file. Points that fall together with the one before are left out; curves are cubic, for
 * PDF has no others.
 */
final class PdfPath {
    private static final int TO = 2;
    private static final int CURVE = 6;

    private final double[] point = new double[CURVE];
    private byte[] kinds = new byte[1 << 10];
    private double[] places = new double[1 << 12];
    /** Where each figure begins among the segments, and among the coordinates. */
    private int[] figures = new int[1 << 7];

    private int[] figurePlaces = new int[1 << 7];
    private int size;
    private int used;
    private int figureCount;
    private boolean evenOdd;

    void read(PathIterator path) {
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
                add(kind, TO);
            }
            case PathIterator.SEG_LINETO -> {
                if (!fallsTogether()) {
                    add(kind, TO);
                }
            }
            case PathIterator.SEG_QUADTO -> {
                cubic();
                add(PathIterator.SEG_CUBICTO, CURVE);
            }
            case PathIterator.SEG_CUBICTO -> add(kind, CURVE);
            default -> add(kind, 0);
        }
    }

    private void figure() {
        if (figureCount == figures.length) {
            figures = Arrays.copyOf(figures, 2 * figureCount);
            figurePlaces = Arrays.copyOf(figurePlaces, 2 * figureCount);
        }
        figures[figureCount] = size;
        figurePlaces[figureCount++] = used;
    }

    private void add(int kind, int count) {
        if (size == kinds.length) {
            kinds = Arrays.copyOf(kinds, 2 * size);
        }
        if (used + count > places.length) {
            places = Arrays.copyOf(places, 2 * places.length);
        }
        kinds[size++] = (byte) kind;
        System.arraycopy(point, 0, places, used, count);
        used += count;
    }

    /** After a figure is closed the next point is compared with its last, which only keeps a point more. */
    private boolean fallsTogether() {
        return PdfBytes.hundredths(point[0] - places[used - 2]) == 0
                && PdfBytes.hundredths(point[1] - places[used - 1]) == 0;
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

    boolean evenOdd() {
        return evenOdd;
    }

    /** How many figures, each drawn without lifting the pen, there are. */
    int figures() {
        return figureCount;
    }

    /** Where a figure begins. */
    double x(int figure) {
        return places[figurePlaces[figure]];
    }

    double y(int figure) {
        return places[figurePlaces[figure] + 1];
    }

    /**
     * The figure after the last that goes on in the same direction across the page, like the floats of one row.
     *
     * @param first of the row
     */
    int rowEnd(int first) {
        int way = 0;
        int next = first + 1;
        for (; next < figureCount; next++) {
            int step = Integer.signum(PdfBytes.hundredths(x(next) - x(next - 1)));
            if (way != 0 && step == -way) {
                return next;
            }
            way = way == 0 ? step : way;
        }
        return next;
    }

    private int end(int figure) {
        return figure == figureCount ? size : figures[figure];
    }

    private int placesEnd(int figure) {
        return figure == figureCount ? used : figurePlaces[figure];
    }

    /** All about some figures but where they lie, and in front of it room for a number more. */
    int[] shape(int first, int next) {
        int from = figurePlaces[first];
        int count = placesEnd(next) - from;
        int segments = end(next) - figures[first];
        int[] shape = new int[1 + count + (segments + 7) / 8];
        for (int i = 0; i < count; i++) {
            shape[1 + i] = PdfBytes.hundredths(places[from + i] - (i % 2 == 0 ? x(first) : y(first)));
        }
        for (int i = 0; i < segments; i++) {
            int at = 1 + count + i / 8;
            shape[at] = shape[at] << 4 | kinds[figures[first] + i];
        }
        return shape;
    }

    /** The box round some figures, from where they begin: least x and y, greatest x and y, widened on all sides. */
    double[] box(int first, int next, double spare) {
        double[] box = {0, 0, 0, 0};
        for (int i = figurePlaces[first]; i < placesEnd(next); i += 2) {
            double x = places[i] - x(first);
            double y = places[i + 1] - y(first);
            box[0] = Math.min(box[0], x);
            box[1] = Math.min(box[1], y);
            box[2] = Math.max(box[2], x);
            box[3] = Math.max(box[3], y);
        }
        return new double[] {box[0] - spare, box[1] - spare, box[2] + spare, box[3] + spare};
    }

    /**
     * Writes some figures.
     *
     * @param left what is taken from all x
     * @param low what is taken from all y
     */
    void write(PdfBytes out, int first, int next, double left, double low) {
        int place = figurePlaces[first];
        for (int i = figures[first]; i < end(next); i++) {
            int count = switch (kinds[i]) {
                case PathIterator.SEG_CUBICTO -> CURVE;
                case PathIterator.SEG_CLOSE -> 0;
                default -> TO;
            };
            for (int k = 0; k < count; k += 2) {
                out.number(places[place + k] - left).number(places[place + k + 1] - low);
            }
            place += count;
            out.add(
                    switch (kinds[i]) {
                        case PathIterator.SEG_MOVETO -> 'm';
                        case PathIterator.SEG_LINETO -> 'l';
                        case PathIterator.SEG_CUBICTO -> 'c';
                        default -> 'h';
                    });
            out.add('\n');
        }
    }
}
