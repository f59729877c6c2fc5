package thrumwright.output;

import java.awt.Graphics2D;

/** Empty room, in points. */
record SpacePart(double height) implements Part {
    @Override
    public double height(double width) {
        return height;
    }

    @Override
    public void paint(Graphics2D g, double x, double y, double width) {
        // room is all that it gives
    }
}
