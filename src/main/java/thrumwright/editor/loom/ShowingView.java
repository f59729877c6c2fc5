package thrumwright.editor.loom;

import java.awt.Color;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.event.HierarchyEvent;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.function.Supplier;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.JComponent;
import thrumwright.drawing.Palette;
import thrumwright.measure.Phrases;

/** A kind of block, large: right and wrong beside each other, both moving, each with what it is below. */
final class ShowingView extends JComponent {
    private static final long serialVersionUID = 1L;

    /** Room round the pictures and between them, as a share of the height of type. */
    private static final double GAP = 0.6;

    private final transient Supplier<LoomType> type;
    private final transient Supplier<Palette> palette;
    private final transient Phrases phrases;
    private final transient Motion motion;
    private transient ShownKind shown;

    ShowingView(ShownKind first, Supplier<LoomType> type, Supplier<Palette> palette, Phrases phrases, boolean moving) {
        this.shown = first;
        this.type = type;
        this.palette = palette;
        this.phrases = phrases;
        this.motion = new Motion(moving, () -> isShowing() && shown.moves(), (before, now) -> repaint());
        setName("showing.view");
        addHierarchyListener(event -> {
            if ((event.getChangeFlags() & HierarchyEvent.SHOWING_CHANGED) != 0) {
                motion.moveOrRest();
            }
        });
    }

    void show(ShownKind other) {
        shown = other;
        motion.set(Pace::anew);
        repaint();
    }

    ShownKind shown() {
        return shown;
    }

    Motion motion() {
        return motion;
    }

    @Override
    public AccessibleContext getAccessibleContext() {
        if (accessibleContext == null) {
            accessibleContext = new HeardPicture();
        }
        return accessibleContext;
    }

    private final class HeardPicture extends AccessibleJComponent {
        private static final long serialVersionUID = 1L;

        @Override
        public AccessibleRole getAccessibleRole() {
            return AccessibleRole.CANVAS;
        }
    }

    @Override
    protected void paintComponent(Graphics g) {
        Graphics2D page = LoomPaper.cover(this, g, palette.get());
        List<Boolean> sides = shown.slip().isPresent() ? List.of(true, false) : List.of(true);
        double gap = GAP * type.get().words().getSize2D();
        double wide = (getWidth() - gap * (sides.size() + 1)) / sides.size();
        for (int i = 0; i < sides.size(); i++) {
            Rectangle2D side = new Rectangle2D.Double(
                    gap + i * (wide + gap), gap, Math.max(1, wide), Math.max(1, getHeight() - 2 * gap));
            paint(page, side, sides.get(i));
        }
        page.dispose();
    }

    private void paint(Graphics2D g, Rectangle2D side, boolean right) {
        LoomLines caption = new LoomLines(side.getWidth())
                .add(shown.caption(right, phrases), type.get().head());
        double below = caption.count() == 0
                ? 0
                : caption.height() + 0.5 * type.get().words().getSize2D();
        Rectangle2D box = new Rectangle2D.Double(
                side.getX(), side.getY(), side.getWidth(), Math.max(1, side.getHeight() - below));
        shown.paint(
                g, palette.get(), type.get().small(), box, right, motion.pace().shown());
        Color rim = right ? palette.get().ink() : palette.get().accent();
        g.setColor(rim);
        g.draw(box);
        g.setColor(palette.get().ink());
        caption.draw(g, side.getX(), box.getMaxY() + below - caption.height());
    }
}
