package thrumwright.output;

import java.awt.Dimension;
import java.io.IOException;
import java.io.OutputStream;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.transform.TransformerException;
import javax.xml.transform.TransformerFactory;
import javax.xml.transform.dom.DOMSource;
import javax.xml.transform.stream.StreamResult;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.apache.batik.svggen.SVGGraphics2D;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import thrumwright.output.page.Markup;
import thrumwright.output.page.Paper;
import thrumwright.output.page.SheetPages;

/** Writes a laid-out page as SVG 1.1; letters become shapes, so that it looks the same where the font is missing. */
public final class SvgFile {
    private static final String SVG = "http://www.w3.org/2000/svg";

    private SvgFile() {}

    /**
     * One page.
     *
     * @param page from 0
     * @param out stays open
     * @throws IOException if it can't be written to
     */
    public static void write(SheetPages pages, int page, OutputStream out) throws IOException {
        Document document = document();
        SVGGeneratorContext context = SVGGeneratorContext.createDefault(document);
        context.setComment("Thrumwright");
        SVGGraphics2D g = new SVGGraphics2D(context, true);
        double width = pages.setup().width();
        double height = pages.setup().height();
        g.setSVGCanvasSize(new Dimension((int) Math.ceil(width), (int) Math.ceil(height)));
        pages.paint(g, page);
        Element root = g.getRoot();
        root.setAttribute("width", width / Paper.POINTS + "mm");
        root.setAttribute("height", height / Paper.POINTS + "mm");
        root.setAttribute("viewBox", "0 0 " + width + " " + height);
        Element title = document.createElementNS(SVG, "title");
        title.setTextContent(Markup.plain(pages.title()) + ", " + (page + 1) + " / " + pages.count());
        root.insertBefore(title, root.getFirstChild());
        try {
            TransformerFactory.newInstance().newTransformer().transform(new DOMSource(root), new StreamResult(out));
        } catch (TransformerException e) {
            throw new IOException("the page can't be written as SVG: " + e.getMessage(), e);
        }
    }

    private static Document document() {
        try {
            return DocumentBuilderFactory.newInstance()
                    .newDocumentBuilder()
                    .getDOMImplementation()
                    .createDocument(SVG, "svg", null);
        } catch (ParserConfigurationException e) {
            throw new IllegalStateException("every Java can make an XML document", e);
        }
    }
}
