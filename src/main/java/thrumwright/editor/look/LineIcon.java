package thrumwright.editor.look;

import com.formdev.flatlaf.FlatLaf.DisabledIconProvider;
import com.formdev.flatlaf.util.UIScale;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Component;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Path2D;
import java.awt.image.RGBImageFilter;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import javax.swing.Icon;
import javax.swing.UIManager;

/** A small picture of lines in the colour of the theme's texts, paler where its button can't be pressed. */
final class LineIcon implements Icon, DisabledIconProvider {
    private static final int SIZE = 18;
    private static final BasicStroke PEN = new BasicStroke(1.5f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);

    private final String name;
    private final boolean pale;
    private List<Path2D> lines;

    /** @param name of a file in the icons' folder, without its ending; it is read when it is first drawn */
    LineIcon(String name, boolean pale) {
        this.name = name;
        this.pale = pale;
    }

    private List<Path2D> lines() {
        if (lines == null) {
            String file = "/thrumwright/editor/icons/" + name + ".svg";
            try (InputStream in = LineIcon.class.getResourceAsStream(file)) {
                lines = SvgPath.read(new String(in.readAllBytes(), StandardCharsets.US_ASCII));
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
        return lines;
    }

    private Color colour() {
        Color text = UIManager.getColor("Label.foreground");
        boolean filtered = pale && UIManager.get("Component.grayFilter") instanceof RGBImageFilter;
        return filtered
                ? new Color(
                        ((RGBImageFilter) UIManager.get("Component.grayFilter")).filterRGB(0, 0, text.getRGB()), true)
                : text;
    }

    @Override
    public void paintIcon(Component on, Graphics graphics, int x, int y) {
        Graphics2D g = (Graphics2D) graphics.create();
        Smooth.lines(g);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g.translate(x, y);
        float larger = UIScale.getUserScaleFactor();
        g.scale(larger, larger);
        g.setColor(colour());
        g.setStroke(PEN);
        lines().forEach(g::draw);
        g.dispose();
    }

    @Override
    public Icon getDisabledIcon() {
        return new LineIcon(name, true);
    }

    @Override
    public int getIconWidth() {
        return UIScale.scale(SIZE);
    }

    @Override
    public int getIconHeight() {
        return UIScale.scale(SIZE);
    }
}
