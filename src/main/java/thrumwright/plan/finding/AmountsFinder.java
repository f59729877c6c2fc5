package thrumwright.plan.finding;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import thrumwright.measure.Length;
import thrumwright.measure.Unit;
import thrumwright.piece.MeasuredStep;
import thrumwright.piece.Piece;
import thrumwright.piece.Warp;
import thrumwright.plan.BlockPlan;
import thrumwright.plan.Cut;
import thrumwright.plan.EndPlan;
import thrumwright.plan.Work;
import thrumwright.plan.finding.Finding.Code;
import thrumwright.plan.finding.Value.Grain;
import thrumwright.plan.finding.Value.OfNumber;
import thrumwright.plan.finding.Value.OfYarn;
import thrumwright.yarn.Usage;

/** Looks over measured widths and what was left of a yarn. */
final class AmountsFinder {
    /** A cloth that differs by less is as wide, mm. */
    private static final double SEEN = 1;

    private final Piece piece;
    private final EndPlan end;
    private final List<Finding> found = new ArrayList<>();

    AmountsFinder(Piece piece, EndPlan end) {
        this.piece = piece;
        this.end = end;
    }

    List<Finding> all() {
        for (BlockPlan block : end.blocks()) {
            MeasuredStep measured =
                    piece.measures().of(end.place().step(block.block().id()));
            measured.left().ifPresent(left -> block.work().ifPresent(work -> left(block, work, left)));
        }
        end.blocks().stream()
                .filter(block -> width(block).isPresent())
                .reduce((one, other) -> other)
                .ifPresent(last -> width(last, width(last).orElseThrow()));
        return found;
    }

    private Optional<Length> width(BlockPlan block) {
        return piece.measures().of(end.place().step(block.block().id())).width();
    }

    private void width(BlockPlan block, Length width) {
        Warp warp = piece.warp();
        if (Math.abs(width.mm() - warp.clothWidth()) < SEEN) {
            return;
        }
        Optional<Repair> plan = warp.withWoven(Optional.of(width)).wovenLikely()
                ? Optional.of(new Repair.WovenWidth(width))
                : Optional.empty();
        add(Code.WIDTH_DIFFERS, block, Map.of("width", cut(width.mm()), "planned", cut(warp.clothWidth())), plan);
    }

    private static Value cut(double mm) {
        return new OfNumber(mm, Grain.CUT);
    }

    private void left(BlockPlan block, Work work, Length left) {
        double cut = work.toCut().map(whole -> whole.butterflies().total()).orElse(0.0);
        double used = cut - left.mm();
        Map<String, Value> values = Map.of(
                "yarn",
                new OfYarn(work.yarn()),
                "left",
                cut(left.mm()),
                "cut",
                cut(cut),
                "used",
                cut(Math.max(0, used)));
        if (used > 0 && work.yarn().usage().isEmpty()) {
            add(Code.YARN_LEFT, block, values, used(work, used));
        }
    }

    /** Plain picks in one length of their own tell how much their yarn takes, without tails. */
    private Optional<Repair> used(Work work, double used) {
        Cut cut = work.cut();
        double picks = used - cut.hanging();
        boolean alone = work.oneLength().after().isEmpty() && cut.butterflies().count() == 1;
        if (!alone || !work.block().plainWeave() || work.block().tied() || picks <= 0) {
            return Optional.empty();
        }
        Length length = Length.of(picks / 10, Unit.CENTIMETRE);
        Repair repair =
                new Repair.YarnUsed(work.yarn().id(), new Usage(work.rows().size(), length));
        double ease = picks / piece.setting(work.yarn()).plain(work.rows().size()) - 1;
        return ease >= Piece.LEAST_EASE && ease <= Piece.MOST_EASE ? Optional.of(repair) : Optional.empty();
    }

    private void add(Code code, BlockPlan block, Map<String, Value> values, Optional<Repair> repair) {
        found.add(Finding.of(code, values).at(end.place()).about(block.block()).mendedBy(repair));
    }
}
