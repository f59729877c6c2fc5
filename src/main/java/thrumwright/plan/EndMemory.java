package thrumwright.plan;

import java.util.List;
import thrumwright.block.Block;
import thrumwright.block.Course;
import thrumwright.piece.Habits;
import thrumwright.piece.Loom;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;
import thrumwright.piece.Warp;
import thrumwright.yarn.Yarn;

/**
 * What was worked out for the blocks of an end, to be taken over where nothing changed that it follows from: the block itself,
 * what its first row goes on from, and the basis of all.
 *
 * @param alone each as if its yarn were cut for it alone
 * @param before what the first row of each goes on from
 * @param after what the next row after each goes on from
 * @param joined each with the length that it is woven from
 */
record EndMemory(Basis basis, List<BlockPlan> alone, List<Course> before, List<Course> after, List<BlockPlan> joined) {
    /** Of an end that was never planned. */
    static final EndMemory NOTHING = new EndMemory(null, List.of(), List.of(), List.of(), List.of());

    /** What the figures of all blocks of an end follow from. */
    record Basis(Warp warp, Loom loom, List<Yarn> yarns, String cordId, String wasteId, Yarn stripe, Habits habits) {
        static Basis of(Piece piece, Place place) {
            return new Basis(
                    piece.warp(),
                    piece.loom(),
                    piece.yarns(),
                    piece.cordId(),
                    piece.wasteId(),
                    piece.stripe(place),
                    piece.habits());
        }
    }

    /** What may be taken over for a piece's end of so many blocks. */
    Recall on(Basis other, int count) {
        return !alone.isEmpty() && other.equals(basis) ? new Recall(this, count) : new Recall(NOTHING, count);
    }

    /** Finds the blocks of an end that is planned among those of the one that was. */
    static final class Recall {
        private final EndMemory memory;
        /** By how much the blocks above those that were put in or taken out have moved. */
        private final int shift;
        /** Where each block stood; −1 if it is worked out anew. */
        private final int[] stood;

        private Recall(EndMemory memory, int count) {
            this.memory = memory;
            this.shift = count - memory.alone.size();
            this.stood = new int[count];
        }

        /** What was worked out for a block by itself, as it goes on from there; null if it has to be worked out. */
        BlockPlan alone(int place, Block block, Course before) {
            int found = isAt(place, block) ? place : isAt(place - shift, block) ? place - shift : -1;
            boolean same = found >= 0 && memory.before.get(found).equals(before);
            stood[place] = same ? found : -1;
            if (found < 0) {
                return null;
            }
            BlockPlan was = memory.alone.get(found);
            return same || was.work().isEmpty()
                    ? was
                    : was.with(was.work().get().goingOn(before));
        }

        private boolean isAt(int place, Block block) {
            return place >= 0
                    && place < memory.alone.size()
                    && memory.alone.get(place).block().equals(block);
        }

        /** What the next row goes on from after a block that stands there by itself. */
        Course after(int place, Course before, BlockPlan plan) {
            return stood[place] < 0 ? plan.after(before) : memory.after.get(stood[place]);
        }

        /** Whether both stood there, with as many blocks between them. */
        boolean keepsApart(int lower, int upper) {
            return stood[lower] >= 0 && stood[upper] >= 0 && stood[upper] - stood[lower] == upper - lower;
        }

        /** A block with the length that it was woven from; null if it is worked out anew. */
        BlockPlan joined(int place) {
            return stood[place] < 0 ? null : memory.joined.get(stood[place]);
        }
    }
}
