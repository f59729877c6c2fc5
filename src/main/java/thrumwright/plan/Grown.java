package thrumwright.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import thrumwright.block.YarnBlock;
import thrumwright.piece.MeasuredStep;
import thrumwright.piece.Measures;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;

/**
 * Where blocks come to lie by what was measured. A height is reckoned with if it lies above the one that was measured before
 * and not above the opening. What wasn't measured counts as woven as planned, so that the block that was measured takes all
 * of the difference; where that would leave nothing of it, all since the measure before share it by their planned heights.
 * What lies above moves by as much.
 */
record Grown(Piece piece, Measures measures, LoomRoom room) {
    static Grown on(Piece piece, Measures measures, LoomRoom room) {
        return new Grown(piece, measures, room);
    }

    List<BlockPlan> start(List<BlockPlan> planned) {
        return blocks(Place.START, planned, room.clearance(), 0);
    }

    /**
     * @param startLine where the design begins, from which heights are told once the warp has travelled, mm
     * @param onLoom where the top begins, mm
     */
    List<BlockPlan> top(List<BlockPlan> planned, double startLine, double onLoom) {
        return blocks(Place.TOP, planned, onLoom, room.travels() ? startLine : 0);
    }

    static double height(List<BlockPlan> blocks) {
        return blocks.isEmpty() ? 0 : blocks.get(blocks.size() - 1).top();
    }

    private List<BlockPlan> blocks(Place place, List<BlockPlan> planned, double onLoom, double toldFrom) {
        if (measures.isEmpty()) {
            return planned;
        }
        List<BlockPlan> grown = new ArrayList<>();
        for (int i = 0; i < planned.size(); i++) {
            BlockPlan block = planned.get(i);
            Optional<Double> reached =
                    measures.height(place.step(block.block().id())).map(told -> told + toldFrom);
            if (reached.isPresent() && block.height() > 0 && likely(reached.get(), onLoom + height(grown))) {
                stack(planned.subList(grown.size(), i + 1), reached.get() - onLoom - height(grown), grown);
            }
        }
        planned.subList(grown.size(), planned.size())
                .forEach(block -> grown.add(block.at(height(grown), block.height())));
        return grown;
    }

    /** Whether a height can have been reached after another. */
    private boolean likely(double reached, double before) {
        return reached > before && reached <= room.along();
    }

    /** @param span that some blocks take up together, mm; the last of them was measured */
    private static void stack(List<BlockPlan> some, double span, List<BlockPlan> grown) {
        double below = some.stream().mapToDouble(BlockPlan::height).sum()
                - some.get(some.size() - 1).height();
        boolean asPlanned = below < span;
        double share = asPlanned ? 1 : span / (below + some.get(some.size() - 1).height());
        some.subList(0, some.size() - 1).forEach(block -> grown.add(block.at(height(grown), share * block.height())));
        BlockPlan measured = some.get(some.size() - 1);
        grown.add(measured.at(height(grown), asPlanned ? span - below : share * measured.height()));
    }

    /**
     * The blocks of a top that follows the start come out as those of the start did, where they take the same yarn.
     *
     * @param planned the start's as planned
     * @param woven the start's as woven
     * @param top as planned
     */
    List<BlockPlan> like(List<BlockPlan> planned, List<BlockPlan> woven, List<BlockPlan> top) {
        if (measures.isEmpty() || !piece.topFollows()) {
            return top;
        }
        Map<String, Double> shares = new HashMap<>();
        for (int i = 0; i < planned.size(); i++) {
            if (planned.get(i).height() > 0) {
                shares.put(
                        planned.get(i).block().id(),
                        woven.get(i).height() / planned.get(i).height());
            }
        }
        List<BlockPlan> like = new ArrayList<>();
        for (BlockPlan block : top) {
            boolean same = planned.stream()
                    .filter(other -> other.block().id().equals(block.block().id()))
                    .anyMatch(other -> other.yarn().equals(block.yarn()));
            double share = same ? shares.getOrDefault(block.block().id(), 1.0) : 1;
            like.add(block.at(height(like), share * block.height()));
        }
        return like;
    }

    /**
     * How high the design is on the loom, mm, more than 0.
     *
     * @param begins above the lower bar, mm
     */
    double design(double begins) {
        return measures.height(Measures.DESIGN)
                .map(told -> told + (room.travels() ? begins : 0))
                .filter(ends -> likely(ends, begins))
                .map(ends -> ends - begins)
                .orElse(piece.design().heightOnLoom());
    }

    /** The piece as it was before rows were changed to make up for what was measured. */
    static Piece undone(Piece piece) {
        Piece first = piece;
        for (MeasuredStep each : piece.measures().all()) {
            if (each.planned().isPresent()) {
                first = undone(first, each.step(), each.planned().get());
            }
        }
        return first;
    }

    private static Piece undone(Piece piece, String step, int rows) {
        for (Place place : Place.values()) {
            boolean own = place == Place.START || !piece.topFollows();
            Optional<YarnBlock> block = own && step.startsWith(place.step(""))
                    ? piece.block(place, step.substring(place.step("").length()))
                            .flatMap(found -> found.woven())
                    : Optional.empty();
            if (block.isPresent()) {
                return piece.withEnd(
                        place, piece.end(place).replaced(block.get().withRows(rows)));
            }
        }
        return piece;
    }
}
