package thrumwright.editor.window.piece;

import java.awt.EventQueue;
import java.util.Optional;
import javax.swing.Timer;
import thrumwright.editor.canvas.Board;

/** What is done once a board has been painted for the first time; where nobody sees it, after a while all the same. */
final class FirstPicture {
    /** Longer than it takes to paint one on a slow machine, ms. */
    private static final int UNSEEN = 2_000;

    private final Timer unseen = new Timer(UNSEEN, event -> come());
    private Optional<Runnable> then;

    /** @param then run on the event thread, by an event of its own */
    FirstPicture(Board board, Runnable then) {
        this.then = Optional.of(then);
        board.whenPainted(() -> EventQueue.invokeLater(this::come));
        unseen.setRepeats(false);
        unseen.start();
    }

    private void come() {
        unseen.stop();
        Optional<Runnable> now = then;
        then = Optional.empty();
        now.ifPresent(Runnable::run);
    }
}
