package thrumwright.editor.sheet;

import java.awt.Rectangle;
import thrumwright.output.page.SheetPages;

/**
 * What a window shows of pages.
 *
 * @param window what of the column is seen, pixels
 * @param density dots of the screen in a pixel, more than 0
 */
record PagesSeen(SheetPages pages, PageColumn column, Rectangle window, double density) {
    /** A page with more pixels is painted only as far as it is seen. */
    private static final long WHOLE_PIXELS = 5_000_000;

    boolean has(int page) {
        return page >= 0 && page < pages.count();
    }

    /** The picture of a page that shows all that is seen of it. */
    PageImages.Wanted wanted(int page) {
        Rectangle place = column.page(page);
        Rectangle seen = place.intersection(window);
        seen.translate(-place.x, -place.y);
        Rectangle whole = dots(new Rectangle(place.getSize()));
        return wanted(page, mayBeWhole(page) ? whole : dots(seen).intersection(whole));
    }

    /** The picture of all of a page. */
    PageImages.Wanted whole(int page) {
        return wanted(page, dots(new Rectangle(column.page(page).getSize())));
    }

    private PageImages.Wanted wanted(int page, Rectangle part) {
        return new PageImages.Wanted(pages, page, scale(page), part);
    }

    /** Dots in a point of paper, more than 0. */
    double scale(int page) {
        return dots(new Rectangle(column.page(page).getSize())).width / column.width();
    }

    boolean mayBeWhole(int page) {
        Rectangle whole = dots(new Rectangle(column.page(page).getSize()));
        return (long) whole.width * whole.height <= WHOLE_PIXELS;
    }

    private Rectangle dots(Rectangle pixels) {
        int left = (int) Math.floor(pixels.x * density);
        int top = (int) Math.floor(pixels.y * density);
        int right = (int) Math.ceil((pixels.x + pixels.width) * density - 1e-6);
        int bottom = (int) Math.ceil((pixels.y + pixels.height) * density - 1e-6);
        return new Rectangle(left, top, right - left, bottom - top);
    }
}
