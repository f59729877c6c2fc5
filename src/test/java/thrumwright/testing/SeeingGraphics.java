package thrumwright.testing;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Composite;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.GraphicsConfiguration;
import java.awt.Image;
import java.awt.Paint;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.Stroke;
import java.awt.font.FontRenderContext;
import java.awt.font.GlyphVector;
import java.awt.font.TextLayout;
import java.awt.geom.AffineTransform;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.awt.image.BufferedImageOp;
import java.awt.image.ImageObserver;
import java.awt.image.RenderedImage;
import java.awt.image.renderable.RenderableImage;
import java.text.AttributedCharacterIterator;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;

/**
 * Paints into a picture, and notes of every text and every mark where it lies, what it may not lie beyond, its colour and
 * the colour that was there before.
 */
public final class SeeingGraphics extends Graphics2D {
    /** Marks are at most so thick or so high, pixels; what is larger is ground. */
    private static final double MARK = 15;

    /**
     * Something painted.
     *
     * @param text empty for a mark
     * @param box where it lies in the picture
     * @param clip what is shown there at all
     * @param tint whether the ground shows through
     * @param painter class of the program that painted it; empty if only the look of the window did
     */
    public record Seen(
            String text, Rectangle2D box, Rectangle2D clip, Color colour, Color ground, boolean tint, String painter) {
        public double contrast() {
            return SeeingGraphics.contrast(colour, ground);
        }
    }

    private final Graphics2D to;
    private final BufferedImage picture;
    private final List<Seen> seen;

    private SeeingGraphics(Graphics2D to, BufferedImage picture, List<Seen> seen) {
        this.to = to;
        this.picture = picture;
        this.seen = seen;
    }

    /** All that is painted into a picture of that size. */
    public static List<Seen> of(int width, int height, Color ground, java.util.function.Consumer<Graphics2D> paint) {
        BufferedImage picture = new BufferedImage(Math.max(1, width), Math.max(1, height), BufferedImage.TYPE_INT_RGB);
        Graphics2D g = picture.createGraphics();
        g.setColor(ground);
        g.fillRect(0, 0, width, height);
        g.setClip(0, 0, width, height);
        List<Seen> seen = new ArrayList<>();
        SeeingGraphics seeing = new SeeingGraphics(g, picture, seen);
        paint.accept(seeing);
        seeing.dispose();
        return seen;
    }

    /** Contrast of two colours, 1 to 21 (WCAG 2, relative luminance). */
    public static double contrast(Color one, Color other) {
        double light = Math.max(luminance(one), luminance(other));
        double dark = Math.min(luminance(one), luminance(other));
        return (light + 0.05) / (dark + 0.05);
    }

    private static double luminance(Color colour) {
        return 0.2126 * linear(colour.getRed())
                + 0.7152 * linear(colour.getGreen())
                + 0.0722 * linear(colour.getBlue());
    }

    private static double linear(int channel) {
        double share = channel / 255.0;
        return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
    }

    private void text(String text, double x, double y) {
        if (text.isBlank()) {
            return;
        }
        FontMetrics metrics = to.getFontMetrics();
        Rectangle2D box = new Rectangle2D.Double(
                x,
                y - metrics.getAscent(),
                metrics.stringWidth(text.stripTrailing()),
                metrics.getAscent() + metrics.getDescent());
        note(text, box);
    }

    private void mark(Shape shape, boolean filled) {
        Rectangle2D box = shape.getBounds2D();
        boolean small = Math.min(box.getWidth(), box.getHeight()) <= MARK;
        if (!filled || small) {
            note("", box);
        }
    }

    private void note(String text, Rectangle2D box) {
        Rectangle2D device = to.getTransform().createTransformedShape(box).getBounds2D();
        Rectangle2D clip = to.getClip() == null
                ? new Rectangle(picture.getWidth(), picture.getHeight())
                : to.getTransform()
                        .createTransformedShape(to.getClip().getBounds2D())
                        .getBounds2D();
        Color ground = ground(device.createIntersection(clip));
        seen.add(new Seen(
                text,
                device,
                clip,
                over(to.getColor(), ground),
                ground,
                to.getColor().getAlpha() < 255,
                painter()));
    }

    /** The colour that is there most. */
    private Color ground(Rectangle2D box) {
        int left = (int) Math.max(0, Math.floor(box.getMinX() - 1));
        int top = (int) Math.max(0, Math.floor(box.getMinY() - 1));
        int width = (int) Math.min(picture.getWidth() - 1, Math.ceil(box.getMaxX() + 1)) - left + 1;
        int height = (int) Math.min(picture.getHeight() - 1, Math.ceil(box.getMaxY() + 1)) - top + 1;
        if (width <= 0 || height <= 0) {
            return Color.WHITE;
        }
        int[] colours = (int[]) picture.getRaster().getDataElements(left, top, width, height, null);
        Arrays.sort(colours);
        return new Color(longestRun(colours));
    }

    private static int longestRun(int[] sorted) {
        int most = 0;
        int longest = 0;
        int from = 0;
        for (int i = 1; i <= sorted.length; i++) {
            if (i == sorted.length || sorted[i] != sorted[from]) {
                if (i - from > longest) {
                    longest = i - from;
                    most = sorted[from];
                }
                from = i;
            }
        }
        return most;
    }

    /** A colour that lets the ground through. */
    private static Color over(Color colour, Color ground) {
        double share = colour.getAlpha() / 255.0;
        return new Color(
                (int) Math.round(colour.getRed() * share + ground.getRed() * (1 - share)),
                (int) Math.round(colour.getGreen() * share + ground.getGreen() * (1 - share)),
                (int) Math.round(colour.getBlue() * share + ground.getBlue() * (1 - share)));
    }

    /** The nearest class of the program that isn't this one, as long as the look of the window doesn't come first. */
    private static String painter() {
        return StackWalker.getInstance()
                .walk(frames -> frames.map(StackWalker.StackFrame::getClassName)
                        .filter(name -> !name.equals(SeeingGraphics.class.getName()) && !name.startsWith("java.awt."))
                        .findFirst())
                .filter(name -> name.startsWith("thrumwright."))
                .orElse("");
    }

    @Override
    public Graphics create() {
        return new SeeingGraphics((Graphics2D) to.create(), picture, seen);
    }

    @Override
    public void drawString(String text, int x, int y) {
        text(text, x, y);
        to.drawString(text, x, y);
    }

    @Override
    public void drawString(String text, float x, float y) {
        text(text, x, y);
        to.drawString(text, x, y);
    }

    @Override
    public void drawString(AttributedCharacterIterator text, int x, int y) {
        drawString(text, (float) x, (float) y);
    }

    @Override
    public void drawString(AttributedCharacterIterator text, float x, float y) {
        TextLayout layout = new TextLayout(text, to.getFontRenderContext());
        StringBuilder plain = new StringBuilder();
        for (char c = text.first(); c != AttributedCharacterIterator.DONE; c = text.next()) {
            plain.append(c);
        }
        Rectangle2D box = layout.getBounds();
        box.setRect(box.getX() + x, box.getY() + y, box.getWidth(), box.getHeight());
        if (!plain.toString().isBlank()) {
            note(plain.toString(), box);
        }
        layout.draw(to, x, y);
    }

    @Override
    public void drawGlyphVector(GlyphVector glyphs, float x, float y) {
        to.drawGlyphVector(glyphs, x, y);
    }

    @Override
    public void draw(Shape shape) {
        mark(shape, false);
        to.draw(shape);
    }

    @Override
    public void fill(Shape shape) {
        mark(shape, true);
        to.fill(shape);
    }

    @Override
    public void drawLine(int x1, int y1, int x2, int y2) {
        mark(new Line2D.Double(x1, y1, x2, y2), false);
        to.drawLine(x1, y1, x2, y2);
    }

    @Override
    public void fillRect(int x, int y, int width, int height) {
        mark(new Rectangle(x, y, width, height), true);
        to.fillRect(x, y, width, height);
    }

    @Override
    public void clearRect(int x, int y, int width, int height) {
        to.clearRect(x, y, width, height);
    }

    @Override
    public void drawRoundRect(int x, int y, int width, int height, int arcWidth, int arcHeight) {
        to.drawRoundRect(x, y, width, height, arcWidth, arcHeight);
    }

    @Override
    public void fillRoundRect(int x, int y, int width, int height, int arcWidth, int arcHeight) {
        to.fillRoundRect(x, y, width, height, arcWidth, arcHeight);
    }

    @Override
    public void drawOval(int x, int y, int width, int height) {
        to.drawOval(x, y, width, height);
    }

    @Override
    public void fillOval(int x, int y, int width, int height) {
        to.fillOval(x, y, width, height);
    }

    @Override
    public void drawArc(int x, int y, int width, int height, int start, int arc) {
        to.drawArc(x, y, width, height, start, arc);
    }

    @Override
    public void fillArc(int x, int y, int width, int height, int start, int arc) {
        to.fillArc(x, y, width, height, start, arc);
    }

    @Override
    public void drawPolyline(int[] xs, int[] ys, int count) {
        to.drawPolyline(xs, ys, count);
    }

    @Override
    public void drawPolygon(int[] xs, int[] ys, int count) {
        to.drawPolygon(xs, ys, count);
    }

    @Override
    public void fillPolygon(int[] xs, int[] ys, int count) {
        to.fillPolygon(xs, ys, count);
    }

    @Override
    public boolean drawImage(Image image, AffineTransform transform, ImageObserver observer) {
        return to.drawImage(image, transform, observer);
    }

    @Override
    public void drawImage(BufferedImage image, BufferedImageOp operation, int x, int y) {
        to.drawImage(image, operation, x, y);
    }

    @Override
    public void drawRenderedImage(RenderedImage image, AffineTransform transform) {
        to.drawRenderedImage(image, transform);
    }

    @Override
    public void drawRenderableImage(RenderableImage image, AffineTransform transform) {
        to.drawRenderableImage(image, transform);
    }

    @Override
    public boolean drawImage(Image image, int x, int y, ImageObserver observer) {
        return to.drawImage(image, x, y, observer);
    }

    @Override
    public boolean drawImage(Image image, int x, int y, int width, int height, ImageObserver observer) {
        return to.drawImage(image, x, y, width, height, observer);
    }

    @Override
    public boolean drawImage(Image image, int x, int y, Color ground, ImageObserver observer) {
        return to.drawImage(image, x, y, ground, observer);
    }

    @Override
    public boolean drawImage(Image image, int x, int y, int width, int height, Color ground, ImageObserver observer) {
        return to.drawImage(image, x, y, width, height, ground, observer);
    }

    @Override
    public boolean drawImage(
            Image image,
            int dx1,
            int dy1,
            int dx2,
            int dy2,
            int sx1,
            int sy1,
            int sx2,
            int sy2,
            ImageObserver observer) {
        return to.drawImage(image, dx1, dy1, dx2, dy2, sx1, sy1, sx2, sy2, observer);
    }

    @Override
    public boolean drawImage(
            Image image,
            int dx1,
            int dy1,
            int dx2,
            int dy2,
            int sx1,
            int sy1,
            int sx2,
            int sy2,
            Color ground,
            ImageObserver observer) {
        return to.drawImage(image, dx1, dy1, dx2, dy2, sx1, sy1, sx2, sy2, ground, observer);
    }

    @Override
    public boolean hit(Rectangle rectangle, Shape shape, boolean onStroke) {
        return to.hit(rectangle, shape, onStroke);
    }

    @Override
    public GraphicsConfiguration getDeviceConfiguration() {
        return to.getDeviceConfiguration();
    }

    @Override
    public void setComposite(Composite composite) {
        to.setComposite(composite);
    }

    @Override
    public void setPaint(Paint paint) {
        to.setPaint(paint);
    }

    @Override
    public void setStroke(Stroke stroke) {
        to.setStroke(stroke == null ? new BasicStroke() : stroke);
    }

    @Override
    public void setRenderingHint(RenderingHints.Key key, Object value) {
        to.setRenderingHint(key, value);
    }

    @Override
    public Object getRenderingHint(RenderingHints.Key key) {
        return to.getRenderingHint(key);
    }

    @Override
    public void setRenderingHints(Map<?, ?> hints) {
        to.setRenderingHints(hints);
    }

    @Override
    public void addRenderingHints(Map<?, ?> hints) {
        to.addRenderingHints(hints);
    }

    @Override
    public RenderingHints getRenderingHints() {
        return to.getRenderingHints();
    }

    @Override
    public void translate(int x, int y) {
        to.translate(x, y);
    }

    @Override
    public void translate(double x, double y) {
        to.translate(x, y);
    }

    @Override
    public void rotate(double angle) {
        to.rotate(angle);
    }

    @Override
    public void rotate(double angle, double x, double y) {
        to.rotate(angle, x, y);
    }

    @Override
    public void scale(double x, double y) {
        to.scale(x, y);
    }

    @Override
    public void shear(double x, double y) {
        to.shear(x, y);
    }

    @Override
    public void transform(AffineTransform transform) {
        to.transform(transform);
    }

    @Override
    public void setTransform(AffineTransform transform) {
        to.setTransform(transform);
    }

    @Override
    public AffineTransform getTransform() {
        return to.getTransform();
    }

    @Override
    public Paint getPaint() {
        return to.getPaint();
    }

    @Override
    public Composite getComposite() {
        return to.getComposite();
    }

    @Override
    public void setBackground(Color colour) {
        to.setBackground(colour);
    }

    @Override
    public Color getBackground() {
        return to.getBackground();
    }

    @Override
    public Stroke getStroke() {
        return to.getStroke();
    }

    @Override
    public void clip(Shape shape) {
        to.clip(shape);
    }

    @Override
    public FontRenderContext getFontRenderContext() {
        return to.getFontRenderContext();
    }

    @Override
    public Color getColor() {
        return to.getColor();
    }

    @Override
    public void setColor(Color colour) {
        to.setColor(colour);
    }

    @Override
    public void setPaintMode() {
        to.setPaintMode();
    }

    @Override
    public void setXORMode(Color colour) {
        to.setXORMode(colour);
    }

    @Override
    public Font getFont() {
        return to.getFont();
    }

    @Override
    public void setFont(Font font) {
        to.setFont(font);
    }

    @Override
    public FontMetrics getFontMetrics(Font font) {
        return to.getFontMetrics(font);
    }

    @Override
    public Rectangle getClipBounds() {
        return to.getClipBounds();
    }

    @Override
    public void clipRect(int x, int y, int width, int height) {
        to.clipRect(x, y, width, height);
    }

    @Override
    public void setClip(int x, int y, int width, int height) {
        to.setClip(x, y, width, height);
    }

    @Override
    public Shape getClip() {
        return to.getClip();
    }

    @Override
    public void setClip(Shape clip) {
        to.setClip(clip);
    }

    @Override
    public void copyArea(int x, int y, int width, int height, int dx, int dy) {
        to.copyArea(x, y, width, height, dx, dy);
    }

    @Override
    public void dispose() {
        to.dispose();
    }
}
