package thrumwright.block;

import java.util.Map;
import java.util.Objects;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import thrumwright.measure.BadMeasure;
import thrumwright.measure.Length;

/** How much of a block there is: a number of picks or rows, or a height; for what hangs, how far it hangs. */
public sealed interface Amount {
    /** The most rows of one block. */
    int MOST_ROWS = 2000;
    /** {@code 6}, {@code 6 picks}, {@code 1 row}. */
    Pattern COUNT = Pattern.compile("(\\d{1,6})\\s*(?:picks?|rows?)?");

    /**
     * The number of picks.
     *
     * @param beaten height of one pick in mm, more than 0
     */
    int picks(double beaten);

    /**
     * Reads {@code 6}, {@code 6 picks}, {@code 12 mm} or {@code 1/2 in}.
     *
     * @throws BadMeasure if it is neither a number of picks nor a length; a length may still be too long for a block
     */
    static Amount parse(String typed) {
        OptionalInt count = counted(typed);
        return count.isPresent() ? new Picks(count.getAsInt()) : new Height(Length.parse(typed));
    }

    /** How many picks or rows that says, likely or not; empty if it says something else. */
    static OptionalInt counted(String typed) {
        Matcher count = COUNT.matcher(typed.strip());
        return count.matches() ? OptionalInt.of(Integer.parseInt(count.group(1))) : OptionalInt.empty();
    }

    /** As it could be typed. */
    String text();

    /**
     * The number of picks or rows.
     *
     * @throws IllegalArgumentException if it isn't counted
     */
    default int rows() {
        throw new IllegalArgumentException("“" + text() + "” is no number of rows");
    }

    /**
     * The height.
     *
     * @throws IllegalArgumentException if it is counted
     */
    default Length length() {
        throw new IllegalArgumentException("“" + text() + "” is no height");
    }

    record Picks(int count) implements Amount {
        public Picks {
            checkRows(count, "picks");
        }

        @Override
        public String text() {
            return count + (count == 1 ? " pick" : " picks");
        }

        @Override
        public int picks(double beaten) {
            return count;
        }

        @Override
        public int rows() {
            return count;
        }
    }

    /** Rows of a block that is worked otherwise than in plain weave. */
    record Rows(int rows) implements Amount {
        public Rows {
            checkRows(rows, "rows");
        }

        @Override
        public String text() {
            return rows + (rows == 1 ? " row" : " rows");
        }

        @Override
        public int picks(double beaten) {
            return rows;
        }
    }

    /** Of a band the nearest whole number of picks, at least one. How much may be is checked by the block. */
    record Height(Length height) implements Amount {
        public Height {
            Objects.requireNonNull(height);
        }

        @Override
        public Length length() {
            return height;
        }

        @Override
        public String text() {
            return height.text();
        }

        @Override
        public int picks(double beaten) {
            return (int) Math.max(1, Math.min(MOST_ROWS, Math.round(height.mm() / beaten)));
        }
    }

    /** @throws BadMeasure unless the number lies between 1 and {@link #MOST_ROWS} */
    static void checkRows(int count, String what) {
        if (count < 1 || count > MOST_ROWS) {
            throw new BadMeasure("block." + what, Map.of("most", MOST_ROWS, "count", count));
        }
    }
}
