package thrumwright.output.pdf;

import java.util.Set;
import java.util.TreeSet;

/** What is written on: a page, or a drawing that may become a form. */
final class PdfLayer {
    private final PdfBytes out = new PdfBytes(1 << 16);
    private final Set<Integer> named = new TreeSet<>();
    private Standing now;
    private Standing outside;

    /** How things stand. */
    private record Standing(PdfPens pens, PdfPlace place) {}

    /** Begins anew, with its origin there, points. */
    void begin(double x, double y) {
        out.clear();
        named.clear();
        now = new Standing(PdfPens.FIRST, new PdfPlace(x, y));
    }

    PdfBytes out() {
        return out;
    }

    PdfPlace place() {
        return now.place();
    }

    /** Moves its origin to a place, points. */
    void move(double x, double y) {
        place(now.place().move(out, x, y, false));
    }

    void place(PdfPlace other) {
        now = new Standing(now.pens(), other);
    }

    PdfPens pens() {
        return now.pens();
    }

    void pens(PdfPens other) {
        now = new Standing(other, now.place());
    }

    /** Numbers of the forms that it names. */
    Set<Integer> named() {
        return named;
    }

    /** Begins a stretch that is kept apart: what it changes is forgotten after it. */
    void apart() {
        out.add("q\n");
        outside = now;
    }

    void endApart() {
        out.add("Q\n");
        now = outside;
    }

    /** Paints a form, with its origin at the place. */
    void name(int form) {
        named.add(form);
        out.add("/X").add((long) form).add(" Do\n");
    }
}
