package thrumwright.editor;

import java.awt.Component;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import javax.accessibility.Accessible;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.accessibility.AccessibleState;
import javax.swing.JLabel;
import javax.swing.JMenuItem;
import javax.swing.JTable;

/**
 * What those hear of a window who don't see it.
 *
 * @param nameless what has no name and should have one
 * @param named how many have one
 */
record HeardNames(List<String> nameless, int named) {
    /** What only holds others, and is passed over in silence. */
    private static final Set<AccessibleRole> HOLDERS = Set.of(
            AccessibleRole.PANEL,
            AccessibleRole.ROOT_PANE,
            AccessibleRole.LAYERED_PANE,
            AccessibleRole.GLASS_PANE,
            AccessibleRole.VIEWPORT,
            AccessibleRole.SCROLL_PANE,
            AccessibleRole.FILLER,
            AccessibleRole.SEPARATOR);

    private static boolean shown(Component component) {
        return component.isVisible() && component.getWidth() * component.getHeight() != 0
                || component instanceof JMenuItem;
    }

    /** Where a table or a label says nothing, there is nothing to be named. */
    private static boolean emptyCell(Accessible node) {
        return node.getAccessibleContext().getAccessibleParent() instanceof JTable
                || node instanceof JLabel label && label.getIcon() == null;
    }

    static HeardNames in(Accessible window) {
        List<String> nameless = new ArrayList<>();
        int[] named = new int[1];
        collect(window, "", nameless, named);
        return new HeardNames(nameless, named[0]);
    }

    private static void collect(Accessible node, String path, List<String> nameless, int[] named) {
        AccessibleContext heard = node.getAccessibleContext();
        if (node instanceof Component component && !shown(component)) {
            return;
        }
        String name = heard.getAccessibleName();
        AccessibleRole role = heard.getAccessibleRole();
        if (name != null && !name.isBlank()) {
            named[0]++;
        } else if (!HOLDERS.contains(role) && !emptyCell(node)) {
            nameless.add(role + " " + node.getClass().getSimpleName() + path);
        }
        if (heard.getAccessibleStateSet().contains(AccessibleState.MANAGES_DESCENDANTS)
                && heard.getAccessibleChildrenCount() > 200) {
            return;
        }
        String here = node instanceof Component component && component.getName() != null
                ? " in " + component.getName() + path
                : path;
        for (int i = 0; i < heard.getAccessibleChildrenCount(); i++) {
            Accessible child = heard.getAccessibleChild(i);
            if (child != null) {
                collect(child, here, nameless, named);
            }
        }
    }
}
