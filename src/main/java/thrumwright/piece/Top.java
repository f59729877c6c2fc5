package thrumwright.piece;

import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import thrumwright.block.Block;

/** How the top end comes about. */
public sealed interface Top {
    /** The start reflected, but for some blocks; every change of the start shows here. */
    record FollowsStart(Set<String> leftOut) implements Top {
        public FollowsStart {
            leftOut = Set.copyOf(leftOut);
        }

        /** The usual top: ordering cords and spread headers are needed at the start only. */
        public static FollowsStart withoutOrderingCords(End start) {
            return new FollowsStart(start.blocks().stream()
                    .filter(Block::startOnly)
                    .map(Block::id)
                    .collect(Collectors.toUnmodifiableSet()));
        }
    }

    /** A stack of its own. */
    record OnItsOwn(End end) implements Top {
        public OnItsOwn {
            Objects.requireNonNull(end);
        }
    }
}
