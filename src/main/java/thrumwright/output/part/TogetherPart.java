package thrumwright.output.part;

import java.awt.Graphics2D;
import java.util.List;
import thrumwright.output.page.Part;

/** Several parts, one below the other, as one. */
public record TogetherPart(List<Part> parts) implements Part {
    @Override
    public double height(double width) {
        return parts.stream().mapToDouble(part -> part.height(width)).sum();
    }

    @Override
    public void paint(Graphics2D g, double x, double y, double width) {
        double at = y;
        for (Part part : parts) {
            part.paint(g, x, at, width);
            at += part.height(width);
        }
    }
}
