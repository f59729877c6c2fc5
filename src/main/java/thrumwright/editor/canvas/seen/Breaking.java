package thrumwright.editor.canvas.seen;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import thrumwright.block.Side;
import thrumwright.drawing.piece.PiecePicture;
import thrumwright.piece.Place;

/**
 * Which parts of a piece are left out, and where the others come to lie because of that.
 *
 * @param more bare warp that is shown at either end beyond the least, pixels, 0 or more
 */
record Breaking(PiecePicture picture, Room room, Zoom.Breaks breaks, double scale, double more) {
    /** How thick a bar is drawn, pixels. */
    static final double BAR = 8;

    /** Warp next to a bar, and at least next to an end, pixels. */
    private static final double BY_A_BAR = 3;

    private static final double BY_AN_END = 5;

    /** About how far tails hang below the start, with the air round the picture: pixels. */
    private static final double HANGING = 22;
    /** So much of the room should be cloth at first sight. */
    static final double MUCH = 0.6;

    /** Beside posts lie the ends of bars, and how much is shown with them of a post that is broken out: pixels. */
    static final double AIR = BAR / 2;

    private static final double POST = 5 + AIR;

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
    Outside beside(Side side) {
        return whole() ? new Outside(outermost(), outermost(), POST, scale) : beside(side, told());
    }

    /**
     * What is shown beside the cloth besides its tails: as much as leaves enough to the cloth. It follows from the width and
     * not from how high the ends are, so that what is typed moves nothing sideways.
     */
    private Told told() {
        List<Told> all = new ArrayList<>();
        RowRoom.widths(picture, scale).forEach(wide -> all.add(new Told(wide, post())));
        all.add(new Told(0, post()));
        double enough = MUCH / Math.max(MUCH, 1 - (least() + HANGING) / room.height());
        return all.stream()
                .filter(told -> breaks != Zoom.Breaks.MIDDLE || wide(told) >= enough * room.between())
                .findFirst()
                .orElse(new Told(0, 0));
    }

    /**
     * At either side, pixels, 0 or more.
     *
     * @param notes room for those of rows
     * @param post how much is shown of a post that is broken out
     */
    private record Told(double notes, double post) {}

    /** Notes of rows stand next to what hangs there; where the posts are near, outside them. */
    private Outside beside(Side side, Told told) {
        double notes = told.notes() / scale;
        double tails = Reach.mm(picture, side, scale);
        Outside apart = new Outside(outermost(), tails + notes, told.post(), scale);
        if (apart.broken()) {
            return apart;
        }
        double length = Math.max(outermost(), tails) + notes;
        return new Outside(length, length, POST, scale);
    }

    /** How much of the room is cloth, from selvedge to selvedge and from end to end with its loops: 0 to 1. */
    double share() {
        double loops = picture.loops(Place.START) + picture.loops(Place.TOP);
        double high = Math.min(room.height(), (picture.height() + loops) * scale);
        return wide(told()) * high / (room.between() * room.height());
    }

    /** How much of the width is cloth, pixels. */
    private double wide(Told told) {
        double sides = Stream.of(Side.values())
                .mapToDouble(side -> beside(side, told).pixels())
                .sum();
        return Math.max(0, Math.min(picture.span() * scale, room.between() - sides));
    }

    /** To the ends of the bars, mm. */
    private double outermost() {
        return picture.reach().outermost() + AIR / scale;
    }

    /** So that the edge of a post is seen, and what is tied round it: pixels. */
    private double post() {
        return POST + picture.reach().round() * scale;
    }

    /** What the whole width takes, pixels. */
    double wide() {
        return picture.span() * scale
                + beside(Side.LEFT).pixels()
                + beside(Side.RIGHT).pixels();
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
        Outside left = beside(Side.LEFT);
        Outside right = beside(Side.RIGHT);
        double over = torn() ? room.onPixel(wide() - room.between()) : 0;
        double from = left.broken() ? -left.next() : -Axis.FAR;
        double to = right.broken() ? picture.span() + right.next() : Axis.FAR;
        List<Axis.Span> spans = new ArrayList<>();
        if (left.broken()) {
            spans.add(new Axis.Span(-Axis.FAR, -left.farFrom(), room.onPixel(left.nearer())));
        }
        if (torn()) {
            double each = (room.between() - Outside.GAP - left.pixels() - right.pixels()) / 2 / scale;
            spans.add(new Axis.Span(from, each, 0));
            spans.add(new Axis.Span(picture.span() - each, to, -over));
        } else {
            spans.add(new Axis.Span(from, to, 0));
        }
        if (right.broken()) {
            double far = picture.span() + right.farFrom();
            spans.add(new Axis.Span(far, Axis.FAR, -over - room.onPixel(right.nearer())));
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
