package thrumwright.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import thrumwright.measure.Phrases;
import thrumwright.piece.Difficulty;
import thrumwright.piece.SearchWords;
import thrumwright.piece.Structure;

class StructureFileTest {
    private static final SearchWords SEARCH = SearchWords.of(Phrases.of("thrumwright.piece.search", Locale.ROOT));

    private static final String OLD = """
            {"thrumwrightStructure": 1, "id": "marsh-edge", "name": "Marsh edge", "use": "For small pieces.",
             "source": "common practice, no source",
             "blocks": [{"kind": "twining", "id": "edge", "rows": 2, "of": "warp cord"}]}
            """;

    @Test
    void aFileWithoutTheLaterFieldsLoads() throws FileProblem {
        Structure structure = StructureFile.read(OLD).structure();
        assertThat(structure.difficulty()).isEmpty();
        assertThat(structure.goodFor()).isEmpty();
        assertThat(structure.needs()).isEmpty();
    }

    @Test
    void unknownFieldsSurviveWhereTheyStood() throws FileProblem {
        String text = OLD.replace("\"name\":", "\"season\": \"spring\", \"name\":")
                .replace("\"rows\": 2", "\"rows\": 2, \"humming\": true");
        StructureFile file = StructureFile.read(text);
        assertThat(file.text()).contains("\"season\": \"spring\"", "\"humming\": true");
        assertThat(file.checkedText()).isEqualTo(file.text());
        assertThat(StructureFile.read(file.text()).text()).isEqualTo(file.text());
    }

    @Test
    void theLaterFieldsReadBack() throws FileProblem {
        String text = OLD.replace(
                "\"source\":",
                "\"difficulty\": \"patient hands\", \"goodFor\": [\"quick\", \"no fringe\"], \"source\":");
        Structure structure = StructureFile.read(text).structure();
        assertThat(structure.difficulty()).isEqualTo(Optional.of(Difficulty.PATIENT_HANDS));
        assertThat(structure.goodFor()).containsExactly("quick", "no fringe");
        assertThat(StructureFile.read(StructureFile.of(structure).text()).structure())
                .isEqualTo(structure);
    }

    @Test
    void whatIsWrongIsSaidAtItsPlace() {
        assertThatThrownBy(() -> StructureFile.read(OLD.replace("\"use\"", "\"difficulty\": \"easy\", \"use\"")))
                .hasMessage("Line 1, column 85, difficulty: this must be “first piece” or “some practice” or "
                        + "“patient hands”, not “easy”.");
        assertThatThrownBy(() -> StructureFile.read(OLD.replace("\"use\"", "\"goodFor\": \"quick\", \"use\"")))
                .hasMessageContaining("goodFor: this must be a list");
        assertThatThrownBy(() -> StructureFile.read(OLD.replace("\"rows\"", "\"words\": \"{side} {x}\", \"rows\"")))
                .hasMessageContaining("blocks › block 1 “edge” › words: There is nothing to put in the place {x}");
    }

    @Test
    void answersToWhatIsSought() throws FileProblem {
        Structures all = Structures.builtIn();
        assertThat(all.byId("bar-sleeve").orElseThrow().answers("BAR hang", SEARCH))
                .isTrue();
        assertThat(all.byId("bar-sleeve").orElseThrow().answers("no fringe", SEARCH))
                .isTrue();
        assertThat(all.byId("knotted-fringe").orElseThrow().answers("hemmed", SEARCH))
                .isFalse();
        assertThat(all.byId("knotted-fringe").orElseThrow().answers("fringe, child's class", SEARCH))
                .isTrue();
        assertThat(all.byId("knotted-fringe").orElseThrow().answers("no fringe", SEARCH))
                .isFalse();
        assertThat(all.byId("darned-ends").orElseThrow().answers("fringe", SEARCH))
                .isFalse();
        assertThat(all.byId("darned-ends").orElseThrow().answers("without hem", SEARCH))
                .isTrue();
        assertThat(all.byId("folded-hem").orElseThrow().answers("(fringe)", SEARCH))
                .isFalse();
        assertThat(all.all()).allMatch(structure -> structure.answers("", SEARCH));
        assertThat(all.all()).allMatch(structure -> structure.difficulty().isPresent());
        assertThat(all.all()).allMatch(structure -> structure.goodFor().size() >= 3);
    }
}
