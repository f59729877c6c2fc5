package thrumwright.output.vector;

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
        return simpler.outline(fineness);
    }

    private void piece(byte kind, double[] to) {
        if (kind == PathFigures.CURVE) {
            double[] from = at();
            Bend bend = new Bend(new double[] {from[0], from[1], to[0], to[1], to[2], to[3], to[4], to[5]});
            if (bend.straight(STRAIGHT * unseen)) {
                bend();
                line(new double[] {to[4], to[5]});
            } else {
                joins(bend);
            }
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

    /** A straight piece, or the last one longer. */
    private void line(double[] to) {
        Piece line = new Piece(PathFigures.LINE, to);
        int last = pieces.size() - 1;
        if (last > 0 && straightOn(pieces.get(last - 1), pieces.get(last), line)) {
            pieces.set(last, line);
        } else {
            pieces.add(line);
        }
    }

    private boolean straightOn(Piece from, Piece over, Piece on) {
        return over.kind() == PathFigures.LINE
                && from.kind() != PathFigures.CLOSE
                && Bend.between(from.toX(), from.toY(), over.toX(), over.toY(), on.toX(), on.toY(), STRAIGHT * unseen);
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
            pieces.add(new Piece(PathFigures.CURVE, Arrays.copyOfRange(best.p(), 2, 8)));
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
