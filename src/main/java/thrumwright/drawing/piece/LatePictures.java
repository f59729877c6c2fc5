package thrumwright.drawing.piece;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.Map;
import java.util.function.Predicate;
import thrumwright.drawing.yarn.BlockPicture;

/**
 * Pictures that blocks had lately, with all that was worked out for them. A block that is pulled to another number of picks
 * turns the sheds of all above it, and back again at the next: they need not be worked out each time.
 */
final class LatePictures {
    /** Pictures kept of each block. */
    private static final int KEPT = 3;

    private final Map<String, Deque<BlockPicture>> pictures = new HashMap<>();

    /** A picture of the block that shows the same, or this one, which is kept from now on. */
    BlockPicture orAlike(String block, BlockPicture wanted) {
        Deque<BlockPicture> late = pictures.computeIfAbsent(block, id -> new ArrayDeque<>());
        BlockPicture picture = late.stream().filter(wanted::alike).findFirst().orElse(wanted);
        late.remove(picture);
        late.addFirst(picture);
        if (late.size() > KEPT) {
            late.removeLast();
        }
        return picture;
    }

    /** Lets go of the pictures of blocks that are not there any more. */
    void keepOnly(Predicate<String> there) {
        pictures.keySet().removeIf(there.negate());
    }
}
