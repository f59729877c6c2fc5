package thrumwright.editor.canvas.label;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Font;
import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import thrumwright.drawing.View;
import thrumwright.drawing.piece.PiecePicture;
import thrumwright.editor.canvas.seen.CanvasMap;
import thrumwright.editor.edit.Slot;
import thrumwright.editor.text.Texts;
import thrumwright.piece.Place;
import thrumwright.plan.Plan;
import thrumwright.store.FileProblem;
import thrumwright.testing.LargePieces;

/** Labels without a window. */
class LabelListTest {
    private static final int HIGH = 800;

    private final CanvasMap map;
    private final LabelMaker maker = new LabelMaker(
            Texts.of(Locale.UK),
            new LabelSizes(34, 12, 8, 170, 70),
            new LabelFonts(new Font(Font.DIALOG, Font.PLAIN, 12), new Font(Font.DIALOG, Font.BOLD, 12)),
            font -> new BufferedImage(1, 1, BufferedImage.TYPE_INT_RGB)
                    .createGraphics()
                    .getFontMetrics(font));

    LabelListTest() throws FileProblem {
        map = CanvasMap.of(PiecePicture.of(Plan.of(LargePieces.demo().piece())), new View(1, 40, 700));
    }

    private LabelList list(int room) {
        return maker.list(map, HIGH, room, LabelWidths.NONE);
    }

    @Test
    void eachBlockHasALabelAndTheDesignStandsBetweenTheEnds() {
        List<LabelRow> rows = list(2000).rows();
        assertThat(rows).hasSize(map.spots().size() + 1);
        int design = 0;
        while (rows.get(design).spot().isPresent()) {
            assertThat(rows.get(design).spot().get().place()).isEqualTo(Place.TOP);
            design++;
        }
        assertThat(rows.subList(design + 1, rows.size()))
                .allSatisfy(row -> assertThat(row.spot().orElseThrow().place()).isEqualTo(Place.START));
    }

    @Test
    void noLabelLiesOverAnother() {
        LabelList list = list(2000);
        for (int i = 1; i < list.rows().size(); i++) {
            assertThat(list.rows().get(i).y() - list.rows().get(i - 1).y())
                    .isGreaterThanOrEqualTo(list.rowHeight() - 1e-6);
        }
    }

    @Test
    void columnsAreLeftOutFromTheLastWhereThereIsNoRoom() {
        int before = LabelWidths.COLUMNS;
        for (int room = 2000; room > 200; room -= 50) {
            LabelList list = list(room);
            assertThat(list.shown()).isBetween(1, before);
            before = list.shown();
            if (list.columns().name() > 70) {
                assertThat(list.width()).isLessThanOrEqualTo((int) (room * 0.48) - 34);
            }
        }
        assertThat(before).isEqualTo(1);
    }

    @Test
    void aLabelIsFoundWhereItStandsAndSoIsItsAmount() {
        LabelList list = list(2000);
        for (LabelRow row : list.rows()) {
            row.spot().ifPresent(spot -> {
                assertThat(list.at((int) Math.round(row.y()))).contains(spot);
                Rectangle box = list.amountBox(spot.place(), spot.id()).orElseThrow();
                assertThat(box.y).isEqualTo(list.top(row));
                assertThat(list.wording(spot.place(), spot.id())).contains(row.wording());
            });
        }
    }

    @Test
    void onlyWhereWordsAreHiddenATipSaysThem() {
        LabelRow row = list(2000).rows().get(0);
        assertThat(list(2000).hidden((int) row.y())).isEmpty();
        assertThat(list(300).hidden((int) row.y())).contains(row.wording().whole());
    }

    @Test
    void blocksCanBePutDownBetweenLabels() {
        LabelList list = list(2000);
        LabelRow lowest = list.rows().get(list.rows().size() - 1);
        assertThat(list.gaps(0).lines()).hasSize(map.spots().size());
        assertThat(list.gaps(0).at(lowest.y() + 2)).isEqualTo(new Slot(Place.START, 0));
        assertThat(list.gaps(0).at(lowest.y() - 2)).isEqualTo(new Slot(Place.START, 1));
    }
}
