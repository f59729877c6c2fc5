package thrumwright.output.part;

import java.awt.Graphics2D;
import java.util.ArrayList;
import java.util.List;
import thrumwright.output.page.Part;

/** Strips of paper to cut out, side by side. */
record StripRow(List<PaperStrip> strips) implements Part {
    private static final double BESIDE = 4;
    private static final double BELOW = 6;

    /** As few rows as hold all strips, none wider than so many points if strips allow. */
    static List<Part> rows(List<PaperStrip> strips, double width) {
        List<Part> rows = new ArrayList<>();
        List<PaperStrip> row = new ArrayList<>();
        double taken = 0;
        for (PaperStrip strip : strips) {
            if (!row.isEmpty() && taken + strip.width() > width + 0.01) {
                rows.add(new StripRow(List.copyOf(row)));
                row.clear();
                taken = 0;
            }
            row.add(strip);
            taken += strip.width() + BESIDE;
        }
        if (!row.isEmpty()) {
            rows.add(new StripRow(List.copyOf(row)));
        }
        return rows;
    }

    @Override
    public double height(double width) {
        return BELOW
                + strips.stream()
                        .mapToDouble(strip -> strip.height(width))
                        .max()
                        .orElse(0);
    }

    @Override
    public void paint(Graphics2D g, double x, double y, double width) {
        double left = x;
        for (PaperStrip strip : strips) {
            strip.paint(g, left, y, strip.width());
            left += strip.width() + BESIDE;
        }
    }
}
