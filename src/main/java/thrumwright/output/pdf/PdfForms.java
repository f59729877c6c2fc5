package thrumwright.output.pdf;

import java.io.IOException;
import java.util.HashMap;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import java.util.zip.CRC32;
import java.util.zip.CRC32C;
import java.util.zip.Checksum;

/**
 * What comes again, as rows of yarn do and, in a class, whole drawings: what is met for the second time is written once
 * more, as a form (ISO 32000-1, 8.10), and from then on only named. A form without colours takes those of its place.
 */
final class PdfForms {
    private static final int MET_ONCE = -1;

    private final PdfObjects objects;
    private final int fonts;
    private final CRC32 one = new CRC32();
    private final CRC32C other = new CRC32C();
    private final PdfBytes entries = new PdfBytes(1 << 10);
    private final Map<Mark, Integer> forms = new HashMap<>();

    /**
     * Tells one text from all others of a file, and takes little room. Two checks by different polynomials tell all texts
     * apart that differ in less than nine bytes in a row, and others but once in 2<sup>64</sup>; a file has some thousand.
     */
    private record Mark(long one, long other, int size) {
        @Override
        public boolean equals(Object other) {
            return other instanceof Mark mark && one == mark.one && this.other == mark.other && size == mark.size;
        }

        @Override
        public int hashCode() {
            return Long.hashCode(one);
        }
    }

    /** @param fonts number of the fonts by their names */
    PdfForms(PdfObjects objects, int fonts) {
        this.objects = objects;
        this.fonts = fonts;
    }

    /**
     * The number of the form with this content; none if it is met for the first time.
     *
     * @param box least x and y, greatest x and y of what it paints, points
     * @param within numbers of forms that it names
     */
    OptionalInt form(PdfBytes content, double[] box, Set<Integer> within) throws IOException {
        describe(box, within);
        Mark mark = mark(content);
        Integer known = forms.putIfAbsent(mark, MET_ONCE);
        if (known == null) {
            return OptionalInt.empty();
        }
        if (known == MET_ONCE) {
            known = objects.reserve();
            objects.stream(known, entries.toString(), content);
            forms.put(mark, known);
        }
        return OptionalInt.of(known);
    }

    private void describe(double[] box, Set<Integer> within) {
        entries.clear();
        entries.add("/Type/XObject/Subtype/Form/BBox[");
        for (double side : box) {
            entries.number(side);
        }
        entries.add("]/Resources<</Font ").reference(fonts);
        names(entries, within);
        entries.add(">>");
    }

    private Mark mark(PdfBytes content) {
        return new Mark(sum(one, content), sum(other, content), content.size());
    }

    private long sum(Checksum sum, PdfBytes content) {
        sum.reset();
        sum.update(entries.array(), 0, entries.size());
        sum.update(content.array(), 0, content.size());
        return sum.getValue();
    }

    /** The names of forms among the resources of what names them. */
    static void names(PdfBytes entries, Set<Integer> forms) {
        entries.add("/XObject<<");
        for (int form : forms) {
            entries.add("/X").add((long) form).add(' ').reference(form);
        }
        entries.add(">>");
    }
}
