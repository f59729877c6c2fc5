package thrumwright.editor;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The longest events of each kind. */
final class EventTimes extends TimedEvents {
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
    void took(double clock, double own) {
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
