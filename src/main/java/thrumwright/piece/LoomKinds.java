package thrumwright.piece;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import thrumwright.measure.Length;
import thrumwright.measure.Unit;
import thrumwright.measure.UnitSystem;

/** One loom of each kind, as it fits a piece. */
public final class LoomKinds {
    private LoomKinds() {}

    /** In the order in which they are offered; the sett of the piece is one that each allows. */
    public static List<LoomKind> all(Piece piece) {
        boolean inches = piece.habits().units() == UnitSystem.INCHES;
        Stream<LoomKind> bars = Stream.of(
                new LoomKind.BarToBar(),
                new LoomKind.RoundFrame(LoomKind.Spacer.CORD),
                new LoomKind.JoiningBar(inches ? Length.of(2, Unit.INCH) : Length.of(5, Unit.CENTIMETRE)));
        Stream<LoomKind> pegs = Arrays.stream(LoomKind.Peg.values())
                .map(peg -> new LoomKind.Pegged(piece.warp().sett(), peg));
        Stream<LoomKind> rollers =
                Stream.of(new LoomKind.Rollers(inches ? Length.of(24, Unit.INCH) : Length.of(60, Unit.CENTIMETRE)));
        return Stream.of(bars, pegs, rollers).flatMap(kinds -> kinds).toList();
    }

    /** The kind of that key, as it fits a piece. */
    public static LoomKind of(String key, Piece piece) {
        return all(piece).stream()
                .filter(kind -> kind.key().equals(key))
                .findFirst()
                .orElseThrow();
    }
}
