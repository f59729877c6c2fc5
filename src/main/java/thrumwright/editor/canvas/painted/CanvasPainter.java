package thrumwright.editor.canvas.painted;

import java.awt.Graphics2D;
import java.awt.GraphicsConfiguration;
import java.awt.Rectangle;
import java.awt.geom.AffineTransform;
import java.util.function.Consumer;
import thrumwright.drawing.View;
import thrumwright.editor.canvas.cloth.ClothScene;
import thrumwright.editor.canvas.cloth.ClothTiles;
import thrumwright.editor.canvas.seen.CanvasMap;
import thrumwright.editor.look.Smooth;

/** Paints the canvas: the cloth first, then what is shown over it and beside it. */
public final class CanvasPainter {
    private final ClothTiles cloth;
    private boolean annotated = true;
    private CanvasMap map;
    private double density;

    /** @param arrived told where on the canvas more of the cloth is to be painted */
    public CanvasPainter(Consumer<Rectangle> arrived) {
        this.cloth = new ClothTiles(dots -> arrived.accept(map.part(dots, density)));
    }

    /** @param annotated not for as long as the cloth is to be seen before there was time for what is shown over and beside it */
    public void setAnnotated(boolean annotated) {
        this.annotated = annotated;
    }

    /** Paints what there is of the cloth, and all else. */
    public void paint(Graphics2D g, Showing showing, GraphicsConfiguration screen) {
        tiles((Graphics2D) g.create(), showing, screen);
        if (annotated) {
            over(g, showing);
        }
    }

    /** For a picture of the window, which can't wait for anything. */
    public void paintAtOnce(Graphics2D g, Showing showing) {
        Graphics2D own = (Graphics2D) g.create();
        own.clip(showing.seen());
        own.setColor(showing.palette().paper());
        own.fill(showing.seen());
        View view = showing.map().view();
        double density = own.getTransform().getScaleX();
        own.translate(view.left(), view.base());
        scene(showing, density).paint(own);
        own.dispose();
        over(g, showing);
    }

    private static void over(Graphics2D g, Showing showing) {
        Smooth.both(g);
        new CanvasMarks(g, showing).selected();
        showing.widths().ifPresent(widths -> new CanvasRules((Graphics2D) g.create(), showing, widths).paint());
        if (FirstStep.isAhead(showing.plan())) {
            FirstStep.paint(g, showing);
        }
        FocusFrame.paint(g, showing);
    }

    private void tiles(Graphics2D g, Showing showing, GraphicsConfiguration screen) {
        AffineTransform transform = g.getTransform();
        density = transform.getScaleX();
        map = showing.map();
        View view = map.view();
        int left = (int) Math.round(transform.getTranslateX() + view.left() * density);
        int base = (int) Math.round(transform.getTranslateY() + view.base() * density);
        g.setTransform(AffineTransform.getTranslateInstance(left, base));
        cloth.draw(g, scene(showing, density), map.dots(showing.seen(), density), screen);
        g.dispose();
    }

    private static ClothScene scene(Showing showing, double density) {
        return new ClothScene(
                showing.picture(), showing.palette(), showing.map().axes(), density);
    }

    /**
     * Whether all of the cloth that can be seen is there as sharp as it can be.
     *
     * @param density device pixels per pixel of the canvas, more than 0
     */
    public boolean sharp(Showing showing, double density) {
        return cloth.sharp(scene(showing, density), showing.map().dots(showing.seen(), density));
    }
}
