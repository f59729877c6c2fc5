package thrumwright.plan.words;

import java.util.Objects;

/**
 * Something that the trade or the geometry recommends, with its arithmetic.
 *
 * @param value what it comes to, in mm, ends or picks per mm, or as a share; see the topic
 * @param sentence words and numbers, in the piece's units
 * @param source where it comes from, or “derived”, or “common practice, no source”
 */
public record Advice(Topic topic, double value, String sentence, String source) {
    /** What an advice is about, and what its value means. */
    public enum Topic {
        /** Ends per mm that suit warp and weft. */
        SETT,
        /** Ends per mm beyond which it can't be woven. */
        CLOSEST_SETT,
        /** Space between two ends over the weft's thickness; 1 is just right. */
        GAP,
        /** Picks per mm. */
        PICKS,
        /** Share of a rib that the weft hides, at most 1. */
        COVERAGE,
        /** Depth that a hem needs for a bar, mm. */
        BAR_DEPTH,
        /** Depth that a hem needs for a slat, mm. */
        SLAT_DEPTH,
        /** Depth that a hem needs for a hook-and-loop strip, mm. */
        STRIP_DEPTH,
        /** Depth of a hem as it comes out, mm. */
        HEM_DEPTH,
        /** Height of a heading of scrap yarn, mm. */
        SCRAP_HEADING,
        /** What a loom leaves of a warp end, mm. */
        FREE_WARP
    }

    public Advice {
        Objects.requireNonNull(topic);
        Objects.requireNonNull(sentence);
        Objects.requireNonNull(source);
    }

    /** The sentence with its source behind it. */
    public String told() {
        return sentence + " [" + source + "]";
    }
}
