package thrumwright.editor.look;

import java.awt.Dimension;
import java.awt.Graphics;
import javax.swing.Icon;
import javax.swing.JComponent;

/** A small picture for those who see it; what it says stands in words beside it, so that it isn't heard as well. */
public final class UnheardPicture extends JComponent {
    private static final long serialVersionUID = 1L;

    private final transient Icon icon;

    public UnheardPicture(Icon icon) {
        this.icon = icon;
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(icon.getIconWidth(), icon.getIconHeight());
    }

    @Override
    protected void paintComponent(Graphics g) {
        icon.paintIcon(this, g, 0, 0);
    }
}
