package thrumwright.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import thrumwright.testing.RandomPieces;
import thrumwright.testing.Seeds;

/** The schema in the docs, held against what the program writes and what it reads. */
class SchemaTest {
    private static final Path FILE = Path.of("docs", "schema", "thrumwright.schema.json");

    private Schema schema;

    @BeforeEach
    void read() throws IOException, FileProblem {
        schema = new Schema((Node.Obj) Json.read(Files.readString(FILE)));
    }

    @Test
    void whateverIsWrittenIsValid() throws FileProblem {
        RandomPieces pieces = new RandomPieces(5);
        for (int i = 0; i < Math.max(60, Seeds.of(1000)); i++) {
            String text = new PieceFile(pieces.next(), Unknown.none()).text();
            assertThat(schema.problems(Json.read(text))).as(text).isEmpty();
        }
        for (BuiltIn folder : BuiltIn.values()) {
            for (String name : folder.names()) {
                assertThat(schema.problems(Json.read(folder.text(name))))
                        .as(name)
                        .isEmpty();
            }
        }
    }

    @Test
    void theClassesOfTheDemoAreValid() throws IOException, FileProblem {
        int met = 0;
        try (var files = Files.list(Path.of("demo", "class"))) {
            for (Path file : files.toList()) {
                String text = Files.readString(file);
                met += text.contains(ClassFormat.MARK) ? 1 : 0;
                assertThat(schema.problems(Json.read(text))).as(file.toString()).isEmpty();
            }
        }
        assertThat(met).isPositive();
    }

    @Test
    void itHasAllFieldsThatTheReaderKnowsAndNoOthers() {
        assertThat(fields(schema.definition("piece"))).isEqualTo(PieceFormats.PIECE.names());
        assertThat(fields(schema.definition("loom"))).isEqualTo(LoomFormats.LOOM.names());
        assertThat(fields(schema.definition("warp"))).isEqualTo(LoomFormats.WARP.names());
        assertThat(fields(schema.definition("habits"))).isEqualTo(LoomFormats.HABITS.names());
        assertThat(fields(schema.definition("posts"))).isEqualTo(LoomFormats.POSTS.names());
        assertThat(fields(schema.definition("class")))
                .isEqualTo(ClassFormat.with(name -> "").names());
        Map<String, Set<String>> kinds = new LinkedHashMap<>();
        for (Node kind : ((Node.Arr) schema.definition("block").fields().get("anyOf")).items()) {
            Node.Obj of = (Node.Obj) ((Node.Obj) ((Node.Obj) kind).fields().get("properties"))
                    .fields()
                    .get("kind");
            kinds.put(((Node.Text) of.fields().get("const")).value(), fields((Node.Obj) kind));
        }
        assertThat(kinds)
                .isEqualTo(BlockFormats.kinds().stream().collect(Collectors.toMap(BlockKind::key, BlockKind::names)));
    }

    private static Set<String> fields(Node.Obj of) {
        return ((Node.Obj) of.fields().get("properties")).fields().keySet();
    }

    /** Whatever of a piece is of another sort than the schema says is refused by the reader as well. */
    @ParameterizedTest
    @CsvSource({"saltmarsh-panel.json", "reed-bed-fringe.json", "spring-tide-on-a-bar.json"})
    void whatItRefusesTheReaderRefuses(String demo) throws FileProblem {
        Node whole = Json.read(BuiltIn.DEMO.text(demo));
        List<Node> wrong = new ArrayList<>();
        spoil(whole, wrong, Optional.empty());
        Set<String> disagreed = new TreeSet<>();
        for (Node each : wrong) {
            String text = Json.write(each);
            if (schema.problems(each).isEmpty() != reads(text)) {
                disagreed.add(text);
            }
        }
        assertThat(wrong).hasSizeGreaterThan(60);
        assertThat(disagreed).isEmpty();
    }

    private static boolean reads(String text) {
        try {
            PieceFile.read(text);
            return true;
        } catch (FileProblem refused) {
            return false;
        }
    }

    private interface Around {
        Node with(Node other);
    }

    /** The document as often as it has values, in each another one replaced by what is of no sort that is right there. */
    private static void spoil(Node node, List<Node> into, Optional<Around> around) {
        around.ifPresent(holder ->
                into.add(holder.with(node instanceof Node.Flag ? Node.Text.of("perhaps") : Node.Flag.of(true))));
        if (node instanceof Node.Obj object) {
            object.fields()
                    .forEach((name, value) -> spoil(value, into, Optional.of(other -> {
                        Map<String, Node> fields = new LinkedHashMap<>(object.fields());
                        fields.put(name, other);
                        Node whole = new Node.Obj(fields, object.spot());
                        return around.map(holder -> holder.with(whole)).orElse(whole);
                    })));
        } else if (node instanceof Node.Arr array) {
            for (int i = 0; i < array.items().size(); i++) {
                int at = i;
                spoil(array.items().get(i), into, Optional.of(other -> {
                    List<Node> items = new ArrayList<>(array.items());
                    items.set(at, other);
                    Node whole = Node.Arr.of(items);
                    return around.map(holder -> holder.with(whole)).orElse(whole);
                }));
            }
        }
    }
}
