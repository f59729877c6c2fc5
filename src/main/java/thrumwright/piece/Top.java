package thrumwright.piece;

import java.util.Objects;
import java.util.Set;

/** How the top end comes about. */
public sealed interface Top {
    /** The start reflected, but for some blocks; every change of the start shows here. */
    record FollowsStart(Set<String> leftOut) implements Top {
        public FollowsStart {
            leftOut = Set.copyOf(leftOut);
        }
    }

    /** A stack of its own. */
    record OnItsOwn(End end) implements Top {
        public OnItsOwn {
            Objects.requireNonNull(end);
        }
    }
}
