package thrumwright.weaver;

import java.util.ArrayList;
import java.util.List;
import thrumwright.block.Hemstitching;
import thrumwright.block.Leg;
import thrumwright.block.OrderingCord;
import thrumwright.block.Row;
import thrumwright.block.Setting;
import thrumwright.block.Side;
import thrumwright.block.Soumak;
import thrumwright.block.Strand;
import thrumwright.block.Twining;
import thrumwright.cord.Route;
import thrumwright.cord.Visit;
import thrumwright.plan.OneLength;
import thrumwright.plan.Work;

/** The cloth that a block's strands make: the pegs that they visit, told as passes in front of warp ends and behind them. */
final class PlannedCloth {
    private final Work work;
    private final Setting setting;
    private final List<Strand> strands;
    private final PegPasses pegs;

    private PlannedCloth(Work work) {
        this.work = work;
        this.setting = work.setting();
        this.pegs = new PegPasses(setting);
        this.strands = work.block().strands(setting, work.rows());
    }

    static Cloth of(Work work) {
        PlannedCloth planned = new PlannedCloth(work);
        return new Cloth(planned.rows(), planned.tails());
    }

    private List<Cloth.Tail> tails() {
        if (!work.block().tied()) {
            return loose();
        }
        Cloth.Kept kept = setting.posts().isPresent() ? Cloth.Kept.TIED_TO_A_POST : Cloth.Kept.TIED_ROUND_THE_EDGE_END;
        return List.of(new Cloth.Tail(work.begins(), kept), new Cloth.Tail(work.ends(), kept));
    }

    /** A yarn that goes on is where it goes on; every other end of a yarn hangs. */
    private List<Cloth.Tail> loose() {
        List<Cloth.Tail> loose = new ArrayList<>();
        OneLength length = work.oneLength();
        length.before().ifPresent(block -> loose.add(new Cloth.Tail(work.begins(), Cloth.Kept.FROM_BEFORE)));
        work.tails().forEach(side -> loose.add(new Cloth.Tail(side, Cloth.Kept.HANGING)));
        length.after().stream()
                .findFirst()
                .ifPresent(block -> loose.add(new Cloth.Tail(work.ends(), Cloth.Kept.GOES_ON)));
        return loose;
    }

    private List<ClothRow> rows() {
        List<List<List<Leg>>> perStrand = strands.stream().map(this::rowsOf).toList();
        List<ClothRow> rows = new ArrayList<>();
        for (Row row : work.rows()) {
            int index = row.number() - 1;
            List<List<Leg>> legs =
                    perStrand.stream().map(each -> each.get(index)).toList();
            List<Passes> yarns = legs.stream()
                    .map(pegs::passes)
                    .map(passes -> work.block().inParts() ? passes : passes.fromSideToSide(row.from(), setting.ends()))
                    .toList();
            rows.add(new ClothRow(row.from(), yarns, comesUp(row, legs)));
        }
        return rows;
    }

    /** A strand's legs, row by row: without the turns between rows, the fold before them and what is tied. */
    private List<List<Leg>> rowsOf(Strand strand) {
        List<List<Leg>> rows = new ArrayList<>(List.of(new ArrayList<>()));
        if (work.block() instanceof Hemstitching) {
            return List.of(strand.legs());
        }
        boolean everyLegARow = work.block() instanceof OrderingCord;
        for (Leg leg : strand.legs()) {
            List<Leg> row = rows.get(rows.size() - 1);
            boolean tie = everyLegARow && PegPasses.round(leg.route());
            if (turn(leg.route()) || tie) {
                if (!row.isEmpty()) {
                    rows.add(new ArrayList<>());
                }
            } else if (everyLegARow && !row.isEmpty()) {
                rows.add(new ArrayList<>(List.of(leg)));
            } else {
                row.add(leg);
            }
        }
        if (rows.size() < work.rows().size()) {
            rows.add(new ArrayList<>());
        }
        return rows;
    }

    /** Half way round one warp end. */
    private static boolean turn(Route route) {
        return route.visits().size() == 1 && route.visits().get(0).extraTurns() == 0;
    }

    private List<ClothRow.ComesUp> comesUp(Row row, List<List<Leg>> legs) {
        if (work.block() instanceof Twining) {
            return crossings(row, legs);
        } else if (work.block() instanceof Soumak) {
            return legs.get(0).stream()
                    .filter(leg -> !leg.route().visits().isEmpty() && wraps(leg, row.from()))
                    .map(leg -> leg.toY() < leg.fromY() ? ClothRow.ComesUp.BELOW : ClothRow.ComesUp.ABOVE)
                    .toList();
        }
        return List.of();
    }

    /** Whether a leg goes back behind, against the row's way. */
    private static boolean wraps(Leg leg, Side from) {
        List<Visit> visits = leg.route().visits();
        return PegPasses.round(leg.route())
                || visits.size() > 1 && (visits.get(1).x() > visits.get(0).x()) != (from == Side.LEFT);
    }

    /** Gap by gap, where the strand that comes to the front passes the other. */
    private List<ClothRow.ComesUp> crossings(Row row, List<List<Leg>> legs) {
        List<Leg> coming = legs.stream()
                .flatMap(List::stream)
                .filter(this::comesToTheFront)
                .toList();
        return coming.stream()
                .sorted((one, other) -> Double.compare(along(one, row), along(other, row)))
                .map(leg -> leg.middleY() < leg.fromY() ? ClothRow.ComesUp.BELOW : ClothRow.ComesUp.ABOVE)
                .toList();
    }

    private static double along(Leg leg, Row row) {
        double x = leg.route().visits().get(0).x();
        return row.from() == Side.LEFT ? x : -x;
    }

    private boolean comesToTheFront(Leg leg) {
        Passes passes = pegs.passes(List.of(leg));
        return !passes.first().front() && passes.last().front();
    }
}
