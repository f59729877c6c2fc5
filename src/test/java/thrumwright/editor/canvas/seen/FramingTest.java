package thrumwright.editor.canvas.seen;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Dimension;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import thrumwright.drawing.View;
import thrumwright.drawing.piece.PiecePicture;
import thrumwright.piece.Place;
import thrumwright.plan.Plan;
import thrumwright.store.FileProblem;
import thrumwright.testing.BoardPieces;
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
        return new Framing(picture, room(1), zoom, Place.START, lowered, 0);
    }

    private Framing framing(Zoom.Fit fit) {
        return framing(Zoom.fitting(fit), 0);
    }

    private CanvasMap map(Framing framing) {
        return CanvasMap.of(framing.picture(), framing.view(), framing.axes(framing.scale()));
    }

    @ParameterizedTest
    @EnumSource(
            value = Zoom.Fit.class,
            names = {"LOOM", "SELVEDGES", "PIECE"})
    void bothSelvedgesAndBothBarsLieBetweenWhatStandsBesideThem(Zoom.Fit fit) {
        CanvasMap map = map(framing(fit));
        double posts = picture.reach().outermost();
        assertThat(map.x(-posts) - Breaking.AIR).isGreaterThanOrEqualTo(119);
        assertThat(map.x(picture.span() + posts) + Breaking.AIR).isLessThanOrEqualTo(WIDE - 79);
        assertThat(map.height(picture.upperBar())).isGreaterThanOrEqualTo(0);
        assertThat(map.height(picture.lowerBar())).isLessThanOrEqualTo(HIGH);
    }

    @Test
    void theWholeLoomFillsTheWindowAndThePieceToScaleLeavesNothingOut() {
        CanvasMap loom = map(framing(Zoom.Fit.LOOM));
        double posts = picture.reach().outermost();
        assertThat(loom.x(picture.span() + posts) - loom.x(-posts))
                .isCloseTo(WIDE - 120 - 80 - 2 * Breaking.AIR, within(2.0));
        assertThat(loom.height(picture.lowerBar()) - loom.height(picture.upperBar()))
                .isBetween(0.85 * HIGH, HIGH - 2.0 * Breaking.BAR);
        assertThat(loom.axes().up().gaps()).isNotEmpty();

        CanvasMap scaled = map(framing(Zoom.Fit.PIECE));
        assertThat(scaled.axes().up().gaps()).isEmpty();
        assertThat(scaled.axes().across().gaps()).isEmpty();
        assertThat(scaled.height(picture.lowerBar()) - scaled.height(picture.upperBar()))
                .isCloseTo(scaled.scale() * (picture.upperBar() - picture.lowerBar()), within(1e-6));
    }

    @Test
    void bothSelvedgesAreEquallyLargeAndTheMiddleIsLeftOut() {
        CanvasMap map = map(framing(Zoom.Fit.SELVEDGES));
        Axis across = map.axes().across();
        assertThat(across.shows(0)).isTrue();
        assertThat(across.shows(picture.span())).isTrue();
        assertThat(across.shows(picture.span() / 2)).isFalse();
        for (double mm = 0; mm < 10; mm++) {
            assertThat(map.x(mm + 1) - map.x(mm)).isCloseTo(map.scale(), within(1e-9));
            double right = picture.span() - mm;
            assertThat(map.x(right) - map.x(right - 1)).isCloseTo(map.scale(), within(1e-9));
        }
        Axis.Gap middle = across.gaps().get(across.gaps().size() / 2);
        assertThat(middle.from() - across.pixel(0)).isCloseTo(across.pixel(picture.span()) - middle.to(), within(2.0));
    }

    /** Keys for looking at the piece would be of no use if they showed it alike. */
    @Test
    void everyWayToLookHasAScaleOfItsOwn() {
        List<Double> scales = new ArrayList<>(List.of(
                framing(Zoom.of(framing(Zoom.Fit.END).singleEnds()), 0).scale()));
        for (Zoom.Fit fit : List.of(Zoom.Fit.LOOM, Zoom.Fit.SELVEDGES, Zoom.Fit.END, Zoom.Fit.PIECE)) {
            scales.add(framing(fit).scale());
        }
        Collections.sort(scales);
        for (int i = 1; i < scales.size(); i++) {
            assertThat(scales.get(i) / scales.get(i - 1)).as(scales + "").isGreaterThan(1.1);
        }
    }

    /** However fine the warp is: close enough for single warp ends to be read, the ends wouldn't be whole. */
    @Test
    void atFirstSightBothEndsAreWhole() {
        PiecePicture fine = PiecePicture.close(Plan.of(BoardPieces.all().get("fine")));
        Framing first = new Framing(fine, room(1), Zoom.fitting(Zoom.Fit.FIRST), Place.START, 0, 0).settled();
        Framing close = new Framing(fine, room(1), Zoom.fitting(Zoom.Fit.SELVEDGES), Place.START, 0, 0);
        CanvasMap map = map(first);
        assertThat(map.height(fine.upperBar())).isGreaterThanOrEqualTo(0);
        assertThat(map.height(fine.lowerBar())).isLessThanOrEqualTo(HIGH);
        assertThat(first.scale()).isLessThan(close.scale());
    }

    @Test
    void anEndIsNotShownAsCloseAsItsSingleWarpEnds() {
        Framing framing = framing(Zoom.Fit.END);
        assertThat(framing.scale()).isLessThan(framing.singleEnds());
        assertThat(framing.scale() * picture.plan().start().height()).isLessThanOrEqualTo(HIGH);
        assertThat(framing.singleEnds() * picture.plan().piece().warp().spacing())
                .isCloseTo(36, within(1e-9));
    }

    /** What is typed doesn't change the scale unless it would be far too large or small, and undo doesn't either. */
    @Test
    void theScaleStaysWhileItIsAboutRight() {
        Framing framing = framing(Zoom.Fit.LOOM);
        double kept = framing.scale() * 0.9;
        assertThat(new Framing(picture, room(1), Zoom.fitting(Zoom.Fit.LOOM), Place.START, 0, kept).scale())
                .isEqualTo(kept);
        assertThat(new Framing(picture, room(1), Zoom.fitting(Zoom.Fit.LOOM), Place.START, 0, kept / 3).scale())
                .isEqualTo(framing.scale());
        assertThat(new Framing(picture, room(1), Zoom.fitting(Zoom.Fit.LOOM), Place.START, 0, 2 * kept).scale())
                .isEqualTo(framing.scale());
    }

    @Test
    void theScaleStaysWithinItsLimits() {
        Room tiny = new Room(1, 1, 1, 1, 120, 80, true, 1);
        assertThat(new Framing(picture, tiny, Zoom.fitting(Zoom.Fit.LOOM), Place.START, 0, 0).scale())
                .isEqualTo(Zoom.LEAST);
        assertThat(framing(Zoom.of(1000), 0).scale()).isEqualTo(Zoom.MOST);
    }

    @ParameterizedTest
    @ValueSource(doubles = {1, 1.25, 1.5, 2})
    void theClothBeginsOnAWholeDevicePixel(double density) {
        View view = new Framing(picture, room(density), Zoom.of(1.37), Place.START, 0, 0).view();
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
        Dimension free = framing(Zoom.of(1), 0).size();
        Dimension whole = framing(Zoom.fitting(Zoom.Fit.LOOM), 0).size();
        assertThat(free.height).isGreaterThan((int) picture.height() + HIGH / 2);
        assertThat(whole.height).isLessThanOrEqualTo(HIGH);
    }
}
