package thrumwright.output.pdf;

import java.io.IOException;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Figures that come again and again, as rows of yarn do: they are written once, as a form (ISO 32000-1, 8.10), and from
 * then on only named. Their colour and pen are those of the place where they are stamped.
 */
final class PdfStamps {
    /** So many are remembered, those that came last. */
    private static final int REMEMBERED = 256;

    private final PdfObjects objects;
    private final PdfBytes form = new PdfBytes(1 << 14);
    private final Map<Shape, Integer> stamps = new LinkedHashMap<>(REMEMBERED, 0.75f, true);

    /** What some figures look like, wherever they lie. */
    private static final class Shape {
        private final int[] shape;
        private final int hash;

        Shape(int[] shape) {
            this.shape = shape;
            this.hash = Arrays.hashCode(shape);
        }

        @Override
        public int hashCode() {
            return hash;
        }

        @Override
        public boolean equals(Object other) {
            return other instanceof Shape that && Arrays.equals(shape, that.shape);
        }
    }

    PdfStamps(PdfObjects objects) {
        this.objects = objects;
    }

    /**
     * The number of the form with some figures of a path.
     *
     * @param operator by which they are painted
     * @param pen width of the line, 0 if they are filled
     */
    int form(PdfPath path, int first, int next, String operator, double pen) throws IOException {
        int[] shape = path.shape(first, next);
        // a pen of no width draws the finest line there is, and fills nothing
        shape[0] = operator.equals("S\n") ? 1 + PdfBytes.hundredths(pen) : 0;
        Shape key = new Shape(shape);
        Integer form = stamps.get(key);
        if (form == null) {
            form = write(path, first, next, operator, pen);
            stamps.put(key, form);
            if (stamps.size() > REMEMBERED) {
                stamps.remove(stamps.keySet().iterator().next());
            }
        }
        return form;
    }

    private int write(PdfPath path, int first, int next, String operator, double pen) throws IOException {
        form.clear();
        form.add("/Type/XObject/Subtype/Form/Resources<<>>/BBox[");
        for (double side : path.box(first, next, pen)) {
            form.number(side);
        }
        String entries = form.add(']').toString();
        form.clear();
        path.write(form, first, next, path.x(first), path.y(first));
        int number = objects.reserve();
        objects.stream(number, entries, form.add(operator));
        return number;
    }
}
