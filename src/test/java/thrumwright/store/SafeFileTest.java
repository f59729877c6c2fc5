package thrumwright.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
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
    void refusesWhatIsNoText() throws IOException {
        Path file = folder.resolve("piece.json");
        Files.write(file, new byte[] {(byte) 0xff, (byte) 0xfe, 0x20});
        assertThatThrownBy(() -> SafeFile.read(file))
                .isInstanceOf(FileProblem.class)
                .hasMessageContaining("UTF-8");
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
