package thrumwright.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import thrumwright.block.Block;
import thrumwright.block.OwnWords;
import thrumwright.block.Tag;
import thrumwright.measure.BadMeasure;
import thrumwright.measure.UnitSystem;
import thrumwright.piece.End;
import thrumwright.piece.Habits;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;
import thrumwright.plan.BlockPlan;
import thrumwright.plan.EndPlan;
import thrumwright.plan.Plan;
import thrumwright.store.Structures;
import thrumwright.testing.Pieces;
import thrumwright.testing.RandomPieces;
import thrumwright.testing.Seeds;

class OwnWordingTest {
    private static Piece with(String id, String words) {
        Piece piece = Pieces.panel();
        Block block = piece.start().block(id).orElseThrow();
        return piece.withStart(piece.start().replaced(block.withTag(block.tag().withWords(words))));
    }

    private static Step step(Piece piece, Chapter.Kind kind, String title) {
        return StepSheet.of(Plan.of(piece), Locale.UK).chapters().stream()
                .filter(chapter -> chapter.kind() == kind)
                .flatMap(chapter -> chapter.steps().stream())
                .filter(step -> step.title().equals(title))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void standsOnTheSheetInPlaceOfTheProgramsOwn() {
        Piece piece = with("stiff", "Take {yarn}, {cut} of it.\n\nBeat {picks} {picks|pick|picks} from the {side}.");
        Step start = step(piece, Chapter.Kind.START, "Stiff band");
        assertThat(start.sentences()).containsExactly("Take Cotton cord, 195 cm of it.", "Beat 6 picks from the left.");
        assertThat(start.rows()).hasSize(6);
        assertThat(start.take()).isNotEmpty();
    }

    /** The top follows the start, so the words do too; what is filled in is the top's own. */
    @Test
    void isFilledInAnewAtTheTop() {
        Piece piece = with("facing", "{place}: up to {reach}.");
        assertThat(step(piece, Chapter.Kind.START, "Facing").sentences()).containsExactly("the start: up to 6.7 cm.");
        assertThat(step(piece, Chapter.Kind.TOP, "Facing").sentences().get(0)).startsWith("the top: up to 37");
    }

    @Test
    void aFoldMayHaveWordsToo() {
        assertThat(step(with("fold", "Fold here: {depth}, {layers} layers."), Chapter.Kind.START, "Hem fold")
                        .sentences())
                .containsExactly("Fold here: 1.4 cm, 2 layers.");
    }

    @Test
    void aPlaceThatIsntThereIsRefusedWithThoseThatAre() {
        assertThatThrownBy(() -> with("soumak", "Weave {pick} rows."))
                .isInstanceOf(BadMeasure.class)
                .hasMessage("There is nothing to put in the place {pick} of this block; it knows {block}, {place}, "
                        + "{height}, {reach}, {yarn}, {cut}, {widths}, {pieces}, {rows}, {picks}, {side}, {otherSide}, "
                        + "{endSide}, {tail}, {lean}, {over}, {under}.");
        assertThatThrownBy(() -> with("fold", "Fold {depth deep"))
                .hasMessageStartingWith("“{depth deep” is no place; write one like {layers}.");
        assertThatThrownBy(() -> with("fold", "x".repeat(1001))).hasMessageContaining("at most 1000 characters");
    }

    /** Whatever the plan, every place that a block says it knows can be filled. */
    @Test
    void everyPlaceCanBeFilled() {
        RandomPieces pieces = new RandomPieces(5);
        int filled = 0;
        for (int i = 0; i < Seeds.of(200); i++) {
            Plan plan = Plan.of(pieces.next());
            OwnWording wording = new OwnWording(plan, Locale.UK);
            for (EndPlan end : List.of(plan.start(), plan.top())) {
                for (BlockPlan block : end.blocks()) {
                    String all = OwnWords.places(block.block()).stream()
                            .map(place -> "{" + place + "}")
                            .collect(Collectors.joining("|"));
                    assertThat(wording.fill(all, end, block)).hasSize(1).noneMatch(line -> line.contains("{"));
                    filled++;
                }
            }
        }
        assertThat(filled).isGreaterThan(Seeds.of(1000));
    }

    /** In centimetres and in inches, at the start and at the top, each place says what the plan has. */
    @Test
    void placesSpeakTheWeaversUnits() {
        String words = "{picks} of {yarn}: {cut}, {widths} widths; {height} high, up to {reach}, from the {side} to the"
                + " {endSide}, {shed}, tail {tail}.";
        Piece metric = with("facing", words);
        Piece inches = metric.withHabits(Habits.usual(UnitSystem.INCHES));
        assertThat(step(metric, Chapter.Kind.START, "Facing").sentences())
                .containsExactly(
                        "6 of Teal wool: 272 cm, 11½ widths; 6 mm high, up to 6.7 cm, from the left to the left, under"
                                + " the left edge end, tail 15 cm.");
        // with the soumak 2349.119 × 1.03 + 2 × 152.4 = 2724.4 mm, 107.26 in; over 100 in without halves
        assertThat(step(inches, Chapter.Kind.START, "Facing").sentences())
                .containsExactly(
                        "6 of Teal wool: 108 in, 11½ widths; ¼ in high, up to 2⅝ in, from the left to the left,"
                                + " under the left edge end, tail 6 in.");
        assertThat(step(inches, Chapter.Kind.TOP, "Facing").sentences().get(0))
                // by itself, since it goes over the edge end: 1644.166 × 1.03 + 2 × 152.4 = 1998.3 mm
                .startsWith("6 of Teal wool: 79 in")
                .contains("up to 14")
                .contains("from the right to the right");
    }

    /** Whoever words a finish anew doesn't lose what must be done first, nor the careful words after it. */
    @Test
    void aFinishInOwnWordsStillTakesTheWasteOutFirst() {
        Piece fringed =
                Structures.builtIn().byId("fringe-in-threes").orElseThrow().on(Pieces.panel(), Place.START);
        Block fringe = fringed.start().block("fringe").orElseThrow();
        Piece piece = fringed.withStart(fringed.start()
                .replaced(fringe.withTag(fringe.tag().withWords("Knot {groups} groups ({sizes}); leave {hanging}."))));
        Step step = step(piece, Chapter.Kind.OFF_LOOM, "Knotted fringe at the start");
        assertThat(step.sentences()).hasSize(2);
        assertThat(step.sentences().get(0)).startsWith("Take out: ").contains("Take the waste out");
        assertThat(step.sentences().get(1)).startsWith("Knot 24 groups (3 ends each); leave ");
        assertThat(step.cautions()).hasSize(1);
    }

    /** What each kind of finish knows, by hand on the panel: 72 ends in groups of 4 or 6; twelve turns of 1 mm. */
    @Test
    void finishesKnowTheirPlaces() {
        assertThat(told("knot-lattice", "lattice", "{groups} × {group}, {rows} rows {apart} apart, {free} free"))
                .isEqualTo("18 × 4, 3 rows 2 cm apart, 20.2 cm free");
        assertThat(told("turned-edge", "turned", "over {over} from the {side}, back from the {otherSide}"))
                .isEqualTo("over 1 from the left, back from the right");
        assertThat(told("wrapped-tassels", "tassels", "{pieces} of {yarn}, {cut}: {turns} turns, {wrapped} high"))
                .isEqualTo("12 of Teal wool, 46 cm: 12 turns, 1.2 cm high");
        assertThat(told("folded-hem", "fold", "{depth}, {layers}")).isEqualTo("1.5 cm, 2");
    }

    private static String told(String structure, String block, String words) {
        Piece piece = Structures.builtIn().byId(structure).orElseThrow().on(Pieces.panel(), Place.START);
        return new OwnWording(Plan.of(piece), Locale.UK)
                .preview(Place.START, block, words)
                .get(0);
    }

    @Test
    void whatIsOfferedIsWhatIsKnown() {
        OwnWording wording = new OwnWording(Plan.of(Pieces.panel()), Locale.UK);
        Map<String, String> offered = wording.offered(Place.START, "facing");
        assertThat(offered.keySet())
                .containsExactlyElementsOf(
                        OwnWords.places(Pieces.panel().start().block("facing").orElseThrow()));
        assertThat(offered)
                .containsEntry("picks", "6")
                .containsEntry("side", "left")
                .containsEntry("cut", "272 cm");
        assertThat(wording.offered(Place.START, "nowhere")).isEmpty();
    }

    @Test
    void aCopyKeepsItsWords() {
        Tag tag = new Tag("stiff", "Ours", "Weave.").withId("stiff-2");
        assertThat(tag).isEqualTo(new Tag("stiff-2", "Ours", "Weave."));
        End mirrored = with("stiff", "Weave.").start().mirrored();
        assertThat(mirrored.block("stiff").orElseThrow().tag().words()).isEqualTo("Weave.");
        assertThat(new OwnWording(Plan.of(Pieces.panel()), Locale.UK).preview(Place.START, "stiff", "{rows}"))
                .containsExactly("6");
    }
}
