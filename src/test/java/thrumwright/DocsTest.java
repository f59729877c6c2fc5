package thrumwright;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowable;
import static org.assertj.core.api.Assertions.within;

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
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import thrumwright.block.Block;
import thrumwright.block.OwnWords;
import thrumwright.block.TurnedEnds;
import thrumwright.block.WovenEdge;
import thrumwright.block.YarnBlock;
import thrumwright.measure.Length;
import thrumwright.piece.Loom;
import thrumwright.piece.MeasuredStep;
import thrumwright.piece.Piece;
import thrumwright.piece.Portion;
import thrumwright.piece.Sheds;
import thrumwright.piece.Stripes;
import thrumwright.piece.Structure;
import thrumwright.plan.BlockPlan;
import thrumwright.plan.Cut;
import thrumwright.plan.EndPlan;
import thrumwright.plan.Plan;
import thrumwright.plan.finding.ClassPlan;
import thrumwright.plan.finding.Finding;
import thrumwright.plan.finding.Findings;
import thrumwright.store.BuiltIn;
import thrumwright.store.ClassFile;
import thrumwright.store.FileProblem;
import thrumwright.store.PieceFile;
import thrumwright.store.StructureFile;
import thrumwright.store.Unknown;
import thrumwright.yarn.Yarn;

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
                case "corner from the side" ->
                    start.hem().orElseThrow().mitre().orElseThrow().leg();
                case "crease" -> start.hem().orElseThrow().mitre().orElseThrow().crease();
                case "cloth under the band" ->
                    start.hem().orElseThrow().band().orElseThrow().turned();
                case "warp ends under the band" ->
                    start.hem().orElseThrow().band().orElseThrow().ends();
                case "band to cut" -> start.each("fold");
                case "hem needed" ->
                    start.hem().orElseThrow().sleeve().orElseThrow().depth();
                case "yarn in one wrapping" ->
                    start.finish().orElseThrow().wrapping().orElseThrow().each().exact();
                case "an end in one row" ->
                    TurnedEnds.lengthRound(
                            piece.setting(piece.warpYarn()),
                            ((TurnedEnds) start.finish().orElseThrow().block()).over());
                case "an end through its neighbours" ->
                    WovenEdge.lengthThrough(
                            piece.setting(piece.warpYarn()),
                            ((WovenEdge) start.finish().orElseThrow().block()).through());
                case "yarn in the slit band" ->
                    start.block("slits")
                            .flatMap(BlockPlan::work)
                            .orElseThrow()
                            .cut()
                            .exact();
                case "yarn in the header" ->
                    start.block("header")
                            .flatMap(BlockPlan::work)
                            .orElseThrow()
                            .cut()
                            .exact();
                case "warp in one loop" -> start.loops().orElseThrow().turn(piece.setting(piece.warpYarn()));
                case "loops stand out" -> start.loops().orElseThrow().standOut(piece.setting(piece.warpYarn()));
                case "loops slip" -> start.loops().orElseThrow().slip(piece.setting(piece.warpYarn()));
                case "whole warp" ->
                    Plan.of(piece.withStart(structure.fittedTo(piece))).warpYarn();
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
        Piece mudBank = PieceFile.read(examples.get(0)).piece();
        assertThat(Findings.of(Plan.of(mudBank)).all())
                .extracting(Finding::code)
                .containsExactly(Finding.Code.YARN_LEFT);
        assertThat(mudBank.ticks().done("start/waste")).isEqualTo(3);
        assertThat(mudBank.measures().of("start/waste"))
                .isEqualTo(MeasuredStep.nothing("start/waste")
                        .withHeight(Optional.of(Length.parse("7.2 cm")))
                        .withWidth(Optional.of(Length.parse("20 cm")))
                        .withLeft(Optional.of(Length.parse("35 cm"))));
        ClassFile.PieceSource pieces = name -> name.equals("mud-bank.thrum") ? examples.get(0) : "";
        assertThat(ClassPlan.of(ClassFile.read(examples.get(1), pieces).set()).findings())
                .isEmpty();
        assertThat(StructureFile.read(examples.get(2)).structure().end().blocks())
                .hasSize(2);
    }

    /** The bundle in docs/files.md, put among the yarns of the piece there, with a yarn for its other strands. */
    @Test
    void theBundleInTheDocsIsRead() throws IOException, FileProblem {
        String piece = blocks("docs/files.md", "json").get(0);
        String bundle = blocks("docs/files.md", "text").stream()
                .filter(text -> text.contains("wound"))
                .findFirst()
                .orElseThrow();
        String foam =
                "{\"id\": \"foam\", \"colour\": \"#e0e4e0\", \"fibre\": \"wool\", \"thickness\": {\"diameter\": \"1 mm\"}}";
        Piece read = PieceFile.read(piece.replace("\"yarns\": [", "\"yarns\": [" + bundle + ", " + foam + ", "))
                .piece();
        Yarn tide = read.yarn("tide");
        assertThat(tide.strandsOf("mud")).isEqualTo(3);
        assertThat(tide.strandsOf("foam")).isEqualTo(2);
        assertThat(tide.beaten()).isCloseTo(1.05, within(1e-9));
        assertThat(PieceFile.read(new PieceFile(read, Unknown.none()).text()).piece())
                .isEqualTo(read);
    }

    /** What is said of the design's yarns in docs/files.md, put into the piece there. */
    @Test
    void theDesignsYarnsInTheDocsAreRead() throws IOException, FileProblem {
        String files = Files.readString(Path.of("docs/files.md"));
        Matcher row = Pattern.compile("\\| `design.firstPart`.*?`\"(8 cm)\"`.*?`others`.*?`(\\[.*?\\])`")
                .matcher(files);
        assertThat(row.find()).isTrue();
        String piece = blocks("docs/files.md", "json").get(0);
        String told = "\"design\": {\"firstPart\": \"" + row.group(1) + "\", \"others\": " + row.group(2) + ", ";
        Stripes stripes = PieceFile.read(piece.replace("\"design\": {", told))
                .piece()
                .design()
                .stripes();
        assertThat(stripes.first().orElseThrow().of(250)).isCloseTo(0.32, within(1e-9));
        assertThat(stripes.others()).containsExactly(new Stripes.Stripe("mud", Portion.parse("10 %")));
    }

    /** Every kind of loom in docs/files.md is read as it stands there, and written again. */
    @Test
    void theKindsOfLoomInTheDocsAreRead() throws IOException, FileProblem {
        String files = Files.readString(Path.of("docs/files.md"));
        String piece = blocks("docs/files.md", "json").get(0);
        Set<String> kinds = new TreeSet<>();
        Matcher row =
                Pattern.compile("(?m)^\\| `(\"[a-zA-Z]+\": \\{.*?\\})` \\| ").matcher(files);
        while (row.find()) {
            String text = piece.replace("\"loom\": {", "\"loom\": {" + row.group(1) + ", \"sheds\": \"heddle\", ")
                    .replace("\"warpPerEnd\": \"80 cm\"", "\"warpPerEnd\": \"1.8 m\"");
            Loom loom = PieceFile.read(text).piece().loom();
            assertThat(loom.sheds()).isEqualTo(Sheds.HEDDLE);
            assertThat(PieceFile.read(PieceFile.read(text).text()).piece().loom())
                    .isEqualTo(loom);
            kinds.add(loom.kind().key());
        }
        assertThat(kinds).containsExactlyInAnyOrder("round-frame", "joining-bar", "nails", "rollers");
    }

    /** Every kind of block in docs/files.md with what it must have; all else is left out. */
    private static Map<String, String> kinds() {
        Map<String, String> kinds = new LinkedHashMap<>();
        for (String kind :
                List.of("ordering cord", "spread header", "twining", "soumak", "half hitches", "hemstitching")) {
            kinds.put(kind, "\"of\": \"weft\"");
        }
        kinds.put("plain band", "\"of\": \"weft\", \"picks\": 3");
        kinds.put("slit band", "\"of\": \"weft\", \"picks\": 3");
        kinds.put("hem fold", "\"bar\": \"15 mm\"");
        kinds.put("open warp", "\"height\": \"8 mm\"");
        kinds.put("warp finish", "\"ends\": \"plied\", \"hanging\": \"8 cm\"");
        kinds.put("rows of knots", "\"hanging\": \"8 cm\"");
        kinds.put("turned ends", "\"hanging\": \"5 cm\"");
        kinds.put("woven edge", "\"hanging\": \"5 cm\"");
        kinds.put("wrapped tassels", "\"of\": \"weft\", \"turns\": 8, \"hanging\": \"6 cm\"");
        kinds.put("warp loops", "\"thick\": \"3 mm\"");
        return kinds;
    }

    private static Block block(String kind, String fields) throws FileProblem {
        String text =
                "{\"thrumwrightStructure\": 1, \"id\": \"x\", \"name\": \"X\", \"use\": \"x\", \"source\": \"x\", "
                        + "\"blocks\": [{\"kind\": \"" + kind + "\", \"id\": \"a\", " + fields + "}]}";
        return StructureFile.read(text).structure().end().blocks().get(0);
    }

    /** The table of places for own words is what each block knows, and its other table names every kind. */
    @Test
    void placesOfOwnWordsAreWhatTheDocsSay() throws IOException, FileProblem {
        String files = Files.readString(Path.of("docs/files.md"));
        Map<String, String> table = new LinkedHashMap<>();
        Matcher row = Pattern.compile("(?m)^\\| ([a-z ,]+) \\| (`.*) \\|$")
                .matcher(files.substring(files.indexOf("| block | places |")));
        while (row.find()) {
            table.put(row.group(1), row.group(2));
        }
        for (Map.Entry<String, String> kind : kinds().entrySet()) {
            assertThat(files).contains("\n| `" + kind.getKey() + "` | ");
            Block block = block(kind.getKey(), kind.getValue());
            Set<String> told = new TreeSet<>();
            table.forEach((kinds, places) -> {
                boolean applies = kinds.equals("all")
                        || kinds.equals("with a yarn") && block instanceof YarnBlock
                        || List.of(kinds.split(", ")).contains(kind.getKey());
                if (applies) {
                    Pattern.compile("`([A-Za-z]+)`").matcher(places).results().forEach(each -> told.add(each.group(1)));
                }
            });
            assertThat(told).as(kind.getKey()).isEqualTo(new TreeSet<>(OwnWords.places(block)));
        }
        String refused =
                catchThrowable(() -> block("knitting", "\"of\": \"weft\"")).getMessage();
        assertThat(Pattern.compile("“([a-z ]+)”")
                        .matcher(refused.substring(refused.indexOf("must be")))
                        .results()
                        .map(each -> each.group(1)))
                .containsExactlyInAnyOrderElementsOf(Stream.concat(kinds().keySet().stream(), Stream.of("knitting"))
                        .toList());
    }

    @Test
    void theReadmeBeginsWithItsTwoCommands() throws IOException {
        assertThat(blocks("README.md", "sh")).containsExactly("mvn -q compile exec:java\n", "mvn -B verify\n");
    }

    @Test
    void linksInTheDocsLeadSomewhere() throws IOException {
        List<Path> documents = new ArrayList<>(List.of(Path.of("README.md"), Path.of("DEVELOPERS.md")));
        try (Stream<Path> docs = Files.walk(Path.of("docs"))) {
            docs.filter(file -> file.toString().endsWith(".md")).forEach(documents::add);
        }
        for (Path document : documents) {
            Matcher link = Pattern.compile("]\\(([^)#:]+)(?:#[^)]*)?\\)").matcher(Files.readString(document));
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
