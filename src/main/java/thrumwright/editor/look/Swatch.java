package thrumwright.editor.look;

import java.awt.Color;
import java.awt.Component;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.geom.RoundRectangle2D;
import javax.swing.Icon;
import javax.swing.UIManager;
import thrumwright.yarn.Colour;

/** A patch of a yarn's colour. */
public record Swatch(Colour colour) implements Icon {
    private static final int SIZE = 14;

    @Override
    public void paintIcon(Component c, Graphics g, int x, int y) {
        Graphics2D own = (Graphics2D) g.create();
        Smooth.lines(own);
        RoundRectangle2D patch = new RoundRectangle2D.Double(x + 0.5, y + 0.5, size() - 1.0, size() - 1.0, 4, 4);
        own.setColor(new Color(colour.rgb()));
        own.fill(patch);
        own.setColor(UIManager.getColor("Label.foreground"));
        own.draw(patch);
        own.dispose();
    }

    private static int size() {
        return Pixels.of(SIZE);
    }

    @Override
    public int getIconWidth() {
        return size();
    }

    @Override
    public int getIconHeight() {
        return size();
    }
}
