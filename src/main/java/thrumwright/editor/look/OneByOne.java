package thrumwright.editor.look;

import java.awt.EventQueue;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;

/** Work in parts, each by an event of its own: so a picture or a key in between needn't wait for all of it. */
public final class OneByOne {
    private final Deque<Runnable> left;

    private OneByOne(List<Runnable> parts) {
        this.left = new ArrayDeque<>(parts);
    }

    /**
     * Begins with the next event. The events of all parts are on their way at once, so that what is asked for from now on comes
     * after the whole.
     */
    public static OneByOne begin(List<Runnable> parts) {
        OneByOne work = new OneByOne(parts);
        parts.forEach(any -> EventQueue.invokeLater(work::next));
        return work;
    }

    /** Does all that is left of it, now. */
    public void finish() {
        while (!left.isEmpty()) {
            next();
        }
    }

    /** Leaves undone what is left of it. */
    public void drop() {
        left.clear();
    }

    private void next() {
        if (!left.isEmpty()) {
            left.remove().run();
        }
    }
}
