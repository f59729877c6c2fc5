package thrumwright.output.html;

import java.util.Locale;
import thrumwright.output.page.Paper;
import thrumwright.output.page.SheetPages;
import thrumwright.output.svg.SvgCanvas;

/**
 * The cards, where the page is printed on pages of their own in true size; the drawings of the steps are used again. What they
 * say stands on the page already, so that nobody hears it twice.
 */
record HtmlCards(Html html, SheetPages pages) {
    /** The paper on which they are in true size. */
    static String style(SheetPages pages) {
        double width = pages.setup().width() / Paper.POINTS;
        double height = pages.setup().height() / Paper.POINTS;
        return "@page Card{size:" + millimetres(width) + millimetres(height) + "}\n";
    }

    private static String millimetres(double size) {
        return String.format(Locale.ROOT, "%.1fmm ", size);
    }

    void write() {
        for (int page = 0; page < pages.count(); page++) {
            card(page);
        }
    }

    private void card(int page) {
        double width = pages.setup().width();
        double height = pages.setup().height();
        html.within("div", "card", () -> {
            html.raw(String.format(
                            Locale.ROOT,
                            "<svg aria-hidden=\"true\" width=\"%.1fmm\" height=\"%.1fmm\" viewBox=\"0 0 %.2f %.2f\" %s>",
                            width / Paper.POINTS,
                            height / Paper.POINTS,
                            width,
                            height,
                            SvgCanvas.USUAL)
                    + "\n");
            html.raw(SvgCanvas.painted(html.symbols(), width, height, g -> pages.paint(g, page)) + "</svg>\n");
        });
    }
}
