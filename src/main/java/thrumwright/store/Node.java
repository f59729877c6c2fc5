package thrumwright.store;

import java.util.List;
import java.util.Map;

/** A JSON value and where it stands. */
sealed interface Node {
    Spot spot();

    /** Line and column, from 1. */
    record Spot(int line, int column) {
        static final Spot NOWHERE = new Spot(0, 0);
    }

    record Obj(Map<String, Node> fields, Spot spot) implements Node {}

    record Arr(List<Node> items, Spot spot) implements Node {
        static Arr of(List<Node> items) {
            return new Arr(items, Spot.NOWHERE);
        }
    }

    record Text(String value, Spot spot) implements Node {
        static Text of(String value) {
            return new Text(value, Spot.NOWHERE);
        }
    }

    /** @param digits as written */
    record Num(String digits, Spot spot) implements Node {
        static Num of(int value) {
            return new Num(Integer.toString(value), Spot.NOWHERE);
        }

        /** @param value finite; a whole one without decimals */
        static Num of(double value) {
            boolean whole = value == Math.rint(value) && Math.abs(value) < 1e9;
            return new Num(whole ? Long.toString((long) value) : Double.toString(value), Spot.NOWHERE);
        }
    }

    record Flag(boolean value, Spot spot) implements Node {
        static Flag of(boolean value) {
            return new Flag(value, Spot.NOWHERE);
        }
    }

    record Nothing(Spot spot) implements Node {}
}
