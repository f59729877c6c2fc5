package thrumwright.piece;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import thrumwright.measure.Length;
import thrumwright.measure.Sett;
import thrumwright.measure.UnitSystem;
import thrumwright.yarn.Colour;
import thrumwright.yarn.Fibre;
import thrumwright.yarn.Firmness;
import thrumwright.yarn.Thickness;
import thrumwright.yarn.Yarn;

/** New pieces to begin from: a small frame loom, plain cotton and one wool, all for the weaver to change. */
public final class Beginnings {
    /** The structure of a first panel: quick to weave, and nothing to sew. */
    public static final String FIRST_PANEL = "knotted-fringe";

    private Beginnings() {}

    /** A piece whose start is a structure, on a loom as the structure wants it, and whose top follows it without any ordering cord. */
    public static Piece with(Structure structure, UnitSystem units) {
        Piece empty = structure.withoutPosts() ? withoutPosts(empty(units)) : empty(units);
        End start = structure.fittedTo(empty);
        return empty.withStart(start).withTop(Top.FollowsStart.withoutOrderingCords(start));
    }

    /** The same on a loom without posts beside the warp. */
    private static Piece withoutPosts(Piece piece) {
        return piece.withLoom(piece.loom().withUprights(Optional.empty()));
    }

    /** A piece without any block. */
    public static Piece empty(UnitSystem units) {
        boolean inches = units == UnitSystem.INCHES;
        return new Piece(
                "",
                "",
                Destiny.UNSAID,
                inches ? loom("36 in", "7/8 in", "1 1/4 in") : loom("90 cm", "22 mm", "30 mm"),
                new Warp(Length.parse(inches ? "10 in" : "25 cm"), Sett.parse(inches ? "8/in" : "3/cm"), "cord"),
                List.of(
                        yarn(
                                "cord",
                                "Cotton cord",
                                0xe9e1cf,
                                Fibre.COTTON,
                                inches ? "0.03 in" : "0.8 mm",
                                Firmness.HARD),
                        yarn("wool", "Wool", 0x2a6f78, Fibre.WOOL, inches ? "0.08 in" : "2 mm", Firmness.SOFT),
                        yarn("scrap", "Scrap yarn", 0xb9a88f, Fibre.WOOL, inches ? "0.08 in" : "2 mm", Firmness.SOFT)),
                "cord",
                "scrap",
                new Design(
                        Length.parse(inches ? "8 in" : "20 cm"), "wool", "wool", Optional.empty(), Optional.empty(), 0),
                Habits.usual(units),
                End.empty(),
                new Top.FollowsStart(Set.of()),
                Ticks.NONE,
                Measures.NONE,
                Meant.NOTHING);
    }

    /** What it leaves free below and above is as usual. */
    private static Loom loom(String open, String post, String gap) {
        return new Loom(
                "",
                new LoomKind.BarToBar(),
                Length.parse(open),
                Optional.of(new Loom.Uprights(Length.parse(post), Length.parse(gap))),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Sheds.FINGERS);
    }

    private static Yarn yarn(String id, String name, int colour, Fibre fibre, String diameter, Firmness firmness) {
        return new Yarn(id, name, new Colour(colour), fibre, new Thickness.Measured(Length.parse(diameter)), firmness);
    }
}
