package thrumwright.output.pdf;

import java.io.IOException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import thrumwright.output.page.Role;

/** The headings of a PDF, as a list to go by (ISO 32000-1, 12.3.3): sheets, their chapters, and the steps in these. */
final class PdfBookmarks {
    private final Node root = new Node("", 0, 0);
    private final Map<Node, Integer> numbers = new IdentityHashMap<>();
    private final Deque<Node> open = new ArrayDeque<>(List.of(root));
    private final Deque<Integer> levels = new ArrayDeque<>(List.of(-1));

    /** A heading, and what stands under it. */
    private static final class Node {
        private final String title;
        private final int page;
        private final double y;
        private final List<Node> kids = new ArrayList<>(0);

        Node(String title, int page, double y) {
            this.title = title;
            this.page = page;
            this.y = y;
        }
    }

    /** Whether such headings are kept. */
    static boolean keeps(Role role) {
        return role == Role.CHAPTER || role == Role.STEP;
    }

    /**
     * Adds one.
     *
     * @param page number of its object
     * @param y where it stands, points from below
     */
    void add(Role role, String title, int page, double y) {
        int level = role.ordinal();
        // a sheet stands above all of its headings, though its role comes later
        int rank = role == Role.SHEET ? 0 : level;
        while (levels.element() >= rank) {
            levels.pop();
            open.pop();
        }
        Node node = new Node(title, page, y);
        open.element().kids.add(node);
        open.push(node);
        levels.push(rank);
    }

    boolean any() {
        return !root.kids.isEmpty();
    }

    /** Writes them; returns the number of their root. */
    int write(PdfObjects objects) throws IOException {
        int number = objects.reserve();
        numbers.put(root, number);
        PdfBytes body = new PdfBytes(256);
        body.add("<</Type/Outlines");
        kids(objects, root, body);
        body.add("/Count ").add((long) root.kids.size());
        objects.small(number, body.add(">>"));
        return number;
    }

    /** What stands under a heading, and where the list of it begins and ends. */
    private void kids(PdfObjects objects, Node node, PdfBytes body) throws IOException {
        List<Node> kids = node.kids;
        kids.forEach(kid -> numbers.put(kid, objects.reserve()));
        for (int i = 0; i < kids.size(); i++) {
            PdfBytes own = new PdfBytes(256);
            own.add("<</Parent ").reference(numbers.get(node));
            if (i > 0) {
                own.add("/Prev ").reference(numbers.get(kids.get(i - 1)));
            }
            if (i + 1 < kids.size()) {
                own.add("/Next ").reference(numbers.get(kids.get(i + 1)));
            }
            heading(objects, kids.get(i), own);
        }
        if (!kids.isEmpty()) {
            body.add("/First ").reference(numbers.get(kids.get(0)));
            body.add("/Last ").reference(numbers.get(kids.get(kids.size() - 1)));
        }
    }

    private void heading(PdfObjects objects, Node node, PdfBytes body) throws IOException {
        body.add("/Title").text(node.title);
        body.add("/Dest[").reference(node.page).add("/XYZ 0 ").number(node.y).add("null]");
        kids(objects, node, body);
        if (!node.kids.isEmpty()) {
            // below nought: closed until it is opened
            body.add("/Count -").add((long) node.kids.size());
        }
        objects.small(numbers.get(node), body.add(">>"));
    }
}
