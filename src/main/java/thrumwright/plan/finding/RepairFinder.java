package thrumwright.plan.finding;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import thrumwright.block.Amount;
import thrumwright.block.Block;
import thrumwright.block.EdgeFinish;
import thrumwright.block.HalfHitch;
import thrumwright.block.HemFold;
import thrumwright.block.PlainBand;
import thrumwright.block.PlainBand.Purpose;
import thrumwright.block.Twining;
import thrumwright.block.YarnBlock;
import thrumwright.measure.Length;
import thrumwright.measure.UnitSystem;
import thrumwright.piece.Design;
import thrumwright.piece.Loom;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;
import thrumwright.piece.Top;
import thrumwright.plan.BlockPlan;
import thrumwright.plan.EndPlan;
import thrumwright.plan.Finish;
import thrumwright.plan.Hem;
import thrumwright.plan.Plan;
import thrumwright.plan.Work;
import thrumwright.plan.comparison.Front;

/** Finds the one thing to do about a finding; nothing where there are several, or none that a program could decide. */
final class RepairFinder {
    /** Picks of a new waste band and of a new stiff band (common practice, no source). */
    private static final int WASTE_PICKS = 12;

    private static final int STIFF_PICKS = 6;

    private final Plan plan;
    private final Piece piece;

    RepairFinder(Plan plan) {
        this.plan = plan;
        this.piece = plan.piece();
    }

    /** Where a block of an end is changed: of a top that follows the start, there. */
    private Place source(EndPlan end) {
        return piece.topFollows() ? Place.START : end.place();
    }

    private static List<BlockPlan> inward(EndPlan end) {
        List<BlockPlan> inward = new ArrayList<>(end.blocks());
        if (end.place() == Place.TOP) {
            Collections.reverse(inward);
        }
        return inward;
    }

    private static int first(List<BlockPlan> blocks, Predicate<BlockPlan> wanted) {
        for (int i = 0; i < blocks.size(); i++) {
            if (wanted.test(blocks.get(i))) {
                return i;
            }
        }
        return blocks.size();
    }

    static boolean holds(Block block) {
        return block instanceof Twining || block instanceof HalfHitch;
    }

    static boolean band(Block block, Purpose purpose) {
        return block instanceof PlainBand band && band.purpose() == purpose;
    }

    private static boolean comesOut(Block block) {
        return block instanceof YarnBlock yarn && yarn.use().comesOut();
    }

    Optional<Repair> stripeYarn(EndPlan end, BlockPlan block) {
        return Optional.of(new Repair.StripeYarn(source(end), block.block().id()));
    }

    /** A pick more in the band before; where no band comes before, the next shed. */
    Optional<Repair> sameShed(EndPlan end, BlockPlan block) {
        int at = end.blocks().indexOf(block);
        for (int i = at - 1; i >= 0; i--) {
            Optional<Work> before = end.blocks().get(i).work();
            if (before.isPresent()) {
                if (before.get().block() instanceof PlainBand band) {
                    return picks(end, band.id(), before.get(), 1);
                }
                break;
            }
        }
        return Optional.of(new Repair.NextShed(source(end), block.block().id()));
    }

    private Optional<Repair> picks(EndPlan end, String id, Work work, int more) {
        int now = work.rows().size();
        boolean possible = more != 0 && now + more >= 1 && now + more <= Amount.MOST_ROWS;
        return possible ? Optional.of(new Repair.Picks(source(end), id, now, now + more)) : Optional.empty();
    }

    /** A row of twining just outside whatever stays, but on the hem's side of the fold. */
    Optional<Repair> nothingHolds(EndPlan end) {
        return leftOut(end, block -> holds(block) && !comesOut(block)).or(() -> {
            List<BlockPlan> inward = inward(end);
            int at = first(inward, block -> block.stays() || block.block() instanceof HemFold);
            return add(end, at, "twining", 1);
        });
    }

    /** A waste band just outside whatever stays and its fringe. */
    Optional<Repair> noWaste(EndPlan end) {
        return leftOut(end, block -> block instanceof PlainBand && comesOut(block))
                .or(() -> {
                    int at = first(
                            inward(end),
                            block -> block.stays()
                                    || block.block() instanceof EdgeFinish
                                    || block.block() instanceof HemFold);
                    return add(end, at, "plain-waste", WASTE_PICKS);
                });
    }

    /** A stiff band next to the outermost row, inside it if that is the one that holds the weave. */
    Optional<Repair> noStiffBand(EndPlan end) {
        return leftOut(end, block -> band(block, Purpose.STIFF)).or(() -> {
            List<BlockPlan> inward = inward(end);
            int at = first(inward, block -> block.stays() || block.block() instanceof HemFold);
            boolean inside = at < inward.size() && holds(inward.get(at).block());
            return add(end, inside ? at + 1 : at, "plain-stiff", STIFF_PICKS);
        });
    }

    private Optional<Repair> add(EndPlan end, int inwardIndex, String key, int rows) {
        if (piece.topFollows() && end.place() == Place.TOP) {
            return Optional.empty();
        }
        int index = end.place() == Place.START ? inwardIndex : end.blocks().size() - inwardIndex;
        return Optional.of(new Repair.Add(end.place(), index, key, rows));
    }

    /** What the start has and a top that follows it lacks, if it is one block only. */
    private Optional<Repair> leftOut(EndPlan end, Predicate<Block> wanted) {
        if (end.place() == Place.START || !(piece.top() instanceof Top.FollowsStart follows)) {
            return Optional.empty();
        }
        List<Block> candidates = piece.start().blocks().stream()
                .filter(block -> follows.leftOut().contains(block.id()) && wanted.test(block))
                .toList();
        return candidates.size() == 1
                ? Optional.of(new Repair.RepeatAtTop(candidates.get(0).id()))
                : Optional.empty();
    }

    /** More or fewer picks in the hem, so that its depth changes by that much, mm; by pairs, so that no shed changes. */
    Optional<Repair> hemDepth(EndPlan end, double by) {
        return hemBand(end).flatMap(block -> {
            Work work = block.work().orElseThrow();
            double pairs = by / (2 * work.setting().beaten());
            int more = 2 * (int) (by > 0 ? Math.ceil(pairs - 1e-9) : Math.floor(pairs + 1e-9));
            return picks(end, block.block().id(), work, more);
        });
    }

    /** The band that gives a hem its depth: the facing, else the stiff band; nothing if there are several of them. */
    private static Optional<BlockPlan> hemBand(EndPlan end) {
        List<BlockPlan> inward = inward(end);
        int fold = first(inward, block -> block.block() instanceof HemFold);
        for (Purpose purpose : List.of(Purpose.FACING, Purpose.STIFF)) {
            List<BlockPlan> bands = inward.subList(0, fold).stream()
                    .filter(block -> block.stays() && band(block.block(), purpose))
                    .toList();
            if (!bands.isEmpty()) {
                return bands.size() == 1 ? Optional.of(bands.get(0)) : Optional.empty();
            }
        }
        return Optional.empty();
    }

    /** At most half of what there is to turn in. */
    Optional<Repair> firstTurn(EndPlan end, Hem hem) {
        return down(hem.cloth() / 2).map(turn -> new Repair.FirstTurn(source(end), hem.blockId(), turn));
    }

    /** A band at least so wide, mm. */
    Optional<Repair> bandWidth(EndPlan end, Block fold, double least) {
        return up(least).map(width -> new Repair.BandWidth(source(end), fold.id(), width));
    }

    /** All folds but the one that counts. */
    Optional<Repair> severalFolds(EndPlan end, Hem hem) {
        return Optional.of(new Repair.TakeAway(source(end), others(end, HemFold.class, hem.blockId()), false));
    }

    /** All finishes but the one that counts. */
    Optional<Repair> severalFinishes(EndPlan end, Finish finish) {
        List<String> others = others(end, EdgeFinish.class, finish.block().id());
        return Optional.of(new Repair.TakeAway(source(end), others, true));
    }

    private static List<String> others(EndPlan end, Class<? extends Block> kind, String kept) {
        return end.blocks().stream()
                .map(BlockPlan::block)
                .filter(block -> kind.isInstance(block) && !block.id().equals(kept))
                .map(Block::id)
                .toList();
    }

    /** The top is woven last: of a top of its own the hem is made like the start's. */
    Optional<Repair> hemsAlike(double start, double top) {
        if (piece.topFollows()) {
            return leftOut(plan.top(), block -> block instanceof PlainBand && !comesOut(block));
        }
        return hemBand(plan.top()).flatMap(block -> {
            Work work = block.work().orElseThrow();
            double picks = (start - top) / work.setting().beaten();
            int pairs = 2 * (int) Math.round(picks / 2);
            double left = Math.abs(picks - pairs) * work.setting().beaten();
            int more = left < Front.SAME_DEPTH ? pairs : (int) Math.round(picks);
            return picks(plan.top(), block.block().id(), work, more);
        });
    }

    /** A design as much shorter as the piece is too high. */
    Optional<Repair> doesNotFit(double tooHigh) {
        Design design = piece.design();
        return down(design.height().mm() - tooHigh / (1 + design.relaxing())).map(Repair.DesignHeight::new);
    }

    /** The start begins higher where the loom leaves room for that. */
    Optional<Repair> freeWarp(EndPlan end, Finish finish) {
        double more = finish.needed() - finish.free();
        if (end.place() == Place.TOP || plan.budget().left() < more) {
            return Optional.empty();
        }
        Loom loom = piece.loom();
        return up(loom.clearance().mm() + more).map(Repair.Clearance::new);
    }

    /** An empty top of its own beside a start that has blocks. */
    Optional<Repair> nothingHere(EndPlan end) {
        boolean empty = end.place() == Place.TOP
                && !piece.topFollows()
                && !piece.start().blocks().isEmpty();
        return empty ? Optional.of(new Repair.TopFollows()) : Optional.empty();
    }

    Optional<Repair> widthsOfWarp() {
        return Optional.of(new Repair.WidthsOfWarp());
    }

    private double unit() {
        return piece.habits().units() == UnitSystem.INCHES ? 25.4 / 16 : 1;
    }

    /** To whole millimetres or sixteenths of an inch, never less. */
    private Optional<Length> up(double mm) {
        return down(Math.ceil(mm / unit() - 1e-9) * unit());
    }

    /** To whole millimetres or sixteenths of an inch, never more; empty if nothing is left. */
    private Optional<Length> down(double mm) {
        double parts = Math.floor(mm / unit() + 1e-9);
        if (parts < 1) {
            return Optional.empty();
        }
        UnitSystem units = piece.habits().units();
        return Optional.of(Length.of(units == UnitSystem.INCHES ? parts / 16 : parts / 10, units.usual()));
    }
}
