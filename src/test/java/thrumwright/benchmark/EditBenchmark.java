package thrumwright.benchmark;

import java.util.Optional;
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
import thrumwright.piece.Piece;
import thrumwright.plan.Plan;

/**
 * One edit of a piece of 50 blocks an end and of 500, with the plan that follows: another number of rows of one band after the
 * other. Half of them leave the rows above on their sides, the others turn all of them round. Beside each stands the same plan
 * worked out whole. It tells processor time.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@Fork(1)
@Warmup(iterations = 0)
@Measurement(iterations = 1)
public class EditBenchmark {
    /** One run of edits, so that the history keeps one step. */
    private static final Object RUN = "run";

    private int count;

    @Benchmark
    public Object edits() throws Exception {
        Session few = new Session(LongPieces.file(50), Optional.empty());
        Session many = new Session(LongPieces.file(500), Optional.empty());
        return new InTurns()
                .with("edit of 50 blocks an end", () -> edited(few))
                .with("edit of 500", () -> edited(many))
                .with("50 planned anew", () -> Plan.of(few.piece()))
                .with("500 planned anew", () -> Plan.of(many.piece()))
                .told();
    }

    private Plan edited(Session session) {
        count++;
        Piece piece = session.piece();
        YarnBlock band = LongPieces.band(piece, count).withRows(1 + count % 40);
        session.edit(new Edit("Rows", one -> one.withStart(one.start().replaced(band)), Optional.empty()), RUN);
        return session.plan();
    }
}
