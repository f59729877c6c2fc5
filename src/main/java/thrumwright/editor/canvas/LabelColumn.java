package thrumwright.editor.canvas;

import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.SwingUtilities;
import javax.swing.ToolTipManager;
import javax.swing.UIManager;
import thrumwright.editor.canvas.gesture.Gaps;
import thrumwright.editor.canvas.label.BlockWording;
import thrumwright.editor.canvas.label.LabelFonts;
import thrumwright.editor.canvas.label.LabelList;
import thrumwright.editor.canvas.label.LabelMaker;
import thrumwright.editor.canvas.label.LabelPainter;
import thrumwright.editor.canvas.label.LabelSizes;
import thrumwright.editor.edit.Change;
import thrumwright.editor.edit.Selection;
import thrumwright.editor.look.Ground;
import thrumwright.editor.look.Pixels;
import thrumwright.piece.Place;

/**
 * The blocks' names, amounts, heights and cuts beside the canvas, each with a line to its block. It is scrolled by itself,
 * if it must be: what the canvas does moves no row.
 */
public final class LabelColumn extends ScrolledComponent {
    private static final long serialVersionUID = 1L;

    private final transient PieceCanvas canvas;
    private final transient LabelSizes sizes = LabelSizes.now();
    private transient LabelList list = LabelList.empty(sizes);
    private transient Runnable designAsked = () -> {};
    /** What of the canvas was seen when this was painted last; null before. */
    private transient LabelPainter.Sighting painted;

    /** What the list shares with the picture, pixels. */
    private int room = Integer.MAX_VALUE;

    private boolean listed = true;

    public LabelColumn(PieceCanvas canvas) {
        this.canvas = canvas;
        setName("labels");
        setOpaque(true);
        canvas.whenMapChanges(this::arrange);
        canvas.session().listen(this::reveal);
        LabelMouse mouse = new LabelMouse();
        addMouseListener(mouse);
        addMouseMotionListener(mouse);
        ToolTipManager.sharedInstance().registerComponent(this);
    }

    /** Labels can be clicked and dragged like their blocks, which are often thin. */
    private final class LabelMouse extends MouseAdapter {
        /** From the list to the canvas, as they lay when something was taken hold of. */
        private Point to = new Point();

        @Override
        public void mousePressed(MouseEvent event) {
            to = SwingUtilities.convertPoint(LabelColumn.this, new Point(), canvas);
            if (list.isDesign(event.getY())) {
                canvas.session().select(Selection.none());
                designAsked.run();
            }
            list.at(event.getY())
                    .ifPresent(spot -> canvas.tracker().pressLabel(onCanvas(event), spot, list.gaps(to.y)));
        }

        @Override
        public void mouseDragged(MouseEvent event) {
            scrollRectToVisible(new Rectangle(0, event.getY() - list.rowHeight(), 1, 2 * list.rowHeight()));
            canvas.tracker().drag(onCanvas(event));
        }

        @Override
        public void mouseReleased(MouseEvent event) {
            if (event.isPopupTrigger()) {
                canvas.tracker().popup(onCanvas(event), list.at(event.getY()));
            } else {
                canvas.tracker().release(onCanvas(event));
            }
        }

        private MouseEvent onCanvas(MouseEvent event) {
            return new MouseEvent(
                    canvas,
                    event.getID(),
                    event.getWhen(),
                    event.getModifiersEx(),
                    event.getX() + to.x,
                    event.getY() + to.y,
                    event.getClickCount(),
                    event.isPopupTrigger(),
                    event.getButton());
        }
    }

    /** Who is told when somebody clicks the design's row. */
    public void whenDesignAsked(Runnable asked) {
        designAsked = asked;
    }

    /** Whatever of a line has no room. */
    @Override
    public String getToolTipText(MouseEvent event) {
        return list.hidden(event.getY()).orElse(null);
    }

    /** @param listed not for as long as its ground alone is to be seen before there was time for more */
    void setListed(boolean listed) {
        this.listed = listed;
        repaint();
    }

    /** @param width of all that the list shares with the picture, pixels */
    public void setRoom(int width) {
        if (width != room) {
            room = width;
            arrange();
        }
    }

    /** Where blocks can be put down between the labels. */
    public Gaps gaps() {
        return list.gaps(0);
    }

    /** Where a block's amount stands in this column. */
    public Optional<Rectangle> amountBox(Place place, String id) {
        return list.amountBox(place, id);
    }

    /** What the label of a block says. */
    public Optional<BlockWording> wording(Place place, String id) {
        return list.wording(place, id);
    }

    @Override
    public void updateUI() {
        super.updateUI();
        if (canvas != null) {
            list = LabelList.empty(sizes);
            arrange();
        }
    }

    /** Columns become no narrower while they are seen: shorter words must not push the picture aside. */
    private void arrange() {
        LabelMaker maker = new LabelMaker(canvas.texts(), sizes, LabelFonts.now(), this::getFontMetrics);
        list = maker.list(canvas.map(), getHeight(), room, list.columns());
        int high = list.leastHeight();
        if (getPreferredSize().width != getWidth() || high > getHeight() || getHeight() > Math.max(high, window())) {
            revalidate();
        }
        repaint();
    }

    private void reveal(Change change) {
        Selection selection = canvas.session().selection();
        if (change == Change.SELECTION) {
            selection.lead().flatMap(id -> list.box(selection.place(), id)).ifPresent(this::scrollRectToVisible);
        }
    }

    @Override
    public void setBounds(int x, int y, int width, int height) {
        boolean other = height != getHeight();
        super.setBounds(x, y, width, height);
        if (other) {
            arrange();
        }
    }

    @Override
    public Dimension getPreferredSize() {
        // while something is dragged, longer words must not push the picture aside
        int width = canvas.isHeld() && getWidth() > 0 ? getWidth() : list.width() + sizes.leader();
        return new Dimension(width, list.leastHeight());
    }

    /** Height of what is seen of it, pixels. */
    private int window() {
        return getParent() == null ? 0 : getParent().getHeight();
    }

    @Override
    public Dimension getPreferredScrollableViewportSize() {
        return new Dimension(getPreferredSize().width, window());
    }

    /** The titles of the columns, to stand above them. */
    public JComponent titles() {
        return new Titles(this);
    }

    private static final class Titles extends JComponent {
        private static final long serialVersionUID = 1L;
        private final transient LabelColumn column;

        Titles(LabelColumn column) {
            this.column = column;
        }

        @Override
        public Dimension getPreferredSize() {
            return new Dimension(column.getPreferredSize().width, Pixels.of(WidthRule.HEIGHT));
        }

        @Override
        protected void paintComponent(Graphics graphics) {
            Graphics2D g = (Graphics2D) graphics.create();
            g.setColor(UIManager.getColor("Panel.background"));
            g.fillRect(0, 0, getWidth(), getHeight());
            new LabelPainter(g, column.list, Selection.none(), column.sighting())
                    .titles(column.canvas.texts(), getHeight());
            g.dispose();
        }
    }

    /** The canvas may have moved under its window: if it went up or down, the lines to its blocks lead elsewhere. */
    void follow() {
        if (!sighting().equals(painted)) {
            int lines = list.width();
            repaint(lines, 0, getWidth() - lines, getHeight());
        }
    }

    private LabelPainter.Sighting sighting() {
        Rectangle seen = canvas.getVisibleRect();
        int by = SwingUtilities.convertPoint(canvas, new Point(), this).y;
        return new LabelPainter.Sighting(by, seen.y + by, seen.y + by + seen.height);
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = (Graphics2D) graphics.create();
        Ground.fill(g, this, canvas.palette().paper());
        if (listed) {
            painted = sighting();
            new LabelPainter(g, list, canvas.session().selection(), painted)
                    .paint(
                            canvas.palette().faint(),
                            getWidth(),
                            canvas.session().shown().topFollows());
        }
        g.dispose();
    }
}
