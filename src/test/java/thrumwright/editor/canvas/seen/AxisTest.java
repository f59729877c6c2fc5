package thrumwright.editor.canvas.seen;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.random.RandomGenerator;
import org.junit.jupiter.api.Test;
import thrumwright.drawing.piece.PiecePicture;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;
import thrumwright.plan.Plan;
import thrumwright.testing.BoardPieces;
import thrumwright.testing.RandomPieces;
import thrumwright.testing.Seeds;

/** From mm to pixels and back, whatever is left out. */
class AxisTest {
    private final RandomGenerator random = new SplittableRandom(1616);

    private Framing framing(PiecePicture picture) {
        int wide = random.nextInt(300, 2000);
        int high = random.nextInt(200, 1200);
        Room room = new Room(wide, high, wide, high, 90, 110, true, 1 + random.nextInt(5) / 4.0);
        Zoom.Fit[] fits = Zoom.Fit.values();
        Zoom zoom = Zoom.fitting(fits[random.nextInt(fits.length)]);
        Zoom any = random.nextBoolean() ? zoom : zoom.by(random.nextDouble(0.3, 50), 0);
        return new Framing(picture, room, any, Place.START, 0, 0).settled();
    }

    @Test
    void whateverIsLeftOutNoPlaceComesBeforeAnotherAndEachIsFoundAgain() {
        RandomPieces pieces = new RandomPieces(1617);
        for (int i = 0; i < Seeds.of(300, 30); i++) {
            PiecePicture picture = PiecePicture.of(Plan.of(pieces.next()));
            Axes axes = axes(framing(picture));
            holds(axes.across(), -picture.margin() - 5, picture.span() + picture.margin() + 5);
            holds(axes.up(), picture.lowerBar() - 5, Math.max(picture.height(), picture.upperBar()) + 5);
        }
    }

    @Test
    void theSameIsWhatEqualityWouldSay() {
        RandomPieces pieces = new RandomPieces(1619);
        List<Axes> all = new ArrayList<>();
        for (int i = 0; i < Seeds.of(60, 12); i++) {
            PiecePicture picture = PiecePicture.of(Plan.of(pieces.next()));
            Framing framing = framing(picture);
            all.add(axes(framing));
            all.add(axes(framing));
        }
        for (Axes one : all) {
            for (Axes other : all) {
                assertThat(one.same(other)).isEqualTo(one.equals(other));
            }
        }
    }

    private static Axes axes(Framing framing) {
        return framing.axes(framing.scale());
    }

    private static void holds(Axis axis, double from, double to) {
        double before = Double.NaN;
        for (int i = 0; i <= 400; i++) {
            double mm = from + (to - from) * i / 400;
            double pixel = axis.pixel(mm) * Math.signum(axis.scale());
            assertThat(axis.mm(axis.pixel(mm))).isCloseTo(mm, within(1e-6));
            assertThat(Double.isNaN(before) || pixel > before).as("at " + mm).isTrue();
            before = pixel;
        }
        for (Axis.Gap gap : axis.gaps()) {
            assertThat(gap.to() - gap.from()).isCloseTo(Outside.GAP, within(2.0));
            assertThat(axis.shows(axis.mm(gap.middle()))).isFalse();
        }
    }

    /** No block, no tail, no fold is ever left out: only bare warp, the middle, and air beside the cloth. */
    @Test
    void noBlockIsBrokenInItsHeight() {
        RandomPieces pieces = new RandomPieces(1618);
        for (int i = 0; i < Seeds.of(300, 30); i++) {
            PiecePicture picture = PiecePicture.of(Plan.of(pieces.next()));
            Framing framing = framing(picture);
            CanvasMap map = CanvasMap.of(picture, framing.view(), axes(framing));
            for (BlockSpot spot : map.spots()) {
                assertThat(spot.high())
                        .isCloseTo(
                                spot.plan().height() * map.scale(),
                                within(1e-6 * Math.max(1, spot.plan().height() * map.scale())));
            }
        }
    }

    @Test
    void panelsDontOverlap() {
        for (Piece piece : BoardPieces.all().values()) {
            List<Axes.Panel> panels =
                    axes(framing(PiecePicture.of(Plan.of(piece)))).panels();
            for (Axes.Panel one : panels) {
                for (Axes.Panel other : panels) {
                    Rectangle2D both = one.box().createIntersection(other.box());
                    assertThat(one == other || both.isEmpty()).isTrue();
                }
            }
        }
    }
}
