package thrumwright.output.page;

import java.util.ArrayList;
import java.util.List;

/** Fills pages from the top. */
public final class Pages {
    /** A page of which less is taken has hardly anything on it. */
    static final double NEARLY_EMPTY = 0.3;

    private final double left;
    private final double top;
    private final double width;
    private final double bottom;
    private final List<List<PlacedPart>> pages = new ArrayList<>();
    private double y;

    /** @param footer room for the line at the foot of every page, points, 0 or more */
    public Pages(PageSetup setup, double footer) {
        double margin = setup.marginPoints();
        this.left = margin;
        this.top = margin;
        this.width = setup.width() - 2 * margin;
        this.bottom = setup.height() - margin - footer;
        newPage();
    }

    /** Between the margins: points, more than 0. */
    public double width() {
        return width;
    }

    /** From the top margin to the footer: points, more than 0. */
    public double height() {
        return bottom - top;
    }

    /** Goes on at the top of a new page, unless this one is still empty. */
    public void newPage() {
        if (pages.isEmpty() || !pages.get(pages.size() - 1).isEmpty()) {
            pages.add(new ArrayList<>());
        }
        y = top;
    }

    /** Leaves points free, 0 or more, unless the page is still empty. */
    public void gap(double height) {
        if (y > top) {
            y += height;
        }
    }

    /** What is left of this page: points; less than 0 if a part is higher than a page. */
    public double left() {
        return bottom - y;
    }

    public void add(Part part) {
        addTogether(List.of(part));
    }

    /** How much of this page is taken, 0 to 1. */
    private double filled() {
        return (y - top) / height();
    }

    /**
     * Parts that should not be parted by a page's end; they are where even a whole page can't hold them, or where this one
     * would stay nearly empty. The first two stay together all the same.
     */
    public void addTogether(List<Part> parts) {
        double needed = height(parts);
        if (parts.size() > 2 && needed > left() && (needed > height() || filled() < NEARLY_EMPTY)) {
            addTogether(parts.subList(0, 2));
            parts.subList(2, parts.size()).forEach(this::add);
            return;
        }
        if (parts.size() == 2 && needed > height()) {
            parts.forEach(this::add);
            return;
        }
        if (needed > left()) {
            newPage();
        }
        for (Part part : parts) {
            double height = part.height(width);
            pages.get(pages.size() - 1).add(new PlacedPart(part, left, y, width, height));
            y += height;
        }
    }

    private double height(List<Part> parts) {
        return parts.stream().mapToDouble(part -> part.height(width)).sum();
    }

    public List<List<PlacedPart>> pages() {
        return pages.stream().filter(page -> !page.isEmpty()).map(List::copyOf).toList();
    }
}
