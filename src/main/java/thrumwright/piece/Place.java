package thrumwright.piece;

/** One of a piece's two ends. */
public enum Place {
    START,
    TOP
}
