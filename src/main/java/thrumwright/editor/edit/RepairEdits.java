package thrumwright.editor.edit;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.UnaryOperator;
import thrumwright.block.Amount;
import thrumwright.block.Block;
import thrumwright.block.HemFold;
import thrumwright.block.Material;
import thrumwright.block.MaterialRole;
import thrumwright.block.OrderingCord;
import thrumwright.block.PlainBand;
import thrumwright.block.SpreadHeader;
import thrumwright.block.Turning;
import thrumwright.block.YarnBlock;
import thrumwright.measure.Length;
import thrumwright.piece.Design;
import thrumwright.piece.Habits;
import thrumwright.piece.Loom;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;
import thrumwright.plan.Plan;
import thrumwright.plan.finding.Finding;
import thrumwright.plan.finding.Findings;
import thrumwright.plan.finding.Repair;
import thrumwright.plan.finding.Severity;
import thrumwright.plan.words.RepairWords;

/** Turns the repairs that findings name into edits. */
public final class RepairEdits {
    private final Edits edits;
    private final RepairWords words;

    public RepairEdits(Edits edits, RepairWords words) {
        this.edits = edits;
        this.words = words;
    }

    /**
     * What to do about a finding in one step; its name says what it does.
     *
     * @return empty if the finding names no repair, or if in this piece its repair would leave the finding or bring up
     *     something as bad
     */
    public Optional<Edit> of(Plan plan, Finding finding) {
        return finding.repair().map(repair -> edit(repair, plan.piece())).filter(edit -> mends(plan, finding, edit));
    }

    private static boolean mends(Plan plan, Finding finding, Edit edit) {
        List<Finding> after;
        try {
            after = Findings.of(Plan.of(edit.change().apply(plan.piece()))).all();
        } catch (IllegalArgumentException refused) {
            return false;
        }
        List<Finding> before = Findings.of(plan).all();
        return after.stream().noneMatch(other -> same(other, finding))
                && after.stream()
                        .noneMatch(
                                other -> matters(other, plan) && before.stream().noneMatch(had -> same(had, other)));
    }

    /** Whether two findings are about the same thing. */
    public static boolean same(Finding one, Finding other) {
        return one.code() == other.code()
                && one.place().equals(other.place())
                && one.blockId().equals(other.blockId());
    }

    /** Of a top of its own each hem is repaired by itself, so that in between they may differ. */
    private static boolean matters(Finding finding, Plan before) {
        boolean onTheWay =
                finding.code() == Finding.Code.HEMS_DIFFER && !before.piece().topFollows();
        return finding.severity() != Severity.NOTE && !onTheWay;
    }

    private Edit edit(Repair repair, Piece now) {
        Edit done = done(repair, now);
        String said = words.say(repair, now);
        String name = said.substring(0, 1).toLowerCase(Locale.ROOT) + said.substring(1);
        return new Edit(name, done.change(), done.selects());
    }

    private Edit done(Repair repair, Piece now) {
        if (repair instanceof Repair.Add add) {
            Block prototype = NewBlocks.ofKind(add.key(), now.habits().units());
            Block block = Amounts.with(prototype, String.valueOf(add.rows()), now, add.place());
            return edits.add(now, new Slot(add.place(), add.index()), block);
        } else if (repair instanceof Repair.RepeatAtTop repeat) {
            return edits.leaveOut(now, repeat.id(), false);
        } else if (repair instanceof Repair.TakeAway away) {
            return edits.delete(now, new Selection(away.place(), away.ids()));
        }
        return Edit.of("", change(repair));
    }

    private UnaryOperator<Piece> change(Repair repair) {
        if (repair instanceof Repair.StripeYarn yarn) {
            return block(yarn.place(), yarn.id(), RepairEdits::withStripe);
        } else if (repair instanceof Repair.Picks picks) {
            return block(picks.place(), picks.id(), block -> withPicks(block, picks.picks()));
        } else if (repair instanceof Repair.NextShed shed) {
            return block(shed.place(), shed.id(), RepairEdits::inNextShed);
        } else if (repair instanceof Repair.FirstTurn turn) {
            return block(turn.place(), turn.id(), block -> turning(block, turn.turn()));
        } else if (repair instanceof Repair.BandWidth band) {
            return block(band.place(), band.id(), block -> faced(block, band.width()));
        } else if (repair instanceof Repair.DesignHeight design) {
            return piece -> piece.withDesign(withHeight(piece.design(), design.height()));
        } else if (repair instanceof Repair.Clearance clearance) {
            return piece -> piece.withLoom(withClearance(piece.loom(), clearance.clearance()));
        } else if (repair instanceof Repair.TopFollows) {
            return piece -> TopChange.following(piece).after();
        }
        return piece -> piece.withHabits(byTheWarp(piece.habits()));
    }

    private UnaryOperator<Piece> block(Place place, String id, UnaryOperator<Block> change) {
        return piece -> piece.block(place, id)
                .map(block -> edits.replaced(piece, place, change.apply(block)))
                .orElse(piece);
    }

    private static Block withStripe(Block block) {
        return block instanceof YarnBlock yarn
                ? yarn.withUse(yarn.use().with(new Material.Part(MaterialRole.WEFT)))
                : block;
    }

    private static Block withPicks(Block block, int picks) {
        return block instanceof PlainBand band ? band.withAmount(new Amount.Picks(picks)) : block;
    }

    /** The side at which it begins is kept where one is asked for. */
    private static Block inNextShed(Block block) {
        if (block instanceof PlainBand band) {
            return new PlainBand(band.tag(), band.use(), band.purpose(), band.amount(), Optional.empty());
        } else if (block instanceof OrderingCord cord) {
            return new OrderingCord(cord.tag(), cord.use(), cord.picks(), Optional.empty());
        } else if (block instanceof SpreadHeader header) {
            return new SpreadHeader(header.tag(), header.use(), header.picks(), header.strands(), Optional.empty());
        }
        return block instanceof YarnBlock yarn ? yarn.unforced() : block;
    }

    private static Block turning(Block block, Length turn) {
        return block instanceof HemFold fold ? fold.withTurning(new Turning.Twice(turn)) : block;
    }

    private static Block faced(Block block, Length width) {
        return block instanceof HemFold fold && fold.turning() instanceof Turning.Faced band
                ? fold.withTurning(new Turning.Faced(width, band.thickness()))
                : block;
    }

    private static Design withHeight(Design design, Length height) {
        return new Design(
                height,
                design.firstYarnId(),
                design.lastYarnId(),
                design.lastShed(),
                design.lastSide(),
                design.relaxing());
    }

    private static Loom withClearance(Loom loom, Length clearance) {
        return new Loom(loom.name(), loom.open(), loom.uprights(), clearance, loom.workingRoom(), loom.warpPerEnd());
    }

    private static Habits byTheWarp(Habits habits) {
        return new Habits(
                habits.units(),
                Habits.WidthsOf.WARP,
                habits.step(),
                habits.tail(),
                habits.tie(),
                habits.ease(),
                habits.handful(),
                habits.overlap());
    }
}
