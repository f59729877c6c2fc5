package thrumwright.drawing.loom;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
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
 * @param pegs what it lies on, each once; hidden behind the boards, if there are any
 * @param boards with notches, in front of where the cord turns
 * @param cord the way of one turn, or of some ends
 * @param names what is what
 */
public record WarpWay(List<Visit> pegs, List<NotchedBoard> boards, TautCord cord, List<Name> names) {
    private static final double BAR = 7;
    private static final double THIN = 3;
    private static final double HIGH = 100;
    private static final int NAILS = 4;
    private static final double APART = 18;
    /** From a thing to its name. */
    private static final double AWAY = 4;

    public WarpWay {
        pegs = List.copyOf(pegs);
        boards = List.copyOf(boards);
        names = List.copyOf(names);
    }

    /**
     * A board that is seen from the front, with notches in one edge.
     *
     * @param bottom where its notches end, z
     * @param up 1 where they open upwards, −1 downwards
     * @param notches their middles, x
     */
    public record NotchedBoard(double left, double right, double bottom, int up, List<Double> notches) {}

    /**
     * What something is called, beside it.
     *
     * @param key of the name
     * @param left whether it ends at the place; else it begins there
     */
    public record Name(String key, double x, double z, boolean left) {}

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
            return fromTheSide(List.of(LOWER, upper), List.of(LOWER, upper, LOWER));
        }

        @Override
        public WarpWay roundFrame(LoomKind.RoundFrame kind) {
            return fromTheSide(List.of(LOWER, UPPER), List.of(LOWER, UPPER, LOWER));
        }

        /** Up in front from the joining bar, over the upper bar, down behind and round the lower bar back to it. */
        @Override
        public WarpWay joiningBar(LoomKind.JoiningBar kind) {
            Visit joining = new Visit(THIN - BAR, HIGH / 4, THIN, Sense.CLOCKWISE, 0);
            WarpWay way = fromTheSide(List.of(LOWER, UPPER, joining), List.of(joining, UPPER, LOWER, joining));
            return way.with(new Name("joining-bar", -BAR - AWAY, HIGH / 4, true));
        }

        /** From the front: up on the left of each upper one and down on its right. */
        @Override
        public WarpWay pegged(LoomKind.Pegged kind) {
            return kind.peg() == LoomKind.Peg.NOTCHES ? notched() : onPegs(kind.key());
        }

        private static WarpWay onPegs(String key) {
            List<Visit> visits = new ArrayList<>();
            for (int i = 0; i < NAILS; i++) {
                visits.add(new Visit(2 * i * APART, 0, THIN, Sense.ANTICLOCKWISE, 0));
                visits.add(new Visit((2 * i + 1) * APART, HIGH, THIN, Sense.CLOCKWISE, 0));
            }
            double last = (2 * NAILS - 1) * APART;
            return way(visits, visits)
                    .with(new Name(key + ".above", last + THIN + AWAY, HIGH, false))
                    .with(new Name(key + ".below", last - APART + THIN + 2 * AWAY, 0, false))
                    .with(new Name("begin", -THIN - AWAY, 0, true));
        }

        /** From the front: each tooth between two notches is what the cord is led round, behind the board. */
        private static WarpWay notched() {
            List<Visit> teeth = new ArrayList<>();
            int ends = 2 * NAILS;
            for (int i = -1; i <= ends; i++) {
                Sense sense = i % 2 == 0 ? Sense.CLOCKWISE : Sense.ANTICLOCKWISE;
                teeth.add(new Visit((i + 0.5) * APART, i % 2 == 0 ? HIGH : 0, APART / 2, sense, 0));
            }
            List<Double> notches =
                    IntStream.rangeClosed(0, ends).mapToObj(i -> i * APART).toList();
            double right = ends * APART + APART / 2;
            List<NotchedBoard> boards = List.of(
                    new NotchedBoard(-APART / 2, right, HIGH, 1, notches),
                    new NotchedBoard(-APART / 2, right, 0, -1, notches));
            Route route = new Route(teeth, OptionalDouble.of(0), OptionalDouble.of(Math.PI));
            return new WarpWay(List.of(), boards, TautCord.along(route), List.of())
                    .with(new Name("notches.above", right + AWAY, HIGH, false))
                    .with(new Name("notches.below", right + AWAY, 0, false))
                    .with(new Name("begin", -APART / 2 - AWAY, 0, true));
        }

        /** From the cloth beam in front over to the warp beam behind. */
        @Override
        public WarpWay rollers(LoomKind.Rollers kind) {
            Visit cloth = new Visit(0, 0, BAR, Sense.CLOCKWISE, 0);
            Visit warp = new Visit(1.6 * HIGH, 0, 1.5 * BAR, Sense.CLOCKWISE, 1);
            Route route = Route.of(List.of(cloth, warp), Math.PI, 0);
            return new WarpWay(List.of(cloth, warp), List.of(), TautCord.along(route), List.of())
                    .with(new Name("cloth-beam", -BAR - AWAY, 0, true))
                    .with(new Name("warp-beam", 1.6 * HIGH + 1.5 * BAR + AWAY, 0, false));
        }

        /** Two bars, one above the other, and what of the warp is in front. */
        private static WarpWay fromTheSide(List<Visit> pegs, List<Visit> visits) {
            return way(pegs, visits)
                    .with(new Name("upper-bar", BAR + AWAY, HIGH, false))
                    .with(new Name("lower-bar", BAR + AWAY, 0, false))
                    .with(new Name("front", -BAR - AWAY, HIGH / 2, true))
                    .with(new Name("behind", BAR + AWAY, HIGH / 2, false));
        }

        private static WarpWay way(List<Visit> pegs, List<Visit> visits) {
            Route route = new Route(visits, OptionalDouble.empty(), OptionalDouble.empty());
            return new WarpWay(pegs, List.of(), TautCord.along(route), List.of());
        }
    }

    private WarpWay with(Name name) {
        List<Name> more = new ArrayList<>(names);
        more.add(name);
        return new WarpWay(pegs, boards, cord, more);
    }
}
