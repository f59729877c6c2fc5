package thrumwright.editor.canvas;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Dimension;
import java.awt.Rectangle;
import java.awt.geom.Rectangle2D;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
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
import thrumwright.piece.Piece;
import thrumwright.piece.Place;
import thrumwright.store.PieceFile;
import thrumwright.store.Unknown;
import thrumwright.testing.BoardPieces;

/** How much of the board is cloth at first sight: both ends with their loops and the band of the design. */
class BoardShareTest {
    private static final double LEAST = 0.6;

    /**
     * The board's window as the editor gives it on a small and on a large screen, with the views folded away. Beside the
     * cloth lie its tails and the posts: of the width there is less, least of it with the thick tails of a rug.
     */
    @ParameterizedTest
    @CsvSource({"1028, 447, 0.5", "1026, 541, 0.44", "1582, 759, 0.54", "1580, 853, 0.54"})
    void mostOfTheBoardIsCloth(int wide, int high, double least) throws Exception {
        for (Map.Entry<String, Piece> piece : BoardPieces.all().entrySet()) {
            SwingUtilities.invokeAndWait(
                    () -> look(piece.getKey(), piece.getValue(), new Dimension(wide, high), least));
        }
    }

    @BeforeAll
    static void dress() throws Exception {
        SwingUtilities.invokeAndWait(() -> Theme.LIGHT.apply(Fonts.load()));
    }

    private static void look(String name, Piece piece, Dimension size, double least) {
        Session session = new Session(new PieceFile(piece, Unknown.none()), Optional.empty());
        PieceCanvas canvas = new PieceCanvas(session, Texts.of(Locale.UK), Palette.onLightScreen());
        Board window = new Board(canvas, new LabelColumn(canvas));
        window.setSize(size);
        window.addNotify();
        window.validate();
        Rectangle board = canvas.showing().pictured();
        Rectangle2D cloth = cloth(canvas).createIntersection(board);
        assertThat(cloth.getHeight() / board.height).as(name + " in height").isGreaterThan(LEAST);
        // a piece that is narrower than the window at the height that it has can fill no more of the width
        if (canvas.picture().span() * canvas.scale() > board.width) {
            assertThat(cloth.getWidth() / board.width).as(name + " in width").isGreaterThan(least);
        }
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
