package thrumwright.output.pdf;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.security.MessageDigest;
import java.util.HashMap;
import java.util.Map;

/**
 * Figures that come again and again, as rows of yarn do: they are written once, as a form (ISO 32000-1, 8.10), and from
 * then on only named. Their colour and pen are those of the place where they are stamped.
 */
final class PdfStamps {
    private final PdfObjects objects;
    private final MessageDigest digest = PdfObjects.digest();
    private final PdfBytes form = new PdfBytes(1 << 14);
    private final Map<Mark, Integer> stamps = new HashMap<>();

    /** Tells one shape from all others, and takes little room: the first 128 bits of its SHA-256. */
    private record Mark(long first, long second) {}

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
        Mark mark = mark(shape);
        Integer known = stamps.get(mark);
        if (known != null) {
            return known;
        }
        int fresh = write(path, first, next, operator, pen);
        stamps.put(mark, fresh);
        return fresh;
    }

    private Mark mark(int[] shape) {
        ByteBuffer bytes = ByteBuffer.allocate(Integer.BYTES * shape.length);
        bytes.asIntBuffer().put(shape);
        ByteBuffer sum = ByteBuffer.wrap(digest.digest(bytes.array()));
        return new Mark(sum.getLong(), sum.getLong());
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
