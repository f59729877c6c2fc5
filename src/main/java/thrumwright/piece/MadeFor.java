package thrumwright.piece;

/** What a piece is made for, which says what becomes of it off the loom. */
public enum MadeFor {
    /** To hang free. */
    HUNG,
    /** Sewn to a covered board. */
    MOUNTED,
    /** On a board in a frame. */
    FRAMED,
    FLOOR_OR_TABLE,
    /** To learn from and to keep. */
    SAMPLE
}
