package thrumwright.editor.canvas.seen;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Rectangle;
import org.junit.jupiter.api.Test;
import thrumwright.drawing.View;
import thrumwright.drawing.piece.PiecePicture;
import thrumwright.editor.edit.Selection;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;
import thrumwright.plan.Plan;
import thrumwright.testing.RandomPieces;

class CanvasMapTest {
    private static final double SCALE = 4;

    private final RandomPieces pieces = new RandomPieces(311);

    private static CanvasMap map(Piece piece) {
        return CanvasMap.of(PiecePicture.of(Plan.of(piece)), new View(SCALE, 40, 800));
    }

    private Piece withBlocks() {
        Piece piece = pieces.next();
        while (piece.start().blocks().isEmpty()) {
            piece = pieces.next();
        }
        return piece;
    }

    @Test
    void leadsToTheCanvasAndBack() {
        CanvasMap map = map(pieces.next());
        for (Place place : Place.values()) {
            for (double mm : new double[] {-30, 0, 0.1, 250}) {
                assertThat(map.above(place, map.y(place, mm))).isCloseTo(mm, within(1e-9));
                assertThat(map.across(map.x(mm))).isCloseTo(mm, within(1e-9));
            }
        }
        assertThat(map.y(Place.START, 0) - map.y(Place.TOP, 0))
                .isCloseTo(SCALE * map.picture().base(Place.TOP), within(1e-9));
    }

    @Test
    void findsEachBlockThatHasAHeightUnderItsMiddle() {
        for (int i = 0; i < 100; i++) {
            CanvasMap map = map(pieces.next());
            for (BlockSpot spot : map.spots()) {
                BlockSpot found = map.at(spot.middle()).orElseThrow();
                assertThat(found.line() || found.equals(spot)).isTrue();
                assertThat(map.placeAt(spot.middle())).isEqualTo(spot.place());
                assertThat(map.spot(spot.place(), spot.id())).contains(spot);
            }
        }
    }

    @Test
    void evenALineHasAFieldThatCanBeSeen() {
        CanvasMap map = map(withBlocks());
        for (BlockSpot spot : map.spots()) {
            assertThat(map.field(spot).getHeight()).isGreaterThanOrEqualTo(3);
            assertThat(map.field(spot).getCenterY()).isCloseTo(spot.middle(), within(1e-9));
            assertThat(map.field(spot).getMinX()).isLessThan(map.x(0));
            assertThat(map.field(spot).getMaxX())
                    .isGreaterThan(map.x(map.picture().span()));
        }
    }

    @Test
    void dotsHoldAllOfThePartFromTheClothsCorner() {
        CanvasMap map = map(pieces.next());
        assertThat(map.dots(new Rectangle(40, 790, 10, 10), 1)).isEqualTo(new Rectangle(-1, -11, 12, 12));
        assertThat(map.dots(new Rectangle(40, 790, 10, 10), 1.5)).isEqualTo(new Rectangle(-1, -16, 17, 17));
    }

    @Test
    void aPartHoldsAllOfItsDotsAndNotMuchMore() {
        CanvasMap map = map(withBlocks());
        for (double density : new double[] {1, 1.25, 2}) {
            Rectangle part = map.part(new Rectangle(-7, -311, 320, 64), density);
            Rectangle held = map.dots(part, density);
            assertThat(held.contains(new Rectangle(-7, -311, 320, 64))).isTrue();
            assertThat(held.width).isLessThan(320 + 12);
            assertThat(held.height).isLessThan(64 + 12);
        }
    }

    @Test
    void theBlockThatIsWorkedOnStaysWhereItIs() {
        Piece piece = withBlocks();
        CanvasMap map = map(piece);
        String id = piece.start().blocks().get(0).id();
        BlockSpot spot = map.spot(Place.START, id).orElseThrow();
        Rectangle seen = new Rectangle(0, (int) spot.bottom() - 100, 500, 200);
        Standing standing = Standing.of(
                map, seen, Selection.of(Place.START, id), map.picture().plan());
        assertThat(standing.id()).contains(id);
        assertThat(standing.top(map)).isCloseTo(seen.y, within(1e-9));
        CanvasMap lower = CanvasMap.of(map.picture(), new View(SCALE, 40, 830));
        assertThat(standing.top(lower)).isCloseTo(seen.y + 30, within(1e-9));
    }

    @Test
    void whereNoBlockIsSeenTheEndItselfStays() {
        CanvasMap map = map(pieces.next());
        Rectangle below = new Rectangle(0, 100_000, 500, 200);
        Standing standing =
                Standing.of(map, below, Selection.none(), map.picture().plan());
        assertThat(standing).isEqualTo(new Standing(Place.START, java.util.Optional.empty(), 800 - 100_000));
    }
}
