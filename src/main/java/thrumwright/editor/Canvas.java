package thrumwright.editor;

import java.awt.BasicStroke;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.event.MouseWheelEvent;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import javax.accessibility.Accessible;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.accessibility.AccessibleState;
import javax.accessibility.AccessibleStateSet;
import javax.swing.AbstractAction;
import javax.swing.JComponent;
import javax.swing.JViewport;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import thrumwright.block.OrderingCord;
import thrumwright.block.PlainBand;
import thrumwright.drawing.Palette;
import thrumwright.drawing.PiecePainter;
import thrumwright.drawing.PiecePicture;
import thrumwright.drawing.Spread;
import thrumwright.drawing.View;
import thrumwright.editor.edit.Chosen;
import thrumwright.editor.edit.Session;
import thrumwright.measure.Phrases;
import thrumwright.measure.Shown;
import thrumwright.piece.Place;
import thrumwright.plan.BlockPlan;
import thrumwright.plan.EndPlan;
import thrumwright.plan.Words;
import thrumwright.plan.Work;

/**
 * The whole piece to scale: the start below, the top above, the design between them as a torn band. Beside it each
 * block's name, amount, height and cut. A click or the arrow keys choose a block.
 */
final class Canvas extends JComponent implements Accessible {
    private static final long serialVersionUID = 1L;
    private static final double BARE = 10;
    private static final int LABELS = 300;
    private static final int MARGIN = 18;
    private static final double CLOSEST = 60;
    private static final long MOST_CACHED = 12_000_000;

    private final transient Session session;
    private final transient Phrases phrases;
    private final transient Words words = new Words(Locale.UK);
    private transient PiecePicture picture;
    private transient Palette palette = Palette.onLightScreen();
    private double zoom = 1;
    private transient Cached cached;

    /** The piece as painted last, in device pixels. */
    private record Cached(PiecePicture picture, Palette palette, View view, double device, BufferedImage image) {
        boolean serves(PiecePicture wanted, Palette colours, View at, double pixels) {
            return picture == wanted && palette.equals(colours) && view.equals(at) && device == pixels;
        }
    }

    /** A block's label: where its block is, and what it says. */
    private record Label(Chosen block, double wanted, String name, String facts, boolean comesOut) {}

    Canvas(Session session, Phrases phrases) {
        this.session = session;
        this.phrases = phrases;
        this.picture = PiecePicture.of(session.plan());
        setName("canvas");
        setFocusable(true);
        setOpaque(true);
        session.listen(this::refresh);
        listenToMouse();
        bind("UP", () -> step(1));
        bind("DOWN", () -> step(-1));
        bind("HOME", () -> choose(blocks().size() - 1));
        bind("END", () -> choose(0));
        bind("ESCAPE", () -> session.choose(Optional.empty()));
    }

    private void bind(String key, Runnable work) {
        getInputMap().put(KeyStroke.getKeyStroke(key), key);
        getActionMap().put(key, new AbstractAction() {
            private static final long serialVersionUID = 1L;

            @Override
            public void actionPerformed(java.awt.event.ActionEvent event) {
                work.run();
            }
        });
    }

    private void listenToMouse() {
        MouseAdapter mouse = new MouseAdapter() {
            @Override
            public void mousePressed(MouseEvent event) {
                requestFocusInWindow();
                session.choose(at(event.getX(), event.getY()));
            }

            @Override
            public void mouseWheelMoved(MouseWheelEvent event) {
                if (event.isControlDown()) {
                    zoomBy(Math.pow(1.15, -event.getPreciseWheelRotation()), event.getX(), event.getY());
                } else {
                    getParent().dispatchEvent(SwingUtilities.convertMouseEvent(Canvas.this, event, getParent()));
                }
            }
        };
        addMouseListener(mouse);
        addMouseWheelListener(mouse);
    }

    private void refresh() {
        if (picture.plan() != session.plan()) {
            picture = picture.next(session.plan());
            revalidate();
        }
        repaint();
        chosenArea().ifPresent(this::scrollRectToVisible);
    }

    void setPalette(Palette other) {
        palette = other;
        setBackground(other.paper());
        repaint();
    }

    /** The scale at which the whole width fits, in pixels per mm. */
    private double fitting() {
        JViewport viewport = (JViewport) SwingUtilities.getAncestorOfClass(JViewport.class, this);
        Dimension room = viewport == null ? new Dimension(900, 600) : viewport.getExtentSize();
        double wide = (Math.max(400, room.width) - LABELS - 2 * MARGIN) / (picture.span() + 2 * picture.margin());
        double high = (Math.max(250, room.height) - 2 * MARGIN) / (picture.height() + 2 * BARE);
        return Math.max(0.05, Math.min(wide, Math.max(high, wide * 0.4)));
    }

    private double scale() {
        return Math.min(CLOSEST, fitting() * zoom);
    }

    /** Shows the whole piece. */
    void whole() {
        zoom = 1;
        revalidate();
        repaint();
    }

    /** Comes closer, or goes farther away with a factor below 1, round the middle of what is seen. */
    void zoomBy(double factor) {
        Rectangle seen = getVisibleRect();
        zoomBy(factor, (int) seen.getCenterX(), (int) seen.getCenterY());
    }

    private void zoomBy(double factor, int x, int y) {
        View before = view();
        double clothX = before.clothX(x);
        double clothY = before.clothY(y);
        Rectangle seen = getVisibleRect();
        zoom = Math.max(1, Math.min(CLOSEST / fitting(), zoom * factor));
        setSize(getPreferredSize());
        View after = view();
        scrollRectToVisible(new Rectangle(
                (int) Math.round(after.x(clothX)) - (x - seen.x),
                (int) Math.round(after.y(clothY)) - (y - seen.y),
                seen.width,
                seen.height));
        revalidate();
        repaint();
    }

    @Override
    public Dimension getPreferredSize() {
        double scale = scale();
        return new Dimension(
                (int) Math.ceil((picture.span() + 2 * picture.margin()) * scale) + LABELS + 2 * MARGIN, (int)
                        Math.ceil(Math.max(
                                (picture.height() + 2 * BARE) * scale + 2 * MARGIN,
                                blocks().size() * labelHeight() + 2.0 * MARGIN)));
    }

    /** y = 0 at the start's lowest line, x = 0 at the first warp end. */
    private View view() {
        double scale = scale();
        double high = (picture.height() + 2 * BARE) * scale;
        double spare = Math.max(MARGIN, (getHeight() - high) / 2);
        double wide = (picture.span() + 2 * picture.margin()) * scale;
        double aside = Math.max(MARGIN, (getWidth() - LABELS - wide) / 2);
        return new View(scale, Math.rint(aside + picture.margin() * scale), Math.rint(spare + high - BARE * scale));
    }

    private List<Chosen> blocks() {
        List<Chosen> blocks = new ArrayList<>();
        for (EndPlan end : List.of(session.plan().start(), session.plan().top())) {
            end.blocks()
                    .forEach(block ->
                            blocks.add(new Chosen(end.place(), block.block().id())));
        }
        return blocks;
    }

    private void step(int by) {
        List<Chosen> blocks = blocks();
        int now = session.chosen().map(blocks::indexOf).orElse(by > 0 ? -1 : blocks.size());
        choose(now + by);
    }

    private void choose(int index) {
        List<Chosen> blocks = blocks();
        if (index >= 0 && index < blocks.size()) {
            session.choose(Optional.of(blocks.get(index)));
        }
    }

    /** The block under a point: in the cloth, or its label. */
    private Optional<Chosen> at(double x, double y) {
        List<Label> labels = labels();
        double[] places = places(labels);
        if (x > labelLeft()) {
            for (int i = 0; i < places.length; i++) {
                if (Math.abs(places[i] - y) <= labelHeight() / 2.0) {
                    return Optional.of(labels.get(i).block());
                }
            }
            return Optional.empty();
        }
        return blocks().stream().filter(block -> area(block).contains(x, y)).findFirst();
    }

    private BlockPlan plan(Chosen block) {
        return session.plan().end(block.place()).block(block.blockId()).orElseThrow();
    }

    /** Where a block is seen; what has no height gets a strip to click on. */
    private Rectangle2D area(Chosen block) {
        View view = view();
        BlockPlan plan = plan(block);
        double base = picture.base(block.place());
        double top = view.y(base + plan.top());
        double height = view.length(plan.height());
        double grown = Math.max(height, 6);
        double left = view.x(0) - view.length(5);
        return new Rectangle2D.Double(
                left, top - (grown - height) / 2, view.x(picture.span()) + view.length(5) - left, grown);
    }

    private Optional<Rectangle> chosenArea() {
        return session.chosen()
                .map(chosen -> area(chosen).getBounds())
                .map(area -> new Rectangle(area.x, area.y - 20, Math.min(area.width, 10), area.height + 40));
    }

    private double labelHeight() {
        return getFont() == null ? 34 : getFont().getSize2D() * 2.5;
    }

    private double labelLeft() {
        return view().x(picture.span() + picture.margin()) + 14;
    }

    private List<Label> labels() {
        List<Label> labels = new ArrayList<>();
        List<Chosen> blocks = blocks();
        for (int i = blocks.size() - 1; i >= 0; i--) {
            Chosen block = blocks.get(i);
            BlockPlan plan = plan(block);
            labels.add(
                    new Label(block, area(block).getCenterY(), words.name(plan.block()), facts(plan), plan.comesOut()));
        }
        return labels;
    }

    private double[] places(List<Label> labels) {
        double half = labelHeight() / 2;
        return Spread.apart(
                labels.stream().mapToDouble(Label::wanted).toArray(), labelHeight(), half + 4, getHeight() - half - 4);
    }

    private String facts(BlockPlan plan) {
        Shown shown = session.piece().shown();
        if (plan.work().isPresent()) {
            Work work = plan.work().get();
            String key = work.block() instanceof PlainBand || work.block() instanceof OrderingCord
                    ? "label.picks"
                    : "label.rows";
            return phrases.say(
                    key,
                    Map.of(
                            "rows", work.rows().size(),
                            "height", shown.height(plan.height()),
                            "cut", shown.cut(work.cut().length())));
        }
        if (plan.height() > 0) {
            return shown.height(plan.height());
        }
        return session.plan().start().hem().isPresent()
                        || session.plan().top().hem().isPresent()
                ? hemFacts(plan)
                : "";
    }

    private String hemFacts(BlockPlan plan) {
        for (EndPlan end : List.of(session.plan().start(), session.plan().top())) {
            if (end.hem().isPresent()
                    && end.blocks().contains(plan)
                    && end.hem().get().blockId().equals(plan.block().id())) {
                return phrases.say(
                        "label.hem",
                        Map.of(
                                "depth",
                                session.piece().shown().height(end.hem().get().depth())));
            }
        }
        return "";
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = (Graphics2D) graphics.create();
        g.setColor(palette.paper());
        g.fillRect(0, 0, getWidth(), getHeight());
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        paintPiece(g);
        session.chosen().ifPresent(chosen -> frame(g, area(chosen)));
        paintLabels(g);
        g.dispose();
    }

    /** The piece from the cache where it isn't too large for one. */
    private void paintPiece(Graphics2D g) {
        double device = g.getTransform().getScaleX();
        View view = view();
        long pixels = (long) (getWidth() * device * getHeight() * device);
        if (pixels > MOST_CACHED || device <= 0) {
            new PiecePainter(g, palette, false).piece(view, picture, BARE);
            return;
        }
        if (cached == null || !cached.serves(picture, palette, view, device)) {
            cached = new Cached(picture, palette, view, device, painted(view, device));
        }
        AffineTransform kept = g.getTransform();
        g.scale(1 / device, 1 / device);
        g.drawImage(cached.image(), 0, 0, null);
        g.setTransform(kept);
    }

    private BufferedImage painted(View view, double device) {
        BufferedImage image = new BufferedImage(
                (int) Math.max(1, Math.ceil(getWidth() * device)),
                (int) Math.max(1, Math.ceil(getHeight() * device)),
                BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setColor(palette.paper());
        g.fillRect(0, 0, image.getWidth(), image.getHeight());
        g.scale(device, device);
        new PiecePainter(g, palette, false).piece(view, picture, BARE);
        g.dispose();
        return image;
    }

    private void frame(Graphics2D g, Rectangle2D area) {
        RoundRectangle2D frame = new RoundRectangle2D.Double(
                area.getX() - 3, area.getY() - 3, area.getWidth() + 6, area.getHeight() + 6, 6, 6);
        g.setColor(palette.paper());
        g.setStroke(new BasicStroke(5));
        g.draw(frame);
        g.setColor(palette.ink());
        g.setStroke(new BasicStroke(isFocusOwner() ? 2.5f : 1.5f));
        g.draw(frame);
    }

    private void paintLabels(Graphics2D g) {
        List<Label> labels = labels();
        double[] places = places(labels);
        double left = labelLeft();
        double edge = view().x(picture.span()) + view().length(5);
        for (int i = 0; i < places.length; i++) {
            paintLabel(g, labels.get(i), edge, left, places[i]);
        }
    }

    private void paintLabel(Graphics2D g, Label label, double edge, double left, double at) {
        boolean chosen = session.chosen().filter(label.block()::equals).isPresent();
        Path2D lead = new Path2D.Double();
        lead.moveTo(edge, label.wanted());
        lead.lineTo(left - 14, at);
        lead.lineTo(left - 4, at);
        g.setColor(chosen ? palette.ink() : palette.faint());
        g.setStroke(
                label.comesOut()
                        ? new BasicStroke(1, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, new float[] {3, 3}, 0)
                        : new BasicStroke(chosen ? 1.6f : 0.8f));
        g.draw(lead);
        Font bold = getFont().deriveFont(Font.BOLD);
        FontMetrics metrics = g.getFontMetrics(bold);
        g.setFont(bold);
        g.setColor(palette.ink());
        String name = label.comesOut() ? phrases.say("label.comes-out", Map.of("name", label.name())) : label.name();
        int room = LABELS - 20;
        g.drawString(fitted(name, metrics, room), (float) left, (float) (at - 3));
        g.setFont(getFont());
        g.setColor(palette.faint());
        FontMetrics plain = g.getFontMetrics();
        g.drawString(fitted(label.facts(), plain, room), (float) left, (float) (at + plain.getAscent()));
        if (chosen) {
            g.setColor(palette.ink());
            g.setStroke(new BasicStroke(1.6f));
            double wide = Math.min(room, Math.max(metrics.stringWidth(name), plain.stringWidth(label.facts())));
            g.draw(new RoundRectangle2D.Double(
                    left - 5, at - labelHeight() / 2 + 1, wide + 10, labelHeight() - 2, 6, 6));
        }
    }

    /** A text that fits, shortened with an ellipsis if it must be. */
    private static String fitted(String text, FontMetrics metrics, int room) {
        String shown = text;
        while (shown.length() > 1 && metrics.stringWidth(shown) > room) {
            shown = shown.substring(0, shown.length() - 2).stripTrailing() + "…";
        }
        return shown;
    }

    @Override
    public AccessibleContext getAccessibleContext() {
        if (accessibleContext == null) {
            accessibleContext = new Described();
        }
        return accessibleContext;
    }

    /** The canvas as a list of its blocks, from the top down. */
    private final class Described extends AccessibleJComponent {
        private static final long serialVersionUID = 1L;

        @Override
        public AccessibleRole getAccessibleRole() {
            return AccessibleRole.LIST;
        }

        @Override
        public String getAccessibleName() {
            return phrases.say("canvas.name", Map.of("piece", session.piece().title()));
        }

        @Override
        public int getAccessibleChildrenCount() {
            return blocks().size();
        }

        @Override
        public Accessible getAccessibleChild(int index) {
            List<Label> labels = labels();
            return index < 0 || index >= labels.size() ? null : new BlockChild(labels.get(index), index);
        }
    }

    /** One block as assistive programs see it. */
    private final class BlockChild extends AccessibleContext implements Accessible {
        private final Label label;
        private final int index;

        BlockChild(Label label, int index) {
            this.label = label;
            this.index = index;
            setAccessibleParent(Canvas.this);
            setAccessibleName(label.name());
            setAccessibleDescription(label.facts());
        }

        @Override
        public AccessibleContext getAccessibleContext() {
            return this;
        }

        @Override
        public AccessibleRole getAccessibleRole() {
            return AccessibleRole.LABEL;
        }

        @Override
        public AccessibleStateSet getAccessibleStateSet() {
            AccessibleStateSet states = new AccessibleStateSet();
            states.add(AccessibleState.SELECTABLE);
            if (session.chosen().filter(label.block()::equals).isPresent()) {
                states.add(AccessibleState.SELECTED);
            }
            return states;
        }

        @Override
        public int getAccessibleIndexInParent() {
            return index;
        }

        @Override
        public int getAccessibleChildrenCount() {
            return 0;
        }

        @Override
        public Accessible getAccessibleChild(int child) {
            return null;
        }

        @Override
        public Locale getLocale() {
            return Canvas.this.getLocale();
        }
    }

    /** Where a block is seen, in this component's coordinates. */
    Rectangle2D areaOf(Place place, String blockId) {
        return area(new Chosen(place, blockId));
    }
}
