package thrumwright.editor.view;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Dimension;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import javax.swing.UIManager;
import thrumwright.drawing.Palette;
import thrumwright.drawing.Spread;
import thrumwright.editor.edit.Session;
import thrumwright.editor.text.Texts;
import thrumwright.measure.Shown;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;
import thrumwright.plan.Budget;

/** The warp from the lower bar (left) to the upper bar (right): what takes how much of it. */
public final class BudgetView extends PictureView {
    private static final long serialVersionUID = 1L;
    private static final int SIDE = 24;
    private static final int BETWEEN = 16;
    private static final int BAR = 26;

    /** Room above the bar, in lines. */
    private static final double ABOVE = 1.6;

    private final transient Session session;
    private final transient Texts texts;
    private final transient Supplier<Palette> palette;

    /** A stretch of the warp, mm above the lower bar. */
    private record Part(String key, double from, double to, Color colour) {}

    public BudgetView(Session session, Texts texts, Supplier<Palette> palette) {
        this.session = session;
        this.texts = texts;
        this.palette = palette;
        setName("budget");
        LiveView.keep(session, this, this::describe);
    }

    private void describe() {
        StringBuilder all = new StringBuilder();
        parts().forEach(part -> all.append(name(part)).append(". "));
        getAccessibleContext().setAccessibleDescription(all.toString());
    }

    private Shown shown() {
        return session.shown().shown();
    }

    private List<Part> parts() {
        Budget budget = session.plan().budget();
        Piece piece = session.shown();
        Color start = new Color(piece.stripe(Place.START).colour().rgb());
        Color top = new Color(piece.stripe(Place.TOP).colour().rgb());
        double designEnds = budget.designEnds();
        double topEnds = designEnds + budget.top();
        double left = Math.max(0, budget.left());
        List<Part> parts = new ArrayList<>();
        parts.add(new Part("clearance", 0, budget.clearance(), palette.get().paper()));
        parts.add(new Part("start", budget.clearance(), budget.startLine(), start));
        parts.add(
                new Part("design", budget.startLine(), designEnds, palette.get().post()));
        parts.add(new Part("top", designEnds, topEnds, top));
        parts.add(new Part(
                "room", topEnds, topEnds + budget.workingRoom(), palette.get().paper()));
        parts.add(new Part(
                "left",
                topEnds + budget.workingRoom(),
                topEnds + budget.workingRoom() + left,
                palette.get().paper()));
        parts.removeIf(part -> part.to() - part.from() < 0.05);
        return parts;
    }

    private String name(Part part) {
        return texts.say("budget." + part.key(), Map.of("height", shown().height(part.to() - part.from())));
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = (Graphics2D) graphics.create();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        g.setColor(palette.get().paper());
        g.fillRect(0, 0, getWidth(), getHeight());
        g.setFont(UIManager.getFont("Label.font"));
        Budget budget = session.plan().budget();
        List<Part> parts = parts();
        double reach = Math.max(budget.open(), parts.get(parts.size() - 1).to());
        double scale = Math.max(1, getWidth() - 2 * SIDE) / reach;
        double top = g.getFontMetrics().getHeight() * ABOVE;
        double high = BAR;
        for (Part part : parts) {
            bar(g, part, scale, top, high);
        }
        names(g, parts, scale, top + high);
        mark(g, "budget.line.start", budget.startLine(), scale, top, high);
        mark(g, "budget.line.stop", budget.stopLine(), scale, top, high);
        end(g, scale * budget.open(), top, high);
        g.dispose();
    }

    private void bar(Graphics2D g, Part part, double scale, double top, double high) {
        Rectangle2D bar = new Rectangle2D.Double(
                SIDE + part.from() * scale, top, Math.max(1, (part.to() - part.from()) * scale), high);
        g.setColor(part.colour());
        g.fill(bar);
        g.setColor(palette.get().ink());
        g.setStroke(new BasicStroke(1));
        g.draw(bar);
    }

    /** The names below, each with a line to its part, on as many rows as they need. */
    private void names(Graphics2D g, List<Part> parts, double scale, double below) {
        FontMetrics metrics = g.getFontMetrics();
        double widest = widest(metrics, parts);
        double[] wanted = parts.stream()
                .mapToDouble(part -> SIDE + (part.from() + part.to()) / 2 * scale)
                .toArray();
        int rows = rows(metrics, parts);
        double apart = (widest + BETWEEN) / rows;
        double[] placed = Spread.apart(wanted, apart, widest / 2 + 6, getWidth() - widest / 2 - 6);
        for (int i = 0; i < placed.length; i++) {
            String name = name(parts.get(i));
            double row = below + metrics.getHeight() * (1.5 + 1.1 * (i % rows));
            g.setColor(palette.get().faint());
            g.draw(new Line2D.Double(wanted[i], below + 1, placed[i], row - metrics.getAscent()));
            g.setColor(palette.get().ink());
            g.drawString(name, (float) (placed[i] - metrics.stringWidth(name) / 2.0), (float) row);
        }
    }

    private double widest(FontMetrics metrics, List<Part> parts) {
        return parts.stream()
                .mapToDouble(part -> metrics.stringWidth(name(part)))
                .max()
                .orElse(0);
    }

    /** On how many rows the names have to stand, so that those on one row keep apart. */
    private int rows(FontMetrics metrics, List<Part> parts) {
        double widest = widest(metrics, parts);
        double needed = (widest + BETWEEN) * (parts.size() - 1);
        double room = Math.max(1, getWidth() - widest - BETWEEN);
        return (int) Math.min(parts.size(), Math.max(1, Math.ceil(needed / room)));
    }

    /** As high as its names need. */
    @Override
    public Dimension getPreferredSize() {
        FontMetrics metrics = getFontMetrics(UIManager.getFont("Label.font"));
        double names = metrics.getHeight() * (2 + 1.1 * rows(metrics, parts()));
        return new Dimension(300, (int) Math.ceil(metrics.getHeight() * ABOVE + BAR + names));
    }

    /** Start line and stop line, above the bar. */
    private void mark(Graphics2D g, String key, double at, double scale, double top, double high) {
        double x = SIDE + at * scale;
        g.setColor(palette.get().accent());
        g.setStroke(new BasicStroke(2));
        g.draw(new Line2D.Double(x, top - 5, x, top + high + 4));
        String text = texts.say(key, Map.of("height", shown().height(at)));
        double width = g.getFontMetrics().stringWidth(text);
        double left = Math.max(4, Math.min(getWidth() - width - 4, x - width / 2));
        g.drawString(text, (float) left, (float) (top - 8));
    }

    /** The upper bar. */
    private void end(Graphics2D g, double at, double top, double high) {
        g.setColor(palette.get().ink());
        g.setStroke(new BasicStroke(4));
        g.draw(new Line2D.Double(SIDE + at, top - 4, SIDE + at, top + high + 4));
        g.draw(new Line2D.Double(SIDE, top - 4, SIDE, top + high + 4));
    }
}
