package thrumwright.output.page;

import java.awt.Color;
import java.awt.Graphics2D;
import java.util.List;
import java.util.Optional;
import thrumwright.drawing.Palette;

/**
 * A step sheet laid out on pages. Made once; every page can be painted any number of times, on anything that takes
 * points.
 */
public record SheetPages(
        PageSetup setup,
        String title,
        Type type,
        Palette palette,
        List<List<PlacedPart>> pages,
        Optional<Imprint> imprint) {
    /** Pages without a date. */
    public SheetPages(PageSetup setup, String title, Type type, Palette palette, List<List<PlacedPart>> pages) {
        this(setup, title, type, palette, pages, Optional.empty());
    }

    /**
     * Several laid-out stretches as one, with pages counted through.
     *
     * @param some at least one, all set up alike
     */
    public static SheetPages together(String title, List<SheetPages> some) {
        SheetPages first = some.get(0);
        List<List<PlacedPart>> all =
                some.stream().flatMap(each -> each.pages().stream()).toList();
        return new SheetPages(first.setup(), title, first.type(), first.palette(), all);
    }

    /** The same pages under another title. */
    public SheetPages titled(String other) {
        return new SheetPages(setup, other, type, palette, pages, imprint);
    }

    /** The same pages, with this at their feet. */
    public SheetPages printed(Imprint when) {
        return new SheetPages(setup, title, type, palette, pages, Optional.of(when));
    }

    public int count() {
        return pages.size();
    }

    /** How many pages have hardly anything on them. */
    public int nearlyEmpty() {
        return (int)
                pages.stream().filter(page -> filled(page) < Pages.NEARLY_EMPTY).count();
    }

    /** How many pages but the last are at most half full. */
    public int halfEmpty() {
        return (int) pages.subList(0, pages.size() - 1).stream()
                .filter(page -> filled(page) <= 0.5)
                .count();
    }

    /** Whether all that stays empty is as much as a page. */
    public boolean aPageToSpare() {
        return pages.stream().mapToDouble(page -> 1 - filled(page)).sum() >= 1;
    }

    /** Down to where its last part ends, as a share of what lies between the margins. */
    private double filled(List<PlacedPart> page) {
        PlacedPart last = page.get(page.size() - 1);
        return (last.y() + last.height() - setup.marginPoints()) / (setup.height() - 2 * setup.marginPoints());
    }

    /** The parts of a page, for checks of the layout. */
    public List<PlacedPart> parts(int page) {
        return pages.get(page);
    }

    /**
     * Paints one page.
     *
     * @param g in points, with the origin at the page's upper left corner
     * @param page from 0
     */
    public void paint(Graphics2D g, int page) {
        for (PlacedPart placed : pages.get(page)) {
            placed.part().paint(g, placed.x(), placed.y(), placed.width());
        }
        Structured.as(g, Role.ORNAMENT, () -> footer(g, page));
    }

    /**
     * What a page says, with words for its drawings, for those who hear it; a line for every text.
     *
     * @param page from 0
     */
    public String words(int page) {
        HeardPage heard = new HeardPage();
        paint(heard, page);
        return heard.words();
    }

    private void footer(Graphics2D g, int page) {
        String number = (page + 1) + " / " + pages.size();
        Color faint = palette.faint();
        double margin = setup.marginPoints();
        double width = setup.width() - 2 * margin;
        double numberWidth = TextPart.width(number, type.small());
        double y = setup.height() - margin - type.small().getSize2D();
        String says = imprint.map(Imprint::says).orElse("");
        double saysWidth = TextPart.width(says, type.small());
        double edge = setup.width() - margin - numberWidth;
        String shown = TextPart.shortened(title, type.small(), width - numberWidth - saysWidth - 40);
        new TextPart(shown, type.small(), faint).paint(g, margin, y, width);
        if (!says.isEmpty()) {
            new TextPart(says, type.small(), faint).paint(g, edge - 20 - saysWidth, y, saysWidth + 1);
        }
        new TextPart(number, type.small(), faint).paint(g, edge, y, numberWidth + 1);
    }
}
