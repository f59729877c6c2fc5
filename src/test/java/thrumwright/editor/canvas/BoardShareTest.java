package thrumwright.editor.canvas;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Dimension;
import java.awt.Rectangle;
import java.awt.geom.Rectangle2D;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import thrumwright.drawing.Fonts;
import thrumwright.drawing.Palette;
import thrumwright.drawing.piece.PiecePicture;
import thrumwright.editor.canvas.seen.CanvasMap;
import thrumwright.editor.edit.Session;
import thrumwright.editor.look.Theme;
import thrumwright.editor.text.Texts;
import thrumwright.measure.UnitSystem;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;
import thrumwright.store.PieceFile;
import thrumwright.store.Unknown;
import thrumwright.testing.BoardPieces;

/**
 * How much of the board is cloth at first sight, from the first warp end to the last and from the lowest loop to the highest,
 * of the room between the measures at the left and the rule at the right.
 */
class BoardShareTest {
    private static final double LEAST = 0.6;

    /**
     * Narrower than the board at the height that both ends and the band of the design have: larger, they wouldn't be whole
     * in the window any more; wider, they wouldn't be true. Their cloth fills the height instead.
     * Of 4 cm a quarter to under a half of the area is cloth, of forty blocks up to a half.
     */
    private static final Set<String> NARROW = Set.of("narrow", "forty");

    private static final double OF_THE_HEIGHT = 0.8;

    /**
     * The board as the editor gives it on screens of 1366 × 768, of 1920 × 1080 and of 1920 × 1080 at 200 %, with the views
     * folded away and opened.
     */
    @ParameterizedTest
    @CsvSource({"1026, 605", "1026, 445", "1580, 917", "1580, 671", "620, 377"})
    void mostOfTheBoardIsClothAtFirstSight(int wide, int high) throws Exception {
        for (UnitSystem units : UnitSystem.values()) {
            for (Map.Entry<String, Piece> piece : BoardPieces.all().entrySet()) {
                SwingUtilities.invokeAndWait(
                        () -> look(piece.getKey(), in(units, piece.getValue()), new Dimension(wide, high)));
            }
        }
    }

    private static Piece in(UnitSystem units, Piece piece) {
        return piece.withHabits(piece.habits().withUnits(units));
    }

    @BeforeAll
    static void dress() throws Exception {
        SwingUtilities.invokeAndWait(() -> Theme.LIGHT.apply(Fonts.load()));
    }

    private static void look(String name, Piece piece, Dimension size) {
        PieceCanvas canvas = shown(piece, size);
        Rectangle board = canvas.showing().pictured();
        Rectangle2D cloth = cloth(canvas);
        assertThat(board.contains(cloth)).as(name + " is whole").isTrue();
        if (NARROW.contains(name)) {
            assertThat(canvas.map().axes().across().shows(canvas.picture().span() / 2))
                    .as(name + " in its whole width")
                    .isTrue();
            assertThat(cloth.getHeight() / board.height)
                    .as(name + ", of the height")
                    .isGreaterThan(OF_THE_HEIGHT);
        } else {
            double share = cloth.getWidth() * cloth.getHeight() / (board.width * (double) board.height);
            assertThat(share).as(name + ", of the area").isGreaterThanOrEqualTo(LEAST);
        }
    }

    private static PieceCanvas shown(Piece piece, Dimension size) {
        Session session = new Session(new PieceFile(piece, Unknown.none()), Optional.empty());
        PieceCanvas canvas = new PieceCanvas(session, Texts.of(Locale.UK), Palette.onLightScreen());
        Board window = new Board(canvas, new LabelColumn(canvas));
        window.setSize(size);
        window.addNotify();
        window.validate();
        return canvas;
    }

    private static Rectangle2D cloth(PieceCanvas canvas) {
        CanvasMap map = canvas.map();
        PiecePicture picture = canvas.picture();
        double top = map.y(Place.TOP, picture.plan().top().height() + picture.loops(Place.TOP));
        double bottom = map.y(Place.START, -picture.loops(Place.START));
        double left = map.x(0);
        return new Rectangle2D.Double(left, top, map.x(picture.span()) - left, bottom - top);
    }
}
