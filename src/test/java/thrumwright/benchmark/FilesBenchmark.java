package thrumwright.benchmark;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
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
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;
import thrumwright.store.FileProblem;
import thrumwright.store.FileSort;
import thrumwright.store.PieceFile;
import thrumwright.store.SafeFile;

/**
 * Opening and saving the longest piece that a file may have, 500 blocks. Opening stands beside looking at every token of the
 * same text, saving beside a plain write that is forced to the same disk ({@code -Dfolder=} says where; else the folder for what
 * is temporary).
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 4, time = 1)
@Measurement(iterations = 6, time = 1)
@Fork(2)
public class FilesBenchmark {
    private static final JsonFactory JSON = new JsonFactory();

    private PieceFile piece;
    private String text;
    private Path folder;

    @Setup
    public void prepare() throws IOException {
        piece = LongPieces.file(500);
        text = piece.text();
        Path parent = Path.of(System.getProperty("folder", System.getProperty("java.io.tmpdir")));
        folder = Files.createTempDirectory(parent, "saved");
    }

    @TearDown
    public void clear() throws IOException {
        for (String name : new String[] {"plain", "safe"}) {
            Files.deleteIfExists(folder.resolve(name));
        }
        Files.delete(folder);
    }

    @Benchmark
    public int openBesideTokens() throws IOException {
        int count = 0;
        try (JsonParser parser = JSON.createParser(text)) {
            while (parser.nextToken() != null) {
                count++;
            }
        }
        return count;
    }

    @Benchmark
    public PieceFile open() throws FileProblem {
        return PieceFile.read(text);
    }

    @Benchmark
    public FileSort openSort() {
        return FileSort.of(text);
    }

    @Benchmark
    public String saveText() throws FileProblem {
        return piece.checkedText();
    }

    @Benchmark
    public void save() throws FileProblem {
        SafeFile.write(folder.resolve("safe"), piece);
    }

    @Benchmark
    public void saveBesidePlain() throws IOException {
        try (FileChannel channel = FileChannel.open(
                folder.resolve("plain"),
                StandardOpenOption.CREATE,
                StandardOpenOption.WRITE,
                StandardOpenOption.TRUNCATE_EXISTING)) {
            channel.write(ByteBuffer.wrap(text.getBytes(StandardCharsets.UTF_8)));
            channel.force(true);
        }
    }
}
