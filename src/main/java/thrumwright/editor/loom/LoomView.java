package thrumwright.editor.loom;

import java.awt.Dimension;
import java.awt.Font;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.event.HierarchyEvent;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.JComponent;
import thrumwright.drawing.Palette;

/** Shows one row or the words before it, with the move in motion. When nothing moves, it does nothing. */
final class LoomView extends JComponent {
    private static final long serialVersionUID = 1L;

    private final transient AtHand hand;
    private final transient Supplier<LoomType> type;
    private final transient Supplier<Palette> palette;
    private final transient Motion motion;
    private transient LoomLayout layout;

    /** @param moving whether pictures move at first */
    LoomView(AtHand hand, Supplier<LoomType> type, Supplier<Palette> palette, boolean moving) {
        this.hand = hand;
        this.type = type;
        this.palette = palette;
        this.motion = new Motion(
                moving,
                () -> isShowing() && hand.moves() && layout.pictured(),
                (before, now) -> repaint(changed(before, now)));
        setName("loom.view");
        addHierarchyListener(event -> {
            if ((event.getChangeFlags() & HierarchyEvent.SHOWING_CHANGED) != 0) {
                motion.moveOrRest();
            }
        });
    }

    /** Looks again at what is to be seen. */
    void refresh() {
        String heard = heard();
        layout = hand.layout(type.get(), room());
        if (!heard.equals(heard())) {
            motion.set(Pace::anew);
            getAccessibleContext().firePropertyChange(AccessibleContext.ACCESSIBLE_NAME_PROPERTY, heard, heard());
        }
        motion.moveOrRest();
        repaint();
    }

    private Dimension room() {
        return new Dimension(Math.max(1, getWidth()), Math.max(1, getHeight()));
    }

    /** What is to be read, in order. */
    List<String> words() {
        return layout == null ? List.of() : layout.leaf().words();
    }

    private String heard() {
        return String.join(". ", words());
    }

    /** As it is laid out in the room that it has. */
    LoomLayout laidOut() {
        return layout;
    }

    Pace pace() {
        return motion.pace();
    }

    void setPace(UnaryOperator<Pace> change) {
        motion.set(change);
        repaint();
    }

    /** Where another picture is to be painted once the yarn is laid in from one share of the row to another, pixels. */
    Rectangle changed(double before, double now) {
        Rectangle2D box = layout.picture();
        Rectangle part = hand.picture()
                .map(picture -> picture.changed(box, hand.row(), before, now))
                .orElse(box)
                .getBounds();
        // letters and lines are smoothed a little beyond where they are
        part.grow(2, 2);
        return part.intersection(box.getBounds());
    }

    /** Stops at the next crossing. */
    void cross() {
        setPace(now -> now.crossed(hand.crossings()));
    }

    /** Whether a timer runs. */
    boolean busy() {
        return motion.busy();
    }

    @Override
    public void setBounds(int x, int y, int width, int height) {
        boolean other = width != getWidth() || height != getHeight();
        super.setBounds(x, y, width, height);
        if (other) {
            refresh();
        }
    }

    @Override
    protected void paintComponent(Graphics g) {
        Graphics2D page = LoomPaper.cover(this, g, palette.get());
        Rectangle2D box = layout.picture();
        hand.picture()
                .filter(picture -> layout.pictured())
                .ifPresent(picture -> picture.paint(
                        page,
                        palette.get(),
                        font(),
                        box,
                        hand.row(),
                        motion.pace().shown()));
        if (!box.contains(g.getClipBounds())) {
            layout.draw(page, palette.get());
        }
        page.dispose();
    }

    private Font font() {
        return layout.type().small();
    }

    @Override
    public AccessibleContext getAccessibleContext() {
        if (accessibleContext == null) {
            accessibleContext = new AccessibleJComponent() {
                private static final long serialVersionUID = 1L;

                @Override
                public AccessibleRole getAccessibleRole() {
                    return AccessibleRole.PANEL;
                }

                @Override
                public String getAccessibleName() {
                    return heard();
                }
            };
        }
        return accessibleContext;
    }
}
