package thrumwright.plan;

import java.util.List;
import java.util.Optional;
import thrumwright.block.Block;
import thrumwright.block.Course;
import thrumwright.block.HemFold;
import thrumwright.yarn.Yarn;

/**
 * One block in its place.
 *
 * @param bottom lower edge above the end's lowest line, mm
 * @param height on the loom, mm; 0 for a fold or a finish
 * @param work how it is woven; empty for what isn't
 * @param wrapping of tassels
 */
public record BlockPlan(Block block, double bottom, double height, Optional<Work> work, Optional<Wrapping> wrapping) {
    BlockPlan with(Work other) {
        return new BlockPlan(block, bottom, height, Optional.of(other), wrapping);
    }

    /** What the next row goes on from. */
    Course after(Course before) {
        return work.isPresent() ? before.after(work.get().rows()) : before;
    }

    /** The same somewhere else, as high as it is. */
    BlockPlan from(double otherBottom) {
        return otherBottom == bottom ? this : at(otherBottom, height);
    }

    /** The same somewhere else, as high as it came out there. */
    BlockPlan at(double otherBottom, double otherHeight) {
        return new BlockPlan(block, otherBottom, otherHeight, work, wrapping);
    }

    /** Upper edge above the end's lowest line, mm, 0 or more. */
    public double top() {
        return bottom + height;
    }

    /** The yarn that it takes besides the warp. */
    public Optional<Yarn> yarn() {
        return work.map(Work::yarn).or(() -> wrapping.map(Wrapping::yarn));
    }

    /** The keys of what there is to see of its working, see {@link Block#stages}; at least one. */
    public List<String> stages() {
        return block.stages(work.map(woven -> woven.rows().size()).orElse(1));
    }

    public boolean comesOut() {
        return work.isPresent() && block.comesOut();
    }

    /** The line along which the hem is turned, if it is that. */
    public Optional<HemFold> fold() {
        return block instanceof HemFold fold ? Optional.of(fold) : Optional.empty();
    }

    /** Woven, and there to stay. */
    public boolean stays() {
        return work.isPresent() && !comesOut();
    }
}
