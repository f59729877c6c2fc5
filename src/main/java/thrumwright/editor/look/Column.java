package thrumwright.editor.look;

import java.awt.Dimension;
import java.awt.LayoutManager;
import java.awt.Rectangle;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JViewport;
import javax.swing.ScrollPaneConstants;
import javax.swing.Scrollable;

/** A panel in a scroll pane that is always as wide as what is seen of it, and scrolls up and down only. */
public class Column extends JPanel implements Scrollable {
    private static final long serialVersionUID = 1L;

    public Column(LayoutManager layout) {
        super(layout);
    }

    /**
     * In a scroll pane whose bar always has its room: were it to come and go, sentences would wrap otherwise with it than
     * without it, and it with them.
     */
    public static JScrollPane scrolling(JComponent column) {
        JScrollPane scroll = new JScrollPane(
                column, ScrollPaneConstants.VERTICAL_SCROLLBAR_ALWAYS, ScrollPaneConstants.HORIZONTAL_SCROLLBAR_NEVER);
        scroll.setBorder(BorderFactory.createEmptyBorder());
        return scroll;
    }

    @Override
    public Dimension getPreferredScrollableViewportSize() {
        return new Dimension(300, 400);
    }

    @Override
    public int getScrollableUnitIncrement(Rectangle visible, int orientation, int direction) {
        return 20;
    }

    @Override
    public int getScrollableBlockIncrement(Rectangle visible, int orientation, int direction) {
        return visible.height * 4 / 5;
    }

    @Override
    public boolean getScrollableTracksViewportWidth() {
        return true;
    }

    @Override
    public boolean getScrollableTracksViewportHeight() {
        return getParent() instanceof JViewport seen && seen.getHeight() > getPreferredSize().height;
    }
}
