package thrumwright.editor.canvas;

import java.awt.Dimension;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import javax.swing.JComponent;
import javax.swing.UIManager;
import thrumwright.editor.canvas.painted.Division;
import thrumwright.editor.canvas.painted.Hair;
import thrumwright.editor.canvas.seen.Axis;
import thrumwright.editor.canvas.seen.CanvasMap;
import thrumwright.editor.look.Ground;
import thrumwright.editor.look.Pixels;
import thrumwright.editor.look.Smooth;

/** The rule above the canvas: widths from the first warp end. */
public final class WidthRule extends JComponent {
    private static final long serialVersionUID = 1L;
    static final int HEIGHT = 24;

    private final transient PieceCanvas canvas;

    public WidthRule(PieceCanvas canvas) {
        this.canvas = canvas;
        canvas.whenMapChanges(this::repaint);
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(canvas.getPreferredSize().width, Pixels.of(HEIGHT));
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = (Graphics2D) graphics.create();
        Smooth.both(g);
        Ground.fill(g, this, UIManager.getColor("Panel.background"));
        g.setFont(UIManager.getFont("Label.font")
                .deriveFont(UIManager.getFont("Label.font").getSize2D() - 1.5f));
        FontMetrics metrics = g.getFontMetrics();
        CanvasMap map = canvas.map();
        Rectangle seen = canvas.showing().pictured();
        Division division = Division.of(
                map.scale(),
                metrics.stringWidth("000.0") + Pixels.of(8),
                canvas.session().shown().shown());
        double from = Math.max(0, map.across(seen.getMinX()));
        double to = Math.min(map.picture().span(), map.across(seen.getMaxX()));
        for (Axis.Span span : map.axes().across().spans()) {
            division.between(Math.max(from, span.from()), Math.min(to, span.to()))
                    .forEach(stroke -> paint(g, stroke, map.x(stroke.at())));
        }
        g.dispose();
    }

    private void paint(Graphics2D g, Division.Stroke stroke, double x) {
        g.setColor(UIManager.getColor("Thrumwright.quiet"));
        Hair.upright(g, x, getHeight() - Pixels.of(stroke.numbered() ? 8 : 4), getHeight(), 1);
        if (stroke.numbered()) {
            double half = g.getFontMetrics().stringWidth(stroke.number()) / 2.0;
            g.drawString(stroke.number(), (float) (x - half), getHeight() - Pixels.of(10));
        }
    }
}
