package thrumwright.editor.canvas;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Dimension;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.SwingUtilities;
import javax.swing.ToolTipManager;
import javax.swing.UIManager;
import thrumwright.drawing.Spread;
import thrumwright.editor.canvas.CanvasMap.Spot;
import thrumwright.editor.edit.Session;
import thrumwright.editor.text.Texts;
import thrumwright.piece.Place;

/** The blocks' names, amounts, heights and cuts beside the canvas, each with a line to its block. */
public final class LabelColumn extends JComponent {
    private static final long serialVersionUID = 1L;
    private static final int LEADER = 34;
    private static final int GAP = 12;
    private static final int EDGE = 8;
    /** So many lines lie too close for their edges to be smoothed in the time there is. */
    private static final int DENSE = 40;

    /** Longer names are shortened; a tip says them in full. */
    private static final int MOST_NAME = 170;

    private final transient PieceCanvas canvas;
    private final transient Session session;
    private final transient Texts texts;
    private transient List<Row> rows = List.of();
    private int[] columns = {0, 0, 0, 0};
    private int rowHeight;

    /**
     * A label in its place.
     *
     * @param spot empty for the design's
     * @param y its middle
     */
    private record Row(Optional<Spot> spot, BlockWording wording, double y, double target) {}

    public LabelColumn(PieceCanvas canvas) {
        this.canvas = canvas;
        this.session = canvas.session();
        this.texts = canvas.texts();
        setName("labels");
        setOpaque(true);
        canvas.whenMapChanges(this::arrange);
        Mouse mouse = new Mouse();
        addMouseListener(mouse);
        addMouseMotionListener(mouse);
        ToolTipManager.sharedInstance().registerComponent(this);
        arrange();
    }

    /** Labels can be clicked and dragged like their blocks, which are often thin. */
    private final class Mouse extends MouseAdapter {
        @Override
        public void mousePressed(MouseEvent event) {
            at(event.getY()).ifPresent(spot -> pressed(event, spot));
        }

        private void pressed(MouseEvent event, Spot spot) {
            canvas.requestFocusInWindow();
            if (event.isPopupTrigger()) {
                canvas.popup(onCanvas(event), Optional.of(spot));
            } else if (SwingUtilities.isLeftMouseButton(event)) {
                canvas.gestures()
                        .onLabel(canvas, onCanvas(event), spot, slots())
                        .ifPresent(canvas::begin);
            }
        }

        @Override
        public void mouseDragged(MouseEvent event) {
            canvas.dragged(onCanvas(event));
        }

        @Override
        public void mouseReleased(MouseEvent event) {
            if (event.isPopupTrigger()) {
                canvas.popup(onCanvas(event), at(event.getY()));
            } else {
                canvas.released(onCanvas(event));
            }
        }

        private MouseEvent onCanvas(MouseEvent event) {
            return SwingUtilities.convertMouseEvent(LabelColumn.this, event, canvas);
        }
    }

    /** The whole of a name that has no room. */
    @Override
    public String getToolTipText(MouseEvent event) {
        FontMetrics strong = getFontMetrics(strong());
        return rows.stream()
                .filter(row -> Math.abs(row.y() - event.getY()) <= rowHeight / 2.0)
                .map(row -> row.wording().name())
                .filter(name -> strong.stringWidth(name) > columns[0])
                .findFirst()
                .orElse(null);
    }

    /** Where blocks can be put down between the labels. */
    Slots slots() {
        List<Slots.Line> lines = new ArrayList<>();
        double design = canvas.getHeight();
        for (Row row : rows) {
            if (row.spot().isPresent()) {
                Spot spot = row.spot().get();
                lines.add(new Slots.Line(spot.place(), spot.id(), row.y()));
            } else {
                design = row.y();
            }
        }
        return new Slots(lines, design);
    }

    private Optional<Spot> at(int y) {
        return rows.stream()
                .filter(row -> Math.abs(row.y() - y) <= rowHeight / 2.0)
                .findFirst()
                .flatMap(Row::spot);
    }

    /** Where a block's amount stands in this column. */
    public Optional<Rectangle> amountBox(Place place, String id) {
        return rows.stream()
                .filter(row -> row.spot()
                        .filter(spot -> spot.place() == place && spot.id().equals(id))
                        .isPresent())
                .findFirst()
                .map(row -> new Rectangle(
                        EDGE + columns[0] + GAP, (int) Math.round(row.y() - rowHeight / 2.0), columns[1], rowHeight));
    }

    /** What the label of a block says. */
    public Optional<BlockWording> wording(Place place, String id) {
        return rows.stream()
                .filter(row -> row.spot()
                        .filter(spot -> spot.place() == place && spot.id().equals(id))
                        .isPresent())
                .findFirst()
                .map(Row::wording);
    }

    private java.awt.Font plain() {
        return UIManager.getFont("Label.font");
    }

    private java.awt.Font strong() {
        return UIManager.getFont("semibold.font");
    }

    @Override
    public void updateUI() {
        super.updateUI();
        if (canvas != null) {
            arrange();
        }
    }

    private void arrange() {
        rowHeight = getFontMetrics(plain()).getHeight() + 4;
        CanvasMap map = canvas.map();
        List<Row> wanted = new ArrayList<>();
        boolean designDone = false;
        for (Spot spot : map.spots()) {
            if (spot.place() == Place.START && !designDone) {
                wanted.add(design(map));
                designDone = true;
            }
            wanted.add(new Row(
                    Optional.of(spot),
                    BlockWording.of(map.picture().plan(), spot.place(), spot.plan(), texts),
                    spot.middle(),
                    spot.middle()));
        }
        if (!designDone) {
            wanted.add(design(map));
        }
        double[] middles = wanted.stream().mapToDouble(Row::target).toArray();
        double half = rowHeight / 2.0 + 2;
        double[] placed = Spread.apart(middles, rowHeight, half, canvas.getHeight() - half);
        rows = new ArrayList<>();
        for (int i = 0; i < placed.length; i++) {
            Row row = wanted.get(i);
            rows.add(new Row(row.spot(), row.wording(), placed[i], row.target()));
        }
        int[] before = columns;
        columns = widths();
        canvas.setLeastHeight((wanted.size() + 1) * rowHeight);
        if (!java.util.Arrays.equals(before, columns)) {
            revalidate();
        }
        repaint();
    }

    private Row design(CanvasMap map) {
        String height = map.picture()
                .plan()
                .piece()
                .shown()
                .height(map.picture().plan().piece().design().height().mm());
        return new Row(
                Optional.empty(),
                new BlockWording(texts.say("label.design"), "", height, ""),
                map.designMiddle(),
                map.designMiddle());
    }

    private int[] widths() {
        FontMetrics strong = getFontMetrics(strong());
        FontMetrics plain = getFontMetrics(plain());
        int[] widths = {
            70,
            plain.stringWidth(texts.say("label.title.amount")),
            plain.stringWidth(texts.say("label.title.height")),
            plain.stringWidth(texts.say("label.title.cut"))
        };
        for (Row row : rows) {
            widths[0] = Math.max(
                    widths[0],
                    Math.min(MOST_NAME, strong.stringWidth(row.wording().name())));
            widths[1] = Math.max(widths[1], plain.stringWidth(row.wording().amount()));
            widths[2] = Math.max(widths[2], plain.stringWidth(row.wording().height()));
            widths[3] = Math.max(widths[3], plain.stringWidth(row.wording().cut()));
        }
        return widths;
    }

    @Override
    public Dimension getPreferredSize() {
        int width = EDGE + LEADER;
        for (int column : columns) {
            width += column + GAP;
        }
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
            g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
            g.setColor(UIManager.getColor("Panel.background"));
            g.fillRect(0, 0, getWidth(), getHeight());
            g.setColor(UIManager.getColor("Thrumwright.quiet"));
            g.setFont(column.plain().deriveFont(column.plain().getSize2D() - 1.5f));
            int base = (getHeight()
                            + g.getFontMetrics().getAscent()
                            - g.getFontMetrics().getDescent())
                    / 2;
            column.texts(
                    g,
                    base,
                    new BlockWording(
                            column.texts.say("label.title.block"),
                            column.texts.say("label.title.amount"),
                            column.texts.say("label.title.height"),
                            column.texts.say("label.title.cut")),
                    g.getFont());
            g.dispose();
        }
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = (Graphics2D) graphics.create();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        g.setColor(canvas.palette().paper());
        g.fillRect(0, 0, getWidth(), getHeight());
        Rectangle part = g.getClipBounds();
        List<Row> seen =
                rows.stream().filter(row -> part == null || meets(row, part)).toList();
        leaders(g, seen, false);
        leaders(g, seen, true);
        seen.forEach(row -> row(g, row));
        g.dispose();
    }

    /** Whether a label or its line to the block can be seen. */
    private boolean meets(Row row, Rectangle part) {
        return Math.min(row.y(), row.target()) - rowHeight <= part.getMaxY()
                && Math.max(row.y(), row.target()) + rowHeight >= part.getMinY();
    }

    private void row(Graphics2D g, Row row) {
        boolean selected = selected(row);
        int top = (int) Math.round(row.y() - rowHeight / 2.0);
        int right = getWidth() - LEADER;
        if (selected) {
            g.setColor(UIManager.getColor("Thrumwright.selectedBackground"));
            g.fillRoundRect(2, top, right - 2, rowHeight, 6, 6);
            g.setColor(UIManager.getColor("Thrumwright.selected"));
            g.fillRoundRect(2, top + 3, 3, rowHeight - 6, 3, 3);
        }
        FontMetrics metrics = g.getFontMetrics(plain());
        int base = top + (rowHeight + metrics.getAscent() - metrics.getDescent()) / 2;
        boolean quiet = row.spot().isEmpty()
                || row.spot().get().plan().comesOut()
                || row.spot().get().place() == Place.TOP && session.shown().topFollows();
        Color ink = UIManager.getColor("Label.foreground");
        g.setColor(quiet && !selected ? UIManager.getColor("Thrumwright.quiet") : ink);
        texts(g, base, row.wording(), strong());
    }

    private boolean selected(Row row) {
        return row.spot()
                .filter(spot -> session.selection().has(spot.place(), spot.id()))
                .isPresent();
    }

    /** Lines from labels to their blocks, all at once, since each by itself takes long. */
    private void leaders(Graphics2D g, List<Row> seen, boolean selected) {
        Path2D lines = new Path2D.Double(Path2D.WIND_NON_ZERO, Math.max(1, 4 * seen.size()));
        int from = getWidth() - LEADER;
        for (Row row : seen) {
            if (selected(row) == selected) {
                lines.moveTo(from + 3, row.y());
                lines.lineTo(from + 9, row.y());
                lines.lineTo(getWidth() - 7, row.target());
                lines.lineTo(getWidth(), row.target());
            }
        }
        g.setColor(
                selected
                        ? UIManager.getColor("Thrumwright.selected")
                        : canvas.palette().faint());
        g.setStroke(new BasicStroke(selected ? 2 : 1));
        boolean dense = seen.size() > DENSE;
        g.setRenderingHint(
                RenderingHints.KEY_ANTIALIASING,
                dense ? RenderingHints.VALUE_ANTIALIAS_OFF : RenderingHints.VALUE_ANTIALIAS_ON);
        g.draw(lines);
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    }

    private void texts(Graphics2D g, int base, BlockWording wording, java.awt.Font nameFont) {
        int x = EDGE;
        g.setFont(nameFont);
        g.drawString(clipped(wording.name(), g.getFontMetrics(), columns[0]), x, base);
        x += columns[0] + GAP;
        if (nameFont.equals(strong())) {
            g.setFont(plain());
        }
        right(g, wording.amount(), x, columns[1], base);
        x += columns[1] + GAP;
        right(g, wording.height(), x, columns[2], base);
        x += columns[2] + GAP;
        right(g, wording.cut(), x, columns[3], base);
    }

    private static void right(Graphics2D g, String text, int x, int width, int base) {
        g.drawString(text, x + width - g.getFontMetrics().stringWidth(text), base);
    }

    private static String clipped(String text, FontMetrics metrics, int width) {
        String shown = text;
        while (shown.length() > 1 && metrics.stringWidth(shown) > width) {
            shown = shown.substring(0, shown.length() - 2).stripTrailing() + "…";
        }
        return shown;
    }
}
