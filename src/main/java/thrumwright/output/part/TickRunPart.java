package thrumwright.output.part;

import java.awt.Graphics2D;
import thrumwright.drawing.Palette;
import thrumwright.output.page.Part;

/** A box for each of many rows, in tens; of very many rows a box for each ten. */
record TickRunPart(int rows, Palette palette) implements Part {
    private static final int MOST_SINGLE = 150;
    private static final double BOX = 10;
    private static final double PITCH = 14;
    private static final double BETWEEN_TENS = 8;
    private static final double LINE = 17;

    private int boxes() {
        return rows <= MOST_SINGLE ? rows : (rows + 9) / 10;
    }

    private static int tensIn(double width) {
        return (int) Math.max(1, Math.floor((width + BETWEEN_TENS) / (10 * PITCH + BETWEEN_TENS)));
    }

    @Override
    public double height(double width) {
        int inLine = 10 * tensIn(width);
        int lines = (boxes() + inLine - 1) / inLine;
        return lines * LINE + 4;
    }

    @Override
    public void paint(Graphics2D g, double x, double y, double width) {
        int inLine = 10 * tensIn(width);
        for (int i = 0; i < boxes(); i++) {
            int line = i / inLine;
            int place = i % inLine;
            int tens = place / 10;
            TickMarks.box(g, x + 1 + place * PITCH + tens * BETWEEN_TENS, y + line * LINE + 1, BOX, palette);
        }
    }
}
