package thrumwright.output;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.apache.pdfbox.pdmodel.documentinterchange.markedcontent.PDMarkedContent;
import org.apache.pdfbox.text.PDFMarkedContentExtractor;
import org.apache.pdfbox.text.TextPosition;

/** Reads a tagged PDF as someone hears it: element by element, in the order of its structure. */
final class PdfReading {
    /**
     * Something that is read.
     *
     * @param within the types of the elements that hold it, from the outermost
     * @param text what it says, or for a drawing the words for it
     */
    record Said(List<String> within, String type, String text) {}

    private final PDDocument document;
    private final List<List<PDMarkedContent>> marks = new ArrayList<>();
    private final List<Said> said = new ArrayList<>();

    private PdfReading(PDDocument document) {
        this.document = document;
    }

    static List<Said> of(PDDocument document) throws IOException {
        PdfReading reading = new PdfReading(document);
        for (PDPage page : document.getPages()) {
            PDFMarkedContentExtractor extractor = new PDFMarkedContentExtractor();
            extractor.processPage(page);
            reading.marks.add(extractor.getMarkedContents());
        }
        reading.read(List.of(), document.getDocumentCatalog().getStructureTreeRoot());
        return reading.said;
    }

    /** All elements, in the order of reading. */
    static List<PDStructureElement> elements(PDDocument document) {
        List<PDStructureElement> elements = new ArrayList<>();
        collect(document.getDocumentCatalog().getStructureTreeRoot(), elements);
        return elements;
    }

    private static void collect(PDStructureNode node, List<PDStructureElement> elements) {
        for (Object kid : node.getKids()) {
            if (kid instanceof PDStructureElement element) {
                elements.add(element);
                collect(element, elements);
            }
        }
    }

    private void read(List<String> within, PDStructureNode node) {
        for (Object kid : node.getKids()) {
            if (kid instanceof PDStructureElement element) {
                String type = element.getStructureType();
                List<String> inner = new ArrayList<>(within);
                inner.add(type);
                if (element.getAlternateDescription() != null) {
                    said.add(new Said(within, type, element.getAlternateDescription()));
                } else if (element.getActualText() != null) {
                    said.add(new Said(within, type, element.getActualText()));
                } else if (element.getKids().get(0) instanceof Integer number) {
                    said.add(new Said(within, type, text(page(element), number)));
                }
                read(inner, element);
            }
        }
    }

    private int page(PDStructureElement element) {
        COSDictionary wanted = element.getPage().getCOSObject();
        int number = 0;
        while (document.getPage(number).getCOSObject() != wanted) {
            number++;
        }
        return number;
    }

    private String text(int page, int number) {
        PDMarkedContent mark = marks.get(page).stream()
                .filter(each -> each.getMCID() == number)
                .findFirst()
                .orElseThrow();
        StringBuilder text = new StringBuilder();
        for (Object content : mark.getContents()) {
            text.append(((TextPosition) content).getUnicode());
        }
        return text.toString();
    }
}
