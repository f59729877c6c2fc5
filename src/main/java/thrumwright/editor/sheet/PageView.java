package thrumwright.editor.sheet;

import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.FocusEvent;
import java.awt.event.FocusListener;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.event.MouseWheelEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
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
        PageHand hand = new PageHand();
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
                        .filter(there -> there.of().covers(asSeen().wanted(current)))
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

    /** Pixels in a point, more than 0. */
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
        if (pages != null && !fits()) {
            place(topInPages());
        } else {
            look();
        }
    }

    private boolean fits() {
        Dimension window = scroll.getViewport().getExtentSize();
        double fitting =
                PageColumn.fitting(zoom, pages.setup().width(), pages.setup().height(), window);
        return window.width == column.room() && column.scale() == fitting;
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
    private final class PageHand extends MouseAdapter {
        private Optional<Grab> grab = Optional.empty();

        /** @param from the corner that was in sight then */
        private record Grab(Point at, Point from) {}

        @Override
        public void mousePressed(MouseEvent event) {
            requestFocusInWindow();
            grab = Optional.of(
                    new Grab(event.getLocationOnScreen(), scroll.getViewport().getViewPosition()));
        }

        @Override
        public void mouseDragged(MouseEvent event) {
            Point now = event.getLocationOnScreen();
            grab.ifPresent(then -> moveTo(then.from.x + then.at.x - now.x, then.from.y + then.at.y - now.y));
        }

        @Override
        public void mouseReleased(MouseEvent event) {
            grab = Optional.empty();
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

    private PagesSeen asSeen() {
        return new PagesSeen(pages, column, scroll.getViewport().getViewRect(), density());
    }

    @Override
    protected void paintComponent(Graphics g) {
        g.setColor(UIManager.getColor("Thrumwright.desk"));
        g.fillRect(0, 0, getWidth(), getHeight());
        if (count() > 0) {
            new PagePainter(images, asSeen(), current, isFocusOwner()).paint((Graphics2D) g);
        }
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
            accessibleContext = new DescribedPages();
        }
        return accessibleContext;
    }

    private final class DescribedPages extends AccessibleJComponent {
        private static final long serialVersionUID = 1L;

        DescribedPages() {
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
