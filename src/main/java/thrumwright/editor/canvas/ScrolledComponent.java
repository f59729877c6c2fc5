package thrumwright.editor.canvas;

import java.awt.Dimension;
import java.awt.Rectangle;
import javax.swing.JComponent;
import javax.swing.Scrollable;
import javax.swing.SwingConstants;

/** Fills its window where it needs no more, and is scrolled where it does. */
abstract class ScrolledComponent extends JComponent implements Scrollable {
    private static final long serialVersionUID = 1L;
    private static final int NUDGE = 24;

    @Override
    public Dimension getPreferredScrollableViewportSize() {
        return new Dimension(520, 420);
    }

    @Override
    public int getScrollableUnitIncrement(Rectangle visible, int orientation, int direction) {
        return NUDGE;
    }

    @Override
    public int getScrollableBlockIncrement(Rectangle visible, int orientation, int direction) {
        return (orientation == SwingConstants.VERTICAL ? visible.height : visible.width) * 4 / 5;
    }

    @Override
    public boolean getScrollableTracksViewportWidth() {
        return getParent() != null && getParent().getWidth() >= getPreferredSize().width;
    }

    @Override
    public boolean getScrollableTracksViewportHeight() {
        return getParent() != null && getParent().getHeight() >= getPreferredSize().height;
    }
}
