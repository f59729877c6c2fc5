package thrumwright.plan.finding;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import thrumwright.block.Block;
import thrumwright.piece.Place;

/**
 * Something that the weaver should know.
 *
 * @param code its lasting name, for programs
 * @param place the end that it is about; empty: the whole piece
 * @param block the block that it is about, if one
 * @param values what it goes by, each with its name
 * @param repairs what to do in one step, where there is something right to do; the best first
 */
public record Finding(
        Code code, Optional<Place> place, Optional<Block> block, Map<String, Value> values, List<Repair> repairs) {
    /** All kinds of findings. */
    public enum Code {
        TOO_THICK(Severity.PROBLEM),
        SAME_SHED(Severity.PROBLEM),
        OTHER_COLOUR(Severity.CAUTION),
        OTHER_COLOUR_MEANT(Severity.NOTE),
        NOTHING_HOLDS(Severity.CAUTION),
        NO_WASTE(Severity.CAUTION),
        NO_STIFF_BAND(Severity.CAUTION),
        HEM_SHALLOW(Severity.CAUTION),
        HEM_DEEP(Severity.CAUTION),
        HEM_EMPTY(Severity.PROBLEM),
        FIRST_TURN_TOO_DEEP(Severity.PROBLEM),
        MITRES_MEET(Severity.PROBLEM),
        BAND_TOO_NARROW(Severity.PROBLEM),
        BAND_TOO_NARROW_FOR_SUPPORT(Severity.PROBLEM),
        BAND_TOO_WIDE(Severity.CAUTION),
        SLEEVE_TOO_NARROW(Severity.PROBLEM),
        HEM_SHALLOW_FOR_A_STRIP(Severity.CAUTION),
        KNOTS_OUT_OF_HEM(Severity.CAUTION),
        SEVERAL_FOLDS(Severity.PROBLEM),
        SEVERAL_FINISHES(Severity.PROBLEM),
        HEMS_DIFFER(Severity.CAUTION),
        HEMS_DIFFER_MEANT(Severity.NOTE),
        HEMS_DIFFER_FOR_A_BAR(Severity.NOTE),
        DOES_NOT_FIT(Severity.PROBLEM),
        WRAPPING_TOO_HIGH(Severity.PROBLEM),
        GROUP_TOO_SMALL(Severity.PROBLEM),
        FREE_WARP_SHORT(Severity.PROBLEM),
        FREE_WARP_SHORT_FOR_HANDS(Severity.PROBLEM),
        FINISH_ON_LOOPS(Severity.PROBLEM),
        OUT_OF_LOOPS(Severity.CAUTION),
        LOOPS_STAND_OUT(Severity.CAUTION),
        LOOPS_DO_NOT_FIT(Severity.PROBLEM),
        SHED_CLOSES(Severity.NOTE),
        SPREADS_LITTLE(Severity.CAUTION),
        NO_POSTS(Severity.NOTE),
        DESIGN_OVERFULL(Severity.CAUTION),
        STOCK_SHORT(Severity.PROBLEM),
        NOTHING_HERE(Severity.CAUTION),
        LAST_PICK_ASSUMED(Severity.NOTE),
        WIDTHS_OF_WARP(Severity.NOTE),
        WOVEN_WIDTH_UNLIKELY(Severity.CAUTION),
        YARN_USED_UNLIKELY(Severity.CAUTION),
        MEASURES_DIFFER(Severity.CAUTION),
        DRAWS_IN(Severity.CAUTION),
        HEIGHT_UNLIKELY(Severity.CAUTION),
        NO_ROOM_LEFT(Severity.CAUTION),
        HEM_COMES_DEEPER(Severity.NOTE),
        HEM_COMES_SHALLOWER(Severity.NOTE),
        COMES_HIGHER(Severity.NOTE),
        COMES_LOWER(Severity.NOTE),
        WIDTH_DIFFERS(Severity.NOTE),
        YARN_LEFT(Severity.NOTE);

        private final Severity severity;

        Code(Severity severity) {
            this.severity = severity;
        }

        public Severity severity() {
            return severity;
        }
    }

    public Finding {
        Objects.requireNonNull(code);
        Objects.requireNonNull(place);
        Objects.requireNonNull(block);
        values = Map.copyOf(values);
        repairs = List.copyOf(repairs);
    }

    /** A finding about the whole piece. */
    static Finding of(Code code, Map<String, Value> values) {
        return new Finding(code, Optional.empty(), Optional.empty(), values, List.of());
    }

    Finding at(Place where) {
        return new Finding(code, Optional.of(where), block, values, repairs);
    }

    Finding about(Block what) {
        return new Finding(code, place, Optional.of(what), values, repairs);
    }

    Finding mendedBy(Optional<Repair> by) {
        return mendedBy(by.stream().toList());
    }

    Finding mendedBy(List<Repair> by) {
        return new Finding(code, place, block, values, by);
    }

    /** The same, meant so: it is only to be known. */
    Finding meant(Code as, Repair back) {
        return new Finding(as, place, block, values, List.of(back));
    }

    public Optional<Repair> repair() {
        return repairs.stream().findFirst();
    }

    public Severity severity() {
        return code.severity();
    }

    public Optional<String> blockId() {
        return block.map(Block::id);
    }
}
