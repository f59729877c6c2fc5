package thrumwright.editor.canvas.seen;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Dimension;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import thrumwright.drawing.View;
import thrumwright.drawing.piece.PiecePicture;
import thrumwright.piece.Place;
import thrumwright.plan.Plan;
import thrumwright.store.FileProblem;
import thrumwright.testing.LargePieces;

class FramingTest {
    private static final int WIDE = 900;
    private static final int HIGH = 600;

    private final PiecePicture picture;

    FramingTest() throws FileProblem {
        picture = PiecePicture.of(Plan.of(LargePieces.demo().piece()));
    }

    private static Room room(double density) {
        return new Room(WIDE, HIGH, WIDE, HIGH, 120, 80, true, density);
    }

    private Framing framing(Zoom zoom, double lowered) {
        return new Framing(picture, room(1), zoom, Place.START, lowered);
    }

    @Test
    void theWholePieceLiesBetweenWhatStandsBesideIt() {
        CanvasMap map =
                CanvasMap.of(picture, framing(Zoom.fitting(Zoom.Fit.PIECE), 0).view());
        assertThat(map.x(-picture.margin())).isGreaterThanOrEqualTo(119);
        assertThat(map.x(picture.span() + picture.margin())).isLessThanOrEqualTo(WIDE - 79);
        assertThat(map.y(Place.TOP, picture.plan().top().height())).isGreaterThanOrEqualTo(0);
        assertThat(map.y(Place.START, 0)).isLessThanOrEqualTo(HIGH);
    }

    @Test
    void theWidthFillsWhatIsLeftOfTheWindow() {
        double scale = framing(Zoom.fitting(Zoom.Fit.WIDTH), 0).scale();
        assertThat((picture.span() + 2 * picture.margin()) * scale).isCloseTo(WIDE - 120 - 80, within(1e-6));
    }

    @Test
    void anEndIsShownNoCloserThanItsSingleWarpEndsNeed() {
        Framing framing = framing(Zoom.fitting(Zoom.Fit.END), 0);
        assertThat(framing.scale()).isLessThanOrEqualTo(framing.singleEnds());
        assertThat(framing.scale() * picture.plan().start().height()).isLessThanOrEqualTo(HIGH);
        assertThat(framing.singleEnds() * picture.plan().piece().warp().spacing())
                .isCloseTo(24, within(1e-9));
    }

    @Test
    void theScaleStaysWithinItsLimits() {
        Room tiny = new Room(1, 1, 1, 1, 120, 80, true, 1);
        assertThat(new Framing(picture, tiny, Zoom.fitting(Zoom.Fit.PIECE), Place.START, 0).scale())
                .isEqualTo(Zoom.LEAST);
        assertThat(framing(Zoom.of(1000), 0).scale()).isEqualTo(Zoom.MOST);
    }

    @ParameterizedTest
    @ValueSource(doubles = {1, 1.25, 1.5, 2})
    void theClothBeginsOnAWholeDevicePixel(double density) {
        View view = new Framing(picture, room(density), Zoom.of(1.37), Place.START, 0).view();
        assertThat(view.left() * density).isCloseTo(Math.rint(view.left() * density), within(1e-9));
        assertThat(view.base() * density).isCloseTo(Math.rint(view.base() * density), within(1e-9));
    }

    @Test
    void noPictureIsLoweredOutOfItsWindow() {
        Zoom small = Zoom.of(0.5);
        assertThat(framing(small, 7).view().base())
                .isCloseTo(framing(small, 0).view().base() + 7, within(1.0));
        assertThat(framing(small, 1e6).view().base()).isLessThan(HIGH);
        assertThat(framing(small, 1e6).inside()).isLessThan(HIGH / 2.0);
        assertThat(framing(small, -1e6).inside()).isEqualTo(-framing(small, 1e6).inside());
    }

    @Test
    void aScaleOfOnesOwnLeavesRoomAllRound() {
        Dimension free = framing(Zoom.of(1), 0).size(0);
        Dimension whole = framing(Zoom.fitting(Zoom.Fit.PIECE), 0).size(0);
        assertThat(free.height).isGreaterThan((int) picture.height() + HIGH / 2);
        assertThat(whole.height).isLessThanOrEqualTo(HIGH);
        assertThat(framing(Zoom.fitting(Zoom.Fit.PIECE), 0).size(5000).height).isEqualTo(5000);
    }
}
