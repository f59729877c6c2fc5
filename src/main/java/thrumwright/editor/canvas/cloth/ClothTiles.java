package thrumwright.editor.canvas.cloth;

import java.awt.Graphics2D;
import java.awt.GraphicsConfiguration;
import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import javax.swing.Timer;
import thrumwright.editor.canvas.cloth.ClothWorkers.Job;

/**
 * The cloth on the screen, painted beside the event thread and kept in tiles of device pixels. Until all that is in the
 * window is there, what was painted before is shown in its place, as it was while something changes; in another size the
 * cloth is sketched at once. For the event thread only.
 */
public final class ClothTiles {
    /** So many tiles are kept at least, and so many times as many as the window needs. */
    private static final int LEAST_KEPT = 40;

    private static final int KEPT = 3;

    /** While the size changes more often than this, nothing is painted that would be out of date at once, ms. */
    private static final int STILL = 40;

    /** A cloth that takes longer than that is sketched until it is there, ms: what is typed must be seen at once. */
    private static final int LATE = 50;

    private final Consumer<Rectangle> arrived;
    private final ClothWorkers workers = new ClothWorkers(this::painted);
    private final Timer still;

    /** Runs from when what is shown is another cloth than it should be. */
    private final Timer patience;

    private PaintedCloth making;
    private PaintedCloth shown;
    private boolean waiting;

    /** Whether what is being painted is shown part by part. */
    private boolean byParts;

    /** @param arrived told what there is to show anew, device pixels from the cloth's corner */
    public ClothTiles(Consumer<Rectangle> arrived) {
        this.arrived = arrived;
        this.still = new Timer(STILL, event -> arrived.accept(making.seen()));
        still.setRepeats(false);
        this.patience = new Timer(LATE, event -> arrived.accept(making.seen()));
        patience.setRepeats(false);
    }

    /**
     * Draws what there is of a cloth and has the rest painted.
     *
     * @param g in device pixels from the cloth's corner
     * @param seen what is in the window
     * @param screen null for none
     */
    public void draw(Graphics2D g, ClothScene scene, Rectangle seen, GraphicsConfiguration screen) {
        want(scene, seen, screen);
        boolean current = making.scene().same(scene);
        boolean complete = current && making.complete();
        boolean late = isLate(scene, complete);
        // a picture that differs is shown as a whole or not at all, unless one waits for it
        byParts =
                current && !complete && (late || shown == null || shown.scene().sameCloth(scene));
        if (complete) {
            making.draw(g, seen);
        } else {
            incomplete(g, scene, seen, late);
        }
    }

    /** What was painted before, then what there is by now; a sketch where nothing is, or only in another size. */
    private void incomplete(Graphics2D g, ClothScene scene, Rectangle seen, boolean late) {
        Set<PaintedCloth> there = new LinkedHashSet<>();
        if (!late && shown != null && shown.scene().sameSize(scene)) {
            there.add(shown);
        }
        if (byParts) {
            there.add(making);
        }
        new Sketch(scene).draw(g, PaintedCloth.without(there, seen));
        there.forEach(cloth -> cloth.draw(g, seen));
    }

    /** Whether another cloth than it should be has been shown for too long. */
    private boolean isLate(ClothScene scene, boolean complete) {
        boolean other = !complete && shown != null && !shown.scene().sameCloth(scene);
        if (!other) {
            patience.stop();
            waiting = false;
        } else if (!waiting) {
            patience.start();
            waiting = true;
        }
        return other && !patience.isRunning();
    }

    /** Whether all that is in the window is as sharp as it can be. */
    public boolean sharp(ClothScene scene, Rectangle seen) {
        return making != null && making.scene().same(scene) && making.seen().equals(seen) && making.complete();
    }

    private void want(ClothScene scene, Rectangle seen, GraphicsConfiguration screen) {
        if (making == null || !making.scene().same(scene)) {
            if (making != null
                    && !making.missing(making.seen()).isEmpty()
                    && !making.scene().sameCloth(scene)) {
                // while something is dragged, each picture would be out of date before it is done: this one is finished
                workers.ask(jobs(making.seen()), screen);
                return;
            }
            if (shown != null) {
                still.restart();
            }
            making = new PaintedCloth(scene);
        }
        making.see(seen);
        if (making.complete()) {
            shown = making;
        }
        boolean zooming = still.isRunning() && shown.scene().sameCloth(scene);
        workers.ask(zooming ? List.of() : jobs(seen), screen);
    }

    /** What the window needs; when all lies still, what is next to the window too. */
    private List<Job> jobs(Rectangle seen) {
        List<Job> jobs = new ArrayList<>();
        making.missing(seen).forEach(tile -> jobs.add(new Job(making, tile)));
        if (still.isRunning()) {
            return jobs;
        }
        Rectangle around = new Rectangle(seen);
        around.grow(PaintedCloth.TILE / 2, PaintedCloth.TILE / 2);
        for (Rectangle tile : making.missing(around)) {
            if (!tile.intersects(seen)) {
                jobs.add(new Job(making, tile));
            }
        }
        return jobs;
    }

    private void painted(PaintedCloth cloth, Rectangle part, BufferedImage image) {
        if (cloth == making) {
            Rectangle seen = making.seen();
            making.put(
                    part,
                    image,
                    Math.max(LEAST_KEPT, KEPT * PaintedCloth.tiles(seen).size()));
            if (making.complete()) {
                shown = making;
            }
            if (part.intersects(seen) && (byParts || making.complete())) {
                arrived.accept(byParts ? part.intersection(seen) : seen);
            }
        }
    }
}
