package thrumwright.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import thrumwright.piece.Structure;

class OwnStructuresTest {
    @TempDir
    Path folder;

    private static Structure hem() {
        return Structures.builtIn().byId("folded-hem").orElseThrow();
    }

    @Test
    void whatIsKeptShowsAmongTheStructures() throws FileProblem {
        OwnStructures own = new OwnStructures(folder.resolve("new").resolve("own"));
        Structure ours = hem().withId("our-hem");
        assertThat(own.has("our-hem")).isFalse();
        own.keep(ours);
        Structures all = Structures.with(folder.resolve("new").resolve("own"));
        assertThat(all.byId("our-hem")).contains(ours);
        assertThat(all.all()).hasSize(Structures.builtIn().all().size() + 1);
        assertThat(all.problems()).isEmpty();
    }

    @Test
    void keptAgainAFileKeepsWhatThisVersionDoesntKnow() throws FileProblem, IOException {
        OwnStructures own = new OwnStructures(folder);
        String text = StructureFile.of(hem().withId("our-hem")).text();
        own.keep(StructureFile.read(text.replace("\"name\":", "\"season\": \"spring\",\n  \"name\":")));
        assertThat(Files.readString(own.file("our-hem"))).contains("\"season\": \"spring\"");
        own.keep(hem().withId("our-hem"));
        assertThat(Files.readString(own.file("our-hem"))).contains("\"season\": \"spring\"");
    }

    @Test
    void whatCantBeReadIsNeverWrittenOver() throws FileProblem, IOException {
        OwnStructures own = new OwnStructures(folder);
        String whole = StructureFile.of(hem().withId("our-hem")).text();
        List<String> unreadable = List.of(
                whole.replaceFirst(",", ""),
                whole.replaceFirst("(?<version>\"thrumwrightStructure\": )\\d+", "${version}9999"),
                "{");
        for (String text : unreadable) {
            Path there = Files.writeString(folder.resolve("our-hem.json"), text);
            own.keep(hem().withId("our-hem"));
            assertThat(there).hasContent(text);
            Structures all = Structures.with(folder);
            assertThat(all.byId("our-hem")).contains(hem().withId("our-hem"));
            assertThat(all.problems()).hasSize(1);
            own.remove("our-hem");
            assertThat(there).hasContent(text);
        }
    }

    @Test
    void takenAwayABuiltInOneShowsAgain() throws FileProblem {
        OwnStructures own = new OwnStructures(folder);
        Structure ours =
                Structures.builtIn().byId("knotted-fringe").orElseThrow().withId("folded-hem");
        own.keep(ours);
        assertThat(Structures.with(folder).byId("folded-hem")).contains(ours);
        own.remove("folded-hem");
        own.remove("folded-hem");
        assertThat(Structures.with(folder).byId("folded-hem")).contains(hem());
    }

    /** A file put in by hand may be called anything: it is the weaver's own, is kept where it lies, and goes when it is to go. */
    @Test
    void aFilePutInByHandIsKnownByItsIdAndNotByItsName() throws FileProblem, IOException {
        Path byHand = folder.resolve("from a friend.json");
        Files.writeString(byHand, StructureFile.of(hem().withId("our-hem")).text());
        OwnStructures own = new OwnStructures(folder);
        assertThat(own.has("our-hem")).isTrue();
        assertThat(own.read("our-hem").structure()).isEqualTo(hem().withId("our-hem"));
        Structure changed =
                Structures.builtIn().byId("knotted-fringe").orElseThrow().withId("our-hem");
        own.keep(changed);
        assertThat(Structures.with(folder).byId("our-hem")).contains(changed);
        assertThat(folder.resolve("our-hem.thrumstructure")).doesNotExist();
        own.remove("our-hem");
        assertThat(byHand).doesNotExist();
        assertThat(Structures.with(folder).byId("our-hem")).isEmpty();
    }

    /** A name that another structure's file has already isn't written over. */
    @Test
    void anotherStructuresFileIsLeftAlone() throws FileProblem, IOException {
        Path taken = folder.resolve("our-hem.thrumstructure");
        Files.writeString(taken, StructureFile.of(hem().withId("old-hem")).text());
        OwnStructures own = new OwnStructures(folder);
        own.keep(hem().withId("our-hem"));
        assertThat(Structures.with(folder).byId("old-hem")).isPresent();
        assertThat(Structures.with(folder).byId("our-hem")).isPresent();
        assertThat(own.file("our-hem")).hasFileName("our-hem-2.thrumstructure");
    }

    @Test
    void whereThereCanBeNoFolderItIsSaid() throws IOException {
        Path file = Files.writeString(folder.resolve("file"), "in the way");
        assertThatThrownBy(() -> new OwnStructures(file.resolve("own")).keep(hem()))
                .isInstanceOf(FileProblem.class)
                .hasMessageContaining("The folder for your own structures, ")
                .hasMessageEndingWith(" can't be made.");
    }

    @Test
    void idsAreMadeFromNames() {
        assertThat(Structure.idFrom("Überlanger Rand, ½ Zoll!")).isEqualTo("uberlanger-rand-zoll");
        assertThat(Structure.idFrom("A child’s class")).isEqualTo("a-childs-class");
        assertThat(Structure.idFrom("潮")).isEqualTo("structure");
        assertThat(Structure.idFrom("x".repeat(200))).hasSize(50);
    }
}
