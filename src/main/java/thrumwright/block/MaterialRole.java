package thrumwright.block;

/** The part that a yarn plays in a piece, so that one stack of blocks fits any piece. */
public enum MaterialRole {
    /** The cord of the stiff parts: as a rule the warp yarn itself. */
    WARP_CORD,
    /** The design's yarn next to this end: its first stripe at the start, its last at the top. */
    WEFT,
    /** Yarn for what comes out again. */
    WASTE
}
