package thrumwright.output.part;

import java.awt.Graphics2D;
import java.util.List;

/** Strips of paper to cut out, one above the other. */
record StripStack(List<PaperStrip> strips) implements PaperStrip {
    private static final double BETWEEN = 4;

    @Override
    public double width() {
        return strips.stream().mapToDouble(PaperStrip::width).max().orElse(0);
    }

    @Override
    public double height(double width) {
        return strips.stream().mapToDouble(strip -> strip.height(width)).sum() + (strips.size() - 1) * BETWEEN;
    }

    @Override
    public void paint(Graphics2D g, double x, double y, double width) {
        double top = y;
        for (PaperStrip strip : strips) {
            strip.paint(g, x, top, strip.width());
            top += strip.height(width) + BETWEEN;
        }
    }
}
