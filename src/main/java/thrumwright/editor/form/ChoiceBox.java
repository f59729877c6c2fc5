package thrumwright.editor.form;

import java.awt.Component;
import java.awt.Insets;
import java.awt.Point;
import java.awt.event.MouseEvent;
import javax.swing.DefaultListCellRenderer;
import javax.swing.JComboBox;
import javax.swing.JList;

/** A box to choose from. It is as wide as its place; what has no room in it its tip says in full. */
public final class ChoiceBox<V> extends JComboBox<Choice<V>> {
    private static final long serialVersionUID = 1L;

    public ChoiceBox() {
        // Else it would want to be as wide as the longest name of a yarn.
        setPrototypeDisplayValue(Choice.of(null, " "));
        setRenderer(new WithIcon());
    }

    private static final class WithIcon extends DefaultListCellRenderer {
        private static final long serialVersionUID = 1L;

        @Override
        public Component getListCellRendererComponent(
                JList<?> list, Object value, int index, boolean selected, boolean focused) {
            super.getListCellRendererComponent(list, value, index, selected, focused);
            setIcon(value instanceof Choice<?> choice ? choice.icon() : null);
            return this;
        }
    }

    @Override
    public String getToolTipText(MouseEvent event) {
        String tip = super.getToolTipText(event);
        if (!(getSelectedItem() instanceof Choice<?> chosen) || hasRoomFor(chosen)) {
            return tip;
        }
        return tip == null ? chosen.text() : chosen.text() + ". " + tip;
    }

    private boolean hasRoomFor(Choice<?> chosen) {
        Insets insets = getInsets();
        int arrow = getHeight();
        int icon = chosen.icon() == null ? 0 : chosen.icon().getIconWidth() + 4;
        int text = getFontMetrics(getFont()).stringWidth(chosen.text());
        return text + icon + arrow + insets.left + insets.right + 14 < getWidth();
    }

    @Override
    public Point getToolTipLocation(MouseEvent event) {
        return BesideTip.of(this, event);
    }
}
