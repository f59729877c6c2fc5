package thrumwright.editor.edit;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import thrumwright.block.Block;
import thrumwright.block.HemFold;
import thrumwright.block.Material;
import thrumwright.block.MaterialRole;
import thrumwright.block.YarnBlock;
import thrumwright.piece.Habits;
import thrumwright.piece.MeasuredStep;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;
import thrumwright.plan.Plan;
import thrumwright.plan.finding.Finding;
import thrumwright.plan.finding.Findings;
import thrumwright.plan.finding.Repair;
import thrumwright.plan.finding.Severity;
import thrumwright.plan.words.RepairWords;

/** Turns the repairs that findings name into edits. */
public record RepairEdits(Edits edits, RepairWords words) {
    /**
     * The best to do about a finding in one step; its name says what it does.
     *
     * @return empty if the finding names no repair, or if in this piece its repairs would leave the finding or bring up
     *     something as bad
     */
    public Optional<Edit> of(Plan plan, Finding finding) {
        return all(plan, finding).stream().findFirst();
    }

    /** All that can be done about it in one step, each as in {@link #of}; the best first. */
    public List<Edit> all(Plan plan, Finding finding) {
        return finding.repairs().stream()
                .flatMap(repair -> offered(plan, finding, repair).stream())
                .toList();
    }

    /** What is meant no more brings its finding back, and that is what it is for. */
    private Optional<Edit> offered(Plan plan, Finding finding, Repair repair) {
        Edit edit = edit(repair, plan.piece());
        boolean right = repair instanceof Repair.MeanNoMore || mends(plan, finding, edit);
        return right ? Optional.of(edit) : Optional.empty();
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
        return new Edit(uncapitalised(said), done.change(), done.selects());
    }

    /** As it stands within a sentence; “I” is I there too. */
    private static String uncapitalised(String said) {
        boolean name = said.length() < 2 || Character.isWhitespace(said.charAt(1));
        return name ? said : said.substring(0, 1).toLowerCase(Locale.ROOT) + said.substring(1);
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
            return woven(yarn.place(), yarn.id(), block -> block.withMaterial(new Material.OfRole(MaterialRole.WEFT)));
        } else if (repair instanceof Repair.Picks picks) {
            return woven(picks.place(), picks.id(), block -> block.withRows(picks.picks()));
        } else if (repair instanceof Repair.MakeUp made) {
            return piece -> madeUp(change(made.picks()).apply(piece), made.picks());
        } else if (repair instanceof Repair.WovenWidth woven) {
            return piece -> piece.withWarp(piece.warp().withWoven(Optional.of(woven.width())));
        } else if (repair instanceof Repair.YarnUsed used) {
            return piece -> piece.withYarns(piece.yarns().stream()
                    .map(yarn -> yarn.id().equals(used.yarnId()) ? yarn.withUsage(Optional.of(used.usage())) : yarn)
                    .toList());
        } else if (repair instanceof Repair.NextShed shed) {
            return woven(shed.place(), shed.id(), block -> block.withFirstShed(Optional.empty()));
        } else if (repair instanceof Repair.FirstTurn turn) {
            return fold(turn.place(), turn.id(), fold -> HemEdits.withFirstTurn(fold, Optional.of(turn.turn())));
        } else if (repair instanceof Repair.BandWidth band) {
            return fold(band.place(), band.id(), fold -> HemEdits.withBandWidth(fold, Optional.of(band.width())));
        } else if (repair instanceof Repair.DesignHeight design) {
            return piece -> piece.withDesign(piece.design().withHeight(design.height()));
        } else if (repair instanceof Repair.Clearance clearance) {
            return piece -> piece.withLoom(piece.loom().withClearance(Optional.of(clearance.clearance())));
        } else if (repair instanceof Repair.WorkingRoom room) {
            return piece -> piece.withLoom(piece.loom().withWorkingRoom(Optional.of(room.free())));
        } else if (repair instanceof Repair.AsUsual) {
            return piece ->
                    piece.withLoom(piece.loom().withClearance(Optional.empty()).withWorkingRoom(Optional.empty()));
        } else if (repair instanceof Repair.Fringes fringes) {
            return change(new Repair.Clearance(fringes.clearance()))
                    .andThen(change(new Repair.DesignHeight(fringes.height())))::apply;
        } else if (repair instanceof Repair.Mean mean) {
            return piece -> piece.withMeant(piece.meant().with(mean.told()));
        } else if (repair instanceof Repair.MeanNoMore again) {
            return piece -> piece.withMeant(piece.meant().without(again.told()));
        } else if (repair instanceof Repair.TopFollows) {
            return piece -> TopChange.following(piece).after();
        }
        return piece -> piece.withHabits(piece.habits().withWidthsOf(Habits.WidthsOf.WARP));
    }

    private static Piece madeUp(Piece piece, Repair.Picks picks) {
        MeasuredStep known = piece.measures().of(picks.place().step(picks.id()));
        return piece.withMeasures(piece.measures().with(known.made(picks.before(), picks.picks())));
    }

    private UnaryOperator<Piece> woven(Place place, String id, UnaryOperator<YarnBlock> change) {
        return block(place, id, block -> block.woven().map(change));
    }

    private UnaryOperator<Piece> fold(Place place, String id, UnaryOperator<HemFold> change) {
        return block(
                place, id, block -> block instanceof HemFold fold ? Optional.of(change.apply(fold)) : Optional.empty());
    }

    /** @param change empty for a block of another sort, which then stays as it is */
    private UnaryOperator<Piece> block(Place place, String id, Function<Block, Optional<? extends Block>> change) {
        return piece -> piece.block(place, id)
                .flatMap(change)
                .map(block -> edits.replaced(piece, place, block))
                .orElse(piece);
    }
}
