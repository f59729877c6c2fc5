package thrumwright.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import thrumwright.measure.UnitSystem;
import thrumwright.piece.Beginnings;
import thrumwright.piece.MadeFor;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;
import thrumwright.piece.Structure;
import thrumwright.plan.Plan;
import thrumwright.plan.finding.Finding;
import thrumwright.plan.finding.Findings;
import thrumwright.store.BuiltIn;
import thrumwright.store.FileProblem;
import thrumwright.store.PieceFile;
import thrumwright.store.Structures;
import thrumwright.store.Unknown;
import thrumwright.testing.Pieces;

/** The last step follows what a piece is for, and a beginning follows the loom that its structure is for. */
class MadeForTest {
    private static Step last(Piece piece) {
        List<Chapter> chapters = StepSheet.of(Plan.of(piece), Locale.UK).chapters();
        List<Step> steps = chapters.get(chapters.size() - 1).steps();
        return steps.get(steps.size() - 1);
    }

    private static Step last(MadeFor madeFor) {
        return last(Pieces.panel().withMadeFor(Optional.of(madeFor)));
    }

    @Test
    void onlyWhatHangsIsHung() {
        assertThat(last(MadeFor.HUNG).title()).isEqualTo("Hang it");
        for (MadeFor other : List.of(MadeFor.FLOOR_OR_TABLE, MadeFor.SAMPLE)) {
            assertThat(String.join(" ", last(other).sentences())).doesNotContainIgnoringCase("hang");
        }
        assertThat(last(Pieces.panel().withMadeFor(Optional.empty())).title()).isEqualTo("If it is to hang");
    }

    @Test
    void aHemThatTakesABarSaysThatThePieceHangs() {
        Piece bar = Structures.builtIn().byId("bar-sleeve").orElseThrow().on(Pieces.panel(), Place.TOP);
        assertThat(last(bar.withMadeFor(Optional.empty())).title()).isEqualTo("Hang it");
    }

    /** 24 cm and an inch (2.5 cm) at either side. */
    @Test
    void aBoardIsLargerThanThePiece() {
        assertThat(last(MadeFor.MOUNTED).sentences().get(0)).startsWith("Take a stiff board 29 cm by ");
        assertThat(last(MadeFor.MOUNTED).sentences()).noneMatch(said -> said.contains("Glass"));
        assertThat(last(MadeFor.FRAMED).sentences()).anyMatch(said -> said.startsWith("Glass must not touch"));
    }

    @Test
    void whatLiesOnTheFloorWarnsOfTripping() {
        assertThat(last(MadeFor.FLOOR_OR_TABLE).cautions()).anyMatch(said -> said.startsWith("A rug that slips"));
        assertThat(last(MadeFor.FLOOR_OR_TABLE).cautions()).noneMatch(said -> said.contains("hangs over people"));
    }

    @Test
    void theFileKeepsWhatItIsForAndOldFilesSayNothing() throws FileProblem {
        for (MadeFor madeFor : MadeFor.values()) {
            Piece piece = Pieces.panel().withMadeFor(Optional.of(madeFor));
            assertThat(PieceFile.read(new PieceFile(piece, Unknown.none()).text())
                            .piece()
                            .madeFor())
                    .contains(madeFor);
        }
        String text = new PieceFile(Pieces.panel().withMadeFor(Optional.of(MadeFor.HUNG)), Unknown.none()).text();
        String old = text.replaceFirst("\"for\": \"hung\",", "");
        assertThat(old).isNotEqualTo(text);
        assertThat(PieceFile.read(old).piece().madeFor()).isEmpty();
    }

    @Test
    void aStructureWithoutPostsBeginsOnALoomWithoutPosts() {
        Structure cord = Structures.builtIn().byId("cord-without-posts").orElseThrow();
        Piece begun = Beginnings.with(cord, UnitSystem.METRIC);
        assertThat(begun.loom().uprights()).isEmpty();
        assertThat(Findings.of(Plan.of(begun)).all())
                .extracting(Finding::code)
                .contains(Finding.Code.NO_POSTS)
                .hasSizeLessThan(4);
        String sheet = PlainText.of(
                StepSheet.of(Plan.of(begun), Locale.UK),
                thrumwright.measure.Phrases.of("thrumwright.sheet.steps", Locale.UK));
        assertThat(sheet)
                .contains("Tie the cord round the left edge end")
                .doesNotContain("left post", "right post", "round the far post");
        Piece round =
                Beginnings.with(Structures.builtIn().byId("cord-round-posts").orElseThrow(), UnitSystem.METRIC);
        assertThat(round.loom().uprights()).isPresent();
    }

    /** Whatever says that it is for a loom without posts begins without them, and nothing else does. */
    @Test
    void everyNameWithoutPostsMeansIt() {
        List<Structure> without = Structures.builtIn().all().stream()
                .filter(structure -> structure.name().contains("without posts"))
                .toList();
        assertThat(without).isNotEmpty();
        Stream<Structure> meant = Structures.builtIn().all().stream().filter(Structure::withoutPosts);
        assertThat(meant).containsAll(without);
    }

    @Test
    void everyDemoPieceSaysWhatItIsFor() throws FileProblem {
        for (String name : BuiltIn.DEMO.names()) {
            assertThat(PieceFile.read(BuiltIn.DEMO.text(name)).piece().madeFor())
                    .as(name)
                    .isPresent();
        }
    }
}
