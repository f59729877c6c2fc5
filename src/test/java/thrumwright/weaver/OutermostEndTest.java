package thrumwright.weaver;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import thrumwright.block.PlainBand;
import thrumwright.block.Shed;
import thrumwright.block.Side;
import thrumwright.measure.Length;
import thrumwright.piece.Design;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;
import thrumwright.plan.Plan;
import thrumwright.plan.comparison.EndComparison;
import thrumwright.plan.finding.Finding;
import thrumwright.plan.finding.Findings;
import thrumwright.plan.words.ComparisonWords;
import thrumwright.plan.words.FindingWords;
import thrumwright.store.BuiltIn;
import thrumwright.store.PieceFile;
import thrumwright.testing.Pieces;
import thrumwright.testing.RandomPieces;
import thrumwright.testing.Seeds;

/** A pick is told by the outermost end where it begins; “the first end” would be another one for each reader. */
class OutermostEndTest {
    private static final Pattern FIRST_END = Pattern.compile("first\\s+(\\d+\\s+)?(\\{ends\\}\\s+)?ends?\\b");

    @Test
    void noBundleSaysFirstEnd() throws IOException {
        try (Stream<Path> files = Files.walk(Path.of("src", "main", "resources", "thrumwright"))) {
            List<Path> bundles = files.filter(file -> file.toString().endsWith(".properties"))
                    .toList();
            assertThat(bundles).hasSizeGreaterThan(8);
            for (Path bundle : bundles) {
                assertThat(Files.readString(bundle)).as("%s", bundle).doesNotContainPattern(FIRST_END);
            }
        }
    }

    @Test
    void noSheetSaysFirstEnd() throws Exception {
        for (String name : BuiltIn.DEMO.names()) {
            assertThat(CodeWeaverTest.text(
                            Plan.of(PieceFile.read(BuiltIn.DEMO.text(name)).piece())))
                    .doesNotContainPattern(FIRST_END);
        }
        RandomPieces pieces = new RandomPieces(52);
        for (int i = 0; i < Seeds.of(200); i++) {
            Plan plan = Plan.of(CodeWeaverTest.inOurWords(pieces.next()));
            assertThat(CodeWeaverTest.text(plan)).doesNotContainPattern(FIRST_END);
            assertThat(findings(plan)).allSatisfy(said -> assertThat(said).doesNotContainPattern(FIRST_END));
        }
    }

    private static List<String> findings(Plan plan) {
        FindingWords words = FindingWords.of(plan.piece(), Locale.UK);
        return Findings.of(plan).all().stream().map(words::say).toList();
    }

    private static Piece panel(String width, Side side) {
        Piece panel = Pieces.panel();
        Design design = panel.design();
        Design ending = new Design(
                design.height(),
                design.firstYarnId(),
                design.lastYarnId(),
                Optional.of(Shed.OVER_FIRST),
                Optional.of(side),
                0);
        return panel.withWarp(panel.warp().withWidth(Length.parse(width))).withDesign(ending);
    }

    /** From the right an even warp is met otherwise than from the left in one shed, an odd one alike. */
    @Test
    void aFindingSaysHowThePickMeetsTheEndWhereItBegins() {
        assertThat(sameShed(panel("24 cm", Side.LEFT))).contains("its first pick goes over the left edge end");
        assertThat(sameShed(panel("24 cm", Side.RIGHT))).contains("its first pick goes under the right edge end");
        assertThat(sameShed(panel("24.34 cm", Side.RIGHT))).contains("its first pick goes over the right edge end");
    }

    /** The stiff band is made to begin in the shed of the design's last pick. */
    private static String sameShed(Piece piece) {
        PlainBand facing = (PlainBand) piece.end(Place.TOP).block("facing").orElseThrow();
        Piece again = piece.withTop(new thrumwright.piece.Top.OnItsOwn(piece.end(Place.TOP)
                .without(java.util.Set.of("soumak"))
                .replaced(facing.withFirstShed(Optional.of(Shed.OVER_FIRST)))));
        Plan plan = Plan.of(again);
        return Findings.of(plan).all().stream()
                .filter(finding -> finding.code() == Finding.Code.SAME_SHED)
                .map(FindingWords.of(again, Locale.UK)::say)
                .findFirst()
                .orElse("");
    }

    @Test
    void anUnknownLastPickIsAssumedInTheSameWords() {
        Piece panel = Pieces.panel();
        Design design = panel.design();
        Plan plan = Plan.of(panel.withDesign(new Design(
                design.height(), design.firstYarnId(), design.lastYarnId(), Optional.empty(), Optional.empty(), 0)));
        assertThat(findings(plan))
                .anySatisfy(said -> assertThat(said)
                        .contains("as if it went under the left edge end and ended at the right; when"));
    }

    @Test
    void theComparisonTellsEachEndByItsOwnSide() {
        Piece piece = panel("24 cm", Side.LEFT);
        EndComparison comparison = EndComparison.of(Plan.of(piece));
        ComparisonWords words = new ComparisonWords(Locale.UK, piece.shown());
        List<String> said = comparison.pairs().stream()
                .flatMap(pair -> words.of(pair).stream())
                .filter(sentence -> sentence.startsWith("The first pick goes"))
                .toList();
        assertThat(said)
                .isNotEmpty()
                .allSatisfy(sentence -> assertThat(sentence)
                        .matches("The first pick goes (over|under) the (left|right) edge end in the start,"
                                + " (over|under) the (left|right) edge end in the top\\."));
    }

    /** What was said of the last pick stays as it was said when it turns out to have ended at the other side. */
    @Test
    void anotherSideKeepsHowTheLastPickMeetsTheEndWhereItBegins() {
        for (int ends : new int[] {71, 72}) {
            for (Shed shed : Shed.values()) {
                Design design = new Design(
                        Length.parse("30 cm"), "weft", "weft", Optional.of(shed), Optional.of(Side.RIGHT), 0);
                Design other = design.endingAt(Optional.of(Side.LEFT), ends);
                assertThat(other.lastSide()).contains(Side.LEFT);
                assertThat(other.lastShed().orElseThrow().meets(Side.RIGHT, ends))
                        .isEqualTo(shed.meets(Side.LEFT, ends));
                assertThat(other.endingAt(Optional.of(Side.RIGHT), ends)).isEqualTo(design);
            }
        }
    }
}
