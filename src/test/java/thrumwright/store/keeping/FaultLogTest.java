package thrumwright.store.keeping;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FaultLogTest {
    @TempDir
    private Path home;

    @Test
    void itSaysWhereAndNothingOfThePiece() throws Exception {
        FaultLog log = new FaultLog(home.resolve("state"));
        Throwable fault = new IllegalStateException("Sea lavender", new ArithmeticException("for my aunt"));
        log.add(FaultLog.details(Instant.EPOCH, "events", fault));
        assertThat(Files.readString(log.file()))
                .contains("1970-01-01", "IllegalStateException", "ArithmeticException", "FaultLogTest.itSaysWhere")
                .doesNotContain("lavender", "aunt");
    }

    @Test
    void itDoesNotGrowForEver() throws Exception {
        FaultLog log = new FaultLog(home);
        String details = FaultLog.details(Instant.EPOCH, "events", new StackOverflowError());
        for (int i = 0; i < 1_000; i++) {
            log.add(details);
        }
        try (Stream<Path> files = Files.list(home)) {
            assertThat(files.mapToLong(file -> file.toFile().length()).sum()).isLessThan(450_000);
        }
    }
}
