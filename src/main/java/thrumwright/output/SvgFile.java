package thrumwright.output;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import thrumwright.output.page.Markup;
import thrumwright.output.page.Paper;
import thrumwright.output.page.SheetPages;
import thrumwright.output.svg.SvgCanvas;
import thrumwright.output.svg.SvgSymbols;

/** Writes a laid-out page as SVG 1.1; letters become shapes, so that it looks the same where the font is missing. */
public final class SvgFile {
    private SvgFile() {}

    /**
     * One page.
     *
     * @param page from 0
     * @param out stays open
     * @throws IOException if it can't be written to
     */
    public static void write(SheetPages pages, int page, OutputStream out) throws IOException {
        double width = pages.setup().width();
        double height = pages.setup().height();
        String title = pages.title() + ", " + (page + 1) + " / " + pages.count();
        SvgSymbols symbols = SvgSymbols.inFile();
        String text = "<svg\nxmlns=\"http://www.w3.org/2000/svg\"\nxmlns:xlink=\"http://www.w3.org/1999/xlink\"\n"
                + "version=\"1.1\""
                + " width=\"" + width / Paper.POINTS + "mm\" height=\"" + height / Paper.POINTS + "mm\""
                + " viewBox=\"0 0 " + width + " " + height + "\" " + SvgCanvas.USUAL + ">\n"
                + "<title>" + Markup.escaped(title) + "</title>\n"
                + SvgCanvas.painted(symbols, width, height, g -> pages.paint(g, page))
                + "</svg>\n";
        out.write(symbols.trimmed(text).getBytes(StandardCharsets.UTF_8));
    }
}
