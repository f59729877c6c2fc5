package thrumwright.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import thrumwright.block.Posts;
import thrumwright.block.Setting;
import thrumwright.measure.Length;
import thrumwright.piece.Habits;
import thrumwright.piece.Piece;
import thrumwright.plan.finding.Finding;
import thrumwright.plan.finding.Finding.Code;
import thrumwright.plan.finding.Findings;
import thrumwright.testing.Pieces;
import thrumwright.yarn.Sample;
import thrumwright.yarn.Usage;
import thrumwright.yarn.Yarn;

/** What the weaver measured on the piece counts in place of what is worked out. */
class MeasuredTest {
    private final Piece panel = Pieces.panel();

    private Piece woven(String width) {
        return panel.withWarp(panel.warp().withWoven(Optional.of(Length.parse(width))));
    }

    private Piece weft(Yarn weft) {
        return panel.withYarns(panel.yarns().stream()
                .map(yarn -> yarn.id().equals("weft") ? weft : yarn)
                .toList());
    }

    private static double exact(Piece piece, String block) {
        return Plan.of(piece)
                .start()
                .block(block)
                .orElseThrow()
                .work()
                .orElseThrow()
                .cut()
                .exact();
    }

    /** Worked by hand in docs/method.md. */
    @Test
    void everythingWovenStandsAtTheDrawnInSpacing() {
        Piece drawn = woven("228 mm");
        assertThat(drawn.warp().drawIn()).isCloseTo(0.05, within(1e-12));
        Setting setting = drawn.setting(drawn.yarn("weft"));
        assertThat(setting.spacing()).isCloseTo(3.166667, within(1e-6));
        assertThat(setting.space()).isCloseTo(3.685371, within(1e-6));
        assertThat(exact(drawn, "facing")).isCloseTo(1584.862, within(1e-3));
        assertThat(exact(panel, "facing")).isCloseTo(1644.166, within(1e-3));
    }

    /** The slope of a pick's length over the spacing is cos θ: a check from calculus, not from the closed form. */
    @Test
    void aPickSavesTheCosineOfWhatTheClothDrawsIn() {
        Setting before = panel.setting(panel.yarn("weft"));
        Setting after = woven("239.9 mm").setting(panel.yarn("weft"));
        double slope = (before.space() - after.space()) / (before.spacing() - after.spacing());
        assertThat(slope).isCloseTo(Math.cos(before.wrapAngle()), within(1e-3));
    }

    @Test
    void thePostsStayWhereTheyAre() {
        Setting before = panel.setting(panel.yarn("cord"));
        Setting after = woven("228 mm").setting(panel.yarn("cord"));
        Posts near = before.posts().orElseThrow();
        Posts far = after.posts().orElseThrow();
        assertThat(far.gap() - near.gap()).isCloseTo(71 * (10 / 3.0 - 3.1666666667) / 2, within(1e-8));
        assertThat(after.span() + 2 * far.gap()).isCloseTo(before.span() + 2 * near.gap(), within(1e-9));
        double more = exact(woven("228 mm"), "ordering") - exact(panel, "ordering");
        assertThat(more).isBetween(0.0, 3 * 71 * (10 / 3.0 - 3.1666666667) * (1 - Math.cos(after.wrapAngle())));
    }

    @Test
    void thePieceHangsAsWideAsItsCloth() {
        Plan plan = Plan.of(woven("228 mm"));
        assertThat(plan.finishedWidth()).isCloseTo(228, within(1e-9));
        assertThat(Plan.of(panel).finishedWidth()).isCloseTo(240, within(1e-9));
        assertThat(plan.piece().reference()).isCloseTo(240, within(1e-9));
        Habits usual = panel.habits();
        Habits loom = new Habits(
                usual.units(),
                Habits.WidthsOf.LOOM,
                usual.step(),
                usual.tail(),
                usual.tie(),
                usual.ease(),
                usual.handful(),
                usual.overlap());
        assertThat(woven("228 mm").withHabits(loom).reference())
                .isCloseTo(panel.withHabits(loom).reference(), within(1e-9));
    }

    @Test
    void muchDrawInIsACautionAndNonsenseIsNotBelieved() {
        assertThat(Findings.of(Plan.of(woven("228 mm"))).all())
                .extracting(Finding::code)
                .doesNotContain(Code.DRAWS_IN);
        assertThat(Findings.of(Plan.of(woven("21 cm"))).all())
                .extracting(Finding::code)
                .contains(Code.DRAWS_IN);
        Plan odd = Plan.of(woven("11 cm"));
        assertThat(Findings.of(odd).all()).extracting(Finding::code).contains(Code.WOVEN_WIDTH_UNLIKELY);
        assertThat(odd.finishedWidth()).isCloseTo(240, within(1e-9));
        assertThat(Findings.of(Plan.of(woven("29 cm"))).all())
                .extracting(Finding::code)
                .contains(Code.WOVEN_WIDTH_UNLIKELY);
        assertThat(woven("25 cm").warp().drawIn()).isNegative();
    }

    /** Ten picks take 10·71·3.824581 + 9·2.978850 = 2742.262; 2.87 m used are 4.658 % more. */
    @Test
    void yarnUsedGivesTheEase() {
        Yarn weft = panel.yarn("weft").withUsage(Optional.of(new Usage(10, Length.parse("2.87 m"))));
        Piece piece = weft(weft);
        assertThat(piece.ease(weft)).isCloseTo(2870 / 2742.262 - 1, within(1e-6));
        Cut cut = Plan.of(piece)
                .start()
                .block("facing")
                .orElseThrow()
                .work()
                .orElseThrow()
                .cut();
        assertThat(cut.ease()).isCloseTo(cut.exact() * 0.046581, within(1e-2));
        assertThat(piece.ease(piece.yarn("cord"))).isEqualTo(0.03);
    }

    /** Cord of 0.79 mm in picks of 10 mm, or wool of 2 mm in picks of a tenth of one: somebody misread the rule. */
    @Test
    void aSampleThatCantBeIsRefusedInASentence() {
        assertThatThrownBy(() -> panel.yarn("cord").withSample(Optional.of(new Sample(20, Length.parse("20 cm")))))
                .hasMessage("“20 picks in 20 cm” can't be of a yarn so thin: look at both measures again.");
        assertThatThrownBy(() -> panel.yarn("weft").withSample(Optional.of(new Sample(100, Length.parse("1 cm")))))
                .hasMessage("“100 picks in 1 cm” can't be of a yarn so thick: look at both measures again.");
        assertThatThrownBy(() -> new Sample(20, Length.parse("5 m")))
                .hasMessageContaining("“20 in 5 m” would make each more than 10 cm");
        assertThat(panel.yarn("weft")
                        .withSample(Optional.of(new Sample(20, Length.parse("24 mm"))))
                        .beaten())
                .isCloseTo(1.2, within(1e-12));
    }

    @Test
    void aSampleOfPicksChangesWhatTheYarnUsedComesTo() {
        Yarn weft = panel.yarn("weft")
                .withSample(Optional.of(new Sample(20, Length.parse("24 mm"))))
                .withUsage(Optional.of(new Usage(10, Length.parse("2.9 m"))));
        Piece piece = weft(weft);
        double thicker = piece.setting(weft).plain(10);
        assertThat(thicker).isGreaterThan(2742.262);
        assertThat(piece.ease(weft)).isCloseTo(2900 / thicker - 1, within(1e-12));
    }

    @Test
    void yarnUsedThatCantBeIsToldAndLeftAside() {
        for (String used : new String[] {"1.9 m", "6 m"}) {
            Yarn weft = panel.yarn("weft").withUsage(Optional.of(new Usage(10, Length.parse(used))));
            Plan plan = Plan.of(weft(weft));
            assertThat(Findings.of(plan).all()).extracting(Finding::code).contains(Code.YARN_USED_UNLIKELY);
            assertThat(plan.piece().ease(weft)).isEqualTo(0.03);
        }
    }
}
