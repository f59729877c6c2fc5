package thrumwright.plan.comparison;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import thrumwright.block.Block;
import thrumwright.block.Lean;
import thrumwright.block.Row;
import thrumwright.piece.Place;
import thrumwright.plan.BlockPlan;
import thrumwright.plan.EndPlan;
import thrumwright.plan.Finish;
import thrumwright.plan.Hem;
import thrumwright.plan.Work;
import thrumwright.plan.comparison.Alignment.Line;
import thrumwright.plan.comparison.FrontDifference.Aspect;
import thrumwright.yarn.Colour;

/**
 * What a finished end shows in front.
 *
 * @param bands from the outer edge, or the edge that the fold makes, to the design
 * @param hem finished depth, mm
 * @param fringe what hangs at the edge
 */
public record Front(List<FrontBand> bands, Optional<Double> hem, Optional<Finish> fringe) {
    /** Less than this isn't seen, mm. */
    private static final double SEEN = 1e-6;

    /** Heights on the front that differ by less look alike, mm. */
    private static final double SAME_HEIGHT = 0.5;

    /** Hems that differ by less hang alike, mm. */
    public static final double SAME_DEPTH = 1;

    static Front of(EndPlan end) {
        Optional<Hem> hem = end.hem().filter(Hem::folds);
        Optional<Finish> fringe =
                end.finish().filter(finish -> hem.isEmpty() && finish.block().hangs());
        return new Front(bands(end, hem.map(Hem::foldLine).orElse(end.edge())), hem.map(Hem::depth), fringe);
    }

    private static List<FrontBand> bands(EndPlan end, double line) {
        List<FrontBand> bands = new ArrayList<>();
        for (BlockPlan block : end.inward()) {
            band(end.place(), block, line).ifPresent(band -> {
                FrontBand last = bands.isEmpty() ? null : bands.get(bands.size() - 1);
                if (last != null && last.runsOnIn(band)) {
                    bands.set(bands.size() - 1, last.with(band));
                } else {
                    bands.add(band);
                }
            });
        }
        return bands;
    }

    /** As much of a block as lies on the design's side of the line. */
    private static Optional<FrontBand> band(Place place, BlockPlan block, double line) {
        double height = place == Place.START
                ? block.top() - Math.max(line, block.bottom())
                : Math.min(line, block.top()) - block.bottom();
        if (height < SEEN) {
            return Optional.empty();
        }
        if (!block.stays()) {
            return Optional.of(new FrontBand(block.block(), Likeness.open(), Optional.empty(), height, 0, List.of()));
        }
        Work work = block.work().orElseThrow();
        double rows = work.rows().size() * height / block.height();
        return Optional.of(new FrontBand(
                block.block(),
                Likeness.seen(block.block()),
                Optional.of(work.yarn()),
                height,
                rows,
                leans(place, work.rows(), (int) Math.ceil(rows - SEEN))));
    }

    /** Of as many rows next to the design, from outside; those of the top turned over. */
    private static List<Lean> leans(Place place, List<Row> rows, int count) {
        List<Lean> leans = new ArrayList<>();
        for (int i = count; i > 0; i--) {
            Row row = rows.get(place == Place.TOP ? i - 1 : rows.size() - i);
            row.lean().ifPresent(lean -> leans.add(place == Place.TOP ? lean.other() : lean));
        }
        return leans;
    }

    /**
     * What is seen of a fringe.
     *
     * @param wrapped how high, in steps that can be seen
     */
    private record Hanging(Block worked, Optional<Colour> colour, Optional<Long> wrapped) {}

    private static Hanging hanging(Finish finish) {
        return new Hanging(
                Likeness.bare(finish.block()),
                finish.wrapping().map(wrapping -> wrapping.yarn().colour()),
                finish.wrapping().map(wrapping -> Math.round(wrapping.height() / SAME_HEIGHT)));
    }

    /** In what another end, the top, looks different. */
    List<FrontDifference> differencesTo(Front top) {
        List<FrontDifference> found = new ArrayList<>();
        if (!fringe.map(Front::hanging).equals(top.fringe.map(Front::hanging))) {
            found.add(new FrontDifference.Fringes(fringe, top.fringe));
        }
        boolean sameDepth = hem.isPresent() == top.hem.isPresent()
                && hem.map(depth -> Math.abs(depth - top.hem.orElseThrow()) < SAME_DEPTH)
                        .orElse(true);
        if (!sameDepth) {
            found.add(new FrontDifference.Depths(hem, top.hem));
        }
        for (Line<FrontBand> line : Alignment.of(bands, top.bands, Front::likeness)) {
            Set<Aspect> sights = line.left().isEmpty() || line.right().isEmpty()
                    ? Set.of(Aspect.MISSING)
                    : differing(line.left().get(), line.right().get());
            if (!sights.isEmpty()) {
                found.add(new FrontDifference.Bands(line.left(), line.right(), sights));
            }
        }
        return found;
    }

    /** Any two bands may answer each other: that one shows this and the other that is worth a sentence. */
    private static int likeness(FrontBand start, FrontBand top) {
        Set<Aspect> differing = differing(start, top);
        return 1
                + (differing.contains(Aspect.PATTERN) ? 0 : 8)
                + (differing.contains(Aspect.COLOUR) ? 0 : 4)
                + (differing.contains(Aspect.AMOUNT) ? 0 : 2)
                + (differing.contains(Aspect.LEAN) ? 0 : 1);
    }

    private static Set<Aspect> differing(FrontBand start, FrontBand top) {
        Set<Aspect> sights = EnumSet.noneOf(Aspect.class);
        if (!start.pattern().equals(top.pattern())) {
            sights.add(Aspect.PATTERN);
        }
        if (!start.sameColour(top)) {
            sights.add(Aspect.COLOUR);
        }
        boolean sameRows = Math.abs(start.rows() - top.rows()) < SEEN;
        if (!sameRows || Math.abs(start.height() - top.height()) >= SAME_HEIGHT) {
            sights.add(Aspect.AMOUNT);
        }
        if (sameRows && !start.leans().equals(top.leans())) {
            sights.add(Aspect.LEAN);
        }
        return sights;
    }
}
