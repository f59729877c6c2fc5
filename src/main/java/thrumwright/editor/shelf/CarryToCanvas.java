package thrumwright.editor.shelf;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Cursor;
import java.awt.Dimension;
import java.awt.Point;
import java.awt.event.MouseEvent;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.Icon;
import javax.swing.JLabel;
import javax.swing.JLayeredPane;
import javax.swing.JPanel;
import javax.swing.JRootPane;
import javax.swing.SwingUtilities;
import javax.swing.UIManager;
import thrumwright.block.Block;
import thrumwright.editor.canvas.LabelColumn;
import thrumwright.editor.canvas.PieceCanvas;
import thrumwright.editor.canvas.gesture.DropGesture;
import thrumwright.editor.canvas.gesture.Gaps;
import thrumwright.editor.canvas.gesture.Landing;
import thrumwright.editor.edit.Edits;
import thrumwright.editor.look.Pixels;

/** Carries a block to the canvas, with its picture and what letting go would do beside the pointer. */
final class CarryToCanvas {
    private static final int BESIDE = 16;

    private final PieceCanvas canvas;
    private final LabelColumn labels;
    private final Edits edits;
    private Optional<Carried> carried = Optional.empty();

    private record Carried(DropGesture gesture, Card card, Component shelf) {}

    CarryToCanvas(PieceCanvas canvas, LabelColumn labels, Edits edits) {
        this.canvas = canvas;
        this.labels = labels;
        this.edits = edits;
    }

    void begin(Block block, Icon picture, MouseEvent event) {
        giveUp();
        Landing landing = new Landing(canvas, Gaps.of(canvas.map()), labels, labels.gaps());
        DropGesture gesture = new DropGesture(canvas, landing, edits, block);
        Card card = new Card(picture, canvas.texts().words().name(block));
        carried = Optional.of(new Carried(gesture, card, event.getComponent()));
        canvas.tracker().begin(gesture);
        JRootPane root = SwingUtilities.getRootPane(event.getComponent());
        root.getLayeredPane().add(card, JLayeredPane.DRAG_LAYER);
        event.getComponent().setCursor(Cursor.getPredefinedCursor(Cursor.MOVE_CURSOR));
        move(event);
    }

    void move(MouseEvent event) {
        carried.filter(now -> !canvas.tracker().isUnderWay(now.gesture())).ifPresent(gone -> end());
        carried.ifPresent(now -> {
            canvas.tracker().drag(SwingUtilities.convertMouseEvent(event.getComponent(), event, canvas));
            now.card().say(now.gesture().says());
            now.card().follow(event);
        });
    }

    void drop(MouseEvent event) {
        if (carried.isPresent()) {
            end();
            canvas.tracker().release(SwingUtilities.convertMouseEvent(event.getComponent(), event, canvas));
        }
    }

    /** @return whether anything was carried */
    boolean giveUp() {
        boolean was = carried.isPresent();
        if (was) {
            end();
            canvas.cancelGesture();
        }
        return was;
    }

    private void end() {
        carried.ifPresent(now -> {
            now.card().away();
            now.shelf().setCursor(null);
        });
        carried = Optional.empty();
    }

    /** What is in the hand. */
    private static final class Card extends JPanel {
        private static final long serialVersionUID = 1L;

        private final JLabel words = new JLabel();
        private final String name;

        Card(Icon picture, String name) {
            super(new BorderLayout());
            this.name = name;
            setName("carried");
            words.setIcon(picture);
            words.setIconTextGap(10);
            words.setFont(UIManager.getFont("semibold.font"));
            add(words);
            setBorder(BorderFactory.createCompoundBorder(
                    BorderFactory.createLineBorder(UIManager.getColor("Thrumwright.selected")),
                    BorderFactory.createEmptyBorder(Pixels.of(4), Pixels.of(4), Pixels.of(4), Pixels.of(10))));
        }

        /** @param what letting go would do; empty: nothing */
        void say(Optional<String> what) {
            words.setText(what.orElse(name));
            words.setEnabled(what.isPresent());
            words.setDisabledIcon(words.getIcon());
            setSize(getPreferredSize());
            validate();
        }

        /** Below and to the right of the pointer, as far as there is room. */
        void follow(MouseEvent event) {
            Component pane = getParent();
            Point there = SwingUtilities.convertPoint(event.getComponent(), event.getPoint(), pane);
            Dimension size = getSize();
            int right = there.x + BESIDE;
            int x = right + size.width <= pane.getWidth() ? right : there.x - BESIDE - size.width;
            int y = Math.min(there.y + BESIDE, pane.getHeight() - size.height);
            setLocation(Math.max(0, x), Math.max(0, y));
        }

        void away() {
            JLayeredPane pane = (JLayeredPane) getParent();
            pane.remove(this);
            pane.repaint(getBounds());
        }
    }
}
