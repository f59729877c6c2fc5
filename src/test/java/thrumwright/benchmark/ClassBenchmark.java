package thrumwright.benchmark;

import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import java.util.zip.Deflater;
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
import thrumwright.output.ClassPages;
import thrumwright.output.SheetSection;
import thrumwright.output.page.PageSetup;
import thrumwright.output.page.Paper;
import thrumwright.output.page.Progress;
import thrumwright.output.pdf.PdfFile;
import thrumwright.piece.ClassSet;
import thrumwright.plan.finding.ClassPlan;
import thrumwright.testing.Pieces;
import thrumwright.testing.RandomClasses;

/**
 * All sheets of a class of 200 looms as one PDF, in a virtual machine of 250 MB.
 *
 * <p>It tells, in milliseconds, what a further loom took at the median among the first twenty and among the last hundred; what
 * the same bytes take to be packed and written, a loom; the size of the file, and the heap that was in use at most after any
 * collection of the run, in megabytes. A further loom must take at most 25 ms, the file 15 MB.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class ClassBenchmark {
    private static final int LOOMS = 200;

    @Benchmark
    @Fork(value = 1, jvmArgsAppend = "-Xmx250m")
    @Warmup(iterations = 0)
    @Measurement(iterations = 1)
    public void aClassOfTwoHundred(Told told) throws IOException {
        told.heap.listen();
        Fonts fonts = Fonts.load();
        ClassSet set = new RandomClasses(5).next(LOOMS, Pieces.panel());
        ClassPages pages = new ClassPages(
                ClassPlan.of(set), PageSetup.usual(Paper.A4), SheetSection.USUAL, fonts, Palette.onPaper(), Locale.UK);
        Counted out = new Counted();
        try (PdfFile file = new PdfFile(pages.title(), out)) {
            for (int i = 0; i < pages.count(); i++) {
                long before = System.nanoTime();
                file.add(pages.sheet(i), Progress.UNWATCHED);
                told.looms.add((System.nanoTime() - before) / 1e6);
            }
            file.finish();
        }
        told.bytes = out.count;
    }

    /** Counts what is written. */
    private static final class Counted extends OutputStream {
        private long count;

        @Override
        public void write(int one) {
            count++;
        }

        @Override
        public void write(byte[] many, int from, int length) {
            count += length;
        }
    }

    /** What is told at the end. */
    @State(Scope.Thread)
    @AuxCounters(AuxCounters.Type.EVENTS)
    public static class Told {
        private final List<Double> looms = new ArrayList<>();
        private final HeapKept heap = new HeapKept();
        private long bytes;

        private double median(int from, int to) {
            return looms.subList(from, to).stream().sorted().toList().get((to - from) / 2);
        }

        public double firstLooms() {
            return median(1, 21);
        }

        public double lastLooms() {
            return median(LOOMS - 100, LOOMS);
        }

        public double megabytes() {
            return bytes / 1e6;
        }

        public double heapAtMost() {
            return heap.most() / (double) (1 << 20);
        }

        /** How often the time that the same bytes take by themselves goes into the time of a loom. */
        public double timesWriting() {
            return lastLooms() / written((int) (bytes / LOOMS));
        }

        private static double written(int packed) {
            byte[] plain = new byte[8 * packed];
            IntStream.range(0, plain.length).forEach(i -> plain[i] = (byte) "0.123456789 lmc\n".charAt(i * 7919 % 16));
            double[] times = new double[51];
            for (int i = 0; i < times.length; i++) {
                long before = System.nanoTime();
                Deflater deflater = new Deflater();
                deflater.setInput(plain);
                deflater.finish();
                byte[] into = new byte[1 << 16];
                while (!deflater.finished()) {
                    deflater.deflate(into);
                }
                deflater.end();
                times[i] = (System.nanoTime() - before) / 1e6;
            }
            Arrays.sort(times);
            return times[times.length / 2];
        }
    }
}
