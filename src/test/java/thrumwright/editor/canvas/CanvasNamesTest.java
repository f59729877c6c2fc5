package thrumwright.editor.canvas;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Rectangle;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import javax.swing.JScrollPane;
import javax.swing.JViewport;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.Test;
import thrumwright.block.Side;
import thrumwright.drawing.Palette;
import thrumwright.editor.canvas.painted.CanvasRules;
import thrumwright.editor.canvas.painted.Showing;
import thrumwright.editor.canvas.seen.Zoom;
import thrumwright.editor.edit.Edit;
import thrumwright.editor.edit.Session;
import thrumwright.editor.text.Texts;
import thrumwright.piece.End;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;
import thrumwright.store.PieceFile;
import thrumwright.store.Unknown;
import thrumwright.testing.LargePieces;
import thrumwright.testing.RandomPieces;
import thrumwright.testing.Seeds;
import thrumwright.testing.SeeingGraphics;
import thrumwright.testing.SeeingGraphics.Seen;

/** What is written beside the cloth lies neither over it nor over anything else that is written. */
class CanvasNamesTest {
    private static final int TALL = 460;

    private final Texts texts = Texts.of(Locale.UK);

    @Test
    void nothingWrittenLiesOverTheClothOrOverAnother() throws Exception {
        RandomPieces random = new RandomPieces(91);
        List<Piece> pieces = new ArrayList<>(List.of(LargePieces.demo().piece()));
        for (int i = 0; i < Seeds.of(12, 4); i++) {
            pieces.add(random.next());
        }
        for (Piece piece : pieces) {
            for (int wide : new int[] {525, 560, 700, 1100}) {
                SwingUtilities.invokeAndWait(() -> look(piece, wide));
            }
        }
    }

    @Test
    void saysWhatToDoFirstUntilThereIsABlock() throws Exception {
        Piece piece = LargePieces.demo().piece();
        SwingUtilities.invokeAndWait(() -> {
            PieceCanvas canvas = canvas(piece.withStart(new End(List.of())), 700);
            assertThat(allWritten(canvas)).contains("There is no block yet.").contains("block shelf");
            assertThat(canvas.getAccessibleContext().getAccessibleDescription()).startsWith("There is no block yet.");
            canvas.setZoom(Zoom.of(20));
            assertThat(allWritten(canvas)).contains("There is no block yet.");
            canvas.session().edit(new Edit("add", empty -> piece, Optional.empty()));
            assertThat(allWritten(canvas)).doesNotContain("no block");
            assertThat(canvas.getAccessibleContext().getAccessibleDescription()).doesNotContain("no block");
        });
    }

    private static String allWritten(PieceCanvas canvas) {
        return SeeingGraphics.of(canvas.getWidth(), canvas.getHeight(), Color.WHITE, canvas::print).stream()
                .map(Seen::text)
                .collect(Collectors.joining(" "));
    }

    private void look(Piece piece, int wide) {
        PieceCanvas canvas = canvas(piece, wide);
        for (Zoom zoom : List.of(
                Zoom.fitting(Zoom.Fit.LOOM), Zoom.fitting(Zoom.Fit.SELVEDGES), Zoom.of(0.4), Zoom.of(3), Zoom.of(20))) {
            canvas.setZoom(zoom);
            check(canvas);
        }
        canvas.looking().showEnd(Place.START);
        check(canvas);
        canvas.looking().showEnd(Place.TOP);
        check(canvas);
    }

    private PieceCanvas canvas(Piece piece, int wide) {
        Session session = new Session(new PieceFile(piece, Unknown.none()), Optional.empty());
        PieceCanvas canvas = new PieceCanvas(session, texts, Palette.onLightScreen());
        JScrollPane scroll = new JScrollPane(canvas);
        scroll.getViewport().setScrollMode(JViewport.SIMPLE_SCROLL_MODE);
        scroll.setSize(wide, TALL);
        scroll.addNotify();
        scroll.validate();
        assertThat(canvas.showing().widths()).isPresent();
        return canvas;
    }

    private static void check(PieceCanvas canvas) {
        Rectangle window = canvas.getVisibleRect();
        Rectangle2D cloth = canvas.showing().pictured().createIntersection(cloth(canvas));
        List<Seen> written = written(canvas);
        if (canvas.zoom().fit() == Zoom.Fit.LOOM) {
            assertThat(written).extracting(Seen::text).contains("start line", "top begins");
        }
        for (int i = 0; i < written.size(); i++) {
            Seen one = written.get(i);
            assertThat(ink(one).intersects(cloth)).as(one + " over " + cloth).isFalse();
            assertThat(window.getMinX() - 1 <= one.box().getMinX() && one.box().getMaxX() <= window.getMaxX() + 1)
                    .as(one + " in " + window)
                    .isTrue();
            for (Seen other : written.subList(0, i)) {
                assertThat(ink(one).intersects(ink(other)))
                        .as(one + " over " + other)
                        .isFalse();
            }
        }
    }

    /** A box without what rounding adds to it. */
    private static Rectangle2D ink(Seen seen) {
        Rectangle2D box = seen.box();
        return new Rectangle2D.Double(box.getX() + 0.1, box.getY() + 0.1, box.getWidth() - 0.2, box.getHeight() - 0.2);
    }

    /** Tails too, and posts; but where posts are drawn beyond a break, notes of rows may stand on this side of it. */
    private static Rectangle2D cloth(PieceCanvas canvas) {
        double beside = canvas.picture().reach().outermost();
        double left = canvas.map().x(-aside(canvas, Side.LEFT, beside));
        double right = canvas.map().x(canvas.picture().span() + aside(canvas, Side.RIGHT, beside));
        return new Rectangle2D.Double(left, -1e6, right - left, 2e6);
    }

    private static double aside(PieceCanvas canvas, Side side, double beside) {
        return canvas.map()
                .notes()
                .map(notes -> Math.min(beside, notes.aside(side)))
                .orElse(beside);
    }

    private static List<Seen> written(PieceCanvas canvas) {
        Showing showing = canvas.showing();
        return SeeingGraphics.of(canvas.getWidth(), canvas.getHeight(), Color.WHITE, g -> {
                    g.clip(showing.seen());
                    new CanvasRules(g, showing, showing.widths().orElseThrow()).paint();
                })
                .stream()
                .filter(seen -> !seen.text().isEmpty())
                .toList();
    }
}
