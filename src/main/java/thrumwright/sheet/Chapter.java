package thrumwright.sheet;

import java.util.List;

/**
 * A part of the work.
 *
 * @param opening what to know before its first step
 */
public record Chapter(Kind kind, String title, List<String> opening, List<Step> steps) {
    /** The parts of the work in order. */
    public enum Kind {
        START,
        DESIGN,
        TOP,
        OFF_LOOM
    }

    public Chapter {
        opening = List.copyOf(opening);
        steps = List.copyOf(steps);
    }
}
