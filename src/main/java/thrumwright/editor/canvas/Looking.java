package thrumwright.editor.canvas;

import java.awt.Point;
import java.awt.Rectangle;
import java.util.List;
import java.util.Optional;
import javax.swing.JComponent;
import thrumwright.editor.canvas.seen.BlockSpot;
import thrumwright.editor.canvas.seen.CanvasMap;
import thrumwright.editor.canvas.seen.Sight;
import thrumwright.editor.canvas.seen.Standing;
import thrumwright.editor.canvas.seen.Zoom;
import thrumwright.editor.edit.Selection;
import thrumwright.editor.edit.Session;
import thrumwright.piece.Place;

/** Looks at the piece from nearer or farther, and at this or that part of it. */
public final class Looking {
    private final JComponent canvas;
    private final Sight sight;
    private final Session session;
    private final Scrolling scrolling;

    Looking(JComponent canvas, Sight sight, Session session, Scrolling scrolling) {
        this.canvas = canvas;
        this.sight = sight;
        this.session = session;
        this.scrolling = scrolling;
    }

    /** From as near as that; what was in the middle stays there. */
    void zoom(Zoom other) {
        zoom(other, middle());
    }

    /** As {@link #zoom(Zoom)}, but a point of the canvas stays where it is. */
    void zoom(Zoom other, Point fixed) {
        boolean held = sight.isHeld();
        Rectangle seen = canvas.getVisibleRect();
        double across = sight.map().across(fixed.x);
        double up = sight.map().heightAt(fixed.y);
        sight.zoom(other);
        canvas.revalidate();
        scrolling.settle();
        sight.outdate();
        CanvasMap after = sight.map();
        scrolling.to(after.x(across) - (fixed.x - seen.x), after.height(up) - (fixed.y - seen.y));
        seeAll();
        sight.hold(held);
        sight.tell();
        canvas.repaint();
    }

    /** Where all of the piece is to be shown and the list beside it is higher than the window, the design is in its middle. */
    void seeAll() {
        if (sight.zoom().isWhole()) {
            scrolling.toHeight(sight.map().designMiddle() - canvas.getVisibleRect().height / 2.0);
        }
    }

    /** What was dragged is where it belongs now; so is the picture again. */
    void letGo() {
        Standing standing = standing();
        sight.hold(false);
        sight.outdate();
        canvas.revalidate();
        scrolling.settle();
        sight.outdate();
        sight.tell();
        keep(standing);
        canvas.repaint();
    }

    /** Closer by so many steps, of either sign, with a point of the canvas staying where it is. */
    void by(double steps, Point fixed) {
        zoom(sight.zoom().by(sight.scale(), steps), fixed);
    }

    public void closer() {
        by(1, middle());
    }

    public void farther() {
        by(-1, middle());
    }

    /** What must stay where it is in the window. */
    Standing standing() {
        return Standing.of(sight.map(), canvas.getVisibleRect(), session.selection(), session.plan());
    }

    /** Scrolls, or moves the picture where the window has room for all of it. */
    void keep(Standing standing) {
        if (!scrolling.isPossible()) {
            return;
        }
        scrolling.settle();
        double top = standing.top(sight.map());
        if (top != 0 && scrolling.showsFullHeight()) {
            sight.lower(sight.framing().inside() - top);
            sight.tell();
            canvas.repaint();
        } else {
            scrolling.toHeight(top);
        }
    }

    /** Shows one end so that its height fills the window, from its left edge. */
    public void showEnd(Place place) {
        if (session.selection().place() != place) {
            session.select(new Selection(place, List.of()));
        }
        zoom(Zoom.fitting(Zoom.Fit.END));
        double left = sight.map().x(-sight.picture().beside());
        double middle = sight.map().y(place, session.plan().end(place).height() / 2);
        toMiddle((int) left - sight.framing().room().left(), middle, canvas.getVisibleRect().width);
    }

    /** Comes so close that single warp ends can be told apart; a selected block comes to the middle. */
    public void showSingleEnds() {
        zoom(Zoom.of(sight.framing().singleEnds()));
        lead().ifPresent(spot -> toMiddle(canvas.getVisibleRect().x, spot.middle(), 1));
    }

    private void toMiddle(int left, double middle, int width) {
        int height = canvas.getVisibleRect().height;
        canvas.scrollRectToVisible(new Rectangle(left, (int) middle - height / 2, width, height));
    }

    /** Where the middle is left out, shows it too, with the selvedge staying that the window is to move away from. */
    void joinMiddle(boolean toTheRight) {
        if (sight.framing().torn()) {
            double selvedge = sight.map().x(toTheRight ? 0 : sight.picture().span());
            zoom(Zoom.of(sight.scale()), new Point((int) Math.round(selvedge), middle().y));
        }
    }

    /**
     * Moves the window; where the middle is left out and it is to move sideways, the middle is shown too from then on.
     *
     * @param right by so many times its width, to the left below 0
     * @param down by so many times its height, up below 0
     */
    public void pan(double right, double down) {
        if (right != 0) {
            joinMiddle(right > 0);
        }
        Rectangle seen = canvas.getVisibleRect();
        seen.translate((int) Math.round(right * seen.width), (int) Math.round(down * seen.height));
        canvas.scrollRectToVisible(seen);
    }

    /** Scrolls to a block if it can't be seen. */
    void reveal(Place place, String id) {
        sight.map()
                .spot(place, id)
                .ifPresent(spot -> canvas.scrollRectToVisible(new Rectangle(
                        canvas.getVisibleRect().x, (int) spot.top() - 8, 1, (int) (spot.bottom() - spot.top()) + 16)));
    }

    private Optional<BlockSpot> lead() {
        Selection selection = session.selection();
        return selection.lead().flatMap(id -> sight.map().spot(selection.place(), id));
    }

    /** A point of the selected block that can be seen; without one, the middle of what is seen. */
    public Point selectedPoint() {
        Rectangle seen = canvas.getVisibleRect();
        Point middle = middle();
        return lead().map(spot -> Math.max(seen.y, Math.min(seen.getMaxY(), spot.middle())))
                .map(height -> new Point(middle.x, (int) Math.round(height)))
                .orElse(middle);
    }

    private Point middle() {
        Rectangle seen = canvas.getVisibleRect();
        return new Point((int) seen.getCenterX(), (int) seen.getCenterY());
    }
}
