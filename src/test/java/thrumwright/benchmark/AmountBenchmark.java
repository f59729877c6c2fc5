package thrumwright.benchmark;

import java.awt.Color;
import java.awt.Graphics2D;
import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import java.util.random.RandomGenerator;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;
import thrumwright.block.Block;
import thrumwright.editor.edit.Amounts;
import thrumwright.editor.edit.Edits;
import thrumwright.editor.edit.Session;
import thrumwright.editor.text.Texts;
import thrumwright.piece.Place;
import thrumwright.store.FileProblem;
import thrumwright.testing.LargePieces;

/**
 * An amount as it is typed, until the picture shows it in a window of 1920 × 1080: what the event thread itself works for
 * it, beside what it works to fill the same window with one colour. It tells both and their ratio, which must stay below
 * 100 in the middle, on the demo piece and on one of 1,500 warp ends with 60 blocks: a machine that fills a window in a
 * millisecond, busy as it may be, then shows an amount within 100 ms.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 6, time = 2)
@Measurement(iterations = 4, time = 2)
@Fork(value = 1, jvmArgs = "-Djava.awt.headless=true")
public class AmountBenchmark {
    private static final long SEED = 20_261_129;
    private static final int FILLS = 20;

    @Param({"demo", "wide"})
    private String piece;

    private final RandomGenerator random = new SplittableRandom(SEED);
    private final List<Double> shown = new ArrayList<>();
    private final List<Double> filled = new ArrayList<>();
    private CanvasStage stage;
    private Edits edits;

    @Setup
    public void open() throws FileProblem {
        stage = new CanvasStage(piece.equals("demo") ? LargePieces.demo() : LargePieces.wide());
        Texts texts = Texts.of(Locale.UK);
        edits = new Edits(texts.phrases(), texts.words());
    }

    /** What the event thread itself works, ms, whatever else the machine is busy with. */
    private static double worked(Runnable work) {
        return CanvasStage.onEventThread(() -> {
            long from = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
            work.run();
            return (ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - from) / 1e6;
        });
    }

    @Benchmark
    public int amount() {
        shown.add(worked(this::typed));
        filled.add(worked(this::fill));
        return stage.window().getRGB(9, 9);
    }

    private void typed() {
        Session session = stage.session();
        List<Block> blocks = session.piece().start().blocks();
        Block block = blocks.get(random.nextInt(blocks.size()));
        if (Amounts.hasHeight(block)) {
            Block other = Amounts.ofHeight(block, random.nextInt(3, 13), session.piece(), Place.START);
            session.edit(edits.amount(Place.START, block, other));
        }
        stage.paint();
    }

    private void fill() {
        Graphics2D g = stage.window().createGraphics();
        for (int i = 0; i < FILLS; i++) {
            g.setColor(new Color(random.nextInt(0x1000000)));
            g.fillRect(0, 0, CanvasStage.WIDTH, CanvasStage.HEIGHT);
        }
        g.dispose();
    }

    @TearDown(Level.Iteration)
    public void end() {
        Collections.sort(shown);
        Collections.sort(filled);
        double fill = filled.get(filled.size() / 2) / FILLS;
        double middle = shown.get(shown.size() / 2);
        System.out.printf(
                "an amount p0.50 %.2f ms, p0.99 %.2f ms; a fill p0.50 %.2f ms; ratio %.0f%n",
                middle, shown.get(shown.size() * 99 / 100), fill, middle / fill);
        shown.clear();
        filled.clear();
    }
}
