package thrumwright.output.pdf;

import java.util.Set;
import java.util.TreeSet;

/** What is written on: a page, or a drawing that may become a form. */
final class PdfLayer {
    private final PdfBytes out = new PdfBytes(1 << 16);
    private final Set<Integer> named = new TreeSet<>();
    private PdfPens pens;
    private PdfPlace place;
    private Outside outside;

    /** How things stood outside a stretch that is kept apart. */
    private record Outside(PdfPens pens, PdfPlace place) {}

    /** Begins anew, with its origin there, points. */
    void begin(double x, double y) {
        out.clear();
        named.clear();
        pens = PdfPens.FIRST;
        place = new PdfPlace(x, y);
    }

    PdfBytes out() {
        return out;
    }

    PdfPlace place() {
        return place;
    }

    /** Moves its origin to a place, points. */
    void move(double x, double y) {
        place = place.move(out, x, y, false);
    }

    void place(PdfPlace now) {
        place = now;
    }

    PdfPens pens() {
        return pens;
    }

    void pens(PdfPens now) {
        pens = now;
    }

    /** Numbers of the forms that it names. */
    Set<Integer> named() {
        return named;
    }

    /** Begins a stretch that is kept apart: what it changes is forgotten after it. */
    void apart() {
        out.add("q\n");
        outside = new Outside(pens, place);
    }

    void endApart() {
        out.add("Q\n");
        pens = outside.pens();
        place = outside.place();
    }

    /** Paints a form, with its origin at the place. */
    void name(int form) {
        named.add(form);
        out.add("/X").add((long) form).add(" Do\n");
    }
}
