package thrumwright.piece;

/** One answer for each kind of loom. */
public interface LoomCases<T> {
    T barToBar(LoomKind.BarToBar kind);

    T roundFrame(LoomKind.RoundFrame kind);

    T joiningBar(LoomKind.JoiningBar kind);

    T pegged(LoomKind.Pegged kind);

    T rollers(LoomKind.Rollers kind);
}
