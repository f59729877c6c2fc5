package thrumwright.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import thrumwright.block.Amount;
import thrumwright.block.HalfHitch;
import thrumwright.block.Hemstitching;
import thrumwright.block.Lean;
import thrumwright.block.MaterialRole;
import thrumwright.block.OrderingCord;
import thrumwright.block.PlainBand;
import thrumwright.block.Soumak;
import thrumwright.block.SpreadHeader;
import thrumwright.block.Tag;
import thrumwright.block.Twining;
import thrumwright.block.Use;
import thrumwright.block.YarnBlock;
import thrumwright.measure.Length;
import thrumwright.piece.End;
import thrumwright.piece.Piece;
import thrumwright.sheet.Step;
import thrumwright.sheet.StepSheet;
import thrumwright.testing.Pieces;

/**
 * Two ends of a yarn hold each other by lying side by side in a shed that is beaten shut. What is tied, or worked without a
 * shed, can't be joined so and is cut in one length however long (common practice, no source).
 */
class CordInOneLengthTest {
    private static final Tag TAG = Tag.of("long");
    private static final Use CORD = Use.of(MaterialRole.WARP_CORD);

    static Stream<YarnBlock> withoutAShed() {
        return Stream.of(
                new OrderingCord(TAG, CORD, 7, Optional.empty()),
                new Twining(TAG, CORD, 3, 1, Lean.Z, true),
                new Soumak(TAG, CORD, 3, 4, 2, Lean.Z, true),
                new HalfHitch(TAG, CORD, 3, 1),
                new Hemstitching(TAG, CORD, 2, 3, Hemstitching.Round.FIRST));
    }

    static Stream<YarnBlock> inSheds() {
        return Stream.of(
                new PlainBand(TAG, CORD, PlainBand.Purpose.STIFF, new Amount.Picks(12), Optional.empty()),
                new SpreadHeader(TAG, CORD, 6, 2, Optional.empty()));
    }

    /** Two metres wide, so that every one of them is longer than a handful. */
    private static Piece wide(YarnBlock block) {
        Piece panel = Pieces.panel();
        return panel.withWarp(panel.warp().withWidth(Length.parse("2 m"))).withStart(new End(List.of(block)));
    }

    private static Work work(YarnBlock block) {
        return Plan.of(wide(block)).start().block("long").orElseThrow().work().orElseThrow();
    }

    private static Step step(YarnBlock block) {
        return StepSheet.of(Plan.of(wide(block)), Locale.UK).steps().stream()
                .filter(each -> each.picture()
                        .filter(shown -> shown.blockId().equals("long"))
                        .isPresent())
                .findFirst()
                .orElseThrow();
    }

    @ParameterizedTest
    @MethodSource("withoutAShed")
    void whatLiesInNoShedIsCutInOneLength(YarnBlock block) {
        Cut cut = work(block).cut();

        assertThat(cut.length()).isGreaterThan(4000);
        assertThat(cut.butterflies()).isEqualTo(new Butterflies(1, cut.length()));
        assertThat(step(block).take()).doesNotContain("butterflies");
        assertThat(step(block).sentences())
                .noneMatch(sentence -> sentence.contains("overlap by"))
                .filteredOn(sentence -> sentence.contains("one length"))
                .hasSize(1);
    }

    @ParameterizedTest
    @MethodSource("inSheds")
    void whatLiesInAShedIsShared(YarnBlock block) {
        Cut cut = work(block).cut();

        assertThat(cut.butterflies().count()).isGreaterThan(block.together());
        assertThat(step(block).sentences())
                .noneMatch(sentence -> sentence.contains("one length"))
                .anyMatch(sentence -> sentence.contains("overlap by"));
    }

    /** A short one needs no words for it. */
    @Test
    void aShortCordIsNotSpokenOf() {
        YarnBlock cord = new Twining(TAG, CORD, 1, 1, Lean.Z, false);
        Plan plan = Plan.of(Pieces.panel().withStart(new End(List.of(cord))));

        assertThat(StepSheet.of(plan, Locale.UK).steps())
                .flatExtracting(Step::sentences)
                .noneMatch(sentence -> sentence.toString().contains("in one length, and"));
    }
}
