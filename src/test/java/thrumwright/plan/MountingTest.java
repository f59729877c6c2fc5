package thrumwright.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import thrumwright.measure.BadMeasure;
import thrumwright.measure.Length;
import thrumwright.measure.UnitSystem;
import thrumwright.piece.Beginnings;
import thrumwright.piece.Destiny;
import thrumwright.piece.EdgeCord;
import thrumwright.piece.MadeFor;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;
import thrumwright.plan.finding.Finding;
import thrumwright.plan.finding.Findings;
import thrumwright.store.Structures;
import thrumwright.testing.Pieces;
import thrumwright.yarn.Packing;

/** What is cut for a board, a lining and a cord along an edge. */
class MountingTest {
    private static final double INCH = 25.4;

    private final Piece panel = Pieces.panel();

    private static Piece made(Piece piece, MadeFor madeFor) {
        return piece.withMadeFor(Optional.of(madeFor));
    }

    private static Piece bordered(Piece piece, String border) {
        Destiny mounted = made(piece, MadeFor.MOUNTED).destiny();
        return piece.withDestiny(mounted.withBorder(Optional.of(Length.parse(border))));
    }

    private static MountingBoard board(Piece piece) {
        return Plan.of(piece).board().orElseThrow();
    }

    /** ‘Mounting: Small Work’, burns-studio.com: a mount of 9.75 × 9.75 in for a piece of 10 × 10 in. */
    @Test
    void aBoardThatHidesIsAQuarterInchSmaller() {
        Piece hides = bordered(Beginnings.empty(UnitSystem.INCHES), "0 in");
        MountingBoard board = MountingBoard.of(hides, 10 * INCH, 10 * INCH);

        assertThat(board.width()).isCloseTo(9.75 * INCH, within(1e-9));
        assertThat(board.height()).isCloseTo(9.75 * INCH, within(1e-9));
        assertThat(board.hides()).isTrue();
    }

    /**
     * M. Elkind, ‘Mounting small textiles’, 2016: a piece of 6.5 in high and 12 in wide, ‘a 2″ margin all around, more or less’, and bars
     * of 10 and 16 in.
     */
    @Test
    void aBorderOfTwoInchesIsAsPublished() {
        Piece mounted = bordered(Beginnings.empty(UnitSystem.INCHES), "2 in");
        MountingBoard board = MountingBoard.of(mounted, 12 * INCH, 6.5 * INCH);

        assertThat(board.width()).isCloseTo(16 * INCH, within(1e-9));
        assertThat(board.height()).isCloseTo(10 * INCH, within(0.5 * INCH + 1e-9));
        assertThat(board.coverWidth()).isCloseTo(20 * INCH, within(1e-9));
    }

    /** By hand: 240 wide, 25 at either side; 50 of the cover are turned over at either side. */
    @Test
    void onlyWhatIsMountedHasABoard() {
        MountingBoard board = board(made(panel, MadeFor.FRAMED));

        assertThat(board.width()).isCloseTo(290, within(1e-9));
        assertThat(board.coverWidth()).isCloseTo(390, within(1e-9));
        assertThat(board.coverHeight() - board.height()).isCloseTo(100, within(1e-9));
        assertThat(Plan.of(made(panel, MadeFor.HUNG)).board()).isEmpty();
        assertThat(Plan.of(panel).board()).isEmpty();
    }

    private static Optional<Lining> lining(Piece piece, MadeFor madeFor) {
        return Plan.of(piece.withDestiny(made(piece, madeFor).destiny().withLined(true)))
                .lining();
    }

    /** By hand: 240 − 2·10 wide and 15 more at either side to cut; as much less high as it is less wide. */
    @Test
    void aLiningLiesWithinThePiece() {
        Lining lining = lining(panel, MadeFor.HUNG).orElseThrow();
        double height = Plan.of(panel).finishedHeight();

        assertThat(lining.width()).isCloseTo(220, within(1e-9));
        assertThat(lining.cutWidth()).isCloseTo(250, within(1e-9));
        assertThat(lining.cutHeight()).isCloseTo(height + 10, within(1e-9));
        assertThat(lining.seam()).isCloseTo(220 + 2 * (height - 20), within(1e-9));
        assertThat(lining(panel, MadeFor.FLOOR_OR_TABLE)).isEmpty();
    }

    /** A bar must go in above it. */
    @Test
    void aLiningBeginsBelowABar() {
        Piece bar = Structures.builtIn().byId("bar-sleeve").orElseThrow().on(panel, Place.TOP);
        Lining lining = lining(bar, MadeFor.HUNG).orElseThrow();
        double depth = Plan.of(bar).top().hem().orElseThrow().depth();

        assertThat(lining.below()).isCloseTo(depth + 10, within(1e-9));
        assertThat(lining.below() + lining.height() + lining.margin())
                .isCloseTo(Plan.of(bar).finishedHeight(), within(1e-9));
    }

    private SewnCord cord(EdgeCord.Along along, boolean plaited) {
        EdgeCord cord = new EdgeCord(along, Length.parse("4 mm"), plaited);
        return Plan.of(panel.withDestiny(panel.destiny().withCord(Optional.of(cord))))
                .sewnCord()
                .orElseThrow();
    }

    /** By hand: 240 and twice 20 to tuck in; all round also πb for the four corners. */
    @Test
    void aCordIsAsLongAsItsEdges() {
        double height = Plan.of(panel).finishedHeight();

        assertThat(cord(EdgeCord.Along.ENDS, false).length()).isCloseTo(280, within(1e-9));
        assertThat(cord(EdgeCord.Along.ENDS, false).count()).isEqualTo(2);
        assertThat(cord(EdgeCord.Along.SIDES, false).length()).isCloseTo(height + 40, within(1e-9));
        assertThat(cord(EdgeCord.Along.ALL_ROUND, false).length())
                .isCloseTo(2 * (240 + height) + Math.PI * 4 + 40, within(1e-9));
        assertThat(cord(EdgeCord.Along.ALL_ROUND, false).count()).isEqualTo(1);
    }

    /** The fewest strands that are thick enough, in halves or in three parts; 280 × 1.25 or 1.5 and 100 for the knots, rounded up. */
    @Test
    void aCordHasAsManyStrandsAsMakeItThickEnough() {
        for (boolean plaited : new boolean[] {false, true}) {
            SewnCord cord = cord(EdgeCord.Along.ENDS, plaited);
            int step = plaited ? 3 : 2;
            double thick = cord.yarn().diameter();
            double exact = 280 * (plaited ? 1.5 : 1.25) + 100;

            assertThat(cord.strands() % step).isZero();
            assertThat(thick * Packing.ratio(cord.strands())).isGreaterThanOrEqualTo(4);
            assertThat(cord.strands() == step || thick * Packing.ratio(cord.strands() - step) < 4)
                    .isTrue();
            assertThat(cord.strand())
                    .isBetween(exact - 1e-9, exact + panel.habits().step().mm());
        }
    }

    private static YarnTotal weft(Piece piece) {
        return Plan.of(piece).totals().stream()
                .filter(total -> total.yarn().id().equals("weft"))
                .findFirst()
                .orElseThrow();
    }

    private Piece corded(Piece piece) {
        EdgeCord cord = new EdgeCord(EdgeCord.Along.ENDS, Length.parse("4 mm"), false);
        return piece.withDestiny(piece.destiny().withCord(Optional.of(cord)));
    }

    /**
     * By hand: yarn of 2 mm, two strands of 280 × 1.25 + 100 = 450 in each of two cords, 1800 in all; at 493.858 g/km they weigh 0.889 g.
     */
    @Test
    void aCordIsInTheYarnThatIsNeededAndInTheWeight() {
        YarnTotal without = weft(panel);
        YarnTotal with = weft(corded(panel));

        assertThat(without.sewnOn()).isZero();
        assertThat(with.sewnOn()).isCloseTo(1800, within(1e-9));
        assertThat(with.length()).isCloseTo(without.length() + 1800, within(1e-9));
        assertThat(with.besideDesign()).isCloseTo(5750 + 1800, within(1e-9));
        assertThat(Weight.of(Plan.of(corded(panel))).total()
                        - Weight.of(Plan.of(panel)).total())
                .isCloseTo(0.889, within(0.0005));
    }

    /** 5.75 m are needed for the ends, 7.55 with the cord. */
    @Test
    void aStockMustBeEnoughForTheCordToo() {
        for (boolean cord : new boolean[] {false, true}) {
            Piece stocked = panel.withYarns(panel.yarns().stream()
                    .map(yarn -> yarn.id().equals("weft") ? yarn.withStock(Optional.of(Length.parse("6.5 m"))) : yarn)
                    .toList());
            Piece piece = cord ? corded(stocked) : stocked;
            assertThat(Findings.of(Plan.of(piece)).all())
                    .filteredOn(found -> found.code() == Finding.Code.STOCK_SHORT)
                    .hasSize(cord ? 1 : 0);
        }
    }

    @Test
    void whatCantBeIsRefusedWithItsNumber() {
        assertThatThrownBy(() -> bordered(panel, "60 cm"))
                .isInstanceOf(BadMeasure.class)
                .hasMessage("The border of a board is at most 50 cm wide, not “60 cm”.");
        assertThatThrownBy(() -> new EdgeCord(EdgeCord.Along.ENDS, Length.parse("0 mm"), false))
                .isInstanceOf(BadMeasure.class)
                .hasMessage("A cord that is sewn on is thicker than 0 and at most 3 cm, not “0 mm”.");
    }
}
