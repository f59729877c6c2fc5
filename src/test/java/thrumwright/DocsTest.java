package thrumwright;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import thrumwright.block.TurnedEnds;
import thrumwright.piece.Piece;
import thrumwright.piece.Structure;
import thrumwright.plan.ClassPlan;
import thrumwright.plan.Cut;
import thrumwright.plan.EndPlan;
import thrumwright.plan.Plan;
import thrumwright.store.BuiltIn;
import thrumwright.store.ClassFile;
import thrumwright.store.FileProblem;
import thrumwright.store.PieceFile;
import thrumwright.store.StructureFile;

/** What the docs say is so. */
class DocsTest {
    private static Plan demo(String name) throws FileProblem {
        return Plan.of(PieceFile.read(BuiltIn.DEMO.text(name + ".json")).piece());
    }

    /** The demo's plan as worked by hand in docs/method.md, one block of each kind, agrees to the millimetre and better. */
    @Test
    void theHandWorkedBlocksAgree() throws IOException, FileProblem {
        Matcher row = Pattern.compile("\\| ([a-z-]+) \\| ([a-z]+) \\| ([0-9.]+) \\| ([0-9.]+) \\|")
                .matcher(Files.readString(Path.of("docs/method.md")));
        int rows = 0;
        while (row.find()) {
            Cut cut = demo(row.group(1))
                    .start()
                    .block(row.group(2))
                    .orElseThrow()
                    .work()
                    .orElseThrow()
                    .cut();
            assertThat(cut.exact()).as(row.group()).isCloseTo(Double.parseDouble(row.group(3)), within(0.0006));
            assertThat(cut.length()).as(row.group()).isCloseTo(Double.parseDouble(row.group(4)), within(0.06));
            rows++;
        }
        assertThat(rows).isEqualTo(9);
    }

    @Test
    void theHandWorkedHemsAndFinishesAgree() throws IOException, FileProblem {
        Matcher row = Pattern.compile(
                        "\\| ([a-z-]+) \\| (hem|sleeve|open warp|knotted|ends darned)[^|]*\\| ([0-9.]+) \\|")
                .matcher(Files.readString(Path.of("docs/method.md")));
        int rows = 0;
        while (row.find()) {
            Plan plan = demo(row.group(1));
            double value = switch (row.group(2)) {
                case "hem" -> plan.start().hem().orElseThrow().depth();
                case "sleeve" -> plan.top().hem().orElseThrow().depth();
                case "open warp" -> plan.start().block("window").orElseThrow().height();
                default -> plan.start().finish().orElseThrow().needed();
            };
            assertThat(value).as(row.group()).isCloseTo(Double.parseDouble(row.group(3)), within(0.0006));
            rows++;
        }
        assertThat(rows).isEqualTo(6);
    }

    /** Ends that no demo piece has, worked by hand on the warp of one. */
    @Test
    void theHandWorkedStructuresAgree() throws IOException, FileProblem {
        Matcher row = Pattern.compile("\\| ([a-z-]+) on ([a-z-]+) \\| ([a-z -]+) \\| ([0-9.]+) \\|")
                .matcher(Files.readString(Path.of("docs/method.md")));
        int rows = 0;
        while (row.find()) {
            Piece piece =
                    PieceFile.read(BuiltIn.DEMO.text(row.group(2) + ".json")).piece();
            Structure structure = StructureFile.read(BuiltIn.STRUCTURES.text(row.group(1) + ".json"))
                    .structure();
            EndPlan start = Plan.of(piece.withStart(structure.fittedTo(piece))).start();
            double value = switch (row.group(3)) {
                case "free warp needed" -> start.finish().orElseThrow().needed();
                case "hem" -> start.hem().orElseThrow().depth();
                case "hem needed" ->
                    start.hem().orElseThrow().sleeve().orElseThrow().depth();
                case "yarn in one wrapping" ->
                    start.finish().orElseThrow().wrapping().orElseThrow().each().exact();
                case "an end in one row" ->
                    TurnedEnds.lengthRound(
                            piece.setting(piece.warpYarn()),
                            ((TurnedEnds) start.finish().orElseThrow().block()).over());
                default -> throw new IllegalArgumentException(row.group(3));
            };
            assertThat(value).as(row.group()).isCloseTo(Double.parseDouble(row.group(4)), within(0.0006));
            rows++;
        }
        assertThat(rows).isPositive();
    }

    @Test
    void theFilesWrittenByHandInTheDocsAreRead() throws IOException, FileProblem {
        List<String> examples = blocks("docs/files.md", "json");
        assertThat(examples).hasSize(3);
        assertThat(Plan.of(PieceFile.read(examples.get(0)).piece()).findings()).isEmpty();
        ClassFile.PieceSource pieces = name -> name.equals("mud-bank.json") ? examples.get(0) : "";
        assertThat(ClassPlan.of(ClassFile.read(examples.get(1), pieces).set()).findings())
                .isEmpty();
        assertThat(StructureFile.read(examples.get(2)).structure().end().blocks())
                .hasSize(2);
    }

    @Test
    void theReadmeBeginsWithItsTwoCommands() throws IOException {
        assertThat(blocks("README.md", "sh")).containsExactly("mvn -q compile exec:java\n", "mvn -B verify\n");
    }

    @Test
    void linksInTheDocsLeadSomewhere() throws IOException {
        List<Path> documents = new ArrayList<>(List.of(Path.of("README.md"), Path.of("DEVELOPERS.md")));
        try (Stream<Path> docs = Files.list(Path.of("docs"))) {
            docs.filter(file -> file.toString().endsWith(".md")).forEach(documents::add);
        }
        for (Path document : documents) {
            Matcher link = Pattern.compile("]\\(([^)#:]+)\\)").matcher(Files.readString(document));
            while (link.find()) {
                assertThat(document.resolveSibling(link.group(1))).exists();
            }
        }
    }

    private static List<String> blocks(String document, String language) throws IOException {
        Matcher block = Pattern.compile("```" + language + "\n(.*?)```", Pattern.DOTALL)
                .matcher(Files.readString(Path.of(document)));
        List<String> blocks = new ArrayList<>();
        while (block.find()) {
            blocks.add(block.group(1));
        }
        return blocks;
    }
}
