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
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import thrumwright.store.FileSort;
import thrumwright.store.PieceFile;
import thrumwright.store.SafeFile;

/**
 * Opening and saving the longest piece that a file may have, 500 blocks. Opening stands beside looking at every token of the
 * same text; saving beside a plain write that is forced to the same disk, in the folder for what is temporary. It tells
 * processor time and the clock.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@Fork(1)
@Warmup(iterations = 0)
@Measurement(iterations = 1)
public class FilesBenchmark {
    private static final JsonFactory JSON = new JsonFactory();

    private final PieceFile piece = LongPieces.file(500);
    private final String text = piece.text();

    @Benchmark
    public Object opening() throws Exception {
        return new InTurns()
                .with("tokens", this::tokens)
                .with("open", () -> PieceFile.read(text))
                .with("what sort it is", () -> FileSort.of(text))
                .with("text to save", piece::checkedText)
                .told();
    }

    private int tokens() throws IOException {
        int count = 0;
        try (JsonParser parser = JSON.createParser(text)) {
            while (parser.nextToken() != null) {
                count++;
            }
        }
        return count;
    }

    @Benchmark
    public Object saving() throws Exception {
        Path folder = Files.createTempDirectory("saved");
        Path plain = folder.resolve("plain");
        Path safe = folder.resolve("safe");
        try {
            return new InTurns()
                    .with("plain write, forced", () -> written(plain))
                    .with("save", () -> saved(safe))
                    .told();
        } finally {
            Files.deleteIfExists(plain);
            Files.deleteIfExists(safe);
            Files.delete(folder);
        }
    }

    private Path saved(Path file) throws Exception {
        SafeFile.write(file, piece);
        return file;
    }

    private Path written(Path file) throws IOException {
        try (FileChannel channel = FileChannel.open(
                file, StandardOpenOption.CREATE, StandardOpenOption.WRITE, StandardOpenOption.TRUNCATE_EXISTING)) {
            channel.write(ByteBuffer.wrap(text.getBytes(StandardCharsets.UTF_8)));
            channel.force(true);
        }
        return file;
    }
}
