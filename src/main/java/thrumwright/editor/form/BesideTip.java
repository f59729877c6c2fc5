package thrumwright.editor.form;

import java.awt.Point;
import java.awt.event.MouseEvent;
import javax.swing.JComponent;
import javax.swing.JToolTip;
import javax.swing.SwingUtilities;
import thrumwright.editor.look.Pixels;

/** Where the tip of a field stands: beside its form, so that it covers neither this field nor the next. */
final class BesideTip {
    private static final int APART = 6;

    private BesideTip() {}

    /** The upper left corner for a component's tip, from that of the component, pixels; null where it is in no form. */
    static Point of(JComponent component, MouseEvent event) {
        FieldColumn form = (FieldColumn) SwingUtilities.getAncestorOfClass(FieldColumn.class, component);
        if (form == null) {
            return null;
        }
        JToolTip tip = component.createToolTip();
        tip.setTipText(component.getToolTipText(event));
        int left = SwingUtilities.convertPoint(form, 0, 0, component).x;
        return new Point(left - tip.getPreferredSize().width - Pixels.of(APART), 0);
    }
}
