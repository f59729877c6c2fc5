package thrumwright.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import thrumwright.block.Block;
import thrumwright.block.OpenWarp;
import thrumwright.measure.Length;
import thrumwright.measure.Refused;
import thrumwright.measure.UnitSystem;
import thrumwright.piece.Beginnings;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;
import thrumwright.piece.Structure;
import thrumwright.plan.BlockPlan;
import thrumwright.plan.Plan;
import thrumwright.plan.finding.Finding;
import thrumwright.plan.finding.Findings;
import thrumwright.plan.finding.Severity;
import thrumwright.store.FileProblem;
import thrumwright.store.PieceFile;
import thrumwright.store.Structures;
import thrumwright.store.Unknown;

/** Several edges on one warp, as one piece with its plan and its sheet. */
class SampleWarpTest {
    private static Structure edge(String id) {
        return Structures.builtIn().byId(id).orElseThrow();
    }

    private static Piece narrow(UnitSystem units) {
        Piece usual = Beginnings.empty(units);
        return usual.withWarp(usual.warp().withWidth(Length.parse("10 cm")));
    }

    private static Piece samples(String... ids) {
        List<Structure> edges = new ArrayList<>();
        for (String id : ids) {
            edges.add(edge(id));
        }
        return SampleWarp.of(narrow(UnitSystem.METRIC), edges, Locale.UK);
    }

    @Test
    void edgesStandOneAboveTheOtherInTheirOrder() {
        Piece piece = samples("folded-hem", "knotted-fringe", "turned-edge");
        assertThat(piece.title()).isEqualTo("Sample warp: 3 edges");
        assertThat(piece.start().blocks())
                .extracting(Block::id)
                .containsSubsequence(
                        "s1-waste", "s1-twining", "s1-fold", "s1-label", "s2-gap", "s2-twining", "s2-label", "s3-gap");
        assertThat(piece.start().blocks())
                .extracting(block -> block.tag().label())
                .contains("Twining, sample 1", "Label strip, sample 2", "Cut below sample 3");
        // the lowest alone is tied to the posts, and the others' fringes are worked when they are cut off
        assertThat(piece.start().blocks().stream().filter(Block::startOnly)).hasSize(1);
        assertThat(piece.start().blocks().stream()
                        .filter(block -> block.finish().isPresent()))
                .isEmpty();
        assertThat(piece.note())
                .contains("from below to above: Folded hem, Twined edge with knotted fringe, Half-Damascus edge")
                .contains("Sample 1, Folded hem: the steps after the weaving tell how.")
                .contains("Sample 2, Twined edge with knotted fringe: Take out: waste band.")
                .contains("Part the ends into 8 groups");
    }

    /** Hands need 15 cm beyond the edge, the waste band gives 1.2 of them back, and 1 cm is lost in the cut: 14.8, so 15. */
    @Test
    void openWarpBelowASampleIsWhatItsEndsNeed() {
        Plan plan = Plan.of(samples("folded-hem", "knotted-fringe"));
        BlockPlan gap = plan.start().block("s2-gap").orElseThrow();
        assertThat(gap.height()).isCloseTo(150, within(5.0));
        Plan alone = Plan.of(edge("knotted-fringe").on(narrow(UnitSystem.METRIC), Place.START));
        double beyond =
                gap.height() + plan.start().block("s2-waste").orElseThrow().height();
        assertThat(beyond)
                .isGreaterThanOrEqualTo(alone.start().finish().orElseThrow().needed() + 10);
        // a hem needs no more than hands and scissors
        Plan hemmed = Plan.of(samples("knotted-fringe", "folded-hem"));
        assertThat(hemmed.start().block("s2-gap").orElseThrow().height()).isEqualTo(40);
    }

    @Test
    void theWarpTakesAllOfThem() {
        Plan plan = Plan.of(samples("folded-hem", "knotted-fringe"));
        double all =
                plan.start().blocks().stream().mapToDouble(BlockPlan::height).sum();
        assertThat(plan.start().height()).isCloseTo(all, within(1e-6));
        assertThat(plan.budget().designEnds()).isCloseTo(plan.budget().clearance() + all + 30, within(1e-6));
        assertThat(plan.budget().left()).isPositive();
    }

    @ParameterizedTest
    @EnumSource(UnitSystem.class)
    void everyStructureCanStandAboveAnother(UnitSystem units) throws FileProblem {
        int met = 0;
        for (Structure edge : Structures.builtIn().all()) {
            boolean closed = edge.end().blocks().stream()
                    .anyMatch(block ->
                            block.finish().filter(finish -> finish.closed()).isPresent());
            if (closed) {
                continue;
            }
            met++;
            Piece piece = SampleWarp.of(narrow(units), List.of(edge("folded-hem"), edge), Locale.UK);
            Plan plan = Plan.of(piece);
            assertThat(Findings.of(plan).all())
                    .as(edge.name())
                    .extracting(Finding::code)
                    .filteredOn(code -> code.severity() == Severity.PROBLEM)
                    .isSubsetOf(List.of(Finding.Code.DOES_NOT_FIT));
            assertThat(piece.start().blocks().stream().filter(OpenWarp.class::isInstance))
                    .isNotEmpty();
            assertThat(PieceFile.read(new PieceFile(piece, Unknown.none()).text())
                            .piece())
                    .isEqualTo(piece);
        }
        assertThat(met).isGreaterThan(30);
    }

    @Test
    void loopsAndASingleEdgeAreRefused() {
        assertThatThrownBy(() -> samples("folded-hem", "closed-warp"))
                .isInstanceOf(Refused.class)
                .hasMessageContaining("turns the warp back in loops");
        assertThatThrownBy(() -> samples("folded-hem")).hasMessage("A sample warp tries 2 to 12 edges, not 1.");
    }
}
