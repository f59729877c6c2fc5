package thrumwright.output.pdf;

import java.io.IOException;
import java.util.OptionalInt;
import java.util.Set;
import thrumwright.output.vector.Fineness;
import thrumwright.output.vector.Outlines;
import thrumwright.output.vector.PathFigures;

/** Writes the outlines of a path, row by row: rows of many are known again. */
record PdfRows(PathFigures path, Outlines outlines, PdfForms forms, PdfBytes row) {
    /** A row of fewer figures is told each time. */
    private static final int WORTH_A_FORM = 8;

    PdfRows(PdfForms forms) {
        this(new PathFigures(), new Outlines(Fineness.PAPER), forms, new PdfBytes(1 << 12));
    }

    /** All of the path as one outline; an empty one takes nothing in. */
    void together(PdfLayer layer, String operator) {
        if (path.figures() == 0) {
            layer.out().add("0 0 0 0 re\n").add(operator);
            return;
        }
        layer.move(path.x(0), path.y(0));
        outline(layer.out(), 0, path.figures(), operator);
    }

    /**
     * Its figures one by one.
     *
     * @param width of the line, points, 0 if they are filled
     */
    void apart(PdfLayer layer, String operator, double width) throws IOException {
        for (int first = 0, next; first < path.figures(); first = next) {
            next = path.rowEnd(first);
            if (next - first < WORTH_A_FORM) {
                layer.place(figures(layer.out(), layer.place(), first, next, operator));
            } else {
                form(layer, first, next, operator, width);
            }
        }
    }

    private PdfPlace figures(PdfBytes to, PdfPlace from, int first, int next, String operator) {
        PdfPlace place = from;
        for (int i = first; i < next; i++) {
            boolean again = i > first
                    && i + 1 < next
                    && PdfPlace.again(path.x(i - 1), path.x(i), path.x(i + 1))
                    && PdfPlace.again(path.y(i - 1), path.y(i), path.y(i + 1));
            place = place.move(to, path.x(i), path.y(i), again);
            outline(to, i, i + 1, operator);
        }
        return place;
    }

    private void outline(PdfBytes to, int first, int next, String operator) {
        new PdfOutlines(to, !operator.startsWith("S")).write(outlines.of(path, first, next));
        to.add(operator);
    }

    private void form(PdfLayer layer, int first, int next, String operator, double width) throws IOException {
        PdfPlace from = new PdfPlace(path.x(first), path.y(first));
        row.clear();
        PdfPlace to = figures(row, from, first, next, operator);
        layer.move(from.x(), from.y());
        OptionalInt form = forms.form(row, path.box(first, next, width), Set.of());
        if (form.isPresent()) {
            layer.name(form.getAsInt());
        } else {
            layer.out().add(row);
            layer.place(layer.place().after(from, to));
        }
    }
}
