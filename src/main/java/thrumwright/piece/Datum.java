package thrumwright.piece;

/** What heights are said from. */
public enum Datum {
    /** The bar below the warp. */
    LOWER_BAR,
    LOWER_NAILS,
    LOWER_PEGS,
    LOWER_NOTCHES,
    /** The bar round which the warp turns back in loops. */
    JOINING_BAR,
    /** The knots with which the warp is tied to the cloth beam. */
    KNOTS,
    /** Where the design begins: its thread stays in the cloth and travels with it. */
    START_LINE
}
