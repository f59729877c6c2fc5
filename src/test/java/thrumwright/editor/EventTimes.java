package thrumwright.editor;

import java.awt.AWTEvent;
import java.awt.EventQueue;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * An event queue that times every event, by the clock and by what the thread itself computed. On a busy machine the clock
 * counts the waiting too; the thread's own time doesn't.
 */
final class EventTimes extends EventQueue {
    private final ThreadMXBean threads = ManagementFactory.getThreadMXBean();
    private final Map<String, Longest> longest = new HashMap<>();
    private volatile String doing = "opening";

    /** Of all events of one kind, ms. */
    private static final class Longest {
        private final String what;
        private double clock;
        private double own;

        Longest(String what) {
            this.what = what;
        }

        void add(double byClock, double byThread) {
            clock = Math.max(clock, byClock);
            own = Math.max(own, byThread);
        }
    }

    /** What the events from now on belong to. */
    void begin(String what) {
        doing = what;
    }

    @Override
    protected void dispatchEvent(AWTEvent event) {
        long ownFrom = threads.getCurrentThreadCpuTime();
        long from = System.nanoTime();
        super.dispatchEvent(event);
        double clock = (System.nanoTime() - from) / 1e6;
        double own = (threads.getCurrentThreadCpuTime() - ownFrom) / 1e6;
        // asked afterwards: the event itself may have said what it does
        String what = doing;
        synchronized (longest) {
            longest.computeIfAbsent(what, Longest::new).add(clock, own);
        }
    }

    void clear() {
        synchronized (longest) {
            longest.clear();
        }
    }

    /** The longest event of each kind, the longest of all first. */
    String told() {
        StringBuilder told = new StringBuilder("longest events, ms by the clock (by the thread's own time):\n");
        synchronized (longest) {
            List<Longest> all = new ArrayList<>(longest.values());
            all.sort(Comparator.comparingDouble((Longest one) -> one.own).reversed());
            all.forEach(one -> told.append(String.format("  %6.1f (%5.1f)  %s%n", one.clock, one.own, one.what)));
        }
        return told.toString();
    }
}
