package thrumwright.plan;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import thrumwright.block.Block;
import thrumwright.block.Course;
import thrumwright.block.EdgeFinish;
import thrumwright.block.HemFold;
import thrumwright.block.OpenWarp;
import thrumwright.block.Row;
import thrumwright.block.Setting;
import thrumwright.block.Soumak;
import thrumwright.block.Turning;
import thrumwright.block.WarpLoops;
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

    EndPlanner(Piece piece, Place place) {
        this.piece = piece;
        this.place = place;
    }

    /** The blocks in their places, each going on from the one before. */
    List<BlockPlan> blocks(Course before) {
        List<BlockPlan> plans = new ArrayList<>();
        Course course = before;
        double y = 0;
        for (Block block : piece.end(place).blocks()) {
            BlockPlan plan = block(block, y, course);
            course = after(course, plan);
            y = plan.top();
            plans.add(plan);
        }
        return plans;
    }

    /** The end as a whole. */
    EndPlan end(List<BlockPlan> blocks, Course before, double onLoom) {
        Course after = before;
        for (BlockPlan block : blocks) {
            after = after(after, block);
        }
        double edge = edge(blocks);
        double onLoomEdge = onLoom + edge;
        double free = place == Place.START ? onLoomEdge : piece.loom().open().mm() - onLoomEdge;
        Optional<Finish> finish = finish(blocks, free);
        Optional<Hem> hem = hem(blocks, edge, finish.map(Finish::block));
        return new EndPlan(place, onLoom, blocks, before, after, edge, free, hem, finish);
    }

    private static Course after(Course course, BlockPlan plan) {
        return plan.work().map(work -> course.after(work.rows())).orElse(course);
    }

    private BlockPlan block(Block block, double bottom, Course before) {
        if (block instanceof YarnBlock yarnBlock) {
            Work work = work(yarnBlock, before);
            return new BlockPlan(block, bottom, yarnBlock.height(work.setting()), Optional.of(work), Optional.empty());
        }
        double height = block instanceof OpenWarp open ? open.height().mm() : 0;
        return new BlockPlan(block, bottom, height, Optional.empty(), wrapping(block));
    }

    private Work work(YarnBlock block, Course before) {
        Yarn yarn = piece.yarnOf(block, place);
        Setting setting = block.worked(piece.setting(yarn));
        List<Row> rows = block.rows(setting, before);
        return new Work(
                block,
                yarn,
                setting,
                rows,
                Cut.of(block, setting, piece.habits(), piece.ease(yarn), piece.reference()));
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

    /** From the outer edge to the design. */
    private List<BlockPlan> inward(List<BlockPlan> blocks) {
        List<BlockPlan> inward = new ArrayList<>(blocks);
        if (place == Place.TOP) {
            Collections.reverse(inward);
        }
        return inward;
    }

    /** Of several the outermost counts, so that a top which follows has the same as the start. */
    private Optional<BlockPlan> outermostFinish(List<BlockPlan> blocks) {
        return inward(blocks).stream()
                .filter(plan -> plan.block() instanceof EdgeFinish)
                .findFirst();
    }

    /** Whether warp loops close it. */
    boolean closed(List<BlockPlan> blocks) {
        return outermostFinish(blocks)
                .filter(plan -> plan.block() instanceof WarpLoops)
                .isPresent();
    }

    private Optional<Finish> finish(List<BlockPlan> blocks, double free) {
        return outermostFinish(blocks).map(plan -> finish((EdgeFinish) plan.block(), free, plan.wrapping()));
    }

    private Finish finish(EdgeFinish block, double free, Optional<Wrapping> wrapping) {
        return new Finish(
                block,
                block.groups(piece.warp().ends()),
                block.freeWarp(piece.setting(piece.warpYarn())),
                free,
                wrapping);
    }

    private Optional<Wrapping> wrapping(Block block) {
        if (!(block instanceof WrappedTassels tassels)) {
            return Optional.empty();
        }
        Yarn yarn = piece.yarnOf(tassels, place);
        return Optional.of(
                Wrapping.of(tassels, yarn, piece.setting(yarn), piece.habits(), piece.ease(yarn), piece.reference()));
    }

    /** Of several folds the outermost counts. */
    private Optional<Hem> hem(List<BlockPlan> blocks, double edge, Optional<EdgeFinish> finish) {
        for (BlockPlan block : inward(blocks)) {
            if (block.block() instanceof HemFold fold) {
                int i = blocks.indexOf(block);
                double line = foldLine(blocks, i);
                double cloth = Math.max(0, clothBetween(blocks, edge, line));
                double thickness = thickness(blocks, i);
                return Optional.of(new Hem(
                        fold.id(),
                        line,
                        cloth,
                        thickness,
                        fold.firstTurn().map(Length::mm),
                        fold.mitred() ? Mitre.of(cloth, thickness) : Optional.empty(),
                        fold.band().map(band -> band(band, Hem.turned(cloth, thickness), finish)),
                        fold.support().map(Hem.Sleeve::of)));
            }
        }
        return Optional.empty();
    }

    private SewnBand band(Turning.Faced band, double turned, Optional<EdgeFinish> finish) {
        return SewnBand.of(
                band,
                turned,
                finish,
                piece.setting(piece.warpYarn()),
                piece.warp().clothWidth(),
                piece.habits().step(),
                piece.reference());
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
                double half = soumak.rowHeight(work.get().setting()) / 2;
                BlockPlan block = blocks.get(neighbour);
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
