package thrumwright.editor.canvas.cloth;

import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What has been painted of a cloth so far, in parts. Those that were wanted last are kept longest. */
final class PaintedCloth {
    /** Width and height of a tile, device pixels. Larger ones are too large for the memory of what lives briefly. */
    static final int TILE = 320;

    private final ClothScene scene;
    private final Map<Rectangle, BufferedImage> parts = new LinkedHashMap<>(16, 0.75f, true);
    private Rectangle seen = new Rectangle();

    PaintedCloth(ClothScene scene) {
        this.scene = scene;
    }

    ClothScene scene() {
        return scene;
    }

    /** What is in the window now. */
    void see(Rectangle part) {
        seen = part;
    }

    Rectangle seen() {
        return seen;
    }

    /** Keeps a part, and lets go of those that were not wanted for longest. */
    void put(Rectangle part, BufferedImage image, int most) {
        parts.put(part, image);
        Iterator<Rectangle> oldest = parts.keySet().iterator();
        while (parts.size() > most) {
            oldest.next();
            oldest.remove();
        }
    }

    int count() {
        return parts.size();
    }

    /** The tiles that a part of the cloth touches. */
    static List<Rectangle> tiles(Rectangle part) {
        List<Rectangle> tiles = new ArrayList<>();
        for (int row = Math.floorDiv(part.y, TILE); row * TILE < part.y + part.height; row++) {
            for (int column = Math.floorDiv(part.x, TILE); column * TILE < part.x + part.width; column++) {
                tiles.add(new Rectangle(column * TILE, row * TILE, TILE, TILE));
            }
        }
        return tiles;
    }

    /** Tiles of a part that are still to be painted, those in its middle first. */
    List<Rectangle> missing(Rectangle part) {
        Point middle = new Point((int) part.getCenterX(), (int) part.getCenterY());
        List<Rectangle> missing = new ArrayList<>();
        for (Rectangle tile : tiles(part)) {
            if (parts.get(tile) == null) {
                missing.add(tile);
            }
        }
        missing.sort(Comparator.comparingDouble(tile -> middle.distance(tile.getCenterX(), tile.getCenterY())));
        return missing;
    }

    /** Whether all that is in the window has been painted. */
    boolean complete() {
        return !seen.isEmpty() && missing(seen).isEmpty();
    }

    /**
     * Draws what there is of it.
     *
     * @param g in device pixels from the cloth's corner
     * @param wanted no more than this part
     */
    void draw(Graphics2D g, Rectangle wanted) {
        parts.forEach((part, image) -> {
            if (part.intersects(wanted)) {
                g.drawImage(image, part.x, part.y, null);
            }
        });
    }

    /** The least box that holds whatever of a part none of some cloths has painted; empty if there is nothing. */
    static Rectangle without(Collection<PaintedCloth> cloths, Rectangle part) {
        return tiles(part).stream()
                .filter(tile -> cloths.stream().noneMatch(cloth -> cloth.parts.containsKey(tile)))
                .reduce(Rectangle::union)
                .map(part::intersection)
                .orElseGet(Rectangle::new);
    }
}
