package thrumwright.benchmark;

import java.util.Optional;
import org.openjdk.jmh.annotations.AuxCounters;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import thrumwright.block.YarnBlock;
import thrumwright.editor.edit.Edit;
import thrumwright.editor.edit.Session;

/**
 * What a hundred thousand steps that can be taken back hold of the heap, beside one: megabytes after collection. The piece has
 * 60 blocks an end, and each step gives one of them another number of rows. At most 40.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@Fork(1)
@Warmup(iterations = 0)
@Measurement(iterations = 1)
public class HistoryBenchmark {
    private static final int BLOCKS = 60;
    private static final int STEPS = 100_000;

    @Benchmark
    public Session aHundredThousandSteps(Told told) {
        Session session = new Session(LongPieces.file(BLOCKS), Optional.empty());
        step(session, 0);
        double one = heap();
        for (int i = 1; i < STEPS; i++) {
            step(session, i);
        }
        told.more = heap() - one;
        told.steps = session.history().done();
        return session;
    }

    private static void step(Session session, int number) {
        YarnBlock band = LongPieces.band(session.piece(), number).withRows(1 + number % 200);
        session.edit(new Edit(
                "Rows: " + (1 + number % 200), one -> one.withStart(one.start().replaced(band)), Optional.empty()));
    }

    /** In megabytes, after collection. */
    private static double heap() {
        Runtime runtime = Runtime.getRuntime();
        for (int i = 0; i < 4; i++) {
            System.gc();
        }
        return (runtime.totalMemory() - runtime.freeMemory()) / 1e6;
    }

    /** What is told at the end. */
    @State(Scope.Thread)
    @AuxCounters(AuxCounters.Type.EVENTS)
    public static class Told {
        private double more;
        private int steps;

        public double megabytesMore() {
            return more;
        }

        public double stepsDone() {
            return steps;
        }
    }
}
