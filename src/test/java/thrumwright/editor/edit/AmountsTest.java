package thrumwright.editor.edit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import thrumwright.block.Block;
import thrumwright.measure.BadMeasure;
import thrumwright.measure.UnitSystem;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;
import thrumwright.testing.Pieces;

class AmountsTest {
    private final Piece piece = Pieces.panel();

    /** The weft is 1 mm a pick; cord rows of twining 1.573 mm, soumak 3 mm (the worked panel). */
    @ParameterizedTest
    @CsvSource({
        "facing, 6, 6 picks",
        "facing, 1 pick, 1 pick",
        "facing, 12 mm, 12 mm",
        "facing, 1/2 in, 1/2 in",
        "ordering, 5 picks, 5 picks",
        "twining, 3 rows, 3 rows",
        "twining, 3 mm, 2 rows",
        "twining, 0.1 mm, 1 row",
        "soumak, 10 mm, 3 rows",
        "soumak, 1, 1 row"
    })
    void amountsAreTypedAsWeaversWriteThem(String id, String typed, String shown) {
        Block block = piece.start().block(id).orElseThrow();

        assertThat(Amounts.text(Amounts.with(block, typed, piece, Place.START))).isEqualTo(shown);
    }

    @ParameterizedTest
    @CsvSource({"facing, 0", "facing, six", "twining, 5000", "soumak, many", "facing, -1 cm"})
    void whatIsNoAmountIsRefusedWithAReason(String id, String typed) {
        Block block = piece.start().block(id).orElseThrow();

        assertThatThrownBy(() -> Amounts.with(block, typed, piece, Place.START))
                .isInstanceOf(BadMeasure.class)
                .hasMessageEndingWith(".");
    }

    @ParameterizedTest
    @CsvSource({"facing, 8.4, 8 picks", "stiff, 3.2, 4 picks", "soumak, 7.6, 3 rows", "twining, 0, 1 row"})
    void aPulledEdgeSnapsToWholeRows(String id, double mm, String shown) {
        Block block = piece.start().block(id).orElseThrow();

        assertThat(Amounts.text(Amounts.ofHeight(block, mm, piece, Place.START)))
                .isEqualTo(shown);
    }

    @Test
    void openWarpSnapsToMillimetres() {
        Block open = NewBlocks.ofKind("open-warp", UnitSystem.METRIC);

        assertThat(Amounts.text(Amounts.ofHeight(open, 23.4, piece, Place.START)))
                .isEqualTo("2.3 cm");
    }
}
