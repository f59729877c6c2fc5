package thrumwright.plan.finding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import thrumwright.block.Block;
import thrumwright.block.OrderingCord;
import thrumwright.measure.Sett;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;
import thrumwright.piece.Structure;
import thrumwright.piece.Top;
import thrumwright.store.Structures;
import thrumwright.testing.Pieces;

class StructureFitTest {
    private final Piece panel = Pieces.panel();

    private static Structure structure(String id) {
        return Structures.builtIn().byId(id).orElseThrow();
    }

    /** The folded hem has seven picks of facing where the worked panel has six, so its hem is one pick of 1 mm deeper. */
    @Test
    void saysWhatAHemWillTake() {
        StructureFit fit = StructureFit.of(structure("folded-hem"), panel, Place.START);
        assertThat(fit.hemDepth().orElseThrow()).isCloseTo(15.388718, within(1e-6));
        assertThat(fit.freeWarp()).isZero();
        assertThat(fit.warp()).isCloseTo(2.359036 + 12 + 1.572691 + 4.718072 + 7 + 3, within(1e-4));
        // ordering cord 145 cm, twining 86 cm, stiff band 195 cm, as docs/method.md has them
        assertThat(fit.cord()).isEqualTo(1450 + 860 + 1950);
        assertThat(fit.yarns()).extracting(yarn -> yarn.id()).containsExactly("cord", "weft", "waste");
        assertThat(fit.findings()).extracting(Finding::severity).doesNotContain(Severity.PROBLEM);
    }

    /** Two countered rows of twining stay, 4 × 0.786345 high; beyond them the hands need 15 cm. */
    @Test
    void saysWhatAFringeWillTake() {
        StructureFit fit = StructureFit.of(structure("knotted-fringe"), panel, Place.START);
        assertThat(fit.hemDepth()).isEmpty();
        assertThat(fit.freeWarp()).isEqualTo(150);
        assertThat(fit.warp()).isCloseTo(153.145381, within(1e-4));
        assertThat(fit.worst()).contains(Severity.PROBLEM);
        assertThat(fit.findings().get(0).code()).isEqualTo(Finding.Code.FREE_WARP_SHORT_FOR_HANDS);
    }

    @Test
    void whatDoesntFitIsFoundBeforeItIsChosen() {
        Piece close = panel.withWarp(panel.warp().withSett(Sett.parse("6/cm")));
        StructureFit fit = StructureFit.of(structure("folded-hem"), close, Place.START);
        assertThat(fit.findings()).extracting(Finding::code).contains(Finding.Code.TOO_THICK);
    }

    @Test
    void atTheTopItIsTurnedOverWithoutItsOrderingCord() {
        StructureFit fit = StructureFit.of(structure("folded-hem"), panel, Place.TOP);
        assertThat(fit.end().blocks())
                .extracting(block -> block.block().id())
                .first()
                .isEqualTo("fold");
        assertThat(fit.plan().piece().end(Place.TOP).blocks()).noneMatch(OrderingCord.class::isInstance);
        assertThat(fit.plan().piece().start()).isEqualTo(panel.start());
        assertThat(fit.findings())
                .allMatch(finding ->
                        finding.place().map(place -> place == Place.TOP).orElse(true));
    }

    @Test
    void aTopThatFollowsKeepsFollowing() {
        Piece changed = structure("bar-sleeve").on(panel, Place.START);
        assertThat(changed.top()).isInstanceOf(Top.FollowsStart.class);
        assertThat(changed.end(Place.TOP).blocks()).extracting(Block::id).doesNotContain("ordering");
        Piece own = panel.withTop(new Top.OnItsOwn(panel.end(Place.TOP)));
        assertThat(structure("bar-sleeve").on(own, Place.START).top()).isEqualTo(own.top());
    }
}
