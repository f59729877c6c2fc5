package thrumwright.output.vector;

import java.util.Arrays;

/**
 * A line drawn without lifting the pen, or several that are only painted together, wherever they lie: in hundredths of a
 * point from where they begin.
 */
public final class Outline {
    private final byte[] kinds;
    private final int[] places;
    private final int hash;

    Outline(byte[] kinds, int[] places) {
        this.kinds = kinds;
        this.places = places;
        this.hash = 31 * Arrays.hashCode(kinds) + Arrays.hashCode(places);
    }

    /** Takes its pieces one by one. */
    public interface Taker {
        /** Goes there without drawing. */
        void move(int x, int y);

        void line(int x, int y);

        /** A cubic curve. */
        void curve(int x1, int y1, int x2, int y2, int x, int y);

        /** Back to where the line began. */
        void close();
    }

    /** Gives all its pieces, in hundredths of a point from its first point. */
    public void tell(Taker taker) {
        int at = 0;
        for (byte kind : kinds) {
            int[] p = places;
            switch (kind) {
                case PathFigures.MOVE -> taker.move(p[at], p[at + 1]);
                case PathFigures.LINE -> taker.line(p[at], p[at + 1]);
                case PathFigures.CURVE -> taker.curve(p[at], p[at + 1], p[at + 2], p[at + 3], p[at + 4], p[at + 5]);
                default -> taker.close();
            }
            at += PathFigures.count(kind);
        }
    }

    /** Whether it is an upright rectangle that begins at a corner. */
    public boolean rectangle() {
        if (kinds.length != 5 || kinds[4] != PathFigures.CLOSE || places.length != 8) {
            return false;
        }
        boolean across = places[3] == 0 && places[4] == places[2] && places[6] == 0;
        return across && places[5] == places[7];
    }

    /** From the first corner of a rectangle: hundredths of a point, either sign. */
    public int across() {
        return places[4];
    }

    /** From the first corner of a rectangle: hundredths of a point, either sign. */
    public int down() {
        return places[5];
    }

    byte[] kinds() {
        return kinds;
    }

    /** Whether another of the same build lies nowhere farther off, hundredths of a point. */
    boolean near(Outline other, int unseen) {
        for (int i = 0; i < places.length; i++) {
            if (Math.abs(other.places[i] - places[i]) > unseen) {
                return false;
            }
        }
        return true;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Outline outline
                && hash == outline.hash
                && Arrays.equals(places, outline.places)
                && Arrays.equals(kinds, outline.kinds);
    }

    @Override
    public int hashCode() {
        return hash;
    }
}
