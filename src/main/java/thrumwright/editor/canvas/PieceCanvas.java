package thrumwright.editor.canvas;

import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.event.FocusEvent;
import java.awt.event.FocusListener;
import java.awt.event.MouseEvent;
import java.awt.event.MouseWheelEvent;
import java.util.Optional;
import java.util.function.Consumer;
import javax.accessibility.AccessibleContext;
import javax.swing.SwingUtilities;
import javax.swing.ToolTipManager;
import thrumwright.drawing.Palette;
import thrumwright.drawing.piece.PiecePicture;
import thrumwright.editor.canvas.gesture.CanvasMouse;
import thrumwright.editor.canvas.gesture.Gesturing;
import thrumwright.editor.canvas.gesture.Tracker;
import thrumwright.editor.canvas.heard.AccessibleCanvas;
import thrumwright.editor.canvas.painted.CanvasPainter;
import thrumwright.editor.canvas.painted.Showing;
import thrumwright.editor.canvas.seen.CanvasMap;
import thrumwright.editor.canvas.seen.Sight;
import thrumwright.editor.canvas.seen.Standing;
import thrumwright.editor.canvas.seen.Surface;
import thrumwright.editor.canvas.seen.Zoom;
import thrumwright.editor.edit.Change;
import thrumwright.editor.edit.Session;
import thrumwright.editor.text.Texts;
import thrumwright.piece.Place;

/** The whole piece to scale: the start below, the top above, a torn band of the design between them. */
public final class PieceCanvas extends ScrolledComponent implements Surface {
    private static final long serialVersionUID = 1L;
    private final transient Session session;
    private final transient Texts texts;
    private final transient Scrolling scrolling = new Scrolling(this);
    private final transient Panning panning = new Panning(this);
    private final transient Surroundings surroundings;
    private final transient Sight sight;
    private final transient Looking looking;
    private final transient CanvasPainter painter =
            new CanvasPainter(part -> repaint(part.intersection(getVisibleRect())));
    private final transient Tracker tracker = new Tracker(this, this::begun, this::ended);
    private final transient FigureEntry figures;
    private transient Palette palette;

    public PieceCanvas(Session session, Texts texts, Palette palette) {
        this(session, PiecePicture.close(session.plan()), texts, palette);
    }

    /** The same, with its picture already laid out: that needs no component. */
    public PieceCanvas(Session session, PiecePicture picture, Texts texts, Palette palette) {
        this.session = session;
        this.texts = texts;
        this.palette = palette;
        this.surroundings = new Surroundings(this, scrolling, texts);
        this.sight = new Sight(
                picture,
                shown -> surroundings.room(shown.plan()),
                () -> session.selection().place());
        this.looking = new Looking(this, sight, session, scrolling);
        setName("canvas");
        setFocusable(true);
        setOpaque(true);
        session.listen(this::changed);
        figures = new FigureEntry(this);
        ToolTipManager.sharedInstance().registerComponent(this);
        CanvasMouse mouse = new CanvasMouse(this, tracker, figures::at);
        addMouseListener(mouse);
        addMouseMotionListener(mouse);
        addMouseWheelListener(this::wheel);
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
    }

    private void changed(Change change) {
        Optional<Standing> standing = Optional.empty();
        if (change == Change.PIECE) {
            // while something is dragged everything stays where it is anyhow
            standing = isHeld() || getVisibleRect().isEmpty() ? Optional.empty() : Optional.of(looking.standing());
            sight.show(sight.picture().next(session.plan()));
            revalidate();
            tracker.giveUpWhatIsOutdated();
        }
        if (change != Change.FILE) {
            sight.tell();
            repaint();
        }
        standing.ifPresent(looking::keep);
    }

    @Override
    public Session session() {
        return session;
    }

    @Override
    public Texts texts() {
        return texts;
    }

    /** Other colours, when the theme changes. */
    public void setPalette(Palette other) {
        palette = other;
        repaint();
    }

    /** @param annotated not for as long as the cloth is to be seen before there was time for rules, notes and marks */
    void setAnnotated(boolean annotated) {
        painter.setAnnotated(annotated);
        repaint();
    }

    public Palette palette() {
        return palette;
    }

    /** Who is told where things lie whenever that changes. */
    public void whenMapChanges(Runnable listener) {
        sight.whenChanged(listener);
    }

    @Override
    public CanvasMap map() {
        return sight.map();
    }

    public PiecePicture picture() {
        return sight.picture();
    }

    public void setGestures(Gesturing other) {
        tracker.setGestures(other);
    }

    public void setMenuAsked(Consumer<MouseEvent> asked) {
        tracker.setMenuAsked(asked);
    }

    /** What is done with the mouse here and beside the canvas. */
    public Tracker tracker() {
        return tracker;
    }

    /** Gives a gesture up, if one is under way. */
    public boolean cancelGesture() {
        return tracker.cancel();
    }

    /** While something is dragged, all else stays where it is. */
    private void begun() {
        sight.hold(tracker.isHolding());
    }

    private void ended() {
        if (isHeld() && !tracker.isHolding()) {
            looking.letGo();
        }
    }

    /** Whether something is being dragged, so that all else stays where it is. */
    boolean isHeld() {
        return sight.isHeld();
    }

    /** What moves the window and changes how near the piece is. */
    public Looking looking() {
        return looking;
    }

    public Zoom zoom() {
        return sight.zoom();
    }

    /** Pixels per mm, more than 0. */
    public double scale() {
        return sight.scale();
    }

    /** Shows the piece in another size; what was in the middle stays there. */
    public void setZoom(Zoom other) {
        looking.zoom(other);
    }

    /** As {@link #setZoom(Zoom)}, but a point of the canvas stays where it is. */
    public void setZoom(Zoom other, Point fixed) {
        looking.zoom(other, fixed);
    }

    /** Scrolls to a block if it can't be seen. */
    public void reveal(Place place, String id) {
        looking.reveal(place, id);
    }

    public void setRules(boolean shown) {
        surroundings.setRules(shown);
        sight.outdate();
        revalidate();
        sight.tell();
        repaint();
    }

    public boolean rules() {
        return surroundings.rules();
    }

    @Override
    public void setBounds(int x, int y, int width, int height) {
        boolean other = width != getWidth() || height != getHeight();
        super.setBounds(x, y, width, height);
        if (other) {
            sight.outdate();
            looking.seeAll();
            sight.tell();
        }
    }

    @Override
    public Dimension getPreferredSize() {
        return sight.size();
    }

    @Override
    public void joinMiddle(boolean toTheRight) {
        looking.joinMiddle(toTheRight);
    }

    /** While the space bar is held. */
    @Override
    public boolean panning() {
        return panning.isOn();
    }

    private void wheel(MouseWheelEvent event) {
        if (event.isControlDown() || event.isMetaDown()) {
            looking.by(-event.getPreciseWheelRotation(), event.getPoint());
        } else {
            getParent().dispatchEvent(SwingUtilities.convertMouseEvent(this, event, getParent()));
        }
    }

    /** All that is shown at present. */
    Showing showing() {
        return new Showing(
                map(),
                getVisibleRect(),
                session.selection(),
                isFocusOwner(),
                surroundings.widths(picture().plan()),
                texts,
                palette);
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = (Graphics2D) graphics.create();
        try {
            Showing showing = showing();
            if (isPaintingForPrint()) {
                painter.paintAtOnce(g, showing);
            } else {
                painter.paint(g, showing, getGraphicsConfiguration());
            }
            tracker.paint(g, showing);
        } finally {
            g.dispose();
        }
    }

    /** Whether all of the cloth that can be seen is there as sharp as it can be. */
    public boolean sharp() {
        return sharp(surroundings.density());
    }

    /** @param density device pixels per pixel of the canvas, more than 0 */
    boolean sharp(double density) {
        return painter.sharp(showing(), density);
    }

    /** A figure that can be typed over says so, and a tail whose it is. */
    @Override
    public String getToolTipText(MouseEvent event) {
        return figures.at(event.getPoint()).isPresent()
                ? texts.say("canvas.figure.tip")
                : new PointedAt(map(), texts).tail(event.getPoint()).orElse(null);
    }

    @Override
    public AccessibleContext getAccessibleContext() {
        if (accessibleContext == null) {
            accessibleContext = new AccessibleCanvas(this, this);
        }
        return accessibleContext;
    }
}
