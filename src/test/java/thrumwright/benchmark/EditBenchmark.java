package thrumwright.benchmark;

import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import thrumwright.block.YarnBlock;
import thrumwright.editor.edit.Edit;
import thrumwright.editor.edit.Session;
import thrumwright.piece.Piece;
import thrumwright.plan.Plan;

/**
 * One edit of a piece of 50 blocks an end and of 500, with the plan that follows: another number of rows of one block after the
 * other, some of which turn all rows above round. Beside it stands the same plan worked out whole. In one run; what counts is
 * how many times the longer takes as long as the shorter, and {@code edited} beside {@code planned}.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 4, time = 1)
@Measurement(iterations = 6, time = 1)
@Fork(2)
public class EditBenchmark {
    /** One run of edits, so that the history keeps one step. */
    private static final Object RUN = "run";

    @Param({"50", "500"})
    private int blocks;

    private Session session;
    private int count;

    @Setup
    public void prepare() {
        session = new Session(LongPieces.file(blocks), Optional.empty());
    }

    @Benchmark
    public Plan edited() {
        session.edit(next(), RUN);
        return session.plan();
    }

    @Benchmark
    public Plan planned() {
        return Plan.of(session.piece());
    }

    private Edit next() {
        count++;
        Piece piece = session.piece();
        YarnBlock band = LongPieces.band(piece, count).withRows(1 + count % 40);
        return new Edit("Rows", one -> one.withStart(one.start().replaced(band)), Optional.empty());
    }
}
