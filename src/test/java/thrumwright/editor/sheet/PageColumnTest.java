package thrumwright.editor.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Dimension;
import java.awt.Rectangle;
import org.junit.jupiter.api.Test;
import thrumwright.output.page.Paper;

class PageColumnTest {
    private static final double WIDTH = Paper.A4.width();
    private static final double HEIGHT = Paper.A4.height();

    @Test
    void aWholePageFitsTheWindow() {
        Dimension window = new Dimension(700, 500);
        double scale = PageColumn.fitting(PageZoom.fitting(PageZoom.Kind.WHOLE), WIDTH, HEIGHT, window);
        PageColumn column = new PageColumn(9, WIDTH, HEIGHT, scale, window.width);
        Rectangle page = column.page(0);
        assertThat(page.height).isBetween(500 - 2 * PageColumn.GAP - 1, 500 - 2 * PageColumn.GAP);
        assertThat(page.getCenterX()).isCloseTo(350, within(1.0));
        assertThat(column.size().height).isEqualTo(PageColumn.GAP + 9 * column.pitch());
    }

    @Test
    void aPagesWidthFitsTheWindow() {
        Dimension window = new Dimension(700, 500);
        double scale = PageColumn.fitting(PageZoom.fitting(PageZoom.Kind.WIDTH), WIDTH, HEIGHT, window);
        PageColumn column = new PageColumn(9, WIDTH, HEIGHT, scale, window.width);
        assertThat(column.page(3).width).isBetween(700 - 2 * PageColumn.GAP - 1, 700 - 2 * PageColumn.GAP);
    }

    @Test
    void everyHeightIsOnAPage() {
        PageColumn column = new PageColumn(3, WIDTH, HEIGHT, 1, 700);
        assertThat(column.pageAt(-50)).isZero();
        assertThat(column.pageAt(column.page(1).getCenterY())).isEqualTo(1);
        assertThat(column.pageAt(column.page(2).y)).isEqualTo(2);
        assertThat(column.pageAt(1e9)).isEqualTo(2);
        assertThat(column.height(column.inPages(777))).isCloseTo(777, within(1e-9));
    }

    @Test
    void fourStepsCloserIsTwiceAsLarge() {
        assertThat(PageZoom.from(1, 4).scale()).isCloseTo(2, within(1e-9));
        assertThat(PageZoom.from(1, 400).scale()).isEqualTo(8);
    }
}
