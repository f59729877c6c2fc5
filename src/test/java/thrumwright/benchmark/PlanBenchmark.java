package thrumwright.benchmark;

import java.util.ArrayList;
import java.util.List;
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
import thrumwright.block.Block;
import thrumwright.block.Tag;
import thrumwright.measure.Length;
import thrumwright.measure.Sett;
import thrumwright.piece.End;
import thrumwright.piece.Piece;
import thrumwright.piece.Warp;
import thrumwright.plan.Plan;
import thrumwright.testing.Pieces;

/**
 * Planning 200 blocks on 40 warp ends and on 4,000: lengths are closed forms, so that the ratio must stay below 1.2. Both
 * are measured in one run.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 4, time = 1)
@Measurement(iterations = 6, time = 1)
@Fork(2)
public class PlanBenchmark {
    @Param({"40", "4000"})
    private int ends;

    private Piece piece;

    @Setup
    public void prepare() {
        List<Block> blocks = new ArrayList<>();
        List<Block> once = Pieces.hemmed().blocks();
        for (int i = 0; i < 200; i++) {
            blocks.add(once.get(i % (once.size() - 1)).withTag(Tag.of("b" + i)));
        }
        piece = Pieces.panel()
                .withWarp(new Warp(Length.parse(ends + " mm"), Sett.parse("1/mm"), "cord"))
                .withStart(new End(blocks));
    }

    @Benchmark
    public Plan plan() {
        return Plan.of(piece);
    }
}
