package thrumwright.editor.view;

import java.awt.BasicStroke;
import java.awt.Component;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.geom.Path2D;
import javax.swing.Icon;
import javax.swing.UIManager;
import thrumwright.editor.look.Pixels;
import thrumwright.editor.look.Smooth;

/** A tick: all is as it should be. */
final class Tick implements Icon {
    static final Icon ICON = new Tick();

    private static final int SIZE = 12;

    private Tick() {}

    @Override
    public void paintIcon(Component c, Graphics graphics, int x, int y) {
        Graphics2D g = (Graphics2D) graphics.create();
        Smooth.lines(g);
        g.translate(x, y);
        g.scale(Pixels.of(1f), Pixels.of(1f));
        g.setColor(UIManager.getColor("Thrumwright.selected"));
        g.setStroke(new BasicStroke(2.2f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        Path2D tick = new Path2D.Double();
        tick.moveTo(1.5, 9);
        tick.lineTo(4.5, 12);
        tick.lineTo(10.5, 5);
        g.draw(tick);
        g.dispose();
    }

    @Override
    public int getIconWidth() {
        return Pixels.of(SIZE);
    }

    @Override
    public int getIconHeight() {
        return Pixels.of(SIZE + 3);
    }
}
