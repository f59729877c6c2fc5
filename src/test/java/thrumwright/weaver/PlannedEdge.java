package thrumwright.weaver;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import thrumwright.block.FinishCases;
import thrumwright.block.KnotRows;
import thrumwright.block.Leg;
import thrumwright.block.Setting;
import thrumwright.block.Side;
import thrumwright.block.Strand;
import thrumwright.block.TurnedEnds;
import thrumwright.block.WarpFinish;
import thrumwright.block.WarpLoops;
import thrumwright.block.WovenEdge;
import thrumwright.block.WrappedTassels;
import thrumwright.plan.Finish;

/** What the plan makes of the warp ends at an edge: its groups, its rows of knots, the strands of turned ends. */
record PlannedEdge(Finish finish, Setting warp) implements FinishCases<EdgeWork> {
    static EdgeWork of(Finish finish, Setting warp) {
        return finish.block().of(new PlannedEdge(finish, warp));
    }

    private EdgeWork groups(int parts, int turns) {
        List<EdgeWork.Bunch> bunches = new ArrayList<>();
        int first = 0;
        for (int size : finish.groups()) {
            bunches.add(new EdgeWork.Bunch(first, size));
            first += size;
        }
        return new EdgeWork(List.of(bunches), parts, turns, List.of());
    }

    @Override
    public EdgeWork warpFinish(WarpFinish fringe) {
        return switch (fringe.kind()) {
            case KNOTTED -> groups(1, 0);
            case PLIED -> groups(2, 0);
            case PLAITED -> groups(3, 0);
            case DARNED -> new EdgeWork(List.of(), 1, 0, List.of());
        };
    }

    @Override
    public EdgeWork knotRows(KnotRows knots) {
        List<List<EdgeWork.Bunch>> rows = IntStream.range(0, knots.rows())
                .mapToObj(row -> knots.bunches(warp.ends(), row).stream()
                        .map(bunch -> new EdgeWork.Bunch(bunch.first(), bunch.count()))
                        .toList())
                .toList();
        return new EdgeWork(rows, 1, 0, List.of());
    }

    @Override
    public EdgeWork wrappedTassels(WrappedTassels tassels) {
        return groups(1, tassels.turns());
    }

    @Override
    public EdgeWork turnedEnds(TurnedEnds turned) {
        List<List<Passes>> rows = IntStream.range(0, turned.rows())
                .mapToObj(row -> ways(turned.strands(warp, row), turned.from() == Side.LEFT == (row == 0)))
                .toList();
        return new EdgeWork(List.of(), 1, 0, rows);
    }

    private List<Passes> ways(List<Strand> strands, boolean fromTheLeft) {
        return IntStream.range(0, strands.size())
                .mapToObj(i -> way(strands.get(i), fromTheLeft ? i + 1 : warp.ends() - 2 - i))
                .toList();
    }

    /**
     * From an end's neighbour on. The end is bent away from its own place, with thick yarn as far as beyond half the
     * spacing, so that the bend may lie at the neighbour's. Whoever goes back next to the cloth is no such strand.
     */
    private Passes way(Strand strand, int neighbour) {
        Leg round = strand.legs().get(1);
        if (round.toY() >= round.fromY()) {
            throw new IllegalStateException("an end comes to the back farther from the cloth than where it set out");
        }
        return new PegPasses(warp).passes(strand.legs()).after(neighbour);
    }

    @Override
    public EdgeWork wovenEdge(WovenEdge woven) {
        List<Strand> strands = woven.strands(warp);
        boolean fromTheLeft = woven.from() == Side.LEFT;
        return new EdgeWork(
                List.of(),
                1,
                0,
                List.of(IntStream.range(0, strands.size())
                        .mapToObj(i -> across(strands.get(i), fromTheLeft ? i + 1 : warp.ends() - 2 - i))
                        .toList()));
    }

    /** From an end's neighbour on, nearer to the cloth with every end that it passes. */
    private Passes across(Strand strand, int neighbour) {
        if (strand.legs().stream().anyMatch(leg -> leg.toY() < leg.fromY())) {
            throw new IllegalStateException("an end leads away from the cloth");
        }
        return new PegPasses(warp).passes(strand.legs()).after(neighbour);
    }

    @Override
    public EdgeWork warpLoops(WarpLoops loops) {
        return new EdgeWork(List.of(), 1, 0, List.of());
    }
}
