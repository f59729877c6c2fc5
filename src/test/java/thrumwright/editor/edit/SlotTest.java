package thrumwright.editor.edit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.junit.jupiter.api.Test;
import thrumwright.block.Block;
import thrumwright.block.EdgeFinish;
import thrumwright.block.Tag;
import thrumwright.editor.text.Texts;
import thrumwright.measure.UnitSystem;
import thrumwright.piece.End;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;
import thrumwright.piece.Top;
import thrumwright.testing.Pieces;
import thrumwright.testing.RandomPieces;
import thrumwright.testing.Seeds;

class SlotTest {
    private final Texts texts = Texts.of(Locale.UK);
    private final Edits edits = new Edits(texts.phrases(), texts.words());
    private final Block twining = NewBlocks.ofKind("twining", UnitSystem.METRIC);

    /** Blocks without finishes, which go along with the edge, of the lowest so many. */
    private static List<String> woven(Piece piece, Place place, int lowest) {
        return new ArrayList<>(piece.end(place).blocks().subList(0, lowest).stream()
                .filter(block -> !(block instanceof EdgeFinish))
                .map(Block::id)
                .toList());
    }

    private static List<String> woven(Piece piece, Place place) {
        return woven(piece, place, piece.end(place).blocks().size());
    }

    @Test
    void whereverABlockIsPutInAnEndItStandsThere() {
        RandomPieces pieces = new RandomPieces(17);
        int follow = 0;
        int count = Seeds.of(300, 30);
        for (int i = 0; i < count; i++) {
            Piece piece = pieces.next();
            follow += piece.topFollows() ? 1 : 0;
            for (Place place : Place.values()) {
                for (int below = 0; below <= piece.end(place).blocks().size(); below++) {
                    Edit edit = edits.add(piece, new Slot(place, below), twining);
                    Piece after = edit.change().apply(piece);
                    String id = edit.selects().orElseThrow().lead().orElseThrow();
                    List<String> expected = woven(piece, place);
                    expected.add(woven(piece, place, below).size(), id);
                    assertThat(woven(after, place)).isEqualTo(expected);
                    assertThat(after.topFollows()).isEqualTo(piece.topFollows());
                }
            }
        }
        assertThat(follow).isBetween(count / 6, count * 5 / 6);
    }

    /** What is pasted at a top that follows the start stands there as it was copied, from wherever that was. */
    @Test
    void whatIsPastedAtAFollowingTopStandsThereAsItWasCopied() {
        RandomPieces pieces = new RandomPieces(18);
        int met = 0;
        for (int i = 0; i < Math.max(40, Seeds.of(300)); i++) {
            Piece piece = pieces.next();
            List<Block> copied = piece.start().unforced().blocks().stream()
                    .filter(block -> !(block instanceof EdgeFinish))
                    .limit(3)
                    .toList();
            if (!piece.topFollows() || copied.isEmpty()) {
                continue;
            }
            met++;
            Edit edit = edits.paste(piece, new Slot(Place.TOP, 0), copied, "edit.paste");
            Piece after = edit.change().apply(piece);
            List<String> ids = edit.selects().orElseThrow().ids();
            List<Block> pasted = after.end(Place.TOP).blocks().stream()
                    .filter(block -> ids.contains(block.id()))
                    .map(block -> block.withTag(copied.get(0).tag()))
                    .toList();
            assertThat(pasted)
                    .isEqualTo(copied.stream()
                            .map(block -> block.withTag(copied.get(0).tag()))
                            .toList());
        }
        assertThat(met).isPositive();
    }

    /** The ordering cord is left out of the top, and the top's outermost block stands right above it in the start. */
    @Test
    void whatIsOutermostInTheTopStandsAboveTheOrderingCordInTheStart() {
        Piece panel = Pieces.panel();
        int highest = panel.end(Place.TOP).blocks().size();

        assertThat(new Slot(Place.TOP, highest).own(panel)).isEqualTo(new Slot(Place.START, 1));
        assertThat(new Slot(Place.TOP, 0).own(panel))
                .isEqualTo(new Slot(Place.START, panel.start().blocks().size()));
    }

    @Test
    void aFinishStaysAtTheEdge() {
        Block fringe = NewBlocks.ofKind("finish-knotted", UnitSystem.METRIC);
        Piece panel = Pieces.panel();
        Edit add = edits.add(panel, new Slot(Place.START, 7), fringe);
        Piece fringed = add.change().apply(panel);
        Selection selected = add.selects().orElseThrow();

        assertThat(fringed.start().indexOf(selected.lead().orElseThrow())).isEqualTo(2);
        for (Edit edit :
                List.of(edits.move(fringed, selected, 1), edits.moveTo(fringed, selected, new Slot(Place.START, 5)))) {
            assertThatThrownBy(() -> edit.change().apply(fringed))
                    .hasMessage("Knotted fringe stands at the edge of the cloth: just outside the outermost block that "
                            + "stays. It goes along when that changes.");
        }
        Piece moved = edits.move(fringed, Selection.of(Place.START, "waste"), 1)
                .change()
                .apply(fringed);
        assertThat(moved.start().blocks())
                .extracting(Block::id)
                .startsWith("ordering", "knots", "twining", "waste", "stiff");
    }

    @Test
    void movingAcrossTakesFromOneEndAndPutsIntoTheOther() {
        Piece panel = Pieces.panel();
        Piece parted = panel.withTop(new Top.OnItsOwn(panel.end(Place.TOP)));
        Selection both = new Selection(Place.START, List.of("facing", "stiff"));

        Edit edit = edits.moveTo(parted, both, new Slot(Place.TOP, 1));
        Piece after = edit.change().apply(parted);

        assertThat(edit.name()).isEqualTo("move 2 blocks into the top");
        assertThat(after.start().blocks())
                .extracting(Block::id)
                .containsExactly("ordering", "waste", "twining", "soumak", "fold");
        assertThat(after.end(Place.TOP).blocks())
                .extracting(Block::id)
                .containsExactly("fold", "stiff-2", "facing-2", "soumak", "facing", "stiff", "twining", "waste");
        assertThatThrownBy(() -> edits.moveTo(panel, both, new Slot(Place.TOP, 1))
                        .change()
                        .apply(panel))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageStartingWith("The top follows the start");
    }

    @Test
    void anEndThatIsFullTakesNothingMoreAndSaysSo() {
        List<Block> many = java.util.stream.IntStream.range(0, End.MOST_BLOCKS)
                .mapToObj(i -> twining.withTag(Tag.of("t" + i)))
                .toList();
        Piece full = Pieces.panel().withTop(new Top.FollowsStart(Set.of())).withStart(new End(many));

        for (Edit edit : List.of(
                edits.add(full, new Slot(Place.START, 3), twining),
                edits.paste(full, new Slot(Place.START, 3), List.of(twining, twining), "edit.paste"))) {
            assertThatThrownBy(() -> edit.change().apply(full))
                    .hasMessage("An end has at most 500 blocks; nothing was put in.");
        }
    }

    @Test
    void aSelectionReachesFromWhereItBegan() {
        Piece panel = Pieces.panel();
        Selection stiff = Selection.of(Place.START, "stiff");

        Selection up = stiff.reaching(panel, 1);
        assertThat(up.ids()).containsExactly("stiff", "facing");
        assertThat(up.reaching(panel, -1)).isEqualTo(stiff);
        assertThat(stiff.reaching(panel, -1).ids()).containsExactly("stiff", "twining");
        assertThat(Selection.of(Place.START, "ordering").reaching(panel, -1).ids())
                .containsExactly("ordering");
        assertThat(Selection.none().reaching(panel, 1)).isEqualTo(Selection.none());
    }
}
