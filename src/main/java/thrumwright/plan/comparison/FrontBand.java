package thrumwright.plan.comparison;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import thrumwright.block.Block;
import thrumwright.block.Lean;
import thrumwright.yarn.Yarn;

/**
 * What the front of a finished end shows between two lines: one or more blocks that the eye takes for one.
 *
 * @param block the outermost of its blocks
 * @param pattern what the eye sees of how it is worked, without yarn and amount
 * @param yarn empty for warp that stands open
 * @param height on the front, mm, 0 or more
 * @param rows picks or rows on the front; half a row where the hem folds along a row's middle; 0 for open warp
 * @param leans of its rows, from the outer edge towards the design; as they would lean at the start, so that those of a
 *     true mirror are the same at both ends
 */
public record FrontBand(Block block, Block pattern, Optional<Yarn> yarn, double height, double rows, List<Lean> leans) {
    public FrontBand {
        Objects.requireNonNull(block);
        Objects.requireNonNull(pattern);
        Objects.requireNonNull(yarn);
        leans = List.copyOf(leans);
    }

    /** Whether it is warp that stands open, where nothing was woven or what was woven comes out. */
    public boolean open() {
        return yarn.isEmpty();
    }

    boolean sameColour(FrontBand other) {
        return yarn.map(Yarn::colour).equals(other.yarn.map(Yarn::colour));
    }

    /** Whether the eye takes both for one where they lie next to each other. */
    boolean runsOnIn(FrontBand next) {
        return pattern.equals(next.pattern) && yarn.equals(next.yarn);
    }

    /** This band and the one next to it towards the design. */
    FrontBand with(FrontBand next) {
        List<Lean> all = new ArrayList<>(leans);
        all.addAll(next.leans);
        return new FrontBand(block, pattern, yarn, height + next.height, rows + next.rows, all);
    }
}
