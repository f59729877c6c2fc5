package thrumwright.fuzz;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import thrumwright.store.BuiltIn;
import thrumwright.store.FileProblem;
import thrumwright.testing.Seeds;

/** What the fuzzer began with and what it found is tried in every run; so are the demo files with a byte amiss. */
class AnyBytesTest {
    private static final Path CORPUS = Path.of("src/test/resources/thrumwright/fuzz");
    private static final byte FILE = 5;

    @Test
    void everythingFoundSoFarIsReadOrRefused() throws IOException {
        try (Stream<Path> found = Files.list(CORPUS)) {
            List<Path> all = found.sorted().toList();
            assertThat(all).hasSizeGreaterThan(20);
            for (Path each : all) {
                assertThatCode(() -> AnyBytes.fuzzerTestOneInput(Files.readAllBytes(each)))
                        .as(each.toString())
                        .doesNotThrowAnyException();
            }
        }
    }

    /** A fuzzer finds more from a piece of each sort than from many of one. */
    @Test
    void everyDemoPieceIsBegunWith() throws IOException {
        for (String name : BuiltIn.DEMO.names()) {
            String piece = name.substring(name.lastIndexOf('/') + 1).replace(".json", "");
            byte[] begun = Files.readAllBytes(CORPUS.resolve("file-" + piece));
            assertThat(begun).as(piece).hasSizeGreaterThan(1000);
            assertThat(begun[0]).as(piece).isEqualTo(FILE);
        }
    }

    /** Every byte changed, left out, or the last; a share of them in a short run. */
    @Test
    @Timeout(value = 2, unit = TimeUnit.HOURS)
    void aDemoFileWithAByteAmissIsReadOrRefused() throws FileProblem {
        List<byte[]> demos = new ArrayList<>();
        for (String name : BuiltIn.DEMO.names()) {
            demos.add(BuiltIn.DEMO.text(name).getBytes(StandardCharsets.UTF_8));
        }
        Random random = new Random(19);
        boolean all = Seeds.of(100) >= 100;
        for (byte[] demo : demos) {
            for (int at = 0; at < demo.length; at++) {
                if (!all && random.nextInt(demo.length) >= Seeds.of(100)) {
                    continue;
                }
                tried(changed(demo, at, (byte) (demo[at] + 1 + random.nextInt(255))));
                tried(without(demo, at));
                tried(Arrays.copyOf(demo, at));
            }
        }
    }

    private static byte[] changed(byte[] demo, int at, byte other) {
        byte[] changed = demo.clone();
        changed[at] = other;
        return changed;
    }

    private static byte[] without(byte[] demo, int at) {
        byte[] fewer = Arrays.copyOf(demo, demo.length - 1);
        System.arraycopy(demo, at + 1, fewer, at, fewer.length - at);
        return fewer;
    }

    private static void tried(byte[] file) {
        byte[] data = new byte[file.length + 1];
        data[0] = FILE;
        System.arraycopy(file, 0, data, 1, file.length);
        assertThatCode(() -> AnyBytes.fuzzerTestOneInput(data))
                .as(new String(file, StandardCharsets.UTF_8))
                .doesNotThrowAnyException();
    }
}
