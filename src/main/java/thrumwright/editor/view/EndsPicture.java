package thrumwright.editor.view;

import java.awt.BasicStroke;
import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.LayoutManager;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import javax.swing.JPanel;
import javax.swing.UIManager;
import thrumwright.drawing.Palette;
import thrumwright.drawing.View;
import thrumwright.drawing.piece.PiecePainter;
import thrumwright.drawing.piece.PiecePicture;
import thrumwright.editor.edit.Selection;
import thrumwright.editor.edit.Session;
import thrumwright.editor.look.Ground;
import thrumwright.editor.look.Smooth;
import thrumwright.editor.text.Texts;
import thrumwright.piece.Place;
import thrumwright.plan.BlockPlan;
import thrumwright.plan.EndPlan;
import thrumwright.plan.Hem;
import thrumwright.plan.comparison.BlockPair;
import thrumwright.plan.comparison.EndComparison;
import thrumwright.plan.words.ComparisonWords;

/**
 * The start at the left, the top turned upside down at the right, both with the design above, and between them what is
 * said of each pair of blocks, joined to both.
 */
final class EndsPicture extends JPanel {
    private static final long serialVersionUID = 1L;

    /** Room between a picture and the words, pixels. */
    private static final int JOIN = 30;

    private static final int LEAST_HEIGHT = 120;
    private static final double MOST_SCALE = 9;

    private final transient Session session;
    private final transient Texts texts;
    private final transient Supplier<Palette> palette;
    private final transient Map<PairWords.Told, PairWords> known = new HashMap<>();
    private transient List<PairWords> rows = List.of();
    private transient Optional<PiecePicture> picture = Optional.empty();

    EndsPicture(Session session, Texts texts, Supplier<Palette> palette) {
        super(null);
        this.session = session;
        this.texts = texts;
        this.palette = palette;
        setOpaque(false);
        setLayout(new PairRows());
        getAccessibleContext().setAccessibleName(texts.say("ends.picture"));
    }

    /** Shows another comparison of what the session shows. */
    void show(EndComparison comparison, ComparisonWords words) {
        picture = Optional.of(
                picture.map(before -> before.next(session.plan())).orElseGet(() -> PiecePicture.of(session.plan())));
        List<PairWords> all = new ArrayList<>();
        for (BlockPair pair : comparison.pairs()) {
            PairWords row = row(PairWords.Told.of(pair, words.of(pair), texts));
            row.setPair(pair);
            all.add(0, row);
        }
        rows = List.copyOf(all);
        known.values().retainAll(Set.copyOf(rows));
        arrange();
    }

    /** What is said of most pairs stays as it is, and so does its row. */
    private PairWords row(PairWords.Told told) {
        return known.computeIfAbsent(told, other -> new PairWords(other, texts, session));
    }

    /** Those rows that are wanted, in their order. */
    private void arrange() {
        for (Component child : getComponents()) {
            if (!rows.contains(child)) {
                remove(child);
            }
        }
        for (int i = 0; i < rows.size(); i++) {
            if (i >= getComponentCount() || getComponent(i) != rows.get(i)) {
                add(rows.get(i), i);
            }
        }
        revalidate();
    }

    /** Shows which blocks are selected. */
    void mark() {
        Selection selection = session.selection();
        for (PairWords row : rows) {
            Optional<BlockPlan> block = selection.place() == Place.START
                    ? row.pair().start()
                    : row.pair().top();
            row.setSelected(
                    block.filter(there -> selection.ids().contains(there.block().id()))
                            .isPresent());
        }
    }

    /** The pair whose name has the keyboard, by its block. */
    Optional<String> focused() {
        return rows.stream()
                .filter(PairWords::isFocused)
                .map(row -> row.pair().block().id())
                .findFirst();
    }

    void focus(String id) {
        rows.stream()
                .filter(row -> row.pair().block().id().equals(id))
                .findFirst()
                .ifPresent(PairWords::focus);
    }

    /** Words in the middle, one pair under the other; the pictures take a quarter of the width each. */
    private final class PairRows implements LayoutManager {
        @Override
        public void addLayoutComponent(String name, Component component) {
            // Every component is a pair.
        }

        @Override
        public void removeLayoutComponent(Component component) {
            // Every component is a pair.
        }

        @Override
        public Dimension preferredLayoutSize(Container parent) {
            int width = parent.getWidth() > 0 ? parent.getWidth() : 600;
            return new Dimension(width, Math.max(LEAST_HEIGHT, heights(wordsWidth(width))) + title());
        }

        @Override
        public Dimension minimumLayoutSize(Container parent) {
            return new Dimension(200, preferredLayoutSize(parent).height);
        }

        @Override
        public void layoutContainer(Container parent) {
            int words = wordsWidth(parent.getWidth());
            int left = (parent.getWidth() - words) / 2;
            int y = title();
            for (PairWords row : rows) {
                int height = row.heightFor(words);
                row.setBounds(left, y, words, height);
                y += height;
            }
        }
    }

    private int heights(int width) {
        return rows.stream().mapToInt(row -> row.heightFor(width)).sum();
    }

    private static int pictureWidth(int width) {
        return Math.max(60, width / 4);
    }

    private static int wordsWidth(int width) {
        return Math.max(100, width - 2 * (pictureWidth(width) + JOIN));
    }

    private int title() {
        return getFontMetrics(UIManager.getFont("Label.font")).getHeight() + 6;
    }

    @Override
    public void setBounds(int x, int y, int width, int height) {
        boolean other = width != getWidth();
        super.setBounds(x, y, width, height);
        if (other) {
            revalidate();
        }
    }

    private double scale() {
        double tallest =
                Math.max(session.plan().start().height(), session.plan().top().height());
        return Math.min(MOST_SCALE, (getHeight() - title() - 12) / Math.max(1, tallest + stripe()));
    }

    /** Of the design, mm. */
    private double stripe() {
        return picture.map(shown -> Math.max(
                        PiecePainter.stripeHeight(shown, Place.START), PiecePainter.stripeHeight(shown, Place.TOP)))
                .orElse(0.0);
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = (Graphics2D) graphics.create();
        Smooth.both(g);
        picture.ifPresent(shown -> {
            for (Place place : Place.values()) {
                paint((Graphics2D) g.create(), shown, place);
            }
        });
        rows.forEach(row -> join(g, row));
        g.dispose();
    }

    private Rectangle2D box(Place place) {
        int width = pictureWidth(getWidth());
        double left = place == Place.START ? 0 : getWidth() - width;
        return new Rectangle2D.Double(left, title(), width, getHeight() - title());
    }

    /** From its left edge on, as much as there is room for; the top turned by half a turn. */
    private void paint(Graphics2D g, PiecePicture shown, Place place) {
        Rectangle2D box = box(place);
        g.setFont(UIManager.getFont("Label.font"));
        g.setColor(UIManager.getColor("Label.foreground"));
        String title = texts.say(place == Place.START ? "ends.start" : "ends.top");
        double room = place == Place.START ? 0 : Math.max(0, g.getFontMetrics().stringWidth(title) - box.getWidth());
        g.drawString(title, (float) (box.getX() - room), (float)
                (title() - 4 - g.getFontMetrics().getDescent()));
        g.clip(box);
        Ground.fill(g, box, palette.get().paper());
        double scale = scale();
        double margin = 3 * session.shown().warp().sett().spacing() + 2;
        double base = design() + session.plan().start().height() * scale;
        if (place == Place.TOP) {
            g.rotate(Math.PI, box.getCenterX(), box.getCenterY());
            base = 2 * box.getCenterY() - design();
        }
        View view = new View(scale, box.getX() + margin * scale, base);
        new PiecePainter(g, palette.get(), false).end(view, shown, place, box.getHeight() / scale);
        g.dispose();
    }

    /** Where the design begins, in both pictures. */
    private double design() {
        return title() + 6 + stripe() * scale();
    }

    /** Where the middle of a block lies; that of a fold is its line. */
    private double middle(EndPlan end, BlockPlan block) {
        double up = end.hem()
                .filter(hem -> hem.blockId().equals(block.block().id()))
                .map(Hem::foldLine)
                .orElse(block.bottom() + block.height() / 2);
        double fromDesign = end.place() == Place.START ? end.height() - up : up;
        return design() + fromDesign * scale();
    }

    /** A line from the words to both blocks; a ring where one has no partner. */
    private void join(Graphics2D g, PairWords row) {
        g.setColor(UIManager.getColor("Thrumwright.quiet"));
        g.setStroke(new BasicStroke(1));
        double y = row.getY() + row.anchor();
        joined(g, row.pair().start(), Place.START, box(Place.START).getMaxX(), row.getX() - 2, y);
        joined(g, row.pair().top(), Place.TOP, box(Place.TOP).getMinX(), row.getX() + row.getWidth() + 2, y);
    }

    private void joined(Graphics2D g, Optional<BlockPlan> block, Place place, double at, double words, double y) {
        double step = Math.signum(words - at) * 4;
        if (block.isEmpty()) {
            g.draw(new Line2D.Double(words, y, words - step, y));
            g.draw(new Ellipse2D.Double(words - step * 2.4 - 4, y - 4, 8, 8));
            return;
        }
        double there = middle(session.plan().end(place), block.get());
        g.draw(new Line2D.Double(at, there, at + step, there));
        g.draw(new Line2D.Double(at + step, there, words - step, y));
        g.draw(new Line2D.Double(words - step, y, words, y));
    }
}
