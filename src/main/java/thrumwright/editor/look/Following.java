package thrumwright.editor.look;

import java.awt.EventQueue;
import javax.swing.Timer;

/**
 * What follows something that changes, in an event of its own: after what is painted for it, and once for all changes until then.
 * Where changes come in a row, as with a gesture, it waits until they pause. For the event thread only.
 */
public final class Following {
    /** A pause of this length is one, ms: a few pictures of the screen without a change. */
    private static final int PAUSE = 50;

    private final Runnable follow;
    private final Timer pause = new Timer(PAUSE, event -> now());
    private boolean asked;

    /** @param follow what is done; it finds out by itself what has changed */
    public Following(Runnable follow) {
        this.follow = follow;
        pause.setRepeats(false);
    }

    /** @param more whether more changes are likely to come very soon: then in their pause, else with the next event */
    public void soon(boolean more) {
        if (more) {
            inPause();
        } else {
            next();
        }
    }

    private void next() {
        pause.stop();
        if (!asked) {
            asked = true;
            EventQueue.invokeLater(this::asked);
        }
    }

    private void inPause() {
        if (!asked) {
            pause.restart();
        }
    }

    /** @param more as with {@link #soon}; where none are, it follows at once, and nothing is left to follow */
    public void now(boolean more) {
        if (more) {
            inPause();
        } else {
            now();
        }
    }

    private void now() {
        pause.stop();
        asked = false;
        follow.run();
    }

    /** Whether it is still to follow. */
    public boolean isDue() {
        return asked || pause.isRunning();
    }

    private void asked() {
        if (asked) {
            now();
        }
    }
}
