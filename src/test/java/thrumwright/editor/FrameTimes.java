package thrumwright.editor;

import java.awt.AWTEvent;
import java.lang.reflect.InvocationTargetException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.concurrent.FutureTask;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;

/**
 * An event queue that adds up, for each input, all that the event thread does from then on until the next: the input's own
 * event, layout and painting that follow from it, and what comes later, such as parts of a cloth that were painted beside it.
 */
final class FrameTimes extends TimedEvents {
    private final List<Frame> frames = new ArrayList<>();
    private boolean aside;

    /** A frame, ms: what it took by the clock, and what of that the thread itself computed. */
    private static final class Frame {
        private final String deed;
        private double clock;
        private double own;

        Frame(String deed) {
            this.deed = deed;
        }
    }

    /** Hands an input over and waits until nothing follows from it any more. */
    void input(String deed, AWTEvent event) throws InterruptedException, InvocationTargetException {
        synchronized (frames) {
            frames.add(new Frame(deed));
            aside = false;
        }
        postEvent(event);
        settle();
    }

    /** Waits until nothing is on its way any more. */
    private void settle() throws InterruptedException, InvocationTargetException {
        do {
            invokeAndWait(() -> {});
        } while (peekEvent() != null);
    }

    @Override
    void took(double clock, double own) {
        synchronized (frames) {
            if (!aside && !frames.isEmpty()) {
                Frame frame = frames.get(frames.size() - 1);
                frame.clock += clock;
                frame.own += own;
            }
        }
    }

    /** Does what is no input, and what follows from it belongs to no frame. */
    <T> T aside(Callable<T> work) throws Exception {
        synchronized (frames) {
            aside = true;
        }
        FutureTask<T> task = new FutureTask<>(work);
        invokeAndWait(task);
        settle();
        return task.get();
    }

    /** Lets the usual queue go on. */
    void end() {
        pop();
    }

    /** All frames, and those of each deed: by the clock, and the thread's own time. */
    String told() {
        StringBuilder told = new StringBuilder();
        synchronized (frames) {
            tell(told, "all", frame -> true);
            frames.stream()
                    .map(frame -> frame.deed)
                    .distinct()
                    .forEach(deed -> tell(told, deed, frame -> frame.deed.equals(deed)));
        }
        return told.toString();
    }

    private void tell(StringBuilder told, String what, Predicate<Frame> those) {
        List<Frame> all = frames.stream().filter(those).toList();
        told.append(quantiles(what + ", clock", all, frame -> frame.clock));
        told.append(quantiles(what + ", thread", all, frame -> frame.own));
    }

    private static String quantiles(String what, List<Frame> all, ToDoubleFunction<Frame> time) {
        double[] sorted = all.stream().mapToDouble(time).sorted().toArray();
        return String.format(
                Locale.ROOT,
                "%-14s p0.50 %.2f ms, p0.90 %.2f, p0.99 %.2f, longest %.1f%n",
                what,
                sorted[sorted.length / 2],
                sorted[sorted.length * 9 / 10],
                sorted[sorted.length * 99 / 100],
                sorted[sorted.length - 1]);
    }
}
