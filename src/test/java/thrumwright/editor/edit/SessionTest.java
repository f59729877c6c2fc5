package thrumwright.editor.edit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import org.junit.jupiter.api.Test;
import thrumwright.block.Amount;
import thrumwright.block.Block;
import thrumwright.block.OrderingCord;
import thrumwright.block.PlainBand;
import thrumwright.editor.text.Texts;
import thrumwright.measure.UnitSystem;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;
import thrumwright.piece.Top;
import thrumwright.store.PieceFile;
import thrumwright.store.Unknown;
import thrumwright.testing.Pieces;

class SessionTest {
    private static final int ACTIONS = 20_000;

    private final Texts texts = Texts.of(Locale.UK);
    private final Edits edits = new Edits(texts.phrases(), texts.words());
    private final Session session = new Session(new PieceFile(Pieces.panel(), Unknown.none()), Optional.empty());

    @Test
    void twentyThousandActionsCanBeUndoneToTheFirstPieceAndRedoneToTheLast() {
        RandomGenerator random = RandomGeneratorFactory.of("L64X128MixRandom").create(20_261_125);
        Piece first = session.piece();
        int refused = 0;
        for (int i = 0; i < ACTIONS; i++) {
            try {
                act(random);
            } catch (IllegalArgumentException e) {
                assertThat(e.getMessage()).isNotBlank();
                refused++;
            }
        }
        assertThat(refused).as("refused edits").isLessThan(ACTIONS / 4);
        while (session.history().redoName().isPresent()) {
            session.redo();
        }
        Piece last = session.piece();
        Selection lastSelection = session.selection();
        int steps = session.history().names().size();
        assertThat(steps).isGreaterThan(100);

        while (session.history().undoName().isPresent()) {
            session.undo();
        }
        assertThat(session.piece()).isEqualTo(first);
        assertThat(session.dirty()).isFalse();

        while (session.history().redoName().isPresent()) {
            session.redo();
            assertThat(session.selection().within(session.piece())).isEqualTo(session.selection());
        }
        assertThat(session.piece()).isEqualTo(last);
        assertThat(session.history().done()).isEqualTo(steps);
        assertThat(session.selection().place()).isIn(lastSelection.place(), Place.START, Place.TOP);

        session.jump(steps / 2);
        assertThat(session.history().done()).isEqualTo(steps / 2);
        session.jump(0);
        assertThat(session.piece()).isEqualTo(first);
    }

    private void act(RandomGenerator random) {
        Piece piece = session.piece();
        switch (random.nextInt(13)) {
            case 0, 1 -> select(random);
            case 2 -> {
                Place place = random.nextBoolean() ? Place.START : Place.TOP;
                int size = piece.end(place).blocks().size();
                List<Block> kinds = NewBlocks.all(random.nextBoolean() ? UnitSystem.METRIC : UnitSystem.INCHES);
                if (size < 30) {
                    session.edit(edits.add(
                            piece, new Slot(place, random.nextInt(size + 1)), kinds.get(random.nextInt(kinds.size()))));
                }
            }
            case 3 -> session.edit(edits.delete(piece, session.selection()));
            case 4 -> session.edit(edits.move(piece, session.selection(), random.nextBoolean() ? 1 : -1));
            case 5 ->
                session.edit(edits.moveTo(
                        piece, session.selection(), new Slot(session.selection().place(), random.nextInt(8))));
            case 6 -> amount(random, null);
            case 7 -> session.edit(random.nextInt(3) == 0 ? edits.topOnItsOwn() : edits.topFollows(session.piece()));
            case 8 -> session.edit(Edit.of("title", old -> old.withTitle("T" + random.nextInt(5))));
            case 9 -> session.undo();
            case 10 -> session.redo();
            case 11 -> {
                Object run = new Object();
                amount(random, run);
                amount(random, run);
                if (random.nextBoolean()) {
                    session.dropRun(run);
                }
                session.endRun();
            }
            default -> {
                session.preview(edits.delete(piece, session.selection()));
                session.endPreview();
                assertThat(session.shown()).isSameAs(session.piece());
            }
        }
    }

    private void select(RandomGenerator random) {
        Place place = random.nextBoolean() ? Place.START : Place.TOP;
        List<String> ids = new ArrayList<>(
                session.piece().end(place).blocks().stream().map(Block::id).toList());
        ids.removeIf(id -> random.nextInt(3) > 0);
        session.select(new Selection(place, ids));
    }

    private void amount(RandomGenerator random, Object run) {
        Selection selection = session.selection();
        Optional<Block> lead = selection.leadIn(session.piece());
        if (lead.isPresent() && Amounts.has(lead.get())) {
            String[] typed = {"7", "3 rows", "12 mm", "1/2 in", "0", "a few"};
            Block changed =
                    Amounts.with(lead.get(), typed[random.nextInt(typed.length)], session.piece(), selection.place());
            session.edit(edits.amount(selection.place(), changed), run);
        }
    }

    @Test
    void undoBringsBackTheSelectionFromBeforeAndRedoTheOneFromAfter() {
        session.select(Selection.of(Place.START, "facing"));

        session.edit(edits.delete(session.piece(), session.selection()));
        assertThat(session.selection()).isEqualTo(Selection.of(Place.START, "soumak"));

        session.select(Selection.of(Place.START, "waste"));
        session.undo();
        assertThat(session.selection()).isEqualTo(Selection.of(Place.START, "facing"));
        session.redo();
        assertThat(session.selection()).isEqualTo(Selection.of(Place.START, "soumak"));
    }

    @Test
    void lettersOfOneRunAreOneStepAndTakenBackTogether() {
        Object run = new Object();
        session.edit(title("M"), run);
        session.edit(title("Ma"), run);
        session.edit(title("Marsh"), run);

        assertThat(session.history().names()).containsExactly("title");
        session.undo();
        assertThat(session.piece().title()).isEqualTo("Worked panel");

        session.redo();
        session.endRun();
        session.edit(title("Marsh 2"), run);
        assertThat(session.history().names()).hasSize(2);
        session.dropRun(run);
        assertThat(session.piece().title()).isEqualTo("Marsh");
        assertThat(session.history().redoName()).isEmpty();
    }

    @Test
    void aRunThatEndsWhereItBeganLeavesNoStep() {
        Object run = new Object();
        session.edit(title("M"), run);
        session.edit(title("Worked panel"), run);

        assertThat(session.history().names()).isEmpty();
    }

    private static Edit title(String title) {
        return Edit.of("title", piece -> piece.withTitle(title));
    }

    @Test
    void dirtyMeansDifferentFromWhatWasSavedAndNotTheNumberOfSteps() {
        session.edit(title("One"));
        session.saved(Path.of("one.json"));
        assertThat(session.dirty()).isFalse();

        session.undo();
        assertThat(session.dirty()).isTrue();
        session.edit(title("One"));
        assertThat(session.dirty()).isFalse();
    }

    @Test
    void aRefusedEditChangesNothing() {
        Piece before = session.piece();
        List<Change> told = new ArrayList<>();
        session.listen(told::add);

        assertThatThrownBy(() -> session.edit(Edit.of("wrong", piece -> {
                    throw new IllegalArgumentException("no");
                })))
                .hasMessage("no");
        assertThat(session.piece()).isSameAs(before);
        assertThat(session.history().names()).isEmpty();
        assertThat(told).isEmpty();
    }

    @Test
    void aPreviewShowsWithoutChangingAnything() {
        Block more =
                Amounts.with(session.piece().start().block("facing").orElseThrow(), "9", session.piece(), Place.START);

        session.preview(edits.amount(Place.START, more));
        assertThat(session.shown().start().block("facing")).contains(more);
        assertThat(session.plan().start().block("facing").orElseThrow().height())
                .isEqualTo(9.0);
        assertThat(session.dirty()).isFalse();
        assertThat(session.isTrying()).isTrue();

        session.endPreview();
        assertThat(session.isTrying()).isFalse();
        assertThat(session.plan().start().block("facing").orElseThrow().height())
                .isEqualTo(6.0);
    }

    @Test
    void anAmountIsToldFromWhatToWhat() {
        PlainBand facing = (PlainBand) session.piece().start().block("facing").orElseThrow();
        session.edit(edits.amount(Place.START, facing, facing.withAmount(new Amount.Picks(9))));
        assertThat(session.history().undoName()).contains("Facing from 6 picks to 9 picks");
    }

    @Test
    void aFollowingTopRefusesToBeEditedButTakesBlocksOut() {
        session.select(Selection.of(Place.TOP, "facing"));
        Block facing = session.piece().block(Place.TOP, "facing").orElseThrow();

        assertThatThrownBy(() ->
                        session.edit(edits.amount(Place.TOP, ((PlainBand) facing).withAmount(new Amount.Picks(9)))))
                .hasMessageContaining("follows the start");
        session.edit(edits.delete(session.piece(), session.selection()));

        assertThat(session.piece().topFollows()).isTrue();
        assertThat(session.piece().block(Place.TOP, "facing")).isEmpty();
        assertThat(session.piece().block(Place.START, "facing")).isPresent();
    }

    @Test
    void aTopOnItsOwnKeepsItsBlocksAndFollowsAgainInFull() {
        List<String> before = ids(Place.TOP);

        session.edit(edits.topOnItsOwn());
        assertThat(ids(Place.TOP)).isEqualTo(before);
        session.edit(edits.delete(session.piece(), Selection.of(Place.TOP, "stiff")));
        session.edit(edits.topFollows(session.piece()));

        assertThat(session.piece().top()).isEqualTo(new Top.FollowsStart(Set.of("ordering")));
        assertThat(session.history().undoName()).contains("let the top follow the start, with Stiff band again");
    }

    private List<String> ids(Place place) {
        return session.piece().end(place).blocks().stream().map(Block::id).toList();
    }

    @Test
    void aNewOrderingCordIsNotRepeatedAtTheTop() {
        session.edit(edits.add(
                session.piece(), new Slot(Place.START, 0), NewBlocks.ofKind("ordering-cord", UnitSystem.METRIC)));

        String id = session.selection().lead().orElseThrow();
        assertThat(id).isEqualTo("ordering-2");
        assertThat(session.piece().start().block(id).orElseThrow()).isInstanceOf(OrderingCord.class);
        assertThat(session.piece().block(Place.TOP, id)).isEmpty();
    }

    @Test
    void blocksMoveAsOneAndStopAtTheEnd() {
        Selection both = new Selection(Place.START, List.of("facing", "soumak"));
        session.edit(edits.move(session.piece(), both, 1));
        assertThat(ids(Place.START))
                .containsExactly("ordering", "waste", "twining", "stiff", "fold", "facing", "soumak");

        session.edit(edits.move(session.piece(), both, 1));
        assertThat(ids(Place.START)).endsWith("fold", "facing", "soumak");
        session.edit(edits.moveTo(session.piece(), both, new Slot(Place.START, 0)));
        assertThat(ids(Place.START)).startsWith("facing", "soumak", "ordering");
    }
}
