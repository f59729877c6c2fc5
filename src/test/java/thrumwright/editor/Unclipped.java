package thrumwright.editor;

import java.awt.Color;
import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.Rectangle;
import java.awt.event.MouseEvent;
import java.util.ArrayList;
import java.util.List;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JScrollBar;
import javax.swing.JScrollPane;
import javax.swing.JTabbedPane;
import javax.swing.JTextField;
import javax.swing.JViewport;
import javax.swing.ScrollPaneConstants;
import javax.swing.text.JTextComponent;
import thrumwright.testing.SeeingGraphics;
import thrumwright.testing.SeeingGraphics.Seen;

/**
 * Finds what there is no room for: components that reach beyond what holds them without a scroll bar to get there, and
 * texts that are cut off or shortened without a tip that says them in full. For the event thread.
 */
final class Unclipped {
    /** Rounding may cost so much, pixels. */
    private static final double HAIR = 1.5;

    /** Frames of the keyboard's place may lie a little outside, pixels. */
    private static final double FRAME = 3;

    private final List<String> found = new ArrayList<>();

    private Unclipped() {}

    static List<String> in(Component root) {
        Unclipped unclipped = new Unclipped();
        unclipped.walk(root);
        return unclipped.found;
    }

    private void walk(Component component) {
        if (!component.isVisible() || component instanceof JScrollBar) {
            return;
        }
        inside(component);
        if (component instanceof JComponent swing) {
            large(swing);
            if (swing.getComponentCount() == 0
                    || swing instanceof JComboBox
                    || swing.getClass().getName().startsWith("thrumwright.")) {
                painted(swing);
            }
        }
        if (component instanceof JTabbedPane tabs) {
            tabs(tabs);
            walk(tabs.getSelectedComponent());
            return;
        }
        if (component instanceof Container container && !(component instanceof JComboBox)) {
            for (Component child : container.getComponents()) {
                walk(child);
            }
        }
    }

    private void say(Component component, String what) {
        StringBuilder where = new StringBuilder();
        for (Component c = component; c != null && where.length() < 160; c = c.getParent()) {
            String name = c.getName() == null ? "" : " " + c.getName();
            if (!name.isBlank() || c == component) {
                where.append(where.length() == 0 ? "" : " in ")
                        .append(c.getClass().getSimpleName())
                        .append(name);
            }
        }
        found.add(where + " “" + text(component) + "”: " + what);
    }

    private static String text(Component component) {
        if (component instanceof JLabel label) {
            return label.getText();
        } else if (component instanceof AbstractButton button) {
            return button.getText();
        } else if (component instanceof JTextComponent field) {
            return field.getText();
        }
        return "";
    }

    /** Within what holds it, unless that can be scrolled there. */
    private void inside(Component component) {
        Container parent = component.getParent();
        if (parent == null
                || component instanceof java.awt.Window
                || parent instanceof JTabbedPane
                || component.getWidth() * component.getHeight() == 0) {
            return;
        }
        Rectangle box = component.getBounds();
        boolean viewport = parent instanceof JViewport;
        boolean across = viewport && scrolls((JViewport) parent, true);
        boolean down = viewport && scrolls((JViewport) parent, false);
        if (!across && (box.x < -FRAME || box.getMaxX() > parent.getWidth() + FRAME)) {
            say(component, box + " is wider than its holder, " + parent.getSize());
        }
        if (!down && (box.y < -FRAME || box.getMaxY() > parent.getHeight() + FRAME)) {
            say(component, box + " is higher than its holder, " + parent.getSize());
        }
    }

    /** The headers of a scroll pane go with its view. */
    private static boolean scrolls(JViewport viewport, boolean across) {
        if (!(viewport.getParent() instanceof JScrollPane pane)) {
            return false;
        }
        return across
                ? pane.getHorizontalScrollBarPolicy() != ScrollPaneConstants.HORIZONTAL_SCROLLBAR_NEVER
                : pane.getVerticalScrollBarPolicy() != ScrollPaneConstants.VERTICAL_SCROLLBAR_NEVER;
    }

    /** As large as it wants to be, or, where it is smaller, with a tip that says all of it. */
    private void large(JComponent component) {
        boolean shows = component instanceof JLabel label && label.getText() != null
                || component instanceof AbstractButton button && button.getText() != null;
        Dimension wanted = component.getPreferredSize();
        if (shows && !text(component).isEmpty()) {
            boolean tip = String.valueOf(component.getToolTipText()).contains(text(component));
            if (wanted.width > component.getWidth() + HAIR && !tip) {
                say(component, "wants to be " + wanted.width + " wide and is " + component.getWidth());
            }
        }
        boolean line = shows || component instanceof JTextField || component instanceof JComboBox;
        if (line && wanted.height > component.getHeight() + HAIR) {
            say(component, "wants to be " + wanted.height + " high and is " + component.getHeight());
        }
    }

    /** Each text where it is painted: nothing of it beyond what is shown. */
    private void painted(JComponent component) {
        if (component instanceof JTextField) {
            return;
        }
        Rectangle part = component.getParent() instanceof JViewport
                        && component.getClass().getName().contains(".canvas.")
                ? component.getVisibleRect()
                : new Rectangle(component.getSize());
        if (part.isEmpty()) {
            return;
        }
        List<Seen> seen = SeeingGraphics.of(part.width, part.height, Color.WHITE, g -> {
            g.translate(-part.x, -part.y);
            g.setFont(component.getFont());
            component.paint(g);
        });
        for (Seen text : seen) {
            boolean own = component.getComponentCount() == 0
                    || component instanceof JComboBox
                    || text.painter().startsWith(component.getClass().getName());
            if (text.text().isEmpty() || !own) {
                continue;
            }
            if (!text.clip().createIntersection(text.box()).isEmpty()) {
                cut(component, text);
            }
            shortened(component, text, part);
        }
    }

    private void cut(JComponent component, Seen text) {
        boolean sideways = text.box().getMinX() < text.clip().getMinX() - HAIR
                || text.box().getMaxX() > text.clip().getMaxX() + HAIR;
        boolean upright = text.box().getMinY() < text.clip().getMinY() - 2 * HAIR
                || text.box().getMaxY() > text.clip().getMaxY() + 2 * HAIR;
        boolean scrolling = component.getParent() instanceof JViewport;
        if (sideways || upright && !scrolling) {
            say(component, "paints “" + text.text() + "” at " + text.box() + " and shows " + text.clip());
        }
    }

    private void shortened(JComponent component, Seen text, Rectangle part) {
        if (!text.text().endsWith("…") && !text.text().endsWith("...")
                || text(component).equals(text.text())) {
            return;
        }
        int x = (int) text.box().getCenterX() + part.x;
        int y = (int) text.box().getCenterY() + part.y;
        String tip = component.getToolTipText(new MouseEvent(component, MouseEvent.MOUSE_MOVED, 0, 0, x, y, 0, false));
        String kept = text.text().replace("…", "").replace("...", "");
        if (tip == null || !tip.contains(kept)) {
            say(component, "shortens to “" + text.text() + "” without a tip");
        }
    }

    /** All tabs can be seen, or there are arrows to the rest. */
    private void tabs(JTabbedPane tabs) {
        if (tabs.getTabLayoutPolicy() == JTabbedPane.SCROLL_TAB_LAYOUT) {
            return;
        }
        for (int i = 0; i < tabs.getTabCount(); i++) {
            Rectangle box = tabs.getBoundsAt(i);
            int wanted = tabs.getFontMetrics(tabs.getFont()).stringWidth(tabs.getTitleAt(i));
            if (box == null || box.width < wanted || box.getMaxX() > tabs.getWidth() + HAIR) {
                say(tabs, "its tab “" + tabs.getTitleAt(i) + "” has " + box);
            }
        }
    }
}
