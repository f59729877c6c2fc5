package thrumwright.testing.disk;

/** What a crash does to that which was written but not forced to disk. */
public enum Loss {
    /** It is gone, and so are changes of names. */
    DROP,
    /** Files have their new length and names, and hold zeros. */
    ZERO,
    /** Files have their new names and half of what they were to hold. */
    HALVE,
    /** All of it arrived. */
    KEEP
}
