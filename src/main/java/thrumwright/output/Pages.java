package thrumwright.output;

import java.util.ArrayList;
import java.util.List;

/** Fills pages from the top. */
final class Pages {
    /** Where a part lies on its page, in points. */
    record Placed(Part part, double x, double y, double width, double height) {}

    private final double left;
    private final double top;
    private final double width;
    private final double bottom;
    private final List<List<Placed>> pages = new ArrayList<>();
    private double y;

    Pages(PageSetup setup, double footer) {
        double margin = setup.marginPoints();
        this.left = margin;
        this.top = margin;
        this.width = setup.width() - 2 * margin;
        this.bottom = setup.height() - margin - footer;
        newPage();
    }

    double width() {
        return width;
    }

    /** From the top margin to the footer. */
    double height() {
        return bottom - top;
    }

    /** Goes on at the top of a new page, unless this one is still empty. */
    void newPage() {
        if (pages.isEmpty() || !pages.get(pages.size() - 1).isEmpty()) {
            pages.add(new ArrayList<>());
        }
        y = top;
    }

    void gap(double height) {
        if (y > top) {
            y += height;
        }
    }

    /** What is left of this page. */
    double left() {
        return bottom - y;
    }

    void add(Part part) {
        addTogether(List.of(part));
    }

    /** Parts that should not be parted by a page's end; they are where even a whole page can't hold them. */
    void addTogether(List<Part> parts) {
        double needed = parts.stream().mapToDouble(part -> part.height(width)).sum();
        if (needed > height() && parts.size() > 1) {
            parts.forEach(this::add);
            return;
        }
        if (needed > left()) {
            newPage();
        }
        for (Part part : parts) {
            double height = part.height(width);
            pages.get(pages.size() - 1).add(new Placed(part, left, y, width, height));
            y += height;
        }
    }

    List<List<Placed>> pages() {
        return pages.stream().filter(page -> !page.isEmpty()).map(List::copyOf).toList();
    }
}
