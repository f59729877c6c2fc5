package thrumwright.editor.canvas.seen;

import java.util.List;

/**
 * One direction of the canvas: what is shown of it, stretch by stretch and all at one scale, and what is left out between
 * them. Places are pixels from where the direction's 0 mm lies in the first stretch that is worked out.
 *
 * @param scale pixels per mm, not 0; below 0 where mm count against the pixels
 * @param spans from the least mm on; at least one
 */
public record Axis(double scale, List<Span> spans) {
    /** Beyond all that is ever drawn, mm. */
    static final double FAR = 1e6;

    /**
     * A stretch that is shown.
     *
     * @param from and to mm
     * @param zero pixels, where its 0 mm would lie
     */
    public record Span(double from, double to, double zero) {}

    /** What is left out, pixels from the lesser to the greater. */
    public record Gap(double from, double to) {
        /** Half way across, pixels, of either sign. */
        public double middle() {
            return (from + to) / 2;
        }
    }

    public Axis {
        spans = List.copyOf(spans);
    }

    /** As {@link Axes#same}. */
    public boolean same(Axis other) {
        boolean same = scale == other.scale && spans.size() == other.spans.size();
        for (int i = 0; same && i < spans.size(); i++) {
            Span one = spans.get(i);
            Span its = other.spans.get(i);
            same = one.from == its.from && one.to == its.to && one.zero == its.zero;
        }
        return same;
    }

    /** All in one. */
    static Axis whole(double scale) {
        return new Axis(scale, List.of(new Span(-FAR, FAR, 0)));
    }

    /** Where a place lies, mm of any sign; what is left out lies between its neighbours. */
    public double pixel(double mm) {
        int i = 0;
        while (i < spans.size() - 1 && mm > spans.get(i).to()) {
            i++;
        }
        Span span = spans.get(i);
        if (i == 0 || mm >= span.from()) {
            return at(span, mm);
        }
        Span before = spans.get(i - 1);
        double share = (mm - before.to()) / (span.from() - before.to());
        return at(before, before.to()) + share * (at(span, span.from()) - at(before, before.to()));
    }

    /** What lies there: mm, of any sign. */
    public double mm(double pixel) {
        int i = 0;
        while (i < spans.size() - 1
                && ahead(pixel, at(spans.get(i), spans.get(i).to()))) {
            i++;
        }
        Span span = spans.get(i);
        if (i == 0 || !ahead(at(span, span.from()), pixel)) {
            return (pixel - span.zero()) / scale;
        }
        Span before = spans.get(i - 1);
        double low = at(before, before.to());
        double share = (pixel - low) / (at(span, span.from()) - low);
        return before.to() + share * (span.from() - before.to());
    }

    private double at(Span span, double mm) {
        return span.zero() + mm * scale;
    }

    /** Whether the one lies farther on in mm than the other. */
    private boolean ahead(double pixel, double other) {
        return scale > 0 ? pixel > other : pixel < other;
    }

    /** Whether a place is shown and not left out, mm of any sign. */
    public boolean shows(double mm) {
        return spans.stream().anyMatch(span -> mm >= span.from() && mm <= span.to());
    }

    /** All that is left out. */
    public List<Gap> gaps() {
        return java.util.stream.IntStream.range(1, spans.size())
                .mapToObj(i -> gap(
                        at(spans.get(i - 1), spans.get(i - 1).to()),
                        at(spans.get(i), spans.get(i).from())))
                .toList();
    }

    private static Gap gap(double one, double other) {
        return new Gap(Math.min(one, other), Math.max(one, other));
    }
}
