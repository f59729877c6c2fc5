package thrumwright.editor;

import java.awt.AWTEvent;
import java.awt.EventQueue;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;

/**
 * An event queue that times every event, by the clock and by what the thread itself computed. On a busy machine the clock
 * counts the waiting too; the thread's own time doesn't.
 */
abstract class TimedEvents extends EventQueue {
    private final ThreadMXBean threads = ManagementFactory.getThreadMXBean();

    /** What an event took, once it is done: ms. */
    abstract void took(double clock, double own);

    @Override
    protected final void dispatchEvent(AWTEvent event) {
        long ownFrom = threads.getCurrentThreadCpuTime();
        long from = System.nanoTime();
        super.dispatchEvent(event);
        took((System.nanoTime() - from) / 1e6, (threads.getCurrentThreadCpuTime() - ownFrom) / 1e6);
    }
}
