package thrumwright.benchmark;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;

/**
 * Things that are done in turns, so that a busy moment of the machine meets all of them, and what each took of the thread's own
 * processor time: at best, since all that others do only adds to it. The clock is told as well, in the middle of all rounds.
 */
final class InTurns {
    private static final int WARM_UP = 25;
    private static final int ROUNDS = 60;
    /** A round takes so much of the processor, or of the clock where it waits for a disk, ns. */
    private static final long ROUND = 20_000_000;

    private static final long ROUND_BY_CLOCK = 150_000_000;

    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

    private final Map<String, Callable<?>> things = new LinkedHashMap<>();
    private final Map<String, double[]> processor = new LinkedHashMap<>();
    private final Map<String, double[]> clock = new LinkedHashMap<>();
    private Object last;

    /** The first is what the others stand beside. */
    InTurns with(String name, Callable<?> thing) {
        things.put(name, thing);
        processor.put(name, new double[ROUNDS]);
        clock.put(name, new double[ROUNDS]);
        return this;
    }

    /** Does all and prints a line for each, in microseconds. Returns what was made last. */
    Object told() throws Exception {
        for (int round = -WARM_UP; round < ROUNDS; round++) {
            for (String name : things.keySet()) {
                once(name, round);
            }
        }
        double[] first = processor.values().iterator().next();
        double[] firstClock = clock.values().iterator().next();
        System.out.printf("%n%-36s %12s %8s %12s %8s%n", "microseconds", "processor", "times", "clock", "times");
        processor.forEach((name, each) -> System.out.printf(
                Locale.ROOT,
                "%-36s %12.1f %8.2f %12.1f %8.2f%n",
                name,
                best(each),
                best(each) / best(first),
                middle(clock.get(name)),
                middle(clock.get(name)) / middle(firstClock)));
        return last;
    }

    private void once(String name, int round) throws Exception {
        Callable<?> thing = things.get(name);
        long begun = System.nanoTime();
        long used = THREADS.getCurrentThreadCpuTime();
        int count = 0;
        do {
            last = thing.call();
            count++;
        } while (THREADS.getCurrentThreadCpuTime() - used < ROUND && System.nanoTime() - begun < ROUND_BY_CLOCK);
        if (round >= 0) {
            processor.get(name)[round] = (THREADS.getCurrentThreadCpuTime() - used) / 1e3 / count;
            clock.get(name)[round] = (System.nanoTime() - begun) / 1e3 / count;
        }
    }

    private static double best(double... times) {
        return Arrays.stream(times).min().orElseThrow();
    }

    private static double middle(double... times) {
        double[] sorted = times.clone();
        Arrays.sort(sorted);
        return sorted[sorted.length / 2];
    }
}
