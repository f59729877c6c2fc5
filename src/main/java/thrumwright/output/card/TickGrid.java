package thrumwright.output.card;

import java.awt.Graphics2D;
import thrumwright.drawing.Palette;
import thrumwright.output.part.TickMarks;

/**
 * Boxes to tick in fives; of many rows one box for two, ten or more.
 *
 * @param rows to tick, 1 or more
 * @param each how many rows a box stands for
 * @param columns boxes in a line
 * @param box side of a box, points
 */
record TickGrid(int rows, int each, int columns, double box) {
    /** Smaller boxes can't be ticked with ease, points. */
    static final double LEAST = 9;

    private static final double APART = 0.22;
    private static final double BETWEEN_FIVES = 0.5;
    private static final int[] STEPS = {1, 2, 10, 20, 100, 200, 1000};

    /** As many boxes as room of so many points allows: one for each row if there are so many, else one for several. */
    static TickGrid within(int rows, double width, double height, double box) {
        int most = columns(width, box);
        int columns = rows > most && most > 5 ? most / 5 * 5 : most;
        int lines = (int) Math.max(1, Math.floor((height + APART * box) / (box * (1 + APART))));
        for (int each : STEPS) {
            if (boxes(rows, each) <= columns * lines) {
                return new TickGrid(rows, each, columns, box);
            }
        }
        return new TickGrid(rows, STEPS[STEPS.length - 1], columns, box);
    }

    private static int columns(double width, double box) {
        int columns = 1;
        while (width(columns + 1, box) <= width) {
            columns++;
        }
        return columns;
    }

    private static int boxes(int rows, int each) {
        return (rows + each - 1) / each;
    }

    int boxes() {
        return boxes(rows, each);
    }

    private static double left(int column, double box) {
        int fives = column / 5;
        return column * box * (1 + APART) + fives * box * BETWEEN_FIVES;
    }

    private static double width(int columns, double box) {
        return left(columns - 1, box) + box;
    }

    double width() {
        return width(Math.min(columns, boxes()), box);
    }

    int lines() {
        return (boxes() + columns - 1) / columns;
    }

    double height() {
        return lines() * box * (1 + APART) - APART * box;
    }

    /** Whether it lies within so many points. */
    boolean fits(double width, double height) {
        return width() <= width && height() <= height;
    }

    /** @param done how many rows are, 0 or more; a box is ticked once all that it stands for are */
    void paint(Graphics2D g, double x, double y, int done, Palette palette) {
        for (int i = 0; i < boxes(); i++) {
            int line = i / columns;
            double top = y + line * box * (1 + APART);
            TickMarks.box(g, x + left(i % columns, box), top, box, palette);
            if (done >= Math.min(rows, (i + 1) * each)) {
                TickMarks.tick(g, x + left(i % columns, box), top, box, palette);
            }
        }
    }
}
