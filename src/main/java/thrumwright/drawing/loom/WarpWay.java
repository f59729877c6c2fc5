package thrumwright.drawing.loom;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import thrumwright.cord.Route;
import thrumwright.cord.Sense;
import thrumwright.cord.TautCord;
import thrumwright.cord.Visit;
import thrumwright.piece.LoomCases;
import thrumwright.piece.LoomKind;

/**
 * The way of the warp on a loom of each kind, as a taut cord led round what it lies on: seen from the side, with the weaver at the
 * left, or, on pegs, from the front. In units of its own, x to the right and z up.
 *
 * @param pegs what it lies on, each once
 * @param cord the way of one turn, or of some ends
 */
public record WarpWay(List<Visit> pegs, TautCord cord) {
    private static final double BAR = 7;
    private static final double THIN = 3;
    private static final double HIGH = 100;
    private static final int NAILS = 4;
    private static final double APART = 18;

    public WarpWay {
        pegs = List.copyOf(pegs);
    }

    /** Of a loom of that kind. */
    public static WarpWay of(LoomKind kind) {
        return kind.of(new Ways());
    }

    private static final class Ways implements LoomCases<WarpWay> {
        private static final Visit LOWER = new Visit(0, 0, BAR, Sense.CLOCKWISE, 0);
        private static final Visit UPPER = new Visit(0, HIGH, BAR, Sense.CLOCKWISE, 0);

        /** Up behind the upper bar and down in front: a figure eight. */
        @Override
        public WarpWay barToBar(LoomKind.BarToBar kind) {
            Visit upper = new Visit(0, HIGH, BAR, Sense.ANTICLOCKWISE, 0);
            return way(List.of(LOWER, upper), List.of(LOWER, upper, LOWER));
        }

        @Override
        public WarpWay roundFrame(LoomKind.RoundFrame kind) {
            return way(List.of(LOWER, UPPER), List.of(LOWER, UPPER, LOWER));
        }

        /** Up in front from the joining bar, over the upper bar, down behind and round the lower bar back to it. */
        @Override
        public WarpWay joiningBar(LoomKind.JoiningBar kind) {
            Visit joining = new Visit(THIN - BAR, HIGH / 4, THIN, Sense.CLOCKWISE, 0);
            return way(List.of(LOWER, UPPER, joining), List.of(joining, UPPER, LOWER, joining));
        }

        /** From the front: up on the left of each upper one and down on its right. */
        @Override
        public WarpWay pegged(LoomKind.Pegged kind) {
            List<Visit> visits = new ArrayList<>();
            for (int i = 0; i < NAILS; i++) {
                visits.add(new Visit(2 * i * APART, 0, THIN, Sense.ANTICLOCKWISE, 0));
                visits.add(new Visit((2 * i + 1) * APART, HIGH, THIN, Sense.CLOCKWISE, 0));
            }
            return way(visits, visits);
        }

        /** From the cloth beam in front over to the warp beam behind. */
        @Override
        public WarpWay rollers(LoomKind.Rollers kind) {
            Visit cloth = new Visit(0, 0, BAR, Sense.CLOCKWISE, 0);
            Visit warp = new Visit(1.6 * HIGH, 0, 1.5 * BAR, Sense.CLOCKWISE, 1);
            Route route = Route.of(List.of(cloth, warp), Math.PI, 0);
            return new WarpWay(List.of(cloth, warp), TautCord.along(route));
        }

        private static WarpWay way(List<Visit> pegs, List<Visit> visits) {
            Route route = new Route(visits, OptionalDouble.empty(), OptionalDouble.empty());
            return new WarpWay(pegs, TautCord.along(route));
        }
    }
}
