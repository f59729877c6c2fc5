package thrumwright.output;

import static org.assertj.core.api.Assertions.assertThat;

import com.github.weisj.jsvg.SVGDocument;
import com.github.weisj.jsvg.parser.DocumentLimits;
import com.github.weisj.jsvg.parser.LoaderContext;
import com.github.weisj.jsvg.parser.SVGLoader;
import com.github.weisj.jsvg.view.ViewBox;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Locale;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import thrumwright.drawing.Fonts;
import thrumwright.drawing.Palette;
import thrumwright.output.page.PageSetup;
import thrumwright.output.page.Paper;
import thrumwright.output.page.PngFile;
import thrumwright.output.page.SheetPages;
import thrumwright.plan.Plan;
import thrumwright.store.BuiltIn;
import thrumwright.store.PieceFile;
import thrumwright.testing.Pieces;

class SvgFileTest {
    private static final double DPI = 200;
    /** A page uses its outlines some ten thousand times. */
    private static final DocumentLimits MANY = new DocumentLimits(30, 30, 100_000);

    private static SheetPages pages(String title) {
        Plan plan = Plan.of(Pieces.panel().withTitle(title));
        return SheetLayout.of(plan, PageSetup.usual(Paper.A4), Fonts.load(), Palette.onPaper(), Locale.UK);
    }

    private static byte[] svg(SheetPages pages, int page) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        SvgFile.write(pages, page, out);
        return out.toByteArray();
    }

    /** Drawn by another program part, the SVG of a page looks as the page itself, but for the edges of lines. */
    @Test
    void aPageLooksTheSameAsSvg() throws IOException {
        SheetPages pages = pages("Sedge");
        for (int page = 0; page < 2; page++) {
            BufferedImage wanted = PngFile.picture(pages, page, DPI);
            BufferedImage found = drawn(svg(pages, page), wanted.getWidth(), wanted.getHeight());
            double difference = Pictures.difference(wanted, found);
            assertThat(difference).isLessThan(0.01);
            assertThat(difference).isLessThan(Pictures.difference(wanted, Pictures.blank(wanted)) / 5);
        }
    }

    private static BufferedImage drawn(byte[] svg, int width, int height) {
        SVGDocument document = new SVGLoader()
                .load(
                        new ByteArrayInputStream(svg),
                        null,
                        LoaderContext.builder().documentLimits(MANY).build());
        BufferedImage image = Pictures.blank(width, height);
        Graphics2D g = image.createGraphics();
        PngFile.smooth(g);
        g.scale(DPI / 72, DPI / 72);
        document.render(null, g, new ViewBox(0, 0, (float) Paper.A4.width(), (float) Paper.A4.height()));
        g.dispose();
        return image;
    }

    @Test
    void aPageWeighsLittle() throws Exception {
        Plan plan = Plan.of(
                PieceFile.read(BuiltIn.DEMO.text("saltmarsh-panel.json")).piece());
        SheetPages pages = SheetLayout.of(plan, PageSetup.usual(Paper.A4), Fonts.load(), Palette.onPaper(), Locale.UK);
        for (int page = 0; page < pages.count(); page++) {
            assertThat(svg(pages, page).length).as("page %d", page + 1).isLessThan(300_000);
        }
    }

    @Test
    void titlesMayHoldAnySign() throws Exception {
        Document document = DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new ByteArrayInputStream(svg(pages("Reeds -- & <sedge>"), 0)));
        assertThat(document.getElementsByTagName("title").item(0).getTextContent())
                .startsWith("Reeds -- & <sedge>, 1 / ");
    }

    @Test
    void theSamePageMakesTheSameBytes() throws IOException {
        assertThat(svg(pages("Sedge"), 1)).isEqualTo(svg(pages("Sedge"), 1));
    }
}
