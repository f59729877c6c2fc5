package thrumwright.editor.canvas.seen;

import java.awt.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.Supplier;
import thrumwright.drawing.View;
import thrumwright.drawing.piece.PiecePicture;
import thrumwright.piece.Place;

/** What is looked at, and from how near. Keeps the map of it until something changes. */
public final class Sight {
    private final Function<PiecePicture, Room> room;
    private final Supplier<Place> end;
    private final List<Runnable> listeners = new ArrayList<>();
    private PiecePicture picture;
    private Zoom zoom = Zoom.fitting(Zoom.Fit.FIRST);
    /** Null: to be worked out as soon as it is asked for. */
    private CanvasMap map;
    /** Where the cloth lies as long as something is dragged; else null. */
    private View held;
    /** The scale that a picture keeps while it fits, pixels per mm; 0 for none. */
    private double kept;
    /** The room in which it had that scale. */
    private Room keptIn;
    /** How far the picture lies below the middle of its window, pixels, since it kept its place while it grew. */
    private double lowered;

    /**
     * @param room that there is for a picture
     * @param end the one that is worked on
     */
    public Sight(PiecePicture picture, Function<PiecePicture, Room> room, Supplier<Place> end) {
        this.picture = picture;
        this.room = room;
        this.end = end;
    }

    /** Who is told whenever things come to lie elsewhere. */
    public void whenChanged(Runnable listener) {
        listeners.add(listener);
    }

    public void tell() {
        listeners.forEach(Runnable::run);
    }

    /** Where everything lies at present. */
    public CanvasMap map() {
        if (map == null) {
            View view = view();
            map = CanvasMap.of(picture, view, framing().axes(view.scale()));
        }
        return map;
    }

    /** Something has changed that the map depends on. */
    public void outdate() {
        map = null;
    }

    public PiecePicture picture() {
        return picture;
    }

    public void show(PiecePicture other) {
        Framing now = framing();
        zoom = now.zoom();
        kept = now.scale();
        keptIn = now.room();
        picture = other;
        outdate();
    }

    public Zoom zoom() {
        return framing().zoom();
    }

    /** From as near as that; nothing is held any more, and the picture lies in the middle. */
    public void zoom(Zoom other) {
        zoom = other;
        lowered = 0;
        kept = 0;
        held = null;
        outdate();
    }

    /** How the piece is to be shown now. */
    public Framing framing() {
        Room now = room.apply(picture);
        double before = kept > 0 && now.sameWindow(keptIn) ? kept : 0;
        return new Framing(picture, now, zoom, end.get(), lowered, before).settled();
    }

    /** Where the cloth lies, worked out anew. */
    public View view() {
        return held == null ? framing().view() : held;
    }

    /** Pixels per mm, more than 0. */
    public double scale() {
        return held == null ? framing().scale() : held.scale();
    }

    /** The canvas that is wanted; as it is while something is dragged. */
    public Dimension size() {
        Framing framing = framing();
        return held == null ? framing.size() : framing.room().canvas();
    }

    /** From now on all stays where it is, or doesn't any more. */
    public void hold(boolean still) {
        held = still ? view() : null;
    }

    public boolean isHeld() {
        return held != null;
    }

    /** How far the picture lies below the middle of a window that has room for all of it, pixels, either sign. */
    public double lowered() {
        return lowered;
    }

    /** @param pixels below the middle, either sign */
    public void lower(double pixels) {
        lowered = pixels;
        outdate();
    }
}
