package thrumwright.store.keeping;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import thrumwright.store.FileProblem;

class ClaimsTest {
    @TempDir
    private Path home;

    private Claims claims() {
        return new Claims(home.resolve("claims"));
    }

    @Test
    void aFileIsClaimedOnceHoweverItIsNamed() throws Exception {
        Path file = Files.writeString(home.resolve("reed-bed.json"), "{}");
        Path link = Files.createSymbolicLink(home.resolve("link.json"), file);
        Claims claims = claims();
        assertThat(claims.claim(file)).isTrue();
        assertThat(claims.claim(home.resolve(".").resolve("reed-bed.json"))).isFalse();
        assertThat(claims.claim(link)).isFalse();
        assertThat(claims().claim(file)).as("another program").isFalse();
        claims.free(link);
        assertThat(claims().claim(file)).isTrue();
    }

    @Test
    void otherFilesAreFree() throws FileProblem {
        Claims claims = claims();
        assertThat(claims.claim(home.resolve("one.json"))).isTrue();
        assertThat(claims.claim(home.resolve("two.json"))).isTrue();
    }

    @Test
    void aClaimEndsWithItsProcess() throws Exception {
        Path file = home.resolve("reed-bed.json");
        Process other = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:TieredStopAtLevel=1",
                        "-cp",
                        System.getProperty("java.class.path"),
                        Claimant.class.getName(),
                        home.resolve("claims").toString(),
                        file.toString())
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        try (BufferedReader said = other.inputReader(StandardCharsets.UTF_8)) {
            assertThat(said.readLine()).isEqualTo("claimed: true");
            assertThat(claims().claim(file)).isFalse();
            other.destroyForcibly().waitFor();
            assertThat(claims().claim(file)).isTrue();
        } finally {
            other.destroyForcibly();
        }
    }

    /** Another program, which claims a file and then waits to be ended. */
    static final class Claimant {
        private Claimant() {}

        public static void main(String[] arguments) throws FileProblem, IOException {
            boolean claimed = new Claims(Path.of(arguments[0])).claim(Path.of(arguments[1]));
            System.out.println("claimed: " + claimed);
            System.in.read();
        }
    }
}
