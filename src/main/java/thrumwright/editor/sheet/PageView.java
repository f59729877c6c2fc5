package thrumwright.editor.sheet;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.event.FocusEvent;
import java.awt.event.FocusListener;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.event.MouseWheelEvent;
import java.awt.geom.AffineTransform;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JScrollPane;
import javax.swing.JViewport;
import javax.swing.KeyStroke;
import javax.swing.Scrollable;
import javax.swing.SwingConstants;
import javax.swing.SwingUtilities;
import javax.swing.UIManager;
import thrumwright.editor.text.Texts;
import thrumwright.output.page.SheetPages;

/** The pages of a sheet one below the other, as they come out of a printer. */
public final class PageView extends JComponent implements Scrollable {
    private static final long serialVersionUID = 1L;
    /** A page with more pixels is painted only as far as it is seen. */
    private static final long WHOLE_PIXELS = 5_000_000;

    private static final int UNIT = 40;

    private final transient Texts texts;
    private final transient PageImages images = new PageImages(this::repaintPage);
    private final transient JScrollPane scroll = new JScrollPane(this);
    private final transient List<Runnable> listeners = new ArrayList<>();
    private transient SheetPages pages;
    private transient PageColumn column = new PageColumn(0, 1, 1, 1, 1);
    private transient PageZoom zoom = PageZoom.fitting(PageZoom.Kind.WHOLE);
    private int current = -1;

    public PageView(Texts texts) {
        this.texts = texts;
        setName("pages");
        setFocusable(true);
        setOpaque(true);
        scroll.setName("pagesScroll");
        scroll.setBorder(BorderFactory.createEmptyBorder());
        scroll.setVerticalScrollBarPolicy(JScrollPane.VERTICAL_SCROLLBAR_ALWAYS);
        scroll.getViewport().setScrollMode(JViewport.SIMPLE_SCROLL_MODE);
        scroll.getViewport().addChangeListener(event -> moved());
        scroll.addMouseWheelListener(this::wheel);
        // these go from page to page
        for (String key : List.of("ctrl PAGE_UP", "ctrl PAGE_DOWN", "ctrl HOME", "ctrl END")) {
            scroll.getInputMap(WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(KeyStroke.getKeyStroke(key), "none");
        }
        addFocusListener(new FocusListener() {
            @Override
            public void focusGained(FocusEvent event) {
                repaint();
            }

            @Override
            public void focusLost(FocusEvent event) {
                repaint();
            }
        });
        Hand hand = new Hand();
        addMouseListener(hand);
        addMouseMotionListener(hand);
    }

    /** The view with its scroll bars. */
    public JComponent component() {
        return scroll;
    }

    /** Shows other pages, at the same place where there is one. */
    public void show(SheetPages other) {
        pages = other;
        place(topInPages());
        tell();
    }

    public int count() {
        return pages == null ? 0 : pages.count();
    }

    /** The page that is looked at, from 0; −1 while there is none. */
    public int current() {
        return current;
    }

    /** Whether the page that is looked at is painted as it is now, all that is seen of it. */
    public boolean painted() {
        return pages != null
                && current >= 0
                && images.of(current)
                        .filter(there -> there.of().covers(wanted(current, seen(current), density())))
                        .isPresent();
    }

    /** Who is told whenever another page is looked at, or there are other pages. */
    public void listen(Runnable listener) {
        listeners.add(listener);
    }

    private void tell() {
        listeners.forEach(Runnable::run);
    }

    public PageZoom zoom() {
        return zoom;
    }

    /** Pixels in a point. */
    public double scale() {
        return column.scale();
    }

    /**
     * Shows pages larger or smaller. What is in the middle of the window stays there; pages that are to fit its width keep
     * what is at its top.
     */
    public void setZoom(PageZoom other) {
        Dimension window = scroll.getViewport().getExtentSize();
        int fixed = other.kind() == PageZoom.Kind.WIDTH ? 0 : window.height / 2;
        zoomAt(other, new Point(window.width / 2, fixed));
    }

    private void zoomAt(PageZoom other, Point fixed) {
        Point position = scroll.getViewport().getViewPosition();
        double down = column.inPages(position.y + fixed.y);
        double across = (position.x + fixed.x) / (double) Math.max(1, getWidth());
        zoom = other;
        place(topInPages());
        int y = (int) Math.round(column.height(down)) - fixed.y;
        int x = (int) Math.round(across * getWidth()) - fixed.x;
        if (other.kind() == PageZoom.Kind.WHOLE) {
            y = column.page(column.pageAt(y + fixed.y)).y - PageColumn.GAP;
        }
        moveTo(x, y);
    }

    /** To the top of a page, or of the nearest that there is. */
    public void goTo(int page) {
        if (count() > 0) {
            int there = Math.max(0, Math.min(count() - 1, page));
            moveTo(scroll.getViewport().getViewPosition().x, column.page(there).y - PageColumn.GAP);
        }
    }

    private double topInPages() {
        return column.inPages(scroll.getViewport().getViewPosition().y);
    }

    private void moveTo(int x, int y) {
        Dimension window = scroll.getViewport().getExtentSize();
        int most = Math.max(0, getHeight() - window.height);
        int widest = Math.max(0, getWidth() - window.width);
        scroll.getViewport()
                .setViewPosition(new Point(Math.max(0, Math.min(widest, x)), Math.max(0, Math.min(most, y))));
    }

    /** Works out where pages lie now, with this place at the window's top. */
    private void place(double topInPages) {
        if (pages == null) {
            return;
        }
        Dimension window = scroll.getViewport().getExtentSize();
        double width = pages.setup().width();
        double height = pages.setup().height();
        double scale = PageColumn.fitting(zoom, width, height, window);
        column = new PageColumn(pages.count(), width, height, scale, window.width);
        Dimension size = column.size();
        setPreferredSize(size);
        setSize(Math.max(size.width, window.width), Math.max(size.height, window.height));
        revalidate();
        int most = Math.max(0, getHeight() - window.height);
        int top = (int) Math.round(column.height(topInPages));
        scroll.getViewport()
                .setViewPosition(new Point(scroll.getViewport().getViewPosition().x, Math.max(0, Math.min(most, top))));
        look();
        repaint();
    }

    /** The window shows another part, or is of another size. */
    private void moved() {
        Dimension window = scroll.getViewport().getExtentSize();
        if (pages != null
                && (window.width != column.room()
                        || column.scale()
                                != PageColumn.fitting(
                                        zoom,
                                        pages.setup().width(),
                                        pages.setup().height(),
                                        window))) {
            place(topInPages());
        } else {
            look();
        }
    }

    private void look() {
        int now = count() == 0 ? -1 : column.pageAt(seenMiddle());
        if (now != current) {
            current = now;
            repaint();
            tell();
        }
    }

    private double seenMiddle() {
        Rectangle seen = scroll.getViewport().getViewRect();
        return seen.y + seen.height * 0.45;
    }

    private void wheel(MouseWheelEvent event) {
        if (event.isControlDown() || event.isMetaDown()) {
            Point fixed = SwingUtilities.convertPoint(event.getComponent(), event.getPoint(), scroll.getViewport());
            zoomAt(PageZoom.from(scale(), -event.getPreciseWheelRotation()), fixed);
            event.consume();
        }
    }

    /** Drags the pages, and takes the keyboard. */
    private final class Hand extends MouseAdapter {
        private Point grabbed;
        private Point from;

        @Override
        public void mousePressed(MouseEvent event) {
            requestFocusInWindow();
            grabbed = event.getLocationOnScreen();
            from = scroll.getViewport().getViewPosition();
        }

        @Override
        public void mouseDragged(MouseEvent event) {
            if (grabbed != null) {
                Point now = event.getLocationOnScreen();
                moveTo(from.x + grabbed.x - now.x, from.y + grabbed.y - now.y);
            }
        }

        @Override
        public void mouseReleased(MouseEvent event) {
            grabbed = null;
        }
    }

    private void repaintPage(int page) {
        if (page < count()) {
            Rectangle place = column.page(page);
            place.grow(2, 2);
            repaint(place);
        }
    }

    private double density() {
        return getGraphicsConfiguration() == null
                ? 1
                : getGraphicsConfiguration().getDefaultTransform().getScaleX();
    }

    /** What is seen of a page, pixels from its upper left corner. */
    private Rectangle seen(int page) {
        Rectangle place = column.page(page);
        Rectangle seen = place.intersection(scroll.getViewport().getViewRect());
        seen.translate(-place.x, -place.y);
        return seen;
    }

    /** The picture of a page that shows this much of it. */
    private PageImages.Wanted wanted(int page, Rectangle seen, double density) {
        Rectangle whole = dots(new Rectangle(column.page(page).getSize()), density);
        boolean small = (long) whole.width * whole.height <= WHOLE_PIXELS;
        Rectangle part = small ? whole : dots(seen, density).intersection(whole);
        return new PageImages.Wanted(pages, page, whole.width / column.width(), part);
    }

    private static Rectangle dots(Rectangle pixels, double density) {
        int left = (int) Math.floor(pixels.x * density);
        int top = (int) Math.floor(pixels.y * density);
        int right = (int) Math.ceil((pixels.x + pixels.width) * density - 1e-6);
        int bottom = (int) Math.ceil((pixels.y + pixels.height) * density - 1e-6);
        return new Rectangle(left, top, right - left, bottom - top);
    }

    @Override
    protected void paintComponent(Graphics g) {
        g.setColor(UIManager.getColor("Thrumwright.desk"));
        g.fillRect(0, 0, getWidth(), getHeight());
        if (count() == 0) {
            return;
        }
        Rectangle window = scroll.getViewport().getViewRect();
        int first = column.pageAt(window.y);
        int last = column.pageAt(window.y + (double) window.height);
        List<PageImages.Wanted> wanted = new ArrayList<>();
        for (int page = first; page <= last; page++) {
            wanted.add(Math.max(0, page == current ? 0 : wanted.size()), wanted(page, seen(page), density()));
            paintPage((Graphics2D) g.create(), page);
        }
        beside(wanted, first - 1);
        beside(wanted, last + 1);
        images.want(wanted);
    }

    /** Wants a page that is likely to be looked at next. */
    private void beside(List<PageImages.Wanted> wanted, int page) {
        if (page >= 0 && page < count()) {
            PageImages.Wanted whole =
                    wanted(page, new Rectangle(column.page(page).getSize()), density());
            if ((long) whole.part().width * whole.part().height <= WHOLE_PIXELS) {
                wanted.add(whole);
            }
        }
    }

    private void paintPage(Graphics2D g, int page) {
        Rectangle place = column.page(page);
        g.setColor(Color.WHITE);
        g.fill(place);
        images.of(page).ifPresent(there -> paintImage((Graphics2D) g.create(), place, there));
        boolean chosen = page == current && isFocusOwner();
        g.setColor(UIManager.getColor(chosen ? "Component.focusColor" : "Component.borderColor"));
        g.setStroke(new BasicStroke(chosen ? 2 : 1));
        g.drawRect(place.x - 1, place.y - 1, place.width + 1, place.height + 1);
        g.dispose();
    }

    /** Dot for dot where the picture is as large as it is wanted; else as near to that as it goes. */
    private void paintImage(Graphics2D g, Rectangle place, PageImages.Painted there) {
        g.clip(place);
        AffineTransform device = g.getTransform();
        double density = device.getScaleX();
        double scale = wanted(there.of().page(), new Rectangle(1, 1), density).scale()
                / there.of().scale();
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

    /** Paints no more. */
    public void close() {
        images.close();
    }

    @Override
    public Dimension getPreferredScrollableViewportSize() {
        return new Dimension(520, 620);
    }

    @Override
    public int getScrollableUnitIncrement(Rectangle visible, int orientation, int direction) {
        return UNIT;
    }

    /** From page to page where whole pages are seen, else almost a window further. */
    @Override
    public int getScrollableBlockIncrement(Rectangle visible, int orientation, int direction) {
        boolean whole = orientation == SwingConstants.VERTICAL && zoom.kind() == PageZoom.Kind.WHOLE;
        return whole ? column.pitch() : visible.height * 9 / 10;
    }

    @Override
    public boolean getScrollableTracksViewportWidth() {
        return column.size().width <= scroll.getViewport().getWidth();
    }

    @Override
    public boolean getScrollableTracksViewportHeight() {
        return column.size().height <= scroll.getViewport().getHeight();
    }

    /** Which page is looked at, in words. */
    public String where() {
        return count() == 0
                ? texts.say("sheet.pages.none")
                : texts.say("sheet.page", Map.of("page", Math.max(0, current) + 1, "count", count()));
    }

    @Override
    public AccessibleContext getAccessibleContext() {
        if (accessibleContext == null) {
            accessibleContext = new Described();
        }
        return accessibleContext;
    }

    private final class Described extends AccessibleJComponent {
        private static final long serialVersionUID = 1L;

        Described() {
            listen(new Runnable() {
                private String before = where();

                @Override
                public void run() {
                    String now = where();
                    if (!Objects.equals(before, now)) {
                        firePropertyChange(ACCESSIBLE_NAME_PROPERTY, before, now);
                        before = now;
                    }
                }
            });
        }

        @Override
        public String getAccessibleName() {
            return where();
        }

        @Override
        public String getAccessibleDescription() {
            return count() == 0 ? "" : pages.words(current);
        }

        @Override
        public AccessibleRole getAccessibleRole() {
            return AccessibleRole.CANVAS;
        }
    }
}
