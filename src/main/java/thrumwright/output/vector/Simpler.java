package thrumwright.output.vector;

import java.awt.geom.Line2D;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Tells the same line with fewer pieces: what is straight becomes one straight piece, smooth curves become fewer. */
final class Simpler {
    /** What lies so far beside a straight line, as a share of what nobody sees, for it adds up. */
    private static final double STRAIGHT = 0.3;
    /** Cosine of how far a line may turn where two curves meet smoothly. */
    private static final double SMOOTH = 0.998;
    /** The same of a corner between straight lines. */
    private static final double CORNER = 0.8;
    /** So many curves, at most, become one. */
    private static final int MOST = 12;

    private final List<Piece> pieces = new ArrayList<>();
    private final List<Bend> bends = new ArrayList<>();
    private final double unseen;

    private record Piece(byte kind, double... to) {
        double toX() {
            return to[to.length - 2];
        }

        double toY() {
            return to[to.length - 1];
        }
    }

    private Simpler(double unseen) {
        this.unseen = unseen;
    }

    /** The same as an outline of that fineness. */
    static Outline of(byte[] kinds, double[] places, Fineness fineness) {
        Simpler simpler = new Simpler(fineness.unseen());
        int at = 0;
        for (byte kind : kinds) {
            int next = at + PathFigures.count(kind);
            simpler.piece(kind, Arrays.copyOfRange(places, at, next));
            at = next;
        }
        simpler.bend();
        simpler.straighten();
        return simpler.outline(fineness);
    }

    private void piece(byte kind, double[] to) {
        if (kind == PathFigures.CURVE) {
            double[] from = at();
            Bend bend = new Bend(new double[] {from[0], from[1], to[0], to[1], to[2], to[3], to[4], to[5]});
            joins(bend);
        } else {
            bend();
            if (kind == PathFigures.LINE) {
                line(to);
            } else {
                pieces.add(new Piece(kind, to));
            }
        }
    }

    /** Where it has come to. */
    private double[] at() {
        if (!bends.isEmpty()) {
            Bend last = bends.get(bends.size() - 1);
            return new double[] {last.p()[6], last.p()[7]};
        }
        Piece last = pieces.get(pieces.size() - 1);
        return last.kind() == PathFigures.CLOSE ? new double[2] : new double[] {last.toX(), last.toY()};
    }

    private void joins(Bend bend) {
        if (!bends.isEmpty()) {
            double[] before = bends.get(bends.size() - 1).arrives();
            double[] after = bend.leaves();
            if (before[0] * after[0] + before[1] * after[1] < SMOOTH) {
                bend();
            }
        }
        bends.add(bend);
    }

    private void line(double[] to) {
        pieces.add(new Piece(PathFigures.LINE, to));
    }

    /** Leaves out, of each run of straight pieces, the corners that nobody sees. */
    private void straighten() {
        int first = 0;
        for (int i = 1; i <= pieces.size(); i++) {
            if (i == pieces.size() || pieces.get(i).kind() != PathFigures.LINE) {
                i -= dropped(first, i - 1);
                first = i;
            }
        }
    }

    /** How many corners went between two, after Douglas and Peucker: none lies further beside the new line than nobody sees. */
    private int dropped(int first, int last) {
        if (last - first < 2 || pieces.get(first).kind() == PathFigures.CLOSE) {
            return 0;
        }
        int furthest = first + 1;
        for (int i = first + 2; i < last; i++) {
            furthest = beside(i, first, last) > beside(furthest, first, last) ? i : furthest;
        }
        if (beside(furthest, first, last) <= CORNER * unseen) {
            pieces.subList(first + 1, last).clear();
            return last - first - 1;
        }
        int after = dropped(furthest, last);
        return after + dropped(first, furthest);
    }

    private double beside(int corner, int first, int last) {
        Piece from = pieces.get(first);
        Piece to = pieces.get(last);
        Piece over = pieces.get(corner);
        return Line2D.ptSegDist(from.toX(), from.toY(), to.toX(), to.toY(), over.toX(), over.toY());
    }

    /** As few curves as can stand for those that are waiting. */
    private void bend() {
        int first = 0;
        while (first < bends.size()) {
            Bend best = bends.get(first);
            int next = first + 1;
            for (int end = first + 2; end <= Math.min(bends.size(), first + MOST); end++) {
                Optional<Bend> one = BendFit.of(bends.subList(first, end), unseen);
                if (one.isEmpty()) {
                    break;
                }
                best = one.get();
                next = end;
            }
            if (best.straight(STRAIGHT * unseen)) {
                line(Arrays.copyOfRange(best.p(), 6, 8));
            } else {
                pieces.add(new Piece(PathFigures.CURVE, Arrays.copyOfRange(best.p(), 2, 8)));
            }
            first = next;
        }
        bends.clear();
    }

    private Outline outline(Fineness fineness) {
        byte[] kinds = new byte[pieces.size()];
        int[] places =
                new int[pieces.stream().mapToInt(piece -> piece.to().length).sum()];
        int at = 0;
        for (int i = 0; i < kinds.length; i++) {
            kinds[i] = pieces.get(i).kind();
            for (double place : pieces.get(i).to()) {
                places[at++] = fineness.hundredths(place);
            }
        }
        return new Outline(kinds, places);
    }
}
