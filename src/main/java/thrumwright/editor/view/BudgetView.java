package thrumwright.editor.view;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Cursor;
import java.awt.Dimension;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.event.ActionEvent;
import java.awt.event.FocusEvent;
import java.awt.event.FocusListener;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import javax.swing.AbstractAction;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import javax.swing.ToolTipManager;
import javax.swing.UIManager;
import thrumwright.drawing.Palette;
import thrumwright.drawing.Spread;
import thrumwright.drawing.YarnPatch;
import thrumwright.editor.edit.Selection;
import thrumwright.editor.edit.Session;
import thrumwright.editor.look.Ground;
import thrumwright.editor.text.Texts;
import thrumwright.editor.view.WarpParts.Slice;
import thrumwright.editor.view.WarpParts.Stretch;
import thrumwright.measure.Shown;
import thrumwright.plan.Budget;

/**
 * The warp to scale from the lower bar (left) to the upper bar (right): what takes how much of it, with the blocks of
 * both ends. A click on a block, or the arrow keys, select it; selected ones are framed.
 */
public final class BudgetView extends PictureView {
    private static final long serialVersionUID = 1L;
    private static final int SIDE = 24;
    private static final int BETWEEN = 16;
    private static final int BAR = 30;
    private static final int NEAR = 4;

    private final transient Session session;
    private final transient Texts texts;
    private final transient Supplier<Palette> palette;

    /** Words at a height above the lower bar, mm. */
    private record Label(String text, double at, Color colour) {}

    public BudgetView(Session session, Texts texts, Supplier<Palette> palette) {
        this.session = session;
        this.texts = texts;
        this.palette = palette;
        setName("budget");
        setFocusable(true);
        getAccessibleContext().setAccessibleName(texts.say("tab.budget"));
        ToolTipManager.sharedInstance().registerComponent(this);
        listen();
        LiveView.keep(session, this, this::describe, this::repaint);
    }

    private void listen() {
        MouseAdapter mouse = new MouseAdapter() {
            @Override
            public void mousePressed(MouseEvent event) {
                if (SwingUtilities.isLeftMouseButton(event)) {
                    requestFocusInWindow();
                    at(event).ifPresent(BudgetView.this::select);
                }
            }

            @Override
            public void mouseMoved(MouseEvent event) {
                setCursor(
                        Cursor.getPredefinedCursor(at(event).isPresent() ? Cursor.HAND_CURSOR : Cursor.DEFAULT_CURSOR));
            }
        };
        addMouseListener(mouse);
        addMouseMotionListener(mouse);
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
        onKeys(-1, "LEFT", "DOWN");
        onKeys(1, "RIGHT", "UP");
    }

    private void onKeys(int by, String... keys) {
        for (String key : keys) {
            getInputMap().put(KeyStroke.getKeyStroke(key), "block " + by);
        }
        getActionMap().put("block " + by, new AbstractAction() {
            private static final long serialVersionUID = 1L;

            @Override
            public void actionPerformed(ActionEvent event) {
                go(by);
            }
        });
    }

    private void go(int by) {
        List<Slice> slices = parts().slices();
        int now = -1;
        for (int i = 0; i < slices.size(); i++) {
            if (isLead(slices.get(i))) {
                now = i;
            }
        }
        if (!slices.isEmpty()) {
            select(slices.get(now < 0 ? 0 : Math.max(0, Math.min(slices.size() - 1, now + by))));
        }
    }

    private boolean isLead(Slice slice) {
        return session.selection().place() == slice.place()
                && session.selection().lead().equals(Optional.of(slice.id()));
    }

    private void select(Slice slice) {
        session.select(Selection.of(slice.place(), slice.id()));
    }

    private void describe() {
        StringBuilder all = new StringBuilder();
        parts().stretches().forEach(part -> all.append(name(part)).append(". "));
        lines().forEach(line -> all.append(line.text()).append(". "));
        getAccessibleContext().setAccessibleDescription(all.toString());
        revalidate();
    }

    private Shown shown() {
        return session.shown().shown();
    }

    private WarpParts parts() {
        return WarpParts.of(session.plan(), palette.get());
    }

    private String name(Stretch part) {
        return texts.say("budget." + part.key(), Map.of("height", shown().height(part.height())));
    }

    private List<Label> names() {
        return parts().stretches().stream()
                .map(part -> new Label(name(part), part.middle(), palette.get().ink()))
                .toList();
    }

    /** Both bars and both lines, from the lowest. */
    private List<Label> lines() {
        Budget budget = session.plan().budget();
        List<Label> lines = new ArrayList<>();
        lines.add(new Label(texts.say("budget.bar.lower"), 0, palette.get().ink()));
        lines.add(line("budget.line.start", budget.startLine(), palette.get().accent()));
        lines.add(line("budget.line.stop", budget.stopLine(), palette.get().accent()));
        lines.add(line("budget.bar.upper", budget.open(), palette.get().ink()));
        lines.sort(Comparator.comparingDouble(Label::at));
        return lines;
    }

    private Label line(String key, double at, Color colour) {
        return new Label(texts.say(key, Map.of("height", shown().height(at))), at, colour);
    }

    private Optional<Slice> at(MouseEvent event) {
        double top = above();
        boolean onBar = event.getY() >= top - 3 && event.getY() <= top + bar() + 3;
        return onBar ? parts().at((event.getX() - SIDE) / scale(), NEAR / scale()) : Optional.empty();
    }

    @Override
    public String getToolTipText(MouseEvent event) {
        return at(event)
                .map(slice ->
                        texts.words().name(slice.block().block()) + ", " + shown().height(slice.to() - slice.from()))
                .orElse(null);
    }

    /** Pixels for a millimetre. */
    private double scale() {
        double reach = Math.max(session.plan().budget().open(), parts().reach());
        return Math.max(1, getWidth() - 2 * SIDE) / Math.max(1, reach);
    }

    private FontMetrics metrics() {
        return getFontMetrics(UIManager.getFont("Label.font"));
    }

    /** Room above the bar. */
    private double above() {
        return metrics().getHeight() * (0.6 + 1.1 * rows(lines()));
    }

    private double below() {
        return metrics().getHeight() * (0.9 + 1.1 * rows(names()));
    }

    /** How high the bar is: higher where there is room, but never so high that it looks like a piece of cloth. */
    private double bar() {
        return Math.max(BAR, Math.min(3 * BAR, getHeight() - above() - below()));
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = (Graphics2D) graphics.create();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        Ground.fill(g, this, palette.get().paper());
        g.setFont(UIManager.getFont("Label.font"));
        WarpParts parts = parts();
        double top = above();
        parts.stretches().forEach(part -> bar(g, part, top));
        parts.slices()
                .forEach(
                        slice -> YarnPatch.paint(g, palette.get(), slice.colour(), box(slice.from(), slice.to(), top)));
        Budget budget = session.plan().budget();
        upright(g, 0, 4, palette.get().ink());
        upright(g, budget.open(), 4, palette.get().ink());
        upright(g, budget.startLine(), 2, palette.get().accent());
        upright(g, budget.stopLine(), 2, palette.get().accent());
        parts.slices().stream()
                .filter(slice -> session.selection().has(slice.place(), slice.id()))
                .forEach(slice -> frame(g, slice, top));
        label(g, lines(), top - 7, -1);
        label(g, names(), top + bar() + 7, 1);
        if (isFocusOwner()) {
            g.setColor(UIManager.getColor("Thrumwright.selected"));
            g.setStroke(new BasicStroke(2));
            g.drawRect(1, 1, getWidth() - 2, getHeight() - 2);
        }
        g.dispose();
    }

    private Rectangle2D box(double from, double to, double top) {
        return new Rectangle2D.Double(SIDE + from * scale(), top, Math.max(1, (to - from) * scale()), bar());
    }

    private void bar(Graphics2D g, Stretch part, double top) {
        Rectangle2D box = box(part.from(), part.to(), top);
        g.setColor(
                "design".equals(part.key())
                        ? palette.get().post()
                        : palette.get().paper());
        g.fill(box);
        g.setColor(palette.get().ink());
        g.setStroke(new BasicStroke(1));
        g.draw(box);
    }

    /** Beyond the bar's edges, so that a thin block is seen as well. */
    private void frame(Graphics2D g, Slice slice, double top) {
        Rectangle2D box = box(slice.from(), slice.to(), top);
        g.setColor(UIManager.getColor("Thrumwright.selected"));
        g.setStroke(new BasicStroke(2));
        g.draw(new Rectangle2D.Double(box.getX() - 2, box.getY() - 4, box.getWidth() + 4, box.getHeight() + 8));
    }

    /** A bar of the loom, or a line across the warp. */
    private void upright(Graphics2D g, double at, int thick, Color colour) {
        double x = SIDE + at * scale();
        double top = above();
        g.setColor(colour);
        g.setStroke(new BasicStroke(thick));
        g.draw(new Line2D.Double(x, top - 5, x, top + bar() + 5));
    }

    /**
     * Words above or below the bar, each with a line to what it names, on as many rows as they need.
     *
     * @param from where those lines begin
     * @param down 1 below, −1 above
     */
    private void label(Graphics2D g, List<Label> labels, double from, int down) {
        FontMetrics metrics = g.getFontMetrics();
        int rows = rows(labels);
        double[] wanted = labels.stream()
                .mapToDouble(label -> SIDE + label.at() * scale())
                .toArray();
        double[] placed = placed(labels, wanted, rows);
        for (int i = 0; i < placed.length; i++) {
            int row = down > 0 ? i % rows : rows - 1 - i % rows;
            double base = down > 0
                    ? from + metrics.getAscent() + 3 + 1.1 * metrics.getHeight() * row
                    : from - metrics.getDescent() - 2 - 1.1 * metrics.getHeight() * row;
            double near = down > 0 ? base - metrics.getAscent() : base + metrics.getDescent();
            g.setColor(palette.get().faint());
            g.setStroke(new BasicStroke(1));
            g.draw(new Line2D.Double(wanted[i], from, placed[i], near));
            g.setColor(labels.get(i).colour());
            String text = labels.get(i).text();
            g.drawString(text, (float) (placed[i] - metrics.stringWidth(text) / 2.0), (float) base);
        }
    }

    /** The middle of each label, pixels: as near to what it names as the others allow. */
    private double[] placed(List<Label> labels, double[] wanted, int rows) {
        double widest = widest(labels);
        if (rows > 1) {
            return Spread.apart(wanted, (widest + BETWEEN) / rows, widest / 2 + 6, getWidth() - widest / 2 - 6);
        }
        double[] before = new double[wanted.length];
        double[] freed = wanted.clone();
        for (int i = 1; i < wanted.length; i++) {
            before[i] = before[i - 1] + (width(labels.get(i - 1)) + width(labels.get(i))) / 2 + BETWEEN;
            freed[i] -= before[i];
        }
        int last = wanted.length - 1;
        double low = width(labels.get(0)) / 2 + 6;
        double high = getWidth() - width(labels.get(last)) / 2 - 6 - before[last];
        double[] placed = Spread.apart(freed, 0, low, high);
        for (int i = 0; i < placed.length; i++) {
            placed[i] += before[i];
        }
        return placed;
    }

    private double width(Label label) {
        return metrics().stringWidth(label.text());
    }

    private double widest(List<Label> labels) {
        return labels.stream().mapToDouble(this::width).max().orElse(0);
    }

    /** On how many rows they have to stand, so that those on one row keep apart. */
    private int rows(List<Label> labels) {
        double widest = widest(labels);
        double needed = (widest + BETWEEN) * (labels.size() - 1);
        double room = Math.max(1, getWidth() - widest - BETWEEN);
        return (int) Math.min(Math.max(1, labels.size()), Math.max(1, Math.ceil(needed / room)));
    }

    /** Another width may need another number of rows for the words. */
    @Override
    public void setBounds(int x, int y, int width, int height) {
        boolean other = width != getWidth();
        super.setBounds(x, y, width, height);
        if (other) {
            revalidate();
        }
    }

    /** As high as its words need. */
    @Override
    public Dimension getPreferredSize() {
        return new Dimension(300, (int) Math.ceil(above() + BAR + below()));
    }
}
