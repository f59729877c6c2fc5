package thrumwright.output.part;

import java.awt.Graphics2D;
import thrumwright.drawing.Palette;
import thrumwright.output.page.Part;

/** A part with a box to tick before it. */
public record TickedPart(Part part, Palette palette) implements Part {
    private static final double BOX = 12;
    private static final double ROOM = 20;

    @Override
    public double height(double width) {
        return part.height(width - ROOM);
    }

    @Override
    public void paint(Graphics2D g, double x, double y, double width) {
        TickMarks.box(g, x + 1, y + 2, BOX, palette);
        part.paint(g, x + ROOM, y, width - ROOM);
    }
}
