package thrumwright.editor.canvas;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Cursor;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.GraphicsConfiguration;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.event.ActionEvent;
import java.awt.event.FocusEvent;
import java.awt.event.FocusListener;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.event.MouseWheelEvent;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.DoubleSupplier;
import javax.accessibility.Accessible;
import javax.accessibility.AccessibleContext;
import javax.swing.AbstractAction;
import javax.swing.JComponent;
import javax.swing.JViewport;
import javax.swing.KeyStroke;
import javax.swing.Scrollable;
import javax.swing.SwingConstants;
import javax.swing.SwingUtilities;
import thrumwright.drawing.Palette;
import thrumwright.drawing.View;
import thrumwright.drawing.piece.PiecePicture;
import thrumwright.editor.canvas.CanvasMap.Spot;
import thrumwright.editor.edit.Change;
import thrumwright.editor.edit.Selection;
import thrumwright.editor.edit.Session;
import thrumwright.editor.text.Texts;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;

/** The whole piece to scale: the start below, the top above, a torn band of the design between them. */
public final class PieceCanvas extends JComponent implements Scrollable, Accessible {
    private static final long serialVersionUID = 1L;
    /** Room beside and above the picture, pixels. */
    private static final int BESIDE = 16;

    private static final int ABOVE = 36;
    private static final int NUDGE = 24;
    private static final int NARROW = 500;
    /** Between the picture and its rule, pixels. */
    private static final int AIR = 6;
    /** How far apart single warp ends are shown, pixels. */
    private static final double APART = 24;
    /** How much of the picture stays in the window, pixels. */
    private static final int STAYS = 30;

    private final transient Session session;
    private final transient Texts texts;
    private final transient List<Runnable> mapListeners = new ArrayList<>();
    private transient Palette palette;
    private transient PiecePicture picture;
    private transient CanvasMap map;
    private transient CanvasRules.Widths widths;
    private final transient ClothTiles cloth = new ClothTiles(this::repaintSeen);
    private transient Zoom zoom = Zoom.fitting(Zoom.Kind.PIECE);
    private transient Optional<Gesture> gesture = Optional.empty();
    private transient Consumer<MouseEvent> menuAsked = event -> {};
    private transient Gestures gestures = (canvas, event, spot) -> Optional.empty();
    private transient View held;
    private transient Piece gestured;
    /** How far the picture lies below the middle of its window, pixels, since it kept its place while it grew. */
    private double lowered;

    private int leastHeight;
    private boolean rules = true;
    private boolean panning;

    /** What a press of the mouse begins. */
    public interface Gestures {
        Optional<Gesture> begin(PieceCanvas canvas, MouseEvent event, Optional<Spot> spot);

        /** A press on a block's label beside the canvas. */
        default Optional<Gesture> onLabel(PieceCanvas canvas, MouseEvent event, Spot spot, Slots slots) {
            return Optional.empty();
        }
    }

    public PieceCanvas(Session session, Texts texts, Palette palette) {
        this.session = session;
        this.texts = texts;
        this.palette = palette;
        this.picture = PiecePicture.of(session.plan());
        setName("canvas");
        setFocusable(true);
        setOpaque(true);
        session.listen(this::changed);
        Mouse mouse = new Mouse();
        addMouseListener(mouse);
        addMouseMotionListener(mouse);
        addMouseWheelListener(mouse);
        bindSpace();
        addFocusListener(new FocusListener() {
            @Override
            public void focusGained(FocusEvent event) {
                repaint();
            }

            @Override
            public void focusLost(FocusEvent event) {
                setPanning(false);
                repaint();
            }
        });
    }

    private void changed(Change change) {
        Optional<Standing> standing = Optional.empty();
        if (change == Change.PIECE) {
            standing = standing();
            picture = picture.next(session.plan());
            map = null;
            revalidate();
            giveUpWhatIsOutdated();
        }
        if (change != Change.FILE) {
            tellMapListeners();
            repaint();
        }
        standing.ifPresent(this::keep);
    }

    /** What must stay where it is in the window; while something is dragged everything does. */
    private Optional<Standing> standing() {
        Rectangle seen = getVisibleRect();
        return held != null || seen.isEmpty()
                ? Optional.empty()
                : Optional.of(Standing.of(map(), seen, session.selection(), session.plan()));
    }

    private void keep(Standing standing) {
        keepAt(() -> standing.top(map()));
    }

    /**
     * Scrolls, or moves the picture where the window has room for all of it.
     *
     * @param top where the window's upper edge should be on the canvas, pixels
     */
    private void keepAt(DoubleSupplier top) {
        if (getParent() instanceof JViewport viewport) {
            viewport.getParent().validate();
            int most = Math.max(0, getHeight() - viewport.getExtentSize().height);
            if (most == 0 && top.getAsDouble() != 0) {
                double scale = scale();
                lowered = Math.max(-slack(scale), Math.min(lowered, slack(scale))) - top.getAsDouble();
                map = null;
                tellMapListeners();
                repaint();
                return;
            }
            int wanted = (int) Math.round(top.getAsDouble());
            viewport.setViewPosition(new Point(viewport.getViewPosition().x, Math.max(0, Math.min(wanted, most))));
        }
    }

    /** A key has changed the piece meanwhile: what is held isn't there any more, or elsewhere. */
    private void giveUpWhatIsOutdated() {
        if (gesture.isPresent() && session.piece() != gestured) {
            cancelGesture();
        }
    }

    public Session session() {
        return session;
    }

    public Texts texts() {
        return texts;
    }

    /** Other colours, when the theme changes. */
    public void setPalette(Palette other) {
        palette = other;
        repaint();
    }

    public Palette palette() {
        return palette;
    }

    /** Who is told where things lie whenever that changes. */
    public void whenMapChanges(Runnable listener) {
        mapListeners.add(listener);
    }

    public void setGestures(Gestures other) {
        gestures = other;
    }

    Gestures gestures() {
        return gestures;
    }

    /** Lets a gesture begin that sets out beside the canvas. */
    public void begin(Gesture other) {
        cancelGesture();
        begun(Optional.of(other));
    }

    private void begun(Optional<Gesture> other) {
        gesture = other;
        gestured = session.piece();
        hold();
    }

    /** Whether that gesture is still under way. */
    public boolean isUnderWay(Gesture other) {
        return gesture.filter(other::equals).isPresent();
    }

    /** The mouse moves on while it holds something. */
    public void dragged(MouseEvent event) {
        gesture.ifPresent(current -> {
            current.drag(event);
            repaint();
        });
    }

    /** The mouse lets go; nothing, if the gesture was given up meanwhile. */
    public void released(MouseEvent event) {
        Optional<Gesture> ended = gesture;
        gesture = Optional.empty();
        ended.ifPresent(current -> current.release(event));
        letGo(event.getPoint());
        repaint();
    }

    public void setMenuAsked(Consumer<MouseEvent> asked) {
        menuAsked = asked;
    }

    /** The height that labels beside the canvas need, pixels. */
    public void setLeastHeight(int height) {
        if (height != leastHeight) {
            leastHeight = height;
            map = null;
            revalidate();
        }
    }

    private void tellMapListeners() {
        mapListeners.forEach(Runnable::run);
    }

    public PiecePicture picture() {
        return picture;
    }

    /** Where everything lies at present. */
    public CanvasMap map() {
        if (map == null) {
            map = CanvasMap.of(picture, view());
        }
        return map;
    }

    private View view() {
        if (held != null) {
            return held;
        }
        double scale = scale();
        double left = (getWidth() + leftSide() - rightSide() - picture.span() * scale) / 2;
        double base =
                (getHeight() + picture.height() * scale) / 2 + Math.max(-slack(scale), Math.min(lowered, slack(scale)));
        return new View(scale, onPixel(left), onPixel(base));
    }

    /** How far the picture may be from the middle of a window that has room for all of it, pixels. */
    private double slack(double scale) {
        return Math.max(0, (getHeight() - picture.height() * scale) / 2 - ABOVE);
    }

    /** On the border of two device pixels, so that what has been painted stays good when the canvas moves. */
    private double onPixel(double place) {
        return Math.round(place * density()) / density();
    }

    /** Whether rules are shown beside the picture; in a narrow window the picture needs the room. */
    public boolean ruled() {
        return rules && room().width >= NARROW;
    }

    public void setRules(boolean shown) {
        rules = shown;
        map = null;
        revalidate();
        tellMapListeners();
        repaint();
    }

    public boolean rules() {
        return rules;
    }

    CanvasRules.Widths widths() {
        if (widths == null || !widths.isOf(this)) {
            widths = CanvasRules.Widths.of(this);
        }
        return widths;
    }

    private int leftSide() {
        return ruled() ? widths().notes() : BESIDE;
    }

    private int rightSide() {
        return ruled() ? widths().rule() + AIR : BESIDE;
    }

    /** The part of the window that is kept for the picture: between the notes and the rule. */
    Rectangle pictured() {
        Rectangle seen = getVisibleRect();
        if (ruled()) {
            seen.x += widths().notes();
            seen.width = Math.max(0, seen.width - widths().notes() - widths().rule());
        }
        return seen;
    }

    public Zoom zoom() {
        return zoom;
    }

    /** Pixels per mm. */
    public double scale() {
        if (held != null) {
            return held.scale();
        }
        Dimension room = room();
        double byWidth = Math.max(1, room.width - leftSide() - rightSide()) / (picture.span() + 2 * picture.margin());
        double byHeight = Math.max(1, room.height - 2 * ABOVE) / Math.max(1, picture.height());
        double scale = switch (zoom.kind()) {
            case PIECE -> Math.min(byWidth, byHeight);
            case WIDTH -> byWidth;
            case END -> Math.min(singleEnds(), Math.max(1, room.height - 2 * ABOVE) / Math.max(5, endHeight()));
            case FREE -> zoom.scale();
        };
        return Math.max(Zoom.LEAST, Math.min(Zoom.MOST, scale));
    }

    /** Where single warp ends can be told apart: an end of few rows is shown no closer. */
    private double singleEnds() {
        return APART / session.plan().piece().warp().spacing();
    }

    private double endHeight() {
        return session.plan().end(session.selection().place()).height();
    }

    private Dimension room() {
        if (getParent() instanceof JViewport viewport) {
            return viewport.getExtentSize();
        }
        return getSize();
    }

    /** Shows the piece in another size; what was in the middle stays there. */
    public void setZoom(Zoom other) {
        Rectangle seen = getVisibleRect();
        setZoom(other, new Point((int) seen.getCenterX(), (int) seen.getCenterY()));
    }

    /** As {@link #setZoom(Zoom)}, but a point of the canvas stays where it is. */
    public void setZoom(Zoom other, Point fixed) {
        Rectangle seen = getVisibleRect();
        View before = view();
        double x = before.clothX(fixed.x);
        double y = before.clothY(fixed.y);
        zoom = other;
        lowered = 0;
        held = null;
        map = null;
        revalidate();
        if (getParent() instanceof JViewport viewport) {
            viewport.getParent().validate();
            View after = view();
            int left = (int) Math.round(after.x(x)) - (fixed.x - seen.x);
            int top = (int) Math.round(after.y(y)) - (fixed.y - seen.y);
            Dimension extent = viewport.getExtentSize();
            viewport.setViewPosition(new Point(
                    Math.max(0, Math.min(left, getWidth() - extent.width)),
                    Math.max(0, Math.min(top, getHeight() - extent.height))));
        }
        hold();
        tellMapListeners();
        repaint();
    }

    /** While something is dragged, all else stays where it is. */
    private void hold() {
        held = gesture.isPresent() ? view() : null;
    }

    /** Whether something is being dragged, so that all else stays where it is. */
    boolean isHeld() {
        return held != null;
    }

    /** What was dragged is where it belongs now; so is the picture again. */
    private void letGo(Point pointer) {
        if (held != null && gesture.isEmpty()) {
            Standing standing = Standing.of(map(), getVisibleRect(), session.selection(), session.plan());
            double before = lowered;
            setZoom(zoom, pointer);
            lowered = before;
            map = null;
            keep(standing);
        }
    }

    /** Shows one end so that its height fills the window, from its left edge. */
    public void showEnd(Place place) {
        if (session.selection().place() != place) {
            session.select(new Selection(place, List.of()));
        }
        setZoom(Zoom.fitting(Zoom.Kind.END));
        View view = view();
        double bottom = picture.base(place);
        double top = bottom + session.plan().end(place).height();
        Rectangle seen = getVisibleRect();
        int middle = (int) view.y((bottom + top) / 2);
        int left = (int) view.x(-picture.beside()) - leftSide();
        scrollRectToVisible(new Rectangle(left, middle - seen.height / 2, seen.width, seen.height));
    }

    /** The end with the selected block; without one, the end that is nearest to the middle of the window. */
    public Place placeSeen() {
        return session.selection().isEmpty()
                ? map().placeAt(getVisibleRect().getCenterY())
                : session.selection().place();
    }

    /** Comes so close that single warp ends can be told apart; a selected block comes to the middle. */
    public void showSingleEnds() {
        setZoom(Zoom.of(singleEnds()));
        Rectangle seen = getVisibleRect();
        session.selection()
                .lead()
                .flatMap(id -> map().spot(session.selection().place(), id))
                .ifPresent(spot -> scrollRectToVisible(
                        new Rectangle(seen.x, (int) spot.middle() - seen.height / 2, 1, seen.height)));
    }

    /** Moves the view by so many times its width and height, to the right and down. */
    public void pan(double right, double down) {
        Rectangle seen = getVisibleRect();
        seen.translate((int) Math.round(right * seen.width), (int) Math.round(down * seen.height));
        scrollRectToVisible(seen);
    }

    /** Whether a press of the mouse moves the view, whatever it falls on: while the space bar is held. */
    boolean panning() {
        return panning;
    }

    private void setPanning(boolean held) {
        panning = held;
        setCursor(held ? Cursor.getPredefinedCursor(Cursor.MOVE_CURSOR) : Cursor.getDefaultCursor());
    }

    private void bindSpace() {
        bind("SPACE", "pan", () -> setPanning(true));
        bind("released SPACE", "pan-no-more", () -> setPanning(false));
    }

    private void bind(String key, String name, Runnable what) {
        getInputMap(WHEN_FOCUSED).put(KeyStroke.getKeyStroke(key), name);
        getActionMap().put(name, new AbstractAction() {
            private static final long serialVersionUID = 1L;

            @Override
            public void actionPerformed(ActionEvent event) {
                what.run();
            }
        });
    }

    @Override
    public void setBounds(int x, int y, int width, int height) {
        boolean other = width != getWidth() || height != getHeight();
        super.setBounds(x, y, width, height);
        if (other) {
            map = null;
            tellMapListeners();
        }
    }

    /**
     * Where the scale was chosen freely there is room around the picture, so that any point of it can be anywhere; above and
     * below it close to one end too, so that what is worked on can stay where it is.
     */
    @Override
    public Dimension getPreferredSize() {
        if (held != null) {
            return getSize();
        }
        double scale = scale();
        Dimension room = room();
        boolean free = zoom.kind() == Zoom.Kind.FREE && getParent() instanceof JViewport;
        boolean near = zoom.kind() == Zoom.Kind.END && getParent() instanceof JViewport;
        double around = free ? Math.max(0, room.width - 2 * STAYS) : leftSide() + rightSide();
        double above = free || near ? Math.max(0, room.height - 2 * STAYS) : 2 * ABOVE;
        double width = (picture.span() + 2 * picture.margin()) * scale + around;
        double height = picture.height() * scale + above;
        return new Dimension((int) Math.floor(width), (int) Math.max(leastHeight, Math.floor(height)));
    }

    @Override
    public Dimension getPreferredScrollableViewportSize() {
        return new Dimension(520, 420);
    }

    @Override
    public int getScrollableUnitIncrement(Rectangle visible, int orientation, int direction) {
        return NUDGE;
    }

    @Override
    public int getScrollableBlockIncrement(Rectangle visible, int orientation, int direction) {
        return (orientation == SwingConstants.VERTICAL ? visible.height : visible.width) * 4 / 5;
    }

    @Override
    public boolean getScrollableTracksViewportWidth() {
        return getParent() != null && getParent().getWidth() >= getPreferredSize().width;
    }

    @Override
    public boolean getScrollableTracksViewportHeight() {
        return getParent() != null && getParent().getHeight() >= getPreferredSize().height;
    }

    private void repaintSeen() {
        repaint(getVisibleRect());
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = (Graphics2D) graphics.create();
        try {
            Rectangle part = getVisibleRect();
            if (isPaintingForPrint()) {
                paintAtOnce((Graphics2D) g.create(), part);
            } else {
                paintTiles((Graphics2D) g.create(), part);
            }
            g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
            new CanvasMarks(g, this).paint(part);
            if (ruled()) {
                new CanvasRules((Graphics2D) g.create(), this).paint(part);
            }
            if (FirstStep.isAhead(picture.plan())) {
                FirstStep.paint(g, this);
            }
            gesture.ifPresent(current -> current.paint(g));
        } finally {
            g.dispose();
        }
    }

    /** For a picture of the window, which can't wait for anything. */
    private void paintAtOnce(Graphics2D g, Rectangle part) {
        g.clip(part);
        g.setColor(palette.paper());
        g.fill(part);
        scene(g.getTransform().getScaleX()).paint(g, map().view());
        g.dispose();
    }

    private void paintTiles(Graphics2D g, Rectangle part) {
        AffineTransform transform = g.getTransform();
        double density = transform.getScaleX();
        View view = map().view();
        int left = (int) Math.round(transform.getTranslateX() + view.left() * density);
        int base = (int) Math.round(transform.getTranslateY() + view.base() * density);
        g.setTransform(AffineTransform.getTranslateInstance(left, base));
        cloth.draw(g, scene(density), seen(part, density), getGraphicsConfiguration());
        g.dispose();
    }

    private ClothScene scene(double density) {
        return new ClothScene(picture, palette, map().view().scale(), density);
    }

    /** A part of the canvas in device pixels from the cloth's corner, and a pixel more all round. */
    private Rectangle seen(Rectangle part, double density) {
        View view = map().view();
        int left = (int) Math.floor((part.x - view.left()) * density) - 1;
        int top = (int) Math.floor((part.y - view.base()) * density) - 1;
        int right = (int) Math.ceil((part.getMaxX() - view.left()) * density) + 1;
        int bottom = (int) Math.ceil((part.getMaxY() - view.base()) * density) + 1;
        return new Rectangle(left, top, right - left, bottom - top);
    }

    /** Device pixels per pixel of the canvas. */
    private double density() {
        GraphicsConfiguration screen = getGraphicsConfiguration();
        return screen == null ? 1 : screen.getDefaultTransform().getScaleX();
    }

    /** Whether all of the cloth that can be seen is there as sharp as it can be. */
    public boolean sharp() {
        return sharp(density());
    }

    /** @param density device pixels per pixel of the canvas */
    boolean sharp(double density) {
        return cloth.sharp(scene(density), seen(getVisibleRect(), density));
    }

    /** The block's field on the canvas, across the warp. */
    public Rectangle2D field(Spot spot) {
        View view = map().view();
        double left = view.x(-picture.margin() * 0.5);
        double width = view.x(picture.span() + picture.margin() * 0.5) - left;
        double least = spot.line() ? 7 : 3;
        double height = Math.max(least, spot.bottom() - spot.top());
        return new Rectangle2D.Double(left, spot.middle() - height / 2, width, height);
    }

    /** A point of the selected block that can be seen; without one, the middle of what is seen. */
    public Point selectedPoint() {
        Rectangle seen = getVisibleRect();
        Point middle = new Point((int) seen.getCenterX(), (int) seen.getCenterY());
        return session.selection()
                .lead()
                .flatMap(id -> map().spot(session.selection().place(), id))
                .map(spot -> new Point(middle.x, (int)
                        Math.round(Math.max(seen.y, Math.min(seen.getMaxY(), spot.middle())))))
                .orElse(middle);
    }

    /** Scrolls to a block if it can't be seen. */
    public void reveal(Place place, String id) {
        map().spot(place, id).ifPresent(spot -> {
            Rectangle seen = getVisibleRect();
            int top = (int) spot.top() - 8;
            scrollRectToVisible(new Rectangle(seen.x, top, 1, (int) (spot.bottom() - spot.top()) + 16));
        });
    }

    /** Gives a gesture up, if one is under way. */
    public boolean cancelGesture() {
        boolean was = gesture.isPresent();
        gesture.ifPresent(Gesture::cancel);
        gesture = Optional.empty();
        Rectangle seen = getVisibleRect();
        letGo(new Point((int) seen.getCenterX(), (int) seen.getCenterY()));
        repaint();
        return was;
    }

    @Override
    public AccessibleContext getAccessibleContext() {
        if (accessibleContext == null) {
            accessibleContext = new AccessibleCanvas(this);
        }
        return accessibleContext;
    }

    /** For the accessible view of the canvas: all that Swing knows of it already. */
    abstract class Base extends AccessibleJComponent {
        private static final long serialVersionUID = 1L;
    }

    /** Asks for the menu of what is pointed at; so it is selected first, and beside all blocks nothing is. */
    void popup(MouseEvent event, Optional<Spot> spot) {
        if (spot.isEmpty()) {
            session.select(Selection.none());
        }
        spot.filter(there -> !session.selection().has(there.place(), there.id()))
                .ifPresent(there -> session.select(Selection.of(there.place(), there.id())));
        menuAsked.accept(event);
    }

    private final class Mouse extends MouseAdapter {
        @Override
        public void mousePressed(MouseEvent event) {
            requestFocusInWindow();
            Optional<Spot> spot = map().at(event.getY());
            if (event.isPopupTrigger()) {
                popup(event, spot);
                return;
            }
            if (SwingUtilities.isLeftMouseButton(event) || SwingUtilities.isMiddleMouseButton(event)) {
                cancelGesture();
                begun(gestures.begin(PieceCanvas.this, event, spot));
            }
        }

        @Override
        public void mouseDragged(MouseEvent event) {
            dragged(event);
        }

        @Override
        public void mouseReleased(MouseEvent event) {
            if (event.isPopupTrigger() && gesture.isEmpty()) {
                popup(event, map().at(event.getY()));
            }
            released(event);
        }

        @Override
        public void mouseWheelMoved(MouseWheelEvent event) {
            if (event.isControlDown() || event.isMetaDown()) {
                setZoom(Zoom.from(scale(), -event.getPreciseWheelRotation()), event.getPoint());
            } else {
                getParent().dispatchEvent(SwingUtilities.convertMouseEvent(PieceCanvas.this, event, getParent()));
            }
        }

        @Override
        public void mouseMoved(MouseEvent event) {
            if (!panning) {
                setCursor(Hover.cursor(PieceCanvas.this, event.getPoint()));
            }
        }
    }

    /** A stroke for what is selected; stronger while the canvas has the keyboard. */
    BasicStroke selectionStroke() {
        return new BasicStroke(isFocusOwner() ? 2.5f : 1.5f);
    }

    Color accent() {
        return javax.swing.UIManager.getColor("Thrumwright.selected");
    }
}
