package thrumwright.plan;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import thrumwright.block.Block;
import thrumwright.block.Course;
import thrumwright.block.WarpLoops;
import thrumwright.piece.Place;
import thrumwright.yarn.Yarn;

/**
 * One end, row by row.
 *
 * @param onLoom height of its lowest line above the lower bar, mm
 * @param blocks from the lowest on the loom to the highest
 * @param before what its first row goes on from
 * @param after what the next row after it goes on from
 * @param edge height above its lowest line where the finished piece ends, mm: the outer line of the outermost block
 *     that stays
 * @param free warp between the edge and the loom's bar, mm; negative where the end doesn't fit
 */
public record EndPlan(
        Place place,
        double onLoom,
        List<BlockPlan> blocks,
        Course before,
        Course after,
        double edge,
        double free,
        Optional<Hem> hem,
        Optional<Finish> finish) {
    public EndPlan {
        blocks = List.copyOf(blocks);
    }

    /** The warp loops that close it; empty where warp ends are cut. */
    public Optional<WarpLoops> loops() {
        return finish.map(Finish::block).filter(WarpLoops.class::isInstance).map(WarpLoops.class::cast);
    }

    /** The blocks from the outer edge to the design. */
    public List<BlockPlan> inward() {
        return inward(place, blocks);
    }

    static List<BlockPlan> inward(Place place, List<BlockPlan> blocks) {
        List<BlockPlan> inward = new ArrayList<>(blocks);
        if (place == Place.TOP) {
            Collections.reverse(inward);
        }
        return inward;
    }

    /** What lies on the hem's side of the fold; everything where there is no fold. */
    public List<BlockPlan> hemSide() {
        if (hem.isEmpty()) {
            return blocks;
        }
        int fold = indexOf(hem.get().blockId());
        return place == Place.START ? blocks.subList(0, fold) : blocks.subList(fold + 1, blocks.size());
    }

    /** Where a block stands, from 0 at the bottom; −1 if it isn't there. */
    private int indexOf(String id) {
        for (int i = 0; i < blocks.size(); i++) {
            if (blocks.get(i).block().id().equals(id)) {
                return i;
            }
        }
        return -1;
    }

    /** On the loom, mm, 0 or more. */
    public double height() {
        return blocks.isEmpty() ? 0 : blocks.get(blocks.size() - 1).top();
    }

    /** Height of what stays, mm, 0 or more. */
    public double staying() {
        return height() - comingOut();
    }

    /** Height of what comes out again, mm, 0 or more. */
    public double comingOut() {
        return blocks.stream()
                .filter(BlockPlan::comesOut)
                .mapToDouble(BlockPlan::height)
                .sum();
    }

    /** How much of this end the front shows when the piece is finished, mm, 0 or more, with what a fold adds. */
    public double inFront() {
        double outermost = hem.map(Hem::foldLine).orElse(edge);
        double cloth = place == Place.START ? height() - outermost : outermost;
        return cloth + hem.map(Hem::gain).orElse(0.0);
    }

    public Optional<BlockPlan> block(String id) {
        int index = indexOf(id);
        return index < 0 ? Optional.empty() : Optional.of(blocks.get(index));
    }

    /** The blocks that take yarn of that sort, by itself or as a strand, from the lowest to the highest. */
    public List<Block> taking(Yarn yarn) {
        return blocks.stream()
                .map(BlockPlan::block)
                .filter(block ->
                        yarnOf(block.id()).filter(own -> takes(own, yarn)).isPresent())
                .toList();
    }

    private static boolean takes(Yarn own, Yarn yarn) {
        return same(own, yarn) || own.strandsOf(yarn.id()) > 0;
    }

    /** A class may hold more of a yarn than one of its pieces says. */
    private static boolean same(Yarn one, Yarn other) {
        return one.id().equals(other.id());
    }

    private Optional<Yarn> yarnOf(String blockId) {
        return block(blockId)
                .flatMap(BlockPlan::work)
                .map(Work::yarn)
                .or(() -> wrapping(blockId).map(Wrapping::yarn));
    }

    private Optional<Wrapping> wrapping(String blockId) {
        return finish.filter(one -> one.block().id().equals(blockId)).flatMap(Finish::wrapping);
    }

    /** The band that is cut for a fold. */
    public Optional<SewnBand> band(String blockId) {
        return hem.filter(one -> one.blockId().equals(blockId)).flatMap(Hem::band);
    }

    /** How long each piece of yarn or band is that is cut for a block, mm, 0 or more; 0 if it takes none. */
    public double each(String blockId) {
        return block(blockId)
                .flatMap(BlockPlan::work)
                .flatMap(Work::toCut)
                .map(cut -> cut.butterflies().each())
                .or(() -> wrapping(blockId).map(wrapping -> wrapping.each().length()))
                .or(() -> band(blockId).map(SewnBand::length))
                .orElse(0.0);
    }

    /** Yarn of that sort to cut for the whole end, mm, 0 or more. */
    public double cut(Yarn yarn) {
        return cuts(List.of(yarn))[0];
    }

    /** The same for several yarns, in their order. */
    double[] cuts(List<Yarn> yarns) {
        double[] cuts = new double[yarns.size()];
        for (BlockPlan block : blocks) {
            if (block.work().isPresent()) {
                add(cuts, yarns, block.work().get().yarn(), block.work().get().cutTotal());
            }
        }
        finish.flatMap(Finish::wrapping).ifPresent(wrapping -> add(cuts, yarns, wrapping.yarn(), wrapping.total()));
        return cuts;
    }

    private static void add(double[] cuts, List<Yarn> yarns, Yarn taken, double length) {
        for (int i = 0; i < cuts.length; i++) {
            if (taken == yarns.get(i) || same(taken, yarns.get(i))) {
                cuts[i] += length;
                return;
            }
        }
    }

    /** A block's upper line above the loom's lower bar, mm, 0 or more. */
    public double reach(BlockPlan block) {
        return onLoom + block.top();
    }
}
