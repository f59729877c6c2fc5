package thrumwright.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import thrumwright.piece.Ticks;
import thrumwright.plan.Plan;
import thrumwright.testing.Pieces;
import thrumwright.testing.RandomPieces;
import thrumwright.testing.Seeds;

class LoomSheetTest {
    private static final LocalDateTime NOON = LocalDateTime.of(2026, 11, 28, 12, 0);

    @Test
    void everyStepHasAKeyOfItsOwnAndAsManyTicksAsRows() {
        RandomPieces pieces = new RandomPieces(77);
        for (int i = 0; i < Seeds.of(300); i++) {
            LoomSheet sheet = LoomSheet.of(Plan.of(pieces.next()), Locale.UK);
            List<String> keys =
                    sheet.steps().stream().map(step -> step.step().key()).toList();
            assertThat(keys).doesNotHaveDuplicates();
            for (LoomStep step : sheet.steps()) {
                assertThat(LoomSheet.rows(sheet.plan(), step.step().key()))
                        .as(step.step().key())
                        .isEqualTo(step.count());
                int told = step.step().rows().stream().mapToInt(RowLine::count).sum();
                assertThat(step.rows()).hasSize(told);
            }
        }
    }

    @Test
    void rowAfterRowComesToTheEndThroughEveryStep() {
        LoomSheet sheet = LoomSheet.of(Plan.of(Pieces.panel()), Locale.UK);
        Ticks ticks = Ticks.NONE;
        List<AtLoom> passed = new ArrayList<>();
        for (Optional<AtLoom> now = sheet.now(ticks); now.isPresent(); now = sheet.now(ticks)) {
            assertThat(sheet.last(ticks)).isEqualTo(passed.isEmpty() ? Optional.empty() : Optional.of(last(passed)));
            passed.add(now.get());
            ticks = ticks.with(sheet.step(now.get()).step().key(), NOON);
        }
        assertThat(passed)
                .hasSize(sheet.steps().stream().mapToInt(LoomStep::count).sum());
        assertThat(sheet.steps().get(0).rows())
                .extracting(row -> row.counted() + ", " + row.line().arrow() + " "
                        + row.line().text())
                .containsExactly(
                        "pick 1 of 3, → over the left edge end",
                        "pick 2 of 3, ← over the right edge end",
                        "pick 3 of 3, → over the left edge end");
    }

    private static AtLoom last(List<AtLoom> all) {
        return all.get(all.size() - 1);
    }
}
