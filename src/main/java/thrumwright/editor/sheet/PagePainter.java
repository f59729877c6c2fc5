package thrumwright.editor.sheet;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.util.ArrayList;
import java.util.List;
import javax.swing.UIManager;

/**
 * Paints what is seen of pages, from pictures that are made beside the event thread.
 *
 * @param chosen the page that is looked at, from 0
 * @param focused whether keys go to the pages
 */
record PagePainter(PageImages images, PagesSeen seen, int chosen, boolean focused) {
    void paint(Graphics2D g) {
        Rectangle window = seen.window();
        int first = seen.column().pageAt(window.y);
        int last = seen.column().pageAt(window.y + (double) window.height);
        List<PageImages.Wanted> wanted = new ArrayList<>();
        for (int page = first; page <= last; page++) {
            wanted.add(page == chosen ? 0 : wanted.size(), seen.wanted(page));
            paintPage((Graphics2D) g.create(), page);
        }
        beside(wanted, first - 1);
        beside(wanted, last + 1);
        images.want(wanted);
    }

    /** Wants a page that is likely to be looked at next. */
    private void beside(List<PageImages.Wanted> wanted, int page) {
        if (seen.has(page) && seen.mayBeWhole(page)) {
            wanted.add(seen.whole(page));
        }
    }

    private void paintPage(Graphics2D g, int page) {
        Rectangle place = seen.column().page(page);
        g.setColor(Color.WHITE);
        g.fill(place);
        images.of(page).ifPresent(there -> paintImage((Graphics2D) g.create(), place, there));
        boolean marked = page == chosen && focused;
        g.setColor(UIManager.getColor(marked ? "Component.focusColor" : "Component.borderColor"));
        g.setStroke(new BasicStroke(marked ? 2 : 1));
        g.drawRect(place.x - 1, place.y - 1, place.width + 1, place.height + 1);
        g.dispose();
    }

    /** Dot for dot where the picture is as large as it is wanted; else as near to that as it goes. */
    private void paintImage(Graphics2D g, Rectangle place, PageImages.Painted there) {
        g.clip(place);
        AffineTransform device = g.getTransform();
        double density = device.getScaleX();
        PagesSeen here = new PagesSeen(seen.pages(), seen.column(), seen.window(), density);
        double scale = here.scale(there.of().page()) / there.of().scale();
        double x = Math.round(device.getTranslateX() + place.x * density);
        double y = Math.round(device.getTranslateY() + place.y * density);
        AffineTransform dots = new AffineTransform(scale, 0, 0, scale, x, y);
        dots.translate(there.of().part().x, there.of().part().y);
        g.setTransform(new AffineTransform());
        if (Math.abs(scale - 1) > 1e-9) {
            g.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
        }
        g.drawImage(there.image(), dots, null);
        g.dispose();
    }
}
