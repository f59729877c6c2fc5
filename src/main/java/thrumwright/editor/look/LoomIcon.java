package thrumwright.editor.look;

import java.awt.Color;
import java.awt.Component;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import javax.swing.Icon;
import javax.swing.UIManager;
import thrumwright.drawing.Palette;
import thrumwright.drawing.loom.WarpWay;
import thrumwright.drawing.loom.WarpWayPainter;
import thrumwright.piece.LoomKind;

/** How the warp goes on a loom of a kind, small. */
public record LoomIcon(LoomKind kind) implements Icon {
    private static final int SIZE = 34;

    @Override
    public void paintIcon(Component c, Graphics g, int x, int y) {
        Graphics2D own = (Graphics2D) g.create();
        own.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        Color ink = UIManager.getColor("Label.foreground");
        boolean dark = Palette.lightness(ink) > 0.5;
        Palette palette = dark ? Palette.onDarkScreen() : Palette.onLightScreen();
        WarpWay way = WarpWay.of(kind);
        new WarpWayPainter(own, palette, palette.accent())
                .paint(way, WarpWayPainter.fitted(way, x, y, getIconWidth(), getIconHeight()), 0);
        own.dispose();
    }

    @Override
    public int getIconWidth() {
        return Pixels.of(SIZE);
    }

    @Override
    public int getIconHeight() {
        return Pixels.of(SIZE);
    }
}
