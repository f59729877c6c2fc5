package thrumwright.output.part;

import java.awt.Graphics2D;
import thrumwright.output.page.Part;

/** Empty room, in points. */
public record SpacePart(double height) implements Part {
    @Override
    public double height(double width) {
        return height;
    }

    @Override
    public void paint(Graphics2D g, double x, double y, double width) {
        // room is all that it gives
    }
}
