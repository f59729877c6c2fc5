package thrumwright.editor.canvas;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Dimension;
import java.awt.Font;
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
import thrumwright.editor.look.Ground;
import thrumwright.editor.look.Pixels;
import thrumwright.editor.text.Texts;
import thrumwright.piece.Place;
import thrumwright.plan.Plan;

/** The blocks' names, amounts, heights and cuts beside the canvas, each with a line to its block. */
public final class LabelColumn extends JComponent {
    private static final long serialVersionUID = 1L;
    /** Room for the lines to the blocks. */
    private final int leader = Pixels.of(34);

    private final int gap = Pixels.of(12);
    private final int edge = Pixels.of(8);
    /** So many lines lie too close for their edges to be smoothed in the time there is. */
    private static final int DENSE = 40;

    /** Longer names are shortened; a tip says them in full. */
    private final int mostName = Pixels.of(170);

    private final int leastName = Pixels.of(70);

    /** In a narrow window the list leaves out its last columns, so that it takes no more of the width than that. */
    private static final double SHARE = 0.48;

    private final transient PieceCanvas canvas;
    private final transient Session session;
    private final transient Texts texts;
    private transient List<Row> rows = List.of();
    private transient LabelWidths columns = LabelWidths.NONE;
    /** How many of the columns there is room for. */
    private int shown = LabelWidths.COLUMNS;

    /** What the list shares with the picture, pixels. */
    private int room = Integer.MAX_VALUE;

    private int rowHeight;

    /**
     * A label in its place.
     *
     * @param spot empty for the design's
     * @param y its middle
     */
    private record Row(Optional<Spot> spot, BlockWording wording, LabelWidths widths, double y, double target) {}

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

    /** Whatever of a line has no room. */
    @Override
    public String getToolTipText(MouseEvent event) {
        return rows.stream()
                .filter(row -> Math.abs(row.y() - event.getY()) <= rowHeight / 2.0)
                .filter(row -> shown < LabelWidths.COLUMNS || row.widths().name() > columns.name())
                .findFirst()
                .map(row -> row.wording().whole())
                .orElse(null);
    }

    /** @param width of all that the list shares with the picture, pixels */
    public void setRoom(int width) {
        if (width != room) {
            room = width;
            arrange();
        }
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
                .map(row -> shown > 1
                        ? new Rectangle(edge + columns.name() + gap, top(row), columns.amount(), rowHeight)
                        : new Rectangle(edge, top(row), columns.name(), rowHeight));
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

    @Override
    public void updateUI() {
        super.updateUI();
        if (canvas != null) {
            arrange();
        }
    }

    private void arrange() {
        LabelFonts fonts = LabelFonts.now();
        rowHeight = getFontMetrics(fonts.plain()).getHeight() + 4;
        List<Row> wanted = wanted(fonts);
        double half = rowHeight / 2.0 + 2;
        double[] placed = Spread.apart(
                wanted.stream().mapToDouble(Row::target).toArray(), rowHeight, half, canvas.getHeight() - half);
        rows = new ArrayList<>();
        for (int i = 0; i < placed.length; i++) {
            Row row = wanted.get(i);
            rows.add(new Row(row.spot(), row.wording(), row.widths(), placed[i], row.target()));
        }
        columns = widths(fonts);
        narrow();
        canvas.setLeastHeight((wanted.size() + 1) * rowHeight);
        if (getPreferredSize().width != getWidth()) {
            revalidate();
        }
        repaint();
    }

    /** All rows from above, each beside what it is about; they may still lie over each other. */
    private List<Row> wanted(LabelFonts fonts) {
        CanvasMap map = canvas.map();
        List<Row> wanted = new ArrayList<>();
        boolean designDone = false;
        for (Spot spot : map.spots()) {
            if (spot.place() == Place.START && !designDone) {
                wanted.add(design(map, fonts));
                designDone = true;
            }
            BlockWording wording = BlockWording.of(map.picture().plan(), spot.place(), spot.plan(), texts);
            wanted.add(row(Optional.of(spot), wording, fonts, spot.middle()));
        }
        if (!designDone) {
            wanted.add(design(map, fonts));
        }
        return wanted;
    }

    private Row row(Optional<Spot> spot, BlockWording wording, LabelFonts fonts, double middle) {
        return new Row(spot, wording, LabelWidths.of(wording, fonts, this), middle, middle);
    }

    private Row design(CanvasMap map, LabelFonts fonts) {
        Plan plan = map.picture().plan();
        String height =
                plan.piece().shown().height(plan.piece().design().height().mm());
        BlockWording wording = new BlockWording(texts.say("label.design"), "", height, "");
        return row(Optional.empty(), wording, fonts, map.designMiddle());
    }

    private LabelWidths widths(LabelFonts fonts) {
        LabelWidths titles = LabelWidths.of(titleWords(), fonts, this);
        LabelWidths widest = new LabelWidths(leastName, titles.amount(), titles.height(), titles.cut());
        for (Row row : rows) {
            widest = widest.widest(row.widths());
        }
        return widest.withName(Math.min(mostName, widest.name()));
    }

    private BlockWording titleWords() {
        return new BlockWording(
                texts.say("label.title.block"),
                texts.say("label.title.amount"),
                texts.say("label.title.height"),
                texts.say("label.title.cut"));
    }

    /** Leaves out what is least asked for, cut and height; then the amount, and at last names are shortened. */
    private void narrow() {
        int most = (int) (room * SHARE) - leader;
        shown = LabelWidths.COLUMNS;
        while (shown > 1 && textsWidth() > most) {
            shown--;
        }
        if (textsWidth() > most) {
            columns = columns.withName(Math.max(leastName, columns.name() + most - textsWidth()));
        }
    }

    @Override
    public Dimension getPreferredSize() {
        // while something is dragged, longer or shorter words must not push the picture aside
        int width = canvas.isHeld() && getWidth() > 0 ? getWidth() : textsWidth() + leader;
        return new Dimension(width, canvas.getPreferredSize().height);
    }

    private int textsWidth() {
        return edge + columns.sum(shown) + shown * gap;
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
            Font plain = LabelFonts.now().plain();
            Font small = plain.deriveFont(plain.getSize2D() - 1.5f);
            FontMetrics metrics = g.getFontMetrics(small);
            LabelFonts fonts = new LabelFonts(small, small);
            BlockWording words = column.titleWords();
            int base = (getHeight() + metrics.getAscent() - metrics.getDescent()) / 2;
            column.texts(g, base, words, LabelWidths.of(words, fonts, this), fonts);
            g.dispose();
        }
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = (Graphics2D) graphics.create();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        Ground.fill(g, this, canvas.palette().paper());
        Rectangle part = g.getClipBounds();
        List<Row> seen =
                rows.stream().filter(row -> part == null || meets(row, part)).toList();
        leaders(g, seen, false);
        leaders(g, seen, true);
        LabelFonts fonts = LabelFonts.now();
        Color ink = UIManager.getColor("Label.foreground");
        Color quiet = UIManager.getColor("Thrumwright.quiet");
        for (Row row : seen) {
            selection(g, row);
            g.setColor(isQuiet(row) ? quiet : ink);
            FontMetrics metrics = g.getFontMetrics(fonts.plain());
            int base = top(row) + (rowHeight + metrics.getAscent() - metrics.getDescent()) / 2;
            texts(g, base, row.wording(), row.widths(), fonts);
        }
        g.dispose();
    }

    /** Whether a label or its line to the block can be seen. */
    private boolean meets(Row row, Rectangle part) {
        return Math.min(row.y(), row.target()) - rowHeight <= part.getMaxY()
                && Math.max(row.y(), row.target()) + rowHeight >= part.getMinY();
    }

    private int top(Row row) {
        return (int) Math.round(row.y() - rowHeight / 2.0);
    }

    private void selection(Graphics2D g, Row row) {
        if (selected(row)) {
            int top = top(row);
            g.setColor(UIManager.getColor("Thrumwright.selectedBackground"));
            g.fillRoundRect(2, top, textsWidth() - 2, rowHeight, 6, 6);
            g.setColor(UIManager.getColor("Thrumwright.selected"));
            g.fillRoundRect(2, top + 3, 3, rowHeight - 6, 3, 3);
        }
    }

    /** What is not woven by itself, or comes out again. */
    private boolean isQuiet(Row row) {
        return !selected(row)
                && (row.spot().isEmpty()
                        || row.spot().get().plan().comesOut()
                        || row.spot().get().place() == Place.TOP
                                && session.shown().topFollows());
    }

    private boolean selected(Row row) {
        return row.spot()
                .filter(spot -> session.selection().has(spot.place(), spot.id()))
                .isPresent();
    }

    /** Lines from labels to their blocks, all at once, since each by itself takes long. */
    private void leaders(Graphics2D g, List<Row> seen, boolean selected) {
        Path2D lines = new Path2D.Double(Path2D.WIND_NON_ZERO, Math.max(1, 4 * seen.size()));
        int from = textsWidth();
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

    private void texts(Graphics2D g, int base, BlockWording wording, LabelWidths widths, LabelFonts fonts) {
        g.setFont(fonts.strong());
        boolean fits = widths.name() <= columns.name();
        String name = fits ? wording.name() : clipped(wording.name(), g.getFontMetrics(), columns.name());
        g.drawString(name, edge, base);
        g.setFont(fonts.plain());
        int right = edge + columns.name();
        for (int i = 1; i < shown; i++) {
            right += gap + columns.of(i);
            g.drawString(wording.of(i), right - widths.of(i), base);
        }
    }

    private static String clipped(String text, FontMetrics metrics, int width) {
        String shown = text;
        while (shown.length() > 1 && metrics.stringWidth(shown) > width) {
            shown = shown.substring(0, shown.length() - 2).stripTrailing() + "…";
        }
        return shown;
    }
}
