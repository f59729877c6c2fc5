package thrumwright.plan.finding;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import thrumwright.block.Amount;
import thrumwright.block.Block;
import thrumwright.block.PlainBand;
import thrumwright.block.PlainBand.Purpose;
import thrumwright.block.SlitBand;
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
    private final EndPlan end;
    private final RuleLengths lengths;

    RepairFinder(Plan plan, EndPlan end) {
        this.plan = plan;
        this.piece = plan.piece();
        this.end = end;
        this.lengths = new RuleLengths(piece.habits().units());
    }

    /** Where a block of the end is changed: of a top that follows the start, there. */
    private Place source() {
        return piece.topFollows() ? Place.START : end.place();
    }

    private static int first(List<BlockPlan> blocks, Predicate<BlockPlan> wanted) {
        for (int i = 0; i < blocks.size(); i++) {
            if (wanted.test(blocks.get(i))) {
                return i;
            }
        }
        return blocks.size();
    }

    private static Optional<PlainBand> band(Block block) {
        return block instanceof PlainBand band ? Optional.of(band) : Optional.empty();
    }

    static boolean band(Block block, Purpose purpose) {
        return band(block).filter(band -> band.purpose() == purpose).isPresent();
    }

    static boolean waste(Block block) {
        return block.comesOut() && band(block).isPresent();
    }

    Optional<Repair> stripeYarn(BlockPlan block) {
        return Optional.of(new Repair.StripeYarn(source(), block.block().id()));
    }

    /** A pick more in the band before; where no band comes before, the next shed. */
    Optional<Repair> sameShed(BlockPlan block) {
        Optional<Repair> next =
                Optional.of(new Repair.NextShed(source(), block.block().id()));
        for (int i = end.blocks().indexOf(block) - 1; i >= 0; i--) {
            Optional<Work> before = end.blocks().get(i).work().filter(Work::stands);
            if (before.isPresent()) {
                Optional<PlainBand> band = band(before.get().block());
                return band.isPresent() ? picks(band.get().id(), before.get(), 1) : next;
            }
        }
        return next;
    }

    private Optional<Repair> picks(String id, Work work, int more) {
        int now = work.rows().size();
        boolean possible = more != 0 && now + more >= 1 && now + more <= Amount.MOST_ROWS;
        return possible ? Optional.of(new Repair.Picks(source(), id, now, now + more)) : Optional.empty();
    }

    /** A row of twining just outside whatever stays, but on the hem's side of the fold. */
    Optional<Repair> nothingHolds() {
        return leftOut(block -> block.holds() && !block.comesOut()).or(() -> {
            List<BlockPlan> inward = end.inward();
            int at = first(inward, block -> block.stays() || block.fold().isPresent());
            return add(at, "twining", 1);
        });
    }

    /** A waste band just outside whatever stays and its fringe. */
    Optional<Repair> noWaste() {
        return leftOut(RepairFinder::waste).or(() -> {
            int at = first(
                    end.inward(),
                    block -> block.stays()
                            || block.block().finish().isPresent()
                            || block.fold().isPresent());
            return add(at, "plain-waste", WASTE_PICKS);
        });
    }

    /** A stiff band next to the outermost row, inside it if that is the one that holds the weave. */
    Optional<Repair> noStiffBand() {
        return leftOut(block -> band(block, Purpose.STIFF)).or(() -> {
            List<BlockPlan> inward = end.inward();
            int at = first(inward, block -> block.stays() || block.fold().isPresent());
            boolean inside = at < inward.size() && inward.get(at).block().holds();
            return add(inside ? at + 1 : at, "plain-stiff", STIFF_PICKS);
        });
    }

    private Optional<Repair> add(int inwardIndex, String key, int rows) {
        if (piece.topFollows() && end.place() == Place.TOP) {
            return Optional.empty();
        }
        int index = end.place() == Place.START ? inwardIndex : end.blocks().size() - inwardIndex;
        return Optional.of(new Repair.Add(end.place(), index, key, rows));
    }

    /** What the start has and a top that follows it lacks, if it is one block only. */
    private Optional<Repair> leftOut(Predicate<Block> wanted) {
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
    Optional<Repair> hemDepth(double by) {
        return hemBand().flatMap(block -> {
            Work work = block.work().orElseThrow();
            double pairs = by / (2 * work.setting().beaten());
            int more = 2 * (int) (by > 0 ? Math.ceil(pairs - 1e-9) : Math.floor(pairs + 1e-9));
            return picks(block.block().id(), work, more);
        });
    }

    /** The band that gives a hem its depth: the facing, else the stiff band; nothing if there are several of them. */
    private Optional<BlockPlan> hemBand() {
        List<BlockPlan> inward = end.inward();
        int fold = first(inward, block -> block.fold().isPresent());
        for (Purpose purpose : List.of(Purpose.FACING, Purpose.STIFF)) {
            List<BlockPlan> bands = inward.subList(0, fold).stream()
                    .filter(block -> block.stays() && (band(block.block(), purpose) || slit(block.block(), purpose)))
                    .toList();
            if (!bands.isEmpty()) {
                return bands.size() == 1 ? Optional.of(bands.get(0)) : Optional.empty();
            }
        }
        return Optional.empty();
    }

    /** A band with slits is a facing too. */
    private static boolean slit(Block block, Purpose purpose) {
        return purpose == Purpose.FACING && block instanceof SlitBand;
    }

    /** At most half of what there is to turn in. */
    Optional<Repair> firstTurn(Hem hem) {
        return lengths.down(hem.cloth() / 2).map(turn -> new Repair.FirstTurn(source(), hem.blockId(), turn));
    }

    /** A band at least so wide, mm. */
    Optional<Repair> bandWidth(Block fold, double least) {
        return lengths.up(least).map(width -> new Repair.BandWidth(source(), fold.id(), width));
    }

    /** All folds but the one that counts. */
    Optional<Repair> severalFolds(Hem hem) {
        return Optional.of(
                new Repair.TakeAway(source(), others(block -> block.fold().isPresent(), hem.blockId()), false));
    }

    /** All finishes but the one that counts. */
    Optional<Repair> severalFinishes(Finish finish) {
        List<String> others = others(
                block -> block.block().finish().isPresent(), finish.block().id());
        return Optional.of(new Repair.TakeAway(source(), others, true));
    }

    private List<String> others(Predicate<BlockPlan> alike, String kept) {
        return end.blocks().stream()
                .filter(alike)
                .map(block -> block.block().id())
                .filter(id -> !id.equals(kept))
                .toList();
    }

    /** The top is woven last: of a top of its own the hem is made like the start's. */
    Optional<Repair> hemsAlike(double start, double top) {
        if (piece.topFollows()) {
            return leftOut(block -> band(block).isPresent() && !block.comesOut());
        }
        return hemBand().flatMap(block -> {
            Work work = block.work().orElseThrow();
            double picks = (start - top) / work.setting().beaten();
            int pairs = 2 * (int) Math.round(picks / 2);
            double left = Math.abs(picks - pairs) * work.setting().beaten();
            int more = left < Front.SAME_DEPTH ? pairs : (int) Math.round(picks);
            return picks(block.block().id(), work, more);
        });
    }

    /** An empty top of its own beside a start that has blocks. */
    Optional<Repair> nothingHere() {
        boolean empty = end.place() == Place.TOP
                && !piece.topFollows()
                && !piece.start().blocks().isEmpty();
        return empty ? Optional.of(new Repair.TopFollows()) : Optional.empty();
    }
}
