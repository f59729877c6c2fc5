package thrumwright.weaver;

import java.util.List;
import thrumwright.block.Leg;
import thrumwright.block.Setting;
import thrumwright.cord.Route;
import thrumwright.cord.Sense;
import thrumwright.cord.Visit;

/** The pegs that a strand visits, told as passes in front of warp ends and behind them. */
record PegPasses(Setting setting) {
    Passes passes(List<Leg> legs) {
        Passes passes = new Passes();
        legs.forEach(leg -> add(passes, leg.route()));
        return passes;
    }

    private void add(Passes passes, Route route) {
        List<Visit> visits = route.visits();
        route.from().ifPresent(angle -> atAngle(passes, visits.get(0), angle));
        if (round(route)) {
            atAngle(passes, visits.get(0), -route.from().orElseThrow());
            route.from().ifPresent(angle -> atAngle(passes, visits.get(0), angle));
        }
        for (int i = 1; i < visits.size(); i++) {
            run(passes, visits.get(i - 1), visits.get(i));
        }
        route.to().ifPresent(angle -> atAngle(passes, visits.get(visits.size() - 1), angle));
    }

    private void atAngle(Passes passes, Visit visit, double angle) {
        if (isEnd(visit) && Math.abs(Math.sin(angle)) > 0.5) {
            passes.past(end(visit), Math.sin(angle) > 0);
        }
    }

    /** From peg to peg: on one face past all that stand between, or across a gap to the other face. */
    private void run(Passes passes, Visit from, Visit to) {
        boolean rightward = to.x() > from.x();
        boolean leaves = front(from, rightward);
        boolean arrives = front(to, rightward);
        if (leaves == arrives && isEnd(from) && isEnd(to)) {
            passes.past(end(from), end(to), leaves);
            return;
        }
        if (isEnd(from) && isEnd(to) && Math.abs(end(from) - end(to)) != 1) {
            throw new IllegalStateException("between ends that are no neighbours a strand can't change its face");
        }
        if (isEnd(from)) {
            passes.past(end(from), leaves);
        }
        if (isEnd(to)) {
            passes.past(end(to), arrives);
        }
    }

    private static boolean front(Visit visit, boolean rightward) {
        return (visit.sense() == Sense.CLOCKWISE) == rightward;
    }

    private boolean isEnd(Visit visit) {
        return visit.x() > -0.5 * setting.spacing() && visit.x() < setting.span() + 0.5 * setting.spacing();
    }

    private int end(Visit visit) {
        return (int) Math.round(visit.x() / setting.spacing());
    }

    /** Once round one warp end. */
    static boolean round(Route route) {
        return route.visits().size() == 1 && route.visits().get(0).extraTurns() > 0;
    }
}
