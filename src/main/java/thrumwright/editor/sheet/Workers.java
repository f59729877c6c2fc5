package thrumwright.editor.sheet;

import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;

/** Threads beside the event thread. */
final class Workers {
    private Workers() {}

    /** A single one, which doesn't keep the program from ending. */
    static ExecutorService one(String name) {
        return Executors.newSingleThreadExecutor(work -> {
            Thread thread = new Thread(work, name);
            thread.setDaemon(true);
            thread.setPriority(Thread.NORM_PRIORITY - 1);
            return thread;
        });
    }
}
