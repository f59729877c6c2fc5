package thrumwright.benchmark;

import java.io.IOException;
import java.io.OutputStream;
import java.util.Arrays;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.AuxCounters;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import thrumwright.drawing.Fonts;
import thrumwright.drawing.Palette;
import thrumwright.measure.Length;
import thrumwright.output.SheetLayout;
import thrumwright.output.page.PageSetup;
import thrumwright.output.page.Paper;
import thrumwright.output.page.Progress;
import thrumwright.output.page.SheetPages;
import thrumwright.output.pdf.PdfFile;
import thrumwright.piece.Piece;
import thrumwright.plan.Plan;
import thrumwright.testing.Pieces;

/**
 * The step sheet as a PDF, from the worked panel in two hundred widths, some twelve pages each.
 *
 * <p>{@code coldFirstSheet}: a new virtual machine plans, lays out and writes one sheet, fonts and all.
 *
 * <p>{@code aThousandSheets}: one file of 1,000 sheets. After 1, 10, 100 and 1,000 of them it tells the median and the
 * mean time that a further page took since the last telling, in milliseconds; the heap after collection in megabytes; and
 * the median as a multiple of a plain operation in the same run, filling and summing 100,000 numbers, for machines differ.
 * A further page at the median must stay below 3 ms, and the last heap as small as the second.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class SheetBenchmark {
    private static final int WIDTHS = 200;

    private static SheetPages sheet(Fonts fonts, int number) {
        Piece panel = Pieces.panel();
        Length width = Length.parse(200 + number * 37 % WIDTHS + " mm");
        Piece piece = panel.withTitle("Marsh " + number).withWarp(panel.warp().withWidth(width));
        return SheetLayout.of(Plan.of(piece), PageSetup.usual(Paper.A4), fonts, Palette.onPaper(), Locale.UK);
    }

    @Benchmark
    @Fork(7)
    @Warmup(iterations = 0)
    @Measurement(iterations = 1)
    public void coldFirstSheet() throws IOException {
        Fonts fonts = Fonts.load();
        PdfFile.write(() -> sheet(fonts, 1), OutputStream.nullOutputStream(), Progress.UNWATCHED);
    }

    @Benchmark
    @Fork(value = 1, jvmArgsAppend = "-Xmx1g")
    @Warmup(iterations = 0)
    @Measurement(iterations = 1)
    public void aThousandSheets(Told told) throws IOException {
        Fonts fonts = Fonts.load();
        Clock clock = new Clock();
        try (PdfFile file = new PdfFile("A thousand sheets", OutputStream.nullOutputStream())) {
            for (int i = 1; i <= 1000; i++) {
                SheetPages pages = sheet(fonts, i);
                file.add(pages, clock);
                if (i == 1 || i == 10 || i == 100 || i == 1000) {
                    told.add(clock);
                    clock.forget();
                }
            }
            file.finish();
        }
    }

    /** What is told after 1, 10, 100 and 1,000 sheets. */
    @State(Scope.Thread)
    @AuxCounters(AuxCounters.Type.EVENTS)
    public static class Told {
        private final double[][] told = new double[4][];
        private int count;

        void add(Clock clock) {
            double median = clock.median();
            told[count++] = new double[] {median, clock.mean(), heap(), median / plain()};
        }

        public double pageAfter1() {
            return told[0][0];
        }

        public double meanAfter1() {
            return told[0][1];
        }

        public double heapAfter1() {
            return told[0][2];
        }

        public double timesPlainAfter1() {
            return told[0][3];
        }

        public double pageAfter10() {
            return told[1][0];
        }

        public double meanAfter10() {
            return told[1][1];
        }

        public double heapAfter10() {
            return told[1][2];
        }

        public double timesPlainAfter10() {
            return told[1][3];
        }

        public double pageAfter100() {
            return told[2][0];
        }

        public double meanAfter100() {
            return told[2][1];
        }

        public double heapAfter100() {
            return told[2][2];
        }

        public double timesPlainAfter100() {
            return told[2][3];
        }

        public double pageAfter1000() {
            return told[3][0];
        }

        public double meanAfter1000() {
            return told[3][1];
        }

        public double heapAfter1000() {
            return told[3][2];
        }

        public double timesPlainAfter1000() {
            return told[3][3];
        }
    }

    /** In megabytes, after collection. */
    private static double heap() {
        Runtime runtime = Runtime.getRuntime();
        for (int i = 0; i < 3; i++) {
            System.gc();
        }
        return (runtime.totalMemory() - runtime.freeMemory()) / (double) (1 << 20);
    }

    /** How long it takes to fill 100,000 numbers and sum them, ms: the median of many times. */
    private static double plain() {
        Clock clock = new Clock();
        double[] numbers = new double[100_000];
        for (int i = 0; i <= 500; i++) {
            Arrays.setAll(numbers, Math::sqrt);
            clock.done(Arrays.stream(numbers).sum() > 0 ? i : 0, 500);
        }
        return clock.median();
    }

    /** Times pages. */
    private static final class Clock implements Progress {
        private double[] times = new double[1 << 14];
        private int count;
        private long last;

        @Override
        public void done(int pages, int all) {
            long now = System.nanoTime();
            if (pages > 0) {
                times[count++] = (now - last) / 1e6;
            }
            last = System.nanoTime();
        }

        @Override
        public boolean stopping() {
            return false;
        }

        double median() {
            double[] sorted = Arrays.copyOf(times, count);
            Arrays.sort(sorted);
            return sorted[count / 2];
        }

        double mean() {
            return Arrays.stream(times, 0, count).average().orElseThrow();
        }

        void forget() {
            count = 0;
        }
    }
}
