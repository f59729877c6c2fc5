package thrumwright.editor.canvas;

import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
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
import thrumwright.editor.edit.Selection;
import thrumwright.editor.look.Ground;
import thrumwright.piece.Place;

/** The blocks' names, amounts, heights and cuts beside the canvas, each with a line to its block. */
public final class LabelColumn extends JComponent {
    private static final long serialVersionUID = 1L;

    private final transient PieceCanvas canvas;
    private final transient LabelSizes sizes = LabelSizes.now();
    private transient LabelList list = LabelList.empty(sizes);
    /** What the list shares with the picture, pixels. */
    private int room = Integer.MAX_VALUE;

    public LabelColumn(PieceCanvas canvas) {
        this.canvas = canvas;
        setName("labels");
        setOpaque(true);
        canvas.whenMapChanges(this::arrange);
        LabelMouse mouse = new LabelMouse();
        addMouseListener(mouse);
        addMouseMotionListener(mouse);
        ToolTipManager.sharedInstance().registerComponent(this);
        arrange();
    }

    /** Labels can be clicked and dragged like their blocks, which are often thin. */
    private final class LabelMouse extends MouseAdapter {
        @Override
        public void mousePressed(MouseEvent event) {
            list.at(event.getY()).ifPresent(spot -> canvas.tracker().pressLabel(onCanvas(event), spot, gaps()));
        }

        @Override
        public void mouseDragged(MouseEvent event) {
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
            return SwingUtilities.convertMouseEvent(LabelColumn.this, event, canvas);
        }
    }

    /** Whatever of a line has no room. */
    @Override
    public String getToolTipText(MouseEvent event) {
        return list.hidden(event.getY()).orElse(null);
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
        return list.gaps(canvas.getHeight());
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
            arrange();
        }
    }

    private void arrange() {
        LabelMaker maker = new LabelMaker(canvas.texts(), sizes, LabelFonts.now(), this::getFontMetrics);
        list = maker.list(canvas.map(), canvas.getHeight(), room);
        canvas.setLeastHeight(list.leastHeight());
        if (getPreferredSize().width != getWidth()) {
            revalidate();
        }
        repaint();
    }

    @Override
    public Dimension getPreferredSize() {
        // while something is dragged, longer or shorter words must not push the picture aside
        int width = canvas.isHeld() && getWidth() > 0 ? getWidth() : list.width() + sizes.leader();
        return new Dimension(width, canvas.getPreferredSize().height);
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
        protected void paintComponent(Graphics graphics) {
            Graphics2D g = (Graphics2D) graphics.create();
            g.setColor(UIManager.getColor("Panel.background"));
            g.fillRect(0, 0, getWidth(), getHeight());
            new LabelPainter(g, column.list, Selection.none()).titles(column.canvas.texts(), getHeight());
            g.dispose();
        }
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = (Graphics2D) graphics.create();
        Ground.fill(g, this, canvas.palette().paper());
        new LabelPainter(g, list, canvas.session().selection())
                .paint(
                        canvas.palette().faint(),
                        getWidth(),
                        canvas.session().shown().topFollows());
        g.dispose();
    }
}
