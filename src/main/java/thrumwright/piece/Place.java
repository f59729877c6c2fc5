package thrumwright.piece;

import java.util.Locale;

/** One of a piece's two ends. */
public enum Place {
    START,
    TOP;

    /** The key of the step in which a block of this end is worked on the loom. */
    public String step(String blockId) {
        return name().toLowerCase(Locale.ROOT) + "/" + blockId;
    }
}
