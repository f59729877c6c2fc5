package thrumwright.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowable;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

class SafeFileTest {
    @TempDir
    Path folder;

    @Test
    void writesAndReads() throws FileProblem, IOException {
        Path file = folder.resolve("piece.json");
        SafeFile.write(file, "½ × one");
        SafeFile.write(file, "½ × two");
        assertThat(SafeFile.read(file)).isEqualTo("½ × two");
        assertThat(names()).containsExactly("piece.json");
    }

    @Test
    void keepsPermissionsAndFollowsLinks() throws FileProblem, IOException {
        Path file = folder.resolve("piece.json");
        Files.writeString(file, "old");
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-r-----"));
        Path link = Files.createSymbolicLink(folder.resolve("link.json"), file);
        SafeFile.write(link, "new");
        assertThat(Files.isSymbolicLink(link)).isTrue();
        assertThat(Files.readString(file)).isEqualTo("new");
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file)))
                .isEqualTo("rw-r-----");
    }

    @Test
    void whatCannotBeWrittenLeavesEverythingAsItWas() throws IOException {
        Path other = Files.createDirectory(folder.resolve("folder.json"));
        assertThatThrownBy(() -> SafeFile.write(other, "x"))
                .isInstanceOf(FileProblem.class)
                .hasMessageEndingWith(".");
        assertThatThrownBy(() -> SafeFile.write(folder.resolve("no/where.json"), "x"))
                .isInstanceOf(FileProblem.class)
                .hasMessageStartingWith("There is no folder");
        assertThat(names()).containsExactly("folder.json");
    }

    @Test
    void aLinkThatLeadsNowhereYetIsFollowed() throws FileProblem, IOException {
        Path target = Files.createDirectory(folder.resolve("shelf")).resolve("piece.json");
        Path link = Files.createSymbolicLink(folder.resolve("link.json"), Path.of("shelf", "piece.json"));
        SafeFile.write(link, "new");
        assertThat(Files.isSymbolicLink(link)).isTrue();
        assertThat(Files.readString(target)).isEqualTo("new");
        Path circle = Files.createSymbolicLink(folder.resolve("circle.json"), Path.of("circle.json"));
        assertThatThrownBy(() -> SafeFile.write(circle, "x"))
                .isInstanceOf(FileProblem.class)
                .hasMessageContaining("its links lead nowhere");
    }

    @Test
    void longNamesCanBeWritten() throws FileProblem, IOException {
        Path file = folder.resolve("n".repeat(250) + ".json");
        SafeFile.write(file, "text");
        assertThat(Files.readString(file)).isEqualTo("text");
    }

    @Test
    @EnabledOnOs({OS.LINUX, OS.MAC})
    void whatIsNoOrdinaryFileStaysWhatItIs() throws FileProblem {
        Path nothing = Path.of("/dev/null");
        SafeFile.write(nothing, "text");
        assertThat(Files.isRegularFile(nothing)).isFalse();
        assertThat(nothing).exists();
    }

    @Test
    void aPieceThatCouldNotBeReadAgainLeavesTheOldFile() throws FileProblem, IOException {
        Path file = folder.resolve("piece.json");
        PieceFile demo = PieceFile.read(BuiltIn.DEMO.text("first-wave.json"));
        SafeFile.write(file, demo);
        PieceFile tooLong = demo.with(demo.piece().withTitle("t".repeat(10_001)));
        assertThatThrownBy(() -> SafeFile.write(file, tooLong))
                .isInstanceOf(FileProblem.class)
                .hasMessageContaining("title: this text is too long");
        assertThat(PieceFile.read(SafeFile.read(file)).piece()).isEqualTo(demo.piece());
        assertThat(names()).containsExactly("piece.json");
    }

    /** Whenever the program is cut off while it writes, the file is whole: what it was or what it was to be. */
    @Test
    void aProgramCutOffWhileWritingLeavesAWholeFile() throws Exception {
        Path file = folder.resolve("piece.json");
        Set<String> whole = Set.of(EndlessWriter.text('a'), EndlessWriter.text('b'));
        Files.writeString(file, EndlessWriter.text('a'));
        int unfinished = 0;
        for (int round = 0; round < 60 && unfinished < 3; round++) {
            Process writer = EndlessWriter.start(file);
            assertThat(writer.getInputStream().read()).isEqualTo('!');
            Thread.sleep(round % 7);
            writer.destroyForcibly().waitFor();
            assertThat(whole).contains(SafeFile.read(file));
            unfinished = names().size() - 1;
        }
        assertThat(unfinished).as("times that it was cut off in the middle").isEqualTo(3);
    }

    /** Writes one text and another into a file, over and over, until it is cut off. */
    static final class EndlessWriter {
        private EndlessWriter() {}

        static String text(char filling) {
            return String.valueOf(filling).repeat(6_000_000);
        }

        static Process start(Path file) throws IOException {
            return new ProcessBuilder(
                            Path.of(System.getProperty("java.home"), "bin", "java")
                                    .toString(),
                            "-XX:TieredStopAtLevel=1",
                            "-cp",
                            System.getProperty("java.class.path"),
                            EndlessWriter.class.getName(),
                            file.toString())
                    .redirectError(ProcessBuilder.Redirect.INHERIT)
                    .start();
        }

        public static void main(String[] arguments) throws FileProblem {
            Path file = Path.of(arguments[0]);
            byte[] one = text('a').getBytes(StandardCharsets.UTF_8);
            byte[] other = text('b').getBytes(StandardCharsets.UTF_8);
            SafeFile.write(file, other);
            System.out.print('!');
            System.out.flush();
            while (true) {
                SafeFile.write(file, one);
                SafeFile.write(file, other);
            }
        }
    }

    /** Nobody writes into it, and nobody reads from it. */
    @Test
    @EnabledOnOs({OS.LINUX, OS.MAC})
    void aPipeWithNobodyAtItsOtherEndIsNotWaitedForForEver() throws Exception {
        Path pipe = folder.resolve("pipe.json");
        assertThat(new ProcessBuilder("mkfifo", pipe.toString()).start().waitFor())
                .isZero();
        Path other = folder.resolve("other.json");
        assertThat(new ProcessBuilder("mkfifo", other.toString()).start().waitFor())
                .isZero();
        // at the same time, since each waits for seconds
        CompletableFuture<Throwable> written =
                CompletableFuture.supplyAsync(() -> catchThrowable(() -> SafeFile.write(other, "text")));
        assertThatThrownBy(() -> SafeFile.read(pipe))
                .isInstanceOf(FileProblem.class)
                .hasMessageContaining("no ordinary");
        assertThat(written.get()).isInstanceOf(FileProblem.class);
        assertThat(Structures.with(folder).problems()).isEmpty();
    }

    @Test
    @EnabledOnOs({OS.LINUX, OS.MAC})
    void aPipeIsReadWhereSomebodyWrites() throws Exception {
        Path pipe = folder.resolve("pipe.json");
        assertThat(new ProcessBuilder("mkfifo", pipe.toString()).start().waitFor())
                .isZero();
        new ProcessBuilder("sh", "-c", "echo text > " + pipe).start();
        assertThat(SafeFile.read(pipe)).isEqualTo("text\n");
    }

    @Test
    void whatIsNoTextIsToldWithItsLine() throws IOException {
        Path file = folder.resolve("piece.json");
        Files.write(file, new byte[] {'a', '\n', 'b', (byte) 0xff});
        assertThatThrownBy(() -> SafeFile.read(file)).hasMessageContaining("Line 2");
    }

    @Test
    void aNameIsTakenOnce() throws Exception {
        Path file = folder.resolve("begun.json");
        assertThat(SafeFile.begins(file, "mine")).isTrue();
        assertThat(SafeFile.begins(file, "other")).isFalse();
        assertThat(file).hasContent("mine");
    }

    @Test
    void refusesWhatIsNoText() throws IOException {
        Path file = folder.resolve("piece.json");
        Files.write(file, new byte[] {(byte) 0xff, (byte) 0xfe, 0x20});
        assertThatThrownBy(() -> SafeFile.read(file))
                .isInstanceOf(FileProblem.class)
                .hasMessageContaining("UTF-8");
    }

    @Test
    void whatTheProgramKeepsLiesWhereEachSystemHasIt() {
        Path home = Path.of("home");
        assertThat(UserFolder.state("Linux", Map.of(), home))
                .isEqualTo(home.resolve(Path.of(".local", "state", "thrumwright", "state")));
        assertThat(UserFolder.state("Linux", Map.of("XDG_STATE_HOME", "kept"), home))
                .isEqualTo(Path.of("kept", "thrumwright", "state"));
        assertThat(UserFolder.state("Mac OS X", Map.of(), home))
                .isEqualTo(home.resolve(Path.of("Library", "Application Support", "thrumwright", "state")));
        assertThat(UserFolder.state("Windows 11", Map.of("LOCALAPPDATA", "local"), home))
                .isEqualTo(Path.of("local", "thrumwright", "state"));
    }

    @Test
    void theUsersFolderFollowsEachSystem() {
        Path home = Path.of("home");
        assertThat(UserFolder.structures("Linux", Map.of(), home))
                .isEqualTo(Path.of("home/.local/share/thrumwright/structures"));
        assertThat(UserFolder.structures("Linux", Map.of("XDG_DATA_HOME", "data"), home))
                .isEqualTo(Path.of("data/thrumwright/structures"));
        assertThat(UserFolder.structures("Mac OS X", Map.of(), home))
                .isEqualTo(Path.of("home/Library/Application Support/thrumwright/structures"));
        assertThat(UserFolder.structures("Windows 11", Map.of("APPDATA", "roam"), home))
                .isEqualTo(Path.of("roam/thrumwright/structures"));
    }

    @Test
    void theIndexesNameWhatIsThere() throws IOException {
        for (BuiltIn builtIn : BuiltIn.values()) {
            Path source = Path.of(builtIn == BuiltIn.DEMO ? "demo" : "structures");
            try (Stream<Path> files = Files.list(source)) {
                List<String> there = files.map(file -> file.getFileName().toString())
                        .filter(name -> name.endsWith(".json"))
                        .sorted()
                        .toList();
                assertThat(builtIn.names()).containsExactlyInAnyOrderElementsOf(there);
            }
        }
    }

    private List<String> names() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }
}
