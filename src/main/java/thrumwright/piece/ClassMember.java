package thrumwright.piece;

import java.util.Map;
import java.util.Optional;
import thrumwright.measure.BadMeasure;
import thrumwright.measure.Length;
import thrumwright.measure.Sett;
import thrumwright.measure.Unit;

/**
 * One loom of a class, with what is different there. What is empty is as in the class's piece.
 *
 * @param name of the weaver; may be blank, then there is a line on the sheet to write it on
 * @param loom what the weavers call the loom
 * @param width nominal width of the warp
 * @param posts of the loom
 * @param open clear height of one face of the loom
 * @param warpPerEnd what one warp end takes on the loom, with what is lost
 * @param firstYarnId yarn of the design's first stripe
 * @param lastYarnId yarn of its last stripe
 */
public record ClassMember(
        String name,
        Optional<String> loom,
        Optional<Length> width,
        Optional<Sett> sett,
        Optional<OwnPosts> posts,
        Optional<Length> open,
        Optional<Length> warpPerEnd,
        Optional<String> firstYarnId,
        Optional<String> lastYarnId) {
    /** The most letters of a weaver's or a loom's name. */
    public static final int LONGEST_NAME = 80;

    /**
     * A loom's posts beside the warp.
     *
     * @param uprights empty on a loom without any
     */
    public record OwnPosts(Optional<Loom.Uprights> uprights) {
        public static final OwnPosts NONE = new OwnPosts(Optional.empty());

        public static OwnPosts of(Loom.Uprights uprights) {
            return new OwnPosts(Optional.of(uprights));
        }
    }

    /** @throws BadMeasure if a name is too long to stand in a list */
    public ClassMember {
        checkName(name);
        loom.ifPresent(ClassMember::checkName);
    }

    private static void checkName(String name) {
        if (name.length() > LONGEST_NAME) {
            throw new BadMeasure("class.name", Map.of("most", LONGEST_NAME, "count", name.length()));
        }
    }

    /** In everything as the piece. */
    public static ClassMember named(String name) {
        return new ClassMember(
                name,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    /**
     * The piece as it is woven on this loom.
     *
     * @param piece with all yarns
     * @throws IllegalArgumentException if that can't be; the message is for the user
     */
    public Piece on(Piece piece) {
        Warp usual = piece.warp();
        Warp warp = width.isEmpty() && sett.isEmpty()
                ? usual
                : usual.resized(width.orElse(usual.width()), sett.orElse(usual.sett()));
        Design design = piece.design();
        Design own = design.withFirstYarn(firstYarnId.orElse(design.firstYarnId()))
                .withLastYarn(lastYarnId.orElse(design.lastYarnId()));
        return piece.withWarp(warp).withDesign(own).withLoom(loom(piece, warp));
    }

    private Loom loom(Piece piece, Warp warp) {
        Loom usual = piece.loom();
        return usual.withName(loom.orElse(usual.name()))
                .withOpen(open.orElse(usual.open()))
                .withUprights(posts.map(OwnPosts::uprights)
                        .orElseGet(() -> usual.uprights().map(beside -> moved(beside, piece, warp))))
                .withWarpPerEnd(warpPerEnd.or(() -> usual.warpPerEnd().map(end -> warpPerEnd(piece, end))));
    }

    /** Posts stay where they are: a narrower warp leaves a wider gap on both sides. */
    private static Loom.Uprights moved(Loom.Uprights usual, Piece piece, Warp warp) {
        double wider = (span(warp) - span(piece.warp())) / 2;
        if (Math.abs(wider) < 1e-6) {
            return usual;
        }
        if (wider > usual.gap().mm() + 1e-6) {
            throw new BadMeasure("class.posts", Map.of("width", warp.width()));
        }
        return new Loom.Uprights(
                usual.diameter(), inUsualUnit(Math.max(0, usual.gap().mm() - wider), piece));
    }

    private static double span(Warp warp) {
        return (warp.ends() - 1) * warp.sett().spacing();
    }

    /**
     * On a higher or lower loom a warp end is longer or shorter. Whether it runs over one face of the loom or over both,
     * this is enough: in proportion where the loom is higher, by the difference where it is lower (derived).
     */
    private Length warpPerEnd(Piece piece, Length typed) {
        double usual = piece.loom().open().mm();
        double own = open.map(Length::mm).orElse(usual);
        double perEnd = typed.mm();
        if (own == usual) {
            return typed;
        }
        double enough = Math.max(perEnd * own / usual, perEnd + own - usual);
        Unit unit = piece.habits().units().usual();
        return Length.of(Math.ceil(enough / unit.millimetres() - 1e-9), unit);
    }

    private static Length inUsualUnit(double mm, Piece piece) {
        Unit unit = piece.habits().units().usual();
        return Length.of(mm / unit.millimetres(), unit);
    }

    public ClassMember withName(String other) {
        return new ClassMember(other, loom, width, sett, posts, open, warpPerEnd, firstYarnId, lastYarnId);
    }

    public ClassMember withLoom(Optional<String> other) {
        return new ClassMember(name, other, width, sett, posts, open, warpPerEnd, firstYarnId, lastYarnId);
    }

    public ClassMember withWidth(Optional<Length> other) {
        return new ClassMember(name, loom, other, sett, posts, open, warpPerEnd, firstYarnId, lastYarnId);
    }

    public ClassMember withSett(Optional<Sett> other) {
        return new ClassMember(name, loom, width, other, posts, open, warpPerEnd, firstYarnId, lastYarnId);
    }

    public ClassMember withPosts(Optional<OwnPosts> other) {
        return new ClassMember(name, loom, width, sett, other, open, warpPerEnd, firstYarnId, lastYarnId);
    }

    public ClassMember withOpen(Optional<Length> other) {
        return new ClassMember(name, loom, width, sett, posts, other, warpPerEnd, firstYarnId, lastYarnId);
    }

    public ClassMember withWarpPerEnd(Optional<Length> other) {
        return new ClassMember(name, loom, width, sett, posts, open, other, firstYarnId, lastYarnId);
    }

    public ClassMember withFirstYarn(Optional<String> otherId) {
        return new ClassMember(name, loom, width, sett, posts, open, warpPerEnd, otherId, lastYarnId);
    }

    public ClassMember withLastYarn(Optional<String> otherId) {
        return new ClassMember(name, loom, width, sett, posts, open, warpPerEnd, firstYarnId, otherId);
    }
}
