package thrumwright.editor.canvas.gesture;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Cursor;
import java.awt.Rectangle;
import java.awt.event.InputEvent;
import java.awt.event.MouseEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.accessibility.AccessibleContext;
import javax.swing.JPanel;
import org.junit.jupiter.api.Test;
import thrumwright.drawing.View;
import thrumwright.drawing.piece.PiecePicture;
import thrumwright.editor.canvas.seen.BlockSpot;
import thrumwright.editor.canvas.seen.CanvasMap;
import thrumwright.editor.canvas.seen.Surface;
import thrumwright.editor.edit.Amounts;
import thrumwright.editor.edit.Edits;
import thrumwright.editor.edit.Selection;
import thrumwright.editor.edit.Session;
import thrumwright.editor.text.Texts;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;
import thrumwright.store.FileProblem;
import thrumwright.testing.LargePieces;

/** Gestures on a canvas that is no component and lies in no window. */
class TrackerTest {
    private final Bare bare = new Bare();
    private final Edits edits = new Edits(bare.texts().phrases(), bare.texts().words());
    private final Tracker tracker = new Tracker(bare, () -> {}, () -> {});
    private final CanvasMouse mouse = new CanvasMouse(bare, tracker, point -> java.util.Optional.empty());
    private final Piece before = bare.session().piece();
    private final String id = before.start().blocks().stream()
            .filter(Amounts::hasHeight)
            .findFirst()
            .orElseThrow()
            .id();

    TrackerTest() throws FileProblem {
        tracker.setGestures(new Gesturing(edits, () -> {}, () -> {}));
    }

    /** So many pixels a mm that all blocks can be told apart. */
    private static final class Bare implements Surface {
        private final Session session;
        private final Texts texts = Texts.of(Locale.UK);
        private Cursor cursor;

        Bare() throws FileProblem {
            session = new Session(LargePieces.demo(), Optional.empty());
        }

        @Override
        public Session session() {
            return session;
        }

        @Override
        public Texts texts() {
            return texts;
        }

        @Override
        public CanvasMap map() {
            return CanvasMap.of(PiecePicture.of(session.plan()), new View(8, 40, 3000));
        }

        @Override
        public void joinMiddle(boolean toTheRight) {
            // nothing is left out here
        }

        @Override
        public Rectangle getVisibleRect() {
            return new Rectangle(0, 0, 800, getHeight());
        }

        @Override
        public int getHeight() {
            return 3100;
        }

        @Override
        public void scrollRectToVisible(Rectangle part) {
            // All of it can be seen.
        }

        @Override
        public boolean panning() {
            return false;
        }

        @Override
        public void setCursor(Cursor other) {
            cursor = other;
        }

        @Override
        public boolean requestFocusInWindow() {
            return true;
        }

        @Override
        public void repaint() {
            // Nothing is painted here.
        }

        @Override
        public AccessibleContext getAccessibleContext() {
            return null;
        }
    }

    private BlockSpot spot() {
        return bare.map().spot(Place.START, id).orElseThrow();
    }

    private MouseEvent at(int type, double y, int button) {
        int held = button == MouseEvent.BUTTON1 && type != MouseEvent.MOUSE_MOVED ? InputEvent.BUTTON1_DOWN_MASK : 0;
        return new MouseEvent(new JPanel(), type, 0, held, 100, (int) Math.round(y), 1, button == 3, button);
    }

    private void press(double y) {
        mouse.mousePressed(at(MouseEvent.MOUSE_PRESSED, y, MouseEvent.BUTTON1));
    }

    private void drag(double y) {
        mouse.mouseDragged(at(MouseEvent.MOUSE_DRAGGED, y, MouseEvent.BUTTON1));
    }

    private void release(double y) {
        mouse.mouseReleased(at(MouseEvent.MOUSE_RELEASED, y, MouseEvent.BUTTON1));
    }

    private void takeEdge() {
        bare.session().select(Selection.of(Place.START, id));
        press(spot().top());
    }

    @Test
    void aPressTakesABlockOrItsEdge() {
        press(spot().middle());
        assertThat(bare.session().selection()).isEqualTo(Selection.of(Place.START, id));
        release(spot().middle());
        mouse.mouseMoved(at(MouseEvent.MOUSE_MOVED, spot().top(), MouseEvent.NOBUTTON));
        assertThat(bare.cursor.getType()).isEqualTo(Cursor.N_RESIZE_CURSOR);
        mouse.mouseMoved(at(MouseEvent.MOUSE_MOVED, -50, MouseEvent.NOBUTTON));
        assertThat(bare.cursor.getType()).isEqualTo(Cursor.DEFAULT_CURSOR);
    }

    @Test
    void anEdgeThatIsPulledIsTriedFirstAndChangesThePieceOnceItIsLetGo() {
        takeEdge();
        double top = spot().top();
        drag(top - 100);
        assertThat(tracker.isHolding()).isTrue();
        assertThat(bare.session().piece()).isSameAs(before);
        assertThat(bare.session().shown()).isNotEqualTo(before);
        release(top - 100);
        assertThat(tracker.isHolding()).isFalse();
        assertThat(bare.session().piece()).isNotEqualTo(before);
        bare.session().undo();
        assertThat(bare.session().piece()).isEqualTo(before);
    }

    @Test
    void whatIsGivenUpLeavesNothingBehind() {
        takeEdge();
        drag(spot().top() - 100);
        assertThat(tracker.cancel()).isTrue();
        assertThat(bare.session().shown()).isEqualTo(before);
        release(500);
        assertThat(bare.session().piece()).isSameAs(before);
        assertThat(tracker.cancel()).isFalse();
    }

    @Test
    void whatIsHeldIsLostWhenAKeyChangesThePiece() {
        takeEdge();
        tracker.giveUpWhatIsOutdated();
        assertThat(tracker.isHolding()).isTrue();
        bare.session().edit(edits.amount(Place.START, Amounts.ofHeight(block(), 40, before, Place.START)));
        tracker.giveUpWhatIsOutdated();
        assertThat(tracker.isHolding()).isFalse();
    }

    private thrumwright.block.Block block() {
        return before.block(Place.START, id).orElseThrow();
    }

    @Test
    void theMenuIsAskedForWhatIsPointedAt() {
        List<MouseEvent> asked = new ArrayList<>();
        tracker.setMenuAsked(asked::add);
        mouse.mousePressed(at(MouseEvent.MOUSE_PRESSED, spot().middle(), MouseEvent.BUTTON3));
        assertThat(bare.session().selection()).isEqualTo(Selection.of(Place.START, id));
        tracker.popup(at(MouseEvent.MOUSE_PRESSED, -50, MouseEvent.BUTTON3), Optional.empty());
        assertThat(bare.session().selection().isEmpty()).isTrue();
        assertThat(asked).hasSize(2);
    }
}
