package thrumwright.editor.loom;

import java.awt.Color;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.event.HierarchyEvent;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.function.Supplier;
import thrumwright.drawing.Palette;
import thrumwright.editor.look.HeardPicture;
import thrumwright.measure.Phrases;

/** A kind of block, large: right and wrong beside each other, both moving, each with what it is below. */
final class ShowingView extends HeardPicture {
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
        this.motion = new Motion(moving, () -> isShowing() && shown.movable(), this::moved);
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
    protected void paintComponent(Graphics g) {
        Graphics2D page = LoomPaper.cover(this, g, palette.get());
        sides().forEach(right -> paint(page, side(right), right));
        page.dispose();
    }

    /** As it must be, and where there is a slip, that beside it. */
    private List<Boolean> sides() {
        return shown.slip().isPresent() ? List.of(true, false) : List.of(true);
    }

    private Rectangle2D side(boolean right) {
        int count = sides().size();
        double gap = GAP * type.get().words().getSize2D();
        double wide = (getWidth() - gap * (count + 1)) / count;
        double x = gap + (right ? 0 : wide + gap);
        return new Rectangle2D.Double(x, gap, Math.max(1, wide), Math.max(1, getHeight() - 2 * gap));
    }

    private LoomLines caption(Rectangle2D side, boolean right) {
        return new LoomLines(side.getWidth())
                .add(shown.caption(right, phrases), type.get().head());
    }

    private Rectangle2D box(Rectangle2D side, LoomLines caption) {
        double below = caption.count() == 0
                ? 0
                : caption.height() + 0.5 * type.get().words().getSize2D();
        return new Rectangle2D.Double(side.getX(), side.getY(), side.getWidth(), Math.max(1, side.getHeight() - below));
    }

    /** Where other pictures are to be painted once the yarn is laid in from one share to another, pixels. */
    List<Rectangle> changed(double before, double now) {
        return sides().stream()
                .map(right -> {
                    Rectangle2D box = box(side(right), caption(side(right), right));
                    Rectangle part = shown.changed(box, right, before, now).getBounds();
                    // letters and lines are smoothed a little beyond where they are
                    part.grow(2, 2);
                    return part;
                })
                .toList();
    }

    /** One after the other, since what is asked for together is painted with all that lies between. */
    private void moved(double before, double now) {
        changed(before, now).forEach(this::paintImmediately);
    }

    private void paint(Graphics2D g, Rectangle2D side, boolean right) {
        LoomLines caption = caption(side, right);
        Rectangle2D box = box(side, caption);
        if (!g.hitClip((int) side.getX(), (int) side.getY(), (int) side.getWidth() + 1, (int) side.getHeight() + 1)) {
            return;
        }
        shown.paint(
                g, palette.get(), type.get().small(), box, right, motion.pace().shown());
        Color rim = right ? palette.get().ink() : palette.get().accent();
        g.setColor(rim);
        g.draw(box);
        g.setColor(palette.get().ink());
        caption.draw(g, side.getX(), side.getMaxY() - caption.height());
    }
}
