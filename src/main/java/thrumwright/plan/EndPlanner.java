package thrumwright.plan;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import thrumwright.block.Amount;
import thrumwright.block.Block;
import thrumwright.block.Course;
import thrumwright.block.EdgeFinish;
import thrumwright.block.HemFold;
import thrumwright.block.Setting;
import thrumwright.block.Soumak;
import thrumwright.block.Turning;
import thrumwright.block.WrappedTassels;
import thrumwright.block.YarnBlock;
import thrumwright.measure.Length;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;
import thrumwright.yarn.Yarn;

/** Plans one end, from the bottom up. */
final class EndPlanner {
    private final Piece piece;
    private final Place place;
    private final double reference;
    private final EndMemory known;
    private EndMemory found = EndMemory.NOTHING;
    private Course after = Course.beginning();
    private final Map<Yarn, Laid> laid = new IdentityHashMap<>();

    /** How a yarn lies on this warp. */
    private record Laid(Setting setting, double ease) {}

    /** @param known what was worked out for another state of the end, or nothing */
    EndPlanner(Piece piece, Place place, EndMemory known) {
        this.piece = piece;
        this.place = place;
        this.known = known;
        this.reference = piece.reference();
    }

    private Laid laid(Yarn yarn) {
        return laid.computeIfAbsent(yarn, one -> new Laid(piece.setting(one), piece.ease(one)));
    }

    /** The blocks in their places, each going on from the one before. */
    List<BlockPlan> blocks(Course before) {
        List<Block> blocks = piece.end(place).blocks();
        EndMemory.Basis basis = EndMemory.Basis.of(piece, place);
        EndMemory.Recall recall = known.on(basis, blocks.size());
        List<BlockPlan> plans = new ArrayList<>(blocks.size());
        List<Course> befores = new ArrayList<>(blocks.size());
        List<Course> afters = new ArrayList<>(blocks.size());
        after = before;
        double y = 0;
        for (int i = 0; i < blocks.size(); i++) {
            BlockPlan was = recall.alone(i, blocks.get(i), after);
            BlockPlan plan = was == null ? block(blocks.get(i), y, after) : was.from(y);
            befores.add(after);
            after = recall.after(i, after, plan);
            afters.add(after);
            y = plan.top();
            plans.add(plan);
        }
        List<BlockPlan> joined = Lengths.joined(piece, plans, recall);
        found = new EndMemory(basis, plans, befores, afters, joined);
        return joined;
    }

    /** What was worked out for its blocks, once they are planned. */
    EndMemory found() {
        return found;
    }

    /** What the loom has to know of it. */
    BareEnds.Bare bare(List<BlockPlan> blocks) {
        double height = blocks.isEmpty() ? 0 : blocks.get(blocks.size() - 1).top();
        Setting warp = laid(piece.warpYarn()).setting();
        Optional<Double> needed =
                outermostFinish(blocks).flatMap(plan -> plan.block().finish()).map(finish -> finish.freeWarp(warp));
        return new BareEnds.Bare(height, edge(blocks), needed, closed(blocks));
    }

    /** The end as a whole, once its blocks are planned. */
    EndPlan end(List<BlockPlan> blocks, Course before, double onLoom, double free) {
        double edge = edge(blocks);
        Optional<Finish> finish = finish(blocks, free);
        Optional<Hem> hem = hem(blocks, edge, finish.map(Finish::block));
        return new EndPlan(place, onLoom, blocks, before, after, edge, free, hem, finish);
    }

    private BlockPlan block(Block block, double bottom, Course before) {
        Optional<YarnBlock> woven = block.woven();
        if (woven.isPresent()) {
            Work work = work(woven.get(), before);
            return new BlockPlan(block, bottom, work.height(), Optional.of(work), Optional.empty());
        }
        return new BlockPlan(block, bottom, bareHeight(block), Optional.empty(), wrapping(block));
    }

    /** Of what isn't woven, mm: a finish stands at the edge, and only open warp has a height of its own. */
    private static double bareHeight(Block block) {
        Optional<Amount> stacked = block.finish().isPresent() ? Optional.empty() : block.extent();
        return stacked.map(amount -> amount.length().mm()).orElse(0.0);
    }

    private Work work(YarnBlock block, Course before) {
        Yarn yarn = piece.yarnOf(block, place);
        Laid plain = laid(yarn);
        Setting setting = block.worked(plain.setting());
        Cut cut = Cut.of(block, setting, piece.habits(), plain.ease(), reference);
        return new Work(block, yarn, setting, block.rows(setting, before), cut);
    }

    /** The outer line of the outermost block that stays; the line next to the design if none does. */
    private double edge(List<BlockPlan> blocks) {
        boolean start = place == Place.START;
        for (int i = 0; i < blocks.size(); i++) {
            BlockPlan block = blocks.get(start ? i : blocks.size() - 1 - i);
            if (block.stays()) {
                return start ? block.bottom() : block.top();
            }
        }
        return start && !blocks.isEmpty() ? blocks.get(blocks.size() - 1).top() : 0;
    }

    /** Of several the outermost counts, so that a top which follows has the same as the start. */
    private Optional<BlockPlan> outermostFinish(List<BlockPlan> blocks) {
        for (int i = 0; i < blocks.size(); i++) {
            BlockPlan plan = blocks.get(place == Place.START ? i : blocks.size() - 1 - i);
            if (plan.block().finish().isPresent()) {
                return Optional.of(plan);
            }
        }
        return Optional.empty();
    }

    /** Whether warp loops close it. */
    boolean closed(List<BlockPlan> blocks) {
        return outermostFinish(blocks)
                .flatMap(plan -> plan.block().finish())
                .filter(EdgeFinish::closed)
                .isPresent();
    }

    private Optional<Finish> finish(List<BlockPlan> blocks, double free) {
        return outermostFinish(blocks)
                .flatMap(plan -> plan.block().finish().map(block -> finish(block, free, plan.wrapping())));
    }

    private Finish finish(EdgeFinish block, double free, Optional<Wrapping> wrapping) {
        return new Finish(
                block,
                block.groups(piece.warp().ends()),
                block.freeWarp(laid(piece.warpYarn()).setting()),
                free,
                wrapping);
    }

    private Optional<Wrapping> wrapping(Block block) {
        if (!(block instanceof WrappedTassels tassels)) {
            return Optional.empty();
        }
        Yarn yarn = piece.yarnOf(tassels, place);
        Laid own = laid(yarn);
        return Optional.of(Wrapping.of(tassels, yarn, own.setting(), piece.habits(), own.ease(), reference));
    }

    /** Of several folds the outermost counts. */
    private Optional<Hem> hem(List<BlockPlan> blocks, double edge, Optional<EdgeFinish> finish) {
        boolean start = place == Place.START;
        for (int i = 0; i < blocks.size(); i++) {
            int index = start ? i : blocks.size() - 1 - i;
            Optional<HemFold> fold = blocks.get(index).fold();
            if (fold.isPresent()) {
                return Optional.of(hem(fold.get(), blocks, index, edge, finish));
            }
        }
        return Optional.empty();
    }

    private Hem hem(HemFold fold, List<BlockPlan> blocks, int index, double edge, Optional<EdgeFinish> finish) {
        double line = foldLine(blocks, index);
        double cloth = Math.max(0, clothBetween(blocks, edge, line));
        double thickness = thickness(blocks, index);
        return new Hem(
                fold.id(),
                line,
                cloth,
                thickness,
                fold.firstTurn().map(Length::mm),
                fold.mitred() ? Mitre.of(cloth, thickness) : Optional.empty(),
                fold.band().map(band -> band(band, Hem.turned(cloth, thickness), finish)),
                fold.support().map(Hem.Sleeve::of));
    }

    private SewnBand band(Turning.Faced band, double turned, Optional<EdgeFinish> finish) {
        return SewnBand.of(
                band,
                turned,
                finish,
                laid(piece.warpYarn()).setting(),
                piece.warp().clothWidth(),
                piece.habits().step(),
                reference);
    }

    /** What stays between the hem's outer edge and the fold's line. */
    private double clothBetween(List<BlockPlan> blocks, double edge, double line) {
        double out = 0;
        double low = Math.min(edge, line);
        double high = Math.max(edge, line);
        for (BlockPlan block : blocks) {
            if (block.comesOut()) {
                out += Math.max(0, Math.min(high, block.top()) - Math.max(low, block.bottom()));
            }
        }
        return (place == Place.START ? line - edge : edge - line) - out;
    }

    /** Beside a soumak row the fold runs along that row's middle; the row on the hem's side comes first. */
    private double foldLine(List<BlockPlan> blocks, int fold) {
        int outward = place == Place.START ? -1 : 1;
        for (int neighbour : new int[] {fold + outward, fold - outward}) {
            Optional<Work> work = work(blocks, neighbour);
            if (work.isPresent() && work.get().block() instanceof Soumak soumak) {
                BlockPlan block = blocks.get(neighbour);
                double share = block.height() / work.get().height();
                double half = share * soumak.rowHeight(work.get().setting()) / 2;
                return neighbour < fold ? block.top() - half : block.bottom() + half;
            }
        }
        return blocks.get(fold).bottom();
    }

    private static Optional<Work> work(List<BlockPlan> blocks, int index) {
        return index < 0 || index >= blocks.size()
                ? Optional.empty()
                : blocks.get(index).work();
    }

    /** T = D_w + 2t of the cloth next to the fold, the hem's side first; without any, the stripe's. */
    private double thickness(List<BlockPlan> blocks, int fold) {
        int outward = place == Place.START ? -1 : 1;
        for (int way : new int[] {outward, -outward}) {
            for (int i = fold + way; i >= 0 && i < blocks.size(); i += way) {
                if (blocks.get(i).stays()) {
                    Setting setting = blocks.get(i).work().orElseThrow().setting();
                    return setting.warp() + 2 * setting.beaten();
                }
            }
        }
        return piece.warpYarn().diameter() + 2 * piece.stripe(place).beaten();
    }
}
