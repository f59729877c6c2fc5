package thrumwright.editor.canvas.painted;

import com.formdev.flatlaf.util.HiDPIUtils;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import thrumwright.editor.look.Ground;

/** Level and upright lines that lie on whole device pixels, so that they are sharp at every scale of the screen. */
public final class Hair {
    /** How thick lines and brackets are, pixels. */
    static final double LINE = 1.4;

    private Hair() {}

    /** @param thick pixels; at least one device pixel */
    static void level(Graphics2D g, double from, double to, double y, double thick) {
        fill(g, from, y - thick / 2, to - from, thick);
    }

    /** @param thick pixels; at least one device pixel */
    public static void upright(Graphics2D g, double x, double from, double to, double thick) {
        fill(g, x - thick / 2, from, thick, to - from);
    }

    /** A box with edges on whole device pixels; none of its sides vanishes. */
    private static void fill(Graphics2D g, double x, double y, double width, double height) {
        HiDPIUtils.paintAtScale1x(g, 0, 0, 1, 1, (device, left, top, wide, high, scale) -> {
            Rectangle box = new Rectangle(
                    left + (int) Math.round(x * scale),
                    top + (int) Math.round(y * scale),
                    (int) Math.max(1, Math.round(width * scale)),
                    (int) Math.max(1, Math.round(height * scale)));
            Ground.fill(device, box, device.getColor());
        });
    }
}
