package thrumwright.editor;

import java.awt.Color;
import java.awt.Component;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JComponent;
import javax.swing.JScrollPane;
import javax.swing.JViewport;
import javax.swing.UIManager;
import thrumwright.testing.SeeingGraphics;

/**
 * What has the keyboard, as it looked when it had it.
 *
 * @param whole what scrolls is seen as a whole
 * @param hidden how many pixels of its height or width weren't in sight, as far as there was room for them
 */
record FocusSeen(JComponent component, JComponent whole, int hidden, BufferedImage with) {
    /** What is to be met with a finger or a trembling hand, pixels (WCAG 2.2, 2.5.8). */
    private static final int TARGET = 24;

    /** Between a thing with the keyboard and the same without (WCAG 2.2, 1.4.11 and 2.4.13). */
    private static final double CONTRAST = 3;

    static FocusSeen of(JComponent component) {
        JComponent whole = whole(component);
        return new FocusSeen(component, whole, hidden(whole), painted(whole));
    }

    private static JComponent whole(JComponent component) {
        return component.getParent() instanceof JViewport viewport && viewport.getParent() instanceof JScrollPane scroll
                ? scroll
                : component;
    }

    private static int hidden(JComponent whole) {
        int wide = whole.getWidth();
        int high = whole.getHeight();
        for (Component around = whole.getParent(); around != null; around = around.getParent()) {
            if (around instanceof JViewport) {
                wide = Math.min(wide, around.getWidth());
                high = Math.min(high, around.getHeight());
            }
        }
        Rectangle seen = whole.getVisibleRect();
        return Math.max(wide - seen.width, high - seen.height);
    }

    private static BufferedImage painted(JComponent whole) {
        BufferedImage image = new BufferedImage(
                Math.max(1, whole.getWidth()), Math.max(1, whole.getHeight()), BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setColor(UIManager.getColor("Panel.background"));
        g.fillRect(0, 0, image.getWidth(), image.getHeight());
        whole.paint(g);
        g.dispose();
        return image;
    }

    /** To be asked when something else has the keyboard. */
    List<String> problems() {
        List<String> all = new ArrayList<>();
        String name = component.getAccessibleContext().getAccessibleName();
        if (name == null || name.isBlank()) {
            all.add("no name: " + told());
        }
        if (hidden > 1) { // the screen in pure Java lays its frame over the outermost pixel
            all.add("out of sight by " + hidden + ": " + told());
        }
        if (Math.min(component.getWidth(), component.getHeight()) < TARGET) {
            all.add("only " + component.getWidth() + " × " + component.getHeight() + ": " + told());
        }
        int changed = changed();
        if (changed < Math.min(whole.getWidth(), whole.getHeight())) {
            all.add("only " + changed + " pixels tell that it has the keyboard: " + told());
        }
        return all;
    }

    private String told() {
        return component.getClass().getSimpleName() + " " + component.getName() + " “"
                + component.getAccessibleContext().getAccessibleName() + "” at " + whole.getBounds() + ", seen "
                + whole.getVisibleRect() + " of " + whole.getParent().getSize();
    }

    private int changed() {
        BufferedImage without = painted(whole);
        int changed = 0;
        for (int y = 0; y < Math.min(with.getHeight(), without.getHeight()); y++) {
            for (int x = 0; x < Math.min(with.getWidth(), without.getWidth()); x++) {
                int before = without.getRGB(x, y);
                int now = with.getRGB(x, y);
                if (before != now && SeeingGraphics.contrast(new Color(before), new Color(now)) >= CONTRAST) {
                    changed++;
                }
            }
        }
        return changed;
    }
}
