package thrumwright.editor.edit;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import thrumwright.block.Block;
import thrumwright.editor.text.Texts;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;
import thrumwright.piece.Ticks;
import thrumwright.plan.Plan;
import thrumwright.sheet.AtLoom;
import thrumwright.sheet.LoomSheet;
import thrumwright.sheet.StepSheet;
import thrumwright.store.PieceFile;
import thrumwright.store.Unknown;
import thrumwright.testing.Pieces;

class TickEditsTest {
    private static final LocalDateTime NOON = LocalDateTime.of(2026, 11, 28, 12, 0);

    private final Texts texts = Texts.of(Locale.UK);
    private final TickEdits ticks = new TickEdits(texts.phrases());
    private final Edits edits = new Edits(texts.phrases(), texts.words());
    private final Session session = new Session(new PieceFile(Pieces.panel(), Unknown.none()), Optional.empty());

    private LoomSheet sheet() {
        return LoomSheet.of(session.plan(), Locale.UK);
    }

    private Optional<AtLoom> now() {
        return sheet().now(session.piece().ticks());
    }

    private void weave(int rows) {
        for (int i = 0; i < rows; i++) {
            session.edit(ticks.done(sheet(), now().orElseThrow(), NOON.plusMinutes(i)));
        }
    }

    private int count(String key) {
        return LoomSheet.rows(session.plan(), key);
    }

    @Test
    void rowByRowToTheEndAndBackAgainAndUndone() {
        Piece first = session.piece();
        int all = sheet().steps().stream().mapToInt(step -> step.count()).sum();
        weave(all);
        assertThat(now()).isEmpty();
        assertThat(session.history().names())
                .hasSize(all)
                .contains("tick row 1 of 3, Ordering cord", "tick Cut the piece from the loom");
        for (int i = 0; i < all; i++) {
            session.edit(
                    ticks.back(sheet(), sheet().last(session.piece().ticks()).orElseThrow()));
        }
        assertThat(session.piece()).isEqualTo(first);
        session.jump(all);
        assertThat(now()).isEmpty();
        session.undo();
        assertThat(now()).contains(new AtLoom(sheet().steps().size() - 1, 0));
    }

    @Test
    void nothingIsPlannedByTicks() {
        StepSheet before = StepSheet.of(session.plan(), Locale.UK);
        List<Block> top = session.piece().end(Place.TOP).blocks();
        weave(20);
        assertThat(StepSheet.of(Plan.of(session.piece()), Locale.UK)).isEqualTo(before);
        assertThat(session.piece().end(Place.TOP).blocks()).isEqualTo(top);
    }

    @Test
    void aBlockOfFewerRowsKeepsTheTicksThatStillHaveOneAndADeletedOneNone() {
        weave(9);
        String key = sheet().step(now().orElseThrow()).step().key();
        String id = key.substring("start/".length());
        int done = session.piece().ticks().done(key);
        assertThat(done).isGreaterThan(3).isLessThan(count(key));
        Block band = session.piece().block(Place.START, id).orElseThrow();
        session.edit(edits.amount(Place.START, band.woven().orElseThrow().withRows(3)));
        assertThat(session.piece().ticks().done(key)).isEqualTo(3);
        session.undo();
        assertThat(session.piece().ticks().done(key)).isEqualTo(done);
        session.edit(edits.delete(session.piece(), Selection.of(Place.START, id)));
        assertThat(session.piece().ticks().done(key)).isZero();
        assertThat(session.piece().ticks().steps()).isNotEmpty();
    }

    /** Typing 12 over 6 passes through 1. */
    @Test
    void aNumberHalfTypedLosesNoTicks() {
        weave(9);
        String key = sheet().step(now().orElseThrow()).step().key();
        Block band = session.piece()
                .block(Place.START, key.substring("start/".length()))
                .orElseThrow();
        Ticks before = session.piece().ticks();
        Object typing = new Object();
        session.edit(edits.amount(Place.START, band.woven().orElseThrow().withRows(1)), typing);
        assertThat(session.piece().ticks().done(key)).isEqualTo(1);
        session.edit(edits.amount(Place.START, band.woven().orElseThrow().withRows(12)), typing);
        assertThat(session.piece().ticks()).isEqualTo(before);
    }
}
