package thrumwright.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import thrumwright.measure.Length;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;
import thrumwright.plan.Plan;
import thrumwright.plan.Work;
import thrumwright.store.Structures;
import thrumwright.testing.Pieces;
import thrumwright.testing.RandomPieces;
import thrumwright.testing.Seeds;

/** Own words that leave out or contradict what the plan needs are told so. The panel's stiff band: 6 picks from the left. */
class WordingCheckTest {
    private static List<String> remarks(Piece piece, String block, String wording) {
        return new WordingCheck(Plan.of(piece), Locale.UK).remarks(Place.START, block, wording);
    }

    private static List<String> remarks(String block, String wording) {
        return remarks(Pieces.panel(), block, wording);
    }

    @Test
    void wordsThatSayAllAreLeftAlone() {
        assertThat(remarks("stiff", "Begin at the {side} and go {shed}. Weave {picks} picks."))
                .isEmpty();
        assertThat(remarks("stiff", "")).isEmpty();
        assertThat(remarks("fold", "Fold here.")).isEmpty();
        assertThat(remarks("twining", "Hang the fold at the {side}; every stitch leans {lean}."))
                .isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Go {shed}. Weave 6 picks.  Beat hard. | outermost",
                "Weave 6 picks, the first under the outermost end. | don’t say at which side",
                "Begin at the right and go {shed}. Weave 6 picks. | begin at the right",
                "Begin at the {side}. Weave 6 picks. | don’t say how the first pick meets",
                "Begin at the {side}, {shed}. Beat hard. | don’t say how many; as planned there are 6",
                "Begin at the {side}, {shed}. Weave five picks. | say five picks; as planned there are 6"
            })
    void whatIsMissingOrWrongIsTold(String wording, String remark) {
        List<String> remarks = remarks("stiff", wording);
        if (remark.equals("outermost")) {
            assertThat(remarks).isEmpty();
        } else {
            assertThat(remarks).singleElement().asString().contains(remark);
        }
    }

    /** Seventy-two ends in threes are 24 groups; what hangs is parted, what is darned goes one by one. */
    @Test
    void howManyGroupsIsTold() {
        Piece fringed = structure("fringe-in-threes");
        assertThat(remarks(fringed, "fringe", "Knot {groups} groups.")).isEmpty();
        assertThat(remarks(fringed, "fringe", "Knot 12 bunches."))
                .containsExactly("Your words say 12 bunches; as planned there are 24 groups.");
        assertThat(remarks(fringed, "fringe", "Knot them well."))
                .singleElement()
                .asString()
                .contains("as planned there are 24");
        Piece darned = structure("darned-ends");
        String id = darned.start().blocks().stream()
                .filter(block -> block.finish().isPresent())
                .findFirst()
                .orElseThrow()
                .id();
        assertThat(remarks(darned, id, "Darn them in.")).isEmpty();
    }

    /** Turned ends set out from a side. */
    @Test
    void theSideOfTurnedEndsIsTold() {
        Piece turned = structure("turned-edge");
        assertThat(remarks(turned, "turned", "Begin at the {side} and turn each end."))
                .isEmpty();
        assertThat(remarks(turned, "turned", "Begin at the right and turn each end."))
                .containsExactly("Your words begin at the right; as planned it begins at the left.");
        assertThat(remarks(turned, "turned", "Turn each end to the back."))
                .singleElement()
                .asString()
                .contains("don’t say at which side to begin");
    }

    private static Piece structure(String id) {
        return Structures.builtIn().byId(id).orElseThrow().on(Pieces.panel(), Place.START);
    }

    /** The other passing at either edge end is a contradiction, on an even warp and on an odd one. */
    @Test
    void theOtherShedIsAContradiction() {
        for (String width : List.of("24 cm", "24.34 cm")) {
            Piece panel = Pieces.panel();
            Piece piece = panel.withWarp(panel.warp().withWidth(Length.parse(width)));
            Work work =
                    Plan.of(piece).start().block("stiff").orElseThrow().work().orElseThrow();
            for (thrumwright.block.Side side : thrumwright.block.Side.values()) {
                String end = side.name().toLowerCase(Locale.ROOT) + " edge end";
                var passing = work.rows()
                        .get(0)
                        .shed()
                        .orElseThrow()
                        .meets(side, work.setting().ends());
                String right = passing.name().toLowerCase(Locale.ROOT);
                String wrong = passing.other().name().toLowerCase(Locale.ROOT);
                assertThat(remarks(piece, "stiff", "Begin at the {side}, " + right + " the " + end + ": 6 picks."))
                        .isEmpty();
                assertThat(remarks(piece, "stiff", "Begin at the {side}, " + wrong + " the " + end + ": 6 picks."))
                        .singleElement()
                        .asString()
                        .contains("send the first pick " + wrong + " the " + end);
            }
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Hang the fold at the left. | don’t say which way it leans",
                "Hang the fold at the left; stitches like the stroke in S. | lean the other way",
                "Hang the fold at the left; the stitches lean up to the left. | lean the other way"
            })
    void theLeanIsRead(String wording, String remark) {
        assertThat(remarks("twining", wording)).singleElement().asString().contains(remark);
    }

    /** The program's own sentences, taken for somebody's, pass without a remark, for every woven block of random pieces. */
    @Test
    void theProgramsOwnWordsPass() {
        RandomPieces pieces = new RandomPieces(77);
        int many = Seeds.of(200);
        int read = 0;
        for (int i = 0; i < many; i++) {
            Plan plan = Plan.of(pieces.next());
            List<Step> steps = StepSheet.of(plan, Locale.UK).chapters().stream()
                    .filter(chapter -> chapter.kind() == Chapter.Kind.START)
                    .flatMap(chapter -> chapter.steps().stream())
                    .toList();
            for (Step step : steps) {
                var block = step.picture()
                        .flatMap(picture -> plan.start().block(picture.blockId()))
                        .filter(each -> each.work().isPresent())
                        .filter(each -> each.block().tag().words().isBlank());
                if (block.isPresent()) {
                    read++;
                    assertThat(new WordingCheck(plan, Locale.UK)
                                    .remarks(
                                            Place.START, block.get().block().id(), String.join("\n", step.sentences())))
                            .as(String.join(" ", step.sentences()))
                            .isEmpty();
                }
            }
        }
        assertThat(read).as("more than one block of each piece").isGreaterThan(many);
    }
}
