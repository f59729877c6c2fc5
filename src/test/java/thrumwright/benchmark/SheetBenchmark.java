package thrumwright.benchmark;

import java.io.IOException;
import java.io.OutputStream;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import thrumwright.drawing.Fonts;
import thrumwright.drawing.Palette;
import thrumwright.output.PageSetup;
import thrumwright.output.Paper;
import thrumwright.output.PdfFile;
import thrumwright.output.SheetLayout;
import thrumwright.output.SheetPages;
import thrumwright.plan.Plan;
import thrumwright.testing.Pieces;

/** Laying out and writing the step sheet of the worked panel, warm. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class SheetBenchmark {
    private final Fonts fonts = Fonts.load();
    private Plan plan;
    private SheetPages pages;

    @Setup
    public void prepare() {
        plan = Plan.of(Pieces.panel());
        pages = layOut();
    }

    @Benchmark
    public SheetPages layOut() {
        return SheetLayout.of(plan, PageSetup.usual(Paper.A4), fonts, Palette.onPaper(), Locale.UK);
    }

    @Benchmark
    public int write() throws IOException {
        PdfFile.write(pages, fonts, OutputStream.nullOutputStream());
        return pages.count();
    }
}
