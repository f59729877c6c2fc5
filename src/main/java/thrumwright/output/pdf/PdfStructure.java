package thrumwright.output.pdf;

import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;
import thrumwright.output.page.Role;

/**
 * The structure tree of a PDF (ISO 32000-1, 14.7), grown in the order of reading, page after page. An element is written
 * as soon as nothing more can come into it.
 */
final class PdfStructure {
    private final PdfObjects objects;
    private final int root;
    private final Element whole;
    private final Deque<Element> open = new ArrayDeque<>();
    private final PdfBytes body = new PdfBytes(1 << 10);
    private final PdfBytes marksByPage = new PdfBytes(1 << 10);
    private final PdfBytes marks = new PdfBytes(1 << 10);
    private int pages;
    private int page;
    private int marksOnPage;
    private Leaf leaf;

    /** An element that holds others, and the last of those. */
    private static final class Element {
        private final int number;
        private final Role role;
        private final int parent;
        private final PdfBytes kids = new PdfBytes(64);
        private Role lastRole;
        private Element last;

        Element(int number, Role role, int parent) {
            this.number = number;
            this.role = role;
            this.parent = parent;
        }
    }

    /** What a figure shows, in words, and where it lies, points from the lower left corner. */
    private record Depicted(String alternative, Rectangle2D box) {}

    /** An element that holds a stretch of a page. */
    private static final class Leaf {
        private final int number;
        private final Role role;
        private final int parent;
        private final int mark;
        private final Optional<Depicted> figure;
        private String actual;

        Leaf(int number, Role role, int parent, int mark, Optional<Depicted> figure) {
            this.number = number;
            this.role = role;
            this.parent = parent;
            this.mark = mark;
            this.figure = figure;
        }
    }

    PdfStructure(PdfObjects objects) {
        this.objects = objects;
        root = objects.reserve();
        whole = new Element(objects.reserve(), Role.DOCUMENT, root);
        open.push(whole);
    }

    /** Number of the tree's root. */
    int root() {
        return root;
    }

    /** Number of the page that it is at. */
    int page() {
        return page;
    }

    /**
     * Goes on with a new page.
     *
     * @return by which the page finds its marks again
     */
    int page(int number) {
        page = number;
        marks.clear();
        marksOnPage = 0;
        return pages;
    }

    void endPage() throws IOException {
        finishLeaf();
        int list = objects.reserve();
        body.clear();
        body.add('[').add(marks).add(']');
        objects.small(list, body);
        marksByPage.add((long) pages).add(' ').reference(list).add(' ');
        pages++;
    }

    /** Begins an element that holds others, or goes on with the last one. */
    void open(Role role) throws IOException {
        finishLeaf();
        Element parent = open.element();
        if (!(role.goesOn() && parent.lastRole == role)) {
            finish(parent.last);
            parent.last = new Element(objects.reserve(), role, parent.number);
            parent.lastRole = role;
            parent.kids.reference(parent.last.number).add(' ');
        }
        open.push(parent.last);
    }

    void close() throws IOException {
        finishLeaf();
        open.pop();
    }

    /** Adds an element that holds a stretch of the page; returns the number of that stretch on its page. */
    int mark(Role role) throws IOException {
        return mark(role, Optional.empty());
    }

    private int mark(Role role, Optional<Depicted> figure) throws IOException {
        finishLeaf();
        Element parent = open.element();
        finish(parent.last);
        parent.last = null;
        parent.lastRole = role;
        leaf = new Leaf(objects.reserve(), role, parent.number, marksOnPage, figure);
        parent.kids.reference(leaf.number).add(' ');
        marks.reference(leaf.number).add(' ');
        return marksOnPage++;
    }

    /** Says what the last element says, for letters that the fonts lack. */
    void spell(String text) {
        leaf.actual = text;
    }

    /**
     * Adds a figure.
     *
     * @param box where it lies, points from the lower left corner
     * @return the number of its stretch on its page
     */
    int figure(String alternative, Rectangle2D box) throws IOException {
        return mark(Role.FIGURE, Optional.of(new Depicted(alternative, box)));
    }

    /** Writes what is still open, and the root. */
    void finish() throws IOException {
        finish(whole);
        body.clear();
        body.add("<</Type/StructTreeRoot/K ").reference(whole.number);
        body.add("/ParentTree<</Nums[").add(marksByPage).add("]>>/ParentTreeNextKey ");
        body.add((long) pages).add(">>");
        objects.small(root, body);
    }

    private void finish(Element node) throws IOException {
        if (node == null) {
            return;
        }
        finish(node.last);
        begin(node.role, node.parent);
        body.add("/K[").add(node.kids).add("]>>");
        objects.small(node.number, body);
    }

    private void finishLeaf() throws IOException {
        if (leaf == null) {
            return;
        }
        begin(leaf.role, leaf.parent);
        body.add("/Pg ").reference(page).add("/K ").add((long) leaf.mark);
        if (leaf.role == Role.HEAD) {
            body.add("/A<</O/Table/Scope/Column>>");
        }
        if (leaf.actual != null) {
            body.add("/ActualText").text(leaf.actual);
        }
        if (leaf.figure.isPresent()) {
            Rectangle2D box = leaf.figure.get().box();
            body.add("/Alt").text(leaf.figure.get().alternative()).add("/A<</O/Layout/BBox[");
            body.number(box.getMinX()).number(box.getMinY());
            body.number(box.getMaxX()).number(box.getMaxY()).add("]>>");
        }
        objects.small(leaf.number, body.add(">>"));
        leaf = null;
    }

    private void begin(Role role, int parent) {
        body.clear();
        body.add("<</Type/StructElem/S/").add(role.type()).add("/P ").reference(parent);
    }
}
