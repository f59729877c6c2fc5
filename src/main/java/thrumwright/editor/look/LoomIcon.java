package thrumwright.editor.look;

import java.awt.Color;
import java.awt.Component;
import java.awt.Graphics;
import java.awt.Graphics2D;
import javax.swing.Icon;
import javax.swing.UIManager;
import thrumwright.drawing.Palette;
import thrumwright.drawing.loom.WarpWay;
import thrumwright.drawing.loom.WarpWayPainter;
import thrumwright.piece.LoomKind;

/**
 * How the warp goes on a loom of a kind.
 *
 * @param width pixels at usual scale, more than 0
 * @param height pixels at usual scale, more than 0
 */
public record LoomIcon(LoomKind kind, int width, int height) implements Icon {
    private static final double LARGE = 60;

    /** Beside its name. */
    public static LoomIcon small(LoomKind kind) {
        return new LoomIcon(kind, 18, 22);
    }

    @Override
    public void paintIcon(Component c, Graphics g, int x, int y) {
        Graphics2D own = (Graphics2D) g.create();
        Smooth.lines(own);
        Color ink = UIManager.getColor("Label.foreground");
        boolean dark = Palette.lightness(ink) > 0.5;
        Palette palette = dark ? Palette.onDarkScreen() : Palette.onLightScreen();
        WarpWay way = WarpWay.of(kind);
        new WarpWayPainter(own, palette, palette.accent())
                .paint(
                        way,
                        WarpWayPainter.fitted(way, x, y, getIconWidth(), getIconHeight()),
                        height > LARGE ? Pixels.of(3) : 0);
        own.dispose();
    }

    @Override
    public int getIconWidth() {
        return Pixels.of(width);
    }

    @Override
    public int getIconHeight() {
        return Pixels.of(height);
    }
}
