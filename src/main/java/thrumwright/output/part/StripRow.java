package thrumwright.output.part;

import java.awt.Graphics2D;
import java.util.ArrayList;
import java.util.List;
import thrumwright.output.page.Part;

/** Strips of paper to cut out, side by side. */
record StripRow(List<PaperStrip> strips) implements Part {
    private static final double BESIDE = 4;
    private static final double BELOW = 6;

    static StripRow of(PaperStrip strip) {
        return new StripRow(List.of(strip));
    }

    /** As few rows as hold all strips, none wider than so many points if strips allow. */
    static List<Part> rows(List<PaperStrip> strips, double width) {
        List<Part> rows = new ArrayList<>();
        int from = 0;
        while (from < strips.size()) {
            int to = from + 1;
            while (to < strips.size() && across(strips.subList(from, to + 1)) <= width + 0.01) {
                to++;
            }
            rows.add(new StripRow(List.copyOf(strips.subList(from, to))));
            from = to;
        }
        return rows;
    }

    private static double across(List<PaperStrip> strips) {
        return strips.stream().mapToDouble(strip -> strip.width() + BESIDE).sum() - BESIDE;
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
