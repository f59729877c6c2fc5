package thrumwright.editor.canvas.seen;

import java.util.ArrayList;
import java.util.List;
import thrumwright.drawing.piece.PiecePicture;
import thrumwright.piece.Place;

/**
 * Which parts of a piece are left out, and where the others come to lie because of that.
 *
 * @param more bare warp that is shown at either end beyond the least, pixels, 0 or more
 */
record Breaking(PiecePicture picture, Room room, Zoom.Breaks breaks, double scale, double more) {
    /** How thick a bar is drawn, pixels. */
    static final double BAR = 9;

    /** Warp next to a bar, and at least next to an end, pixels. */
    private static final double BY_A_BAR = 7;

    private static final double BY_AN_END = 12;

    /** Rows have notes where so much of the width is left for the cloth. */
    private static final double NOTED = 0.55;

    /** How much of a post is shown, pixels. */
    private static final double POST = 16;

    Axes axes() {
        return new Axes(across(), up());
    }

    /** Both bars and the bare warp of which as much as possible is left out, pixels without what is drawn in it. */
    static double least() {
        return 2 * (BAR + BY_A_BAR + BY_AN_END + Outside.GAP);
    }

    /** Posts as far as they are shown, and what is left out beside them, pixels. */
    static double leastBeside() {
        return 2 * (POST + Outside.GAP);
    }

    /** The bare warp from an end to its bar. */
    Outside bare(Place place) {
        double length = place == Place.START ? -picture.lowerBar() : picture.upperBar() - picture.height();
        double next = whole() ? length : picture.beyond(place) + (BY_AN_END + more) / scale;
        return new Outside(length, next, BY_A_BAR, scale);
    }

    private boolean whole() {
        return breaks == Zoom.Breaks.NONE;
    }

    /** From the selvedge to the outer edge of a post or to where tails reach. */
    Outside beside() {
        if (whole()) {
            return new Outside(picture.margin(), picture.margin(), POST, scale);
        }
        Outside noted = beside(CanvasMap.ROW_NOTES / scale);
        boolean enough = breaks != Zoom.Breaks.MIDDLE || room.between() - 2 * noted.pixels() >= NOTED * room.between();
        return enough && CanvasMap.close(picture, scale) ? noted : beside(0);
    }

    /**
     * Notes of rows stand next to what hangs there; where the posts are near, outside them.
     *
     * @param notes room for them, mm, 0 or more
     */
    private Outside beside(double notes) {
        double next = picture.tailsBeside() + notes;
        Outside apart = new Outside(picture.margin(), next, POST, scale);
        if (apart.broken()) {
            return apart;
        }
        double length = Math.max(picture.margin(), picture.tailsBeside()) + notes;
        return new Outside(length, length, POST, scale);
    }

    /** What the whole width takes, pixels. */
    double wide() {
        return picture.span() * scale + 2 * beside().pixels();
    }

    /** From one bar's far edge to the other's, pixels. */
    double high() {
        return below() + picture.height() * scale + bare(Place.TOP).pixels() + BAR;
    }

    /** From the start to the lower bar's far edge, pixels. */
    double below() {
        return bare(Place.START).pixels() + BAR;
    }

    /** Whether the middle is left out, so that both selvedges have room. */
    boolean torn() {
        return breaks == Zoom.Breaks.MIDDLE && wide() > room.between();
    }

    private Axis across() {
        double each = torn() ? ((room.between() - Outside.GAP) / 2 - beside().pixels()) / scale : Axis.FAR;
        double over = torn() ? room.onPixel(wide() - room.between()) : 0;
        List<Axis.Span> spans = new ArrayList<>();
        double from = -Axis.FAR;
        double to = Axis.FAR;
        double nearer = room.onPixel(beside().nearer());
        if (beside().broken()) {
            from = -beside().next();
            to = picture.span() - from;
            spans.add(new Axis.Span(-Axis.FAR, -beside().farFrom(), nearer));
        }
        if (torn()) {
            spans.add(new Axis.Span(from, each, 0));
            spans.add(new Axis.Span(picture.span() - each, to, -over));
        } else {
            spans.add(new Axis.Span(from, to, 0));
        }
        if (beside().broken()) {
            spans.add(new Axis.Span(picture.span() + beside().farFrom(), Axis.FAR, -over - nearer));
        }
        return new Axis(scale, spans);
    }

    private Axis up() {
        Outside below = bare(Place.START);
        Outside above = bare(Place.TOP);
        double low = below.broken() ? -below.next() : -Axis.FAR;
        double high = above.broken() ? picture.height() + above.next() : Axis.FAR;
        List<Axis.Span> spans = new ArrayList<>(List.of(new Axis.Span(low, high, 0)));
        if (below.broken()) {
            spans.add(0, new Axis.Span(-Axis.FAR, -below.farFrom(), room.onPixel(-below.nearer())));
        }
        if (above.broken()) {
            double from = picture.height() + above.farFrom();
            spans.add(new Axis.Span(from, Axis.FAR, room.onPixel(above.nearer())));
        }
        return new Axis(-scale, spans);
    }
}
