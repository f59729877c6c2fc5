package thrumwright.editor.canvas;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.event.MouseEvent;
import java.awt.geom.Line2D;
import java.util.List;
import java.util.Map;
import thrumwright.editor.canvas.CanvasMap.Spot;
import thrumwright.editor.edit.Edits;
import thrumwright.editor.edit.Selection;
import thrumwright.editor.edit.Session;
import thrumwright.piece.Place;

/** Drags the selected blocks to another place in their end; a line shows where they would go. */
final class MoveGesture implements Gesture {
    private final PieceCanvas canvas;
    private final Session session;
    private final Edits edits;
    private final Spot taken;
    private final Point from;
    private final List<Spot> others;
    private boolean moving;
    private int below;
    private Point pointer;

    MoveGesture(PieceCanvas canvas, Edits edits, Spot taken, Point from) {
        this.canvas = canvas;
        this.session = canvas.session();
        this.edits = edits;
        this.taken = taken;
        this.from = from;
        this.pointer = from;
        Selection selection = session.selection();
        this.others = canvas.map().spots().stream()
                .filter(spot ->
                        spot.place() == taken.place() && !selection.ids().contains(spot.id()))
                .toList();
    }

    @Override
    public void drag(MouseEvent event) {
        pointer = event.getPoint();
        moving |= Gesturing.meant(from, event);
        below = (int) others.stream().filter(spot -> spot.middle() > pointer.y).count();
    }

    @Override
    public void release(MouseEvent event) {
        if (moving) {
            session.edit(edits.moveTo(session.piece(), session.selection(), below));
        } else {
            session.select(Selection.of(taken.place(), taken.id()));
        }
    }

    @Override
    public void cancel() {
        moving = false;
    }

    @Override
    public void paint(Graphics2D g) {
        if (!moving) {
            return;
        }
        double y = line();
        double left = canvas.map().view().x(-canvas.picture().margin() * 0.6);
        double right =
                canvas.map().view().x(canvas.picture().span() + canvas.picture().margin() * 0.6);
        g.setColor(canvas.palette().paper());
        g.setStroke(new BasicStroke(7));
        g.draw(new Line2D.Double(left, y, right, y));
        g.setColor(canvas.accent());
        g.setStroke(new BasicStroke(3.5f));
        g.draw(new Line2D.Double(left, y, right, y));
        int count = session.selection().ids().size();
        String what = count == 1
                ? canvas.texts().words().name(taken.plan().block())
                : canvas.texts().say("edit.blocks", Map.of("count", count));
        Bubble.paint(g, canvas, pointer, what);
    }

    /** Between the block that would be below and the one above; from the bottom, others are counted backwards. */
    private double line() {
        if (others.isEmpty()) {
            return pointer.y;
        }
        int above = others.size() - below;
        if (above == 0) {
            return others.get(0).top();
        }
        if (above == others.size()) {
            return others.get(others.size() - 1).bottom();
        }
        return taken.place() == Place.START
                ? others.get(above).top()
                : others.get(above - 1).bottom();
    }
}
