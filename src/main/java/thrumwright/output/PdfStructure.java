package thrumwright.output;

import java.util.ArrayDeque;
import java.util.Deque;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSFloat;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDMarkInfo;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureTreeRoot;

/** The structure tree of a PDF (ISO 32000-1, 14.7), grown in the order of reading, page after page. */
final class PdfStructure {
    private static final COSName TABS = COSName.getPDFName("Tabs");
    private static final COSName SCOPE = COSName.getPDFName("Scope");
    private static final COSName BOX = COSName.getPDFName("BBox");

    private final PDStructureTreeRoot root = new PDStructureTreeRoot();
    private final COSArray marksByPage = new COSArray();
    private final Deque<Node> open = new ArrayDeque<>();
    private PDPage page;
    private COSArray marks;

    /** An element that holds others, and the last of those. */
    private static final class Node {
        private final PDStructureElement element;
        private Role lastRole;
        private Node last;

        Node(PDStructureElement element) {
            this.element = element;
        }
    }

    PdfStructure(PDDocument document) {
        PDMarkInfo marked = new PDMarkInfo();
        marked.setMarked(true);
        document.getDocumentCatalog().setMarkInfo(marked);
        document.getDocumentCatalog().setStructureTreeRoot(root);
        PDStructureElement whole = new PDStructureElement("Document", root);
        root.appendKid(whole);
        COSDictionary numbers = new COSDictionary();
        numbers.setItem(COSName.NUMS, marksByPage);
        root.getCOSObject().setItem(COSName.PARENT_TREE, numbers);
        open.push(new Node(whole));
    }

    /** Goes on with a new page. */
    void page(PDPage next) {
        page = next;
        marks = new COSArray();
        int key = marksByPage.size() / 2;
        marksByPage.add(COSInteger.get(key));
        marksByPage.add(marks);
        root.setParentTreeNextKey(key + 1);
        page.setStructParents(key);
        page.getCOSObject().setItem(TABS, COSName.S);
    }

    /** Begins an element that holds others, or goes on with the last one. */
    void open(Role role) {
        Node parent = open.element();
        if (!(role.goesOn() && parent.lastRole == role)) {
            parent.last = new Node(append(parent, role));
            parent.lastRole = role;
        }
        open.push(parent.last);
    }

    void close() {
        open.pop();
    }

    /** Adds an element that holds a stretch of the page; returns the number of that stretch on its page. */
    int mark(Role role) {
        PDStructureElement element = append(open.element(), role);
        open.element().lastRole = role;
        if (role == Role.HEAD) {
            element.getCOSObject().setItem(COSName.A, attribute("Table", SCOPE, COSName.getPDFName("Column")));
        }
        element.setPage(page);
        int number = marks.size();
        element.appendKid(number);
        marks.add(element);
        return number;
    }

    /** Says what the last element says, for letters that the fonts lack. */
    void spell(String text) {
        ((COSDictionary) marks.getObject(marks.size() - 1)).setString(COSName.ACTUAL_TEXT, text);
    }

    /**
     * Adds a figure.
     *
     * @param box where it lies, points from the lower left corner
     * @return the number of its stretch on its page
     */
    int figure(String alternative, PDRectangle box) {
        int number = mark(Role.FIGURE);
        COSDictionary element = (COSDictionary) marks.getObject(number);
        element.setString(COSName.ALT, alternative);
        COSArray corners = new COSArray();
        corners.add(new COSFloat(box.getLowerLeftX()));
        corners.add(new COSFloat(box.getLowerLeftY()));
        corners.add(new COSFloat(box.getUpperRightX()));
        corners.add(new COSFloat(box.getUpperRightY()));
        element.setItem(COSName.A, attribute("Layout", BOX, corners));
        return number;
    }

    private static COSDictionary attribute(String owner, COSName name, COSBase value) {
        COSDictionary attribute = new COSDictionary();
        attribute.setName(COSName.O, owner);
        attribute.setItem(name, value);
        attribute.setDirect(true);
        return attribute;
    }

    private static PDStructureElement append(Node parent, Role role) {
        PDStructureElement element = new PDStructureElement(role.type(), parent.element);
        parent.element.appendKid(element);
        return element;
    }
}
