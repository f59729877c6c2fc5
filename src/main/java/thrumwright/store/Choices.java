package thrumwright.store;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import thrumwright.block.Lean;
import thrumwright.block.MaterialRole;
import thrumwright.block.PlainBand;
import thrumwright.block.Shed;
import thrumwright.block.Side;
import thrumwright.block.WarpFinish;
import thrumwright.block.WarpLoops;
import thrumwright.measure.Phrase;
import thrumwright.measure.UnitSystem;
import thrumwright.piece.Difficulty;
import thrumwright.piece.EdgeCord;
import thrumwright.piece.Habits;
import thrumwright.piece.LoomKind;
import thrumwright.piece.MadeFor;
import thrumwright.piece.Sheds;
import thrumwright.yarn.CountSystem;
import thrumwright.yarn.Fibre;
import thrumwright.yarn.Firmness;

/** How the values of a choice are written in a file. */
final class Choices<T> implements ValueType<T> {
    static final Choices<Side> SIDE =
            new Choices<Side>().with("left", Side.LEFT).with("right", Side.RIGHT);
    static final Choices<Shed> SHED =
            new Choices<Shed>().with("over first", Shed.OVER_FIRST).with("under first", Shed.UNDER_FIRST);
    static final Choices<Lean> LEAN = new Choices<Lean>().with("S", Lean.S).with("Z", Lean.Z);
    static final Choices<MaterialRole> ROLE = new Choices<MaterialRole>()
            .with("warp cord", MaterialRole.WARP_CORD)
            .with("weft", MaterialRole.WEFT)
            .with("waste", MaterialRole.WASTE);
    static final Choices<PlainBand.Purpose> PURPOSE = new Choices<PlainBand.Purpose>()
            .with("waste", PlainBand.Purpose.WASTE)
            .with("stiff", PlainBand.Purpose.STIFF)
            .with("facing", PlainBand.Purpose.FACING)
            .with("plain", PlainBand.Purpose.PLAIN);
    static final Choices<WarpFinish.Kind> FINISH = new Choices<WarpFinish.Kind>()
            .with("knotted", WarpFinish.Kind.KNOTTED)
            .with("plied", WarpFinish.Kind.PLIED)
            .with("plaited", WarpFinish.Kind.PLAITED)
            .with("darned", WarpFinish.Kind.DARNED);
    static final Choices<WarpLoops.Held> HELD = new Choices<WarpLoops.Held>()
            .with("rod", WarpLoops.Held.ROD)
            .with("cord", WarpLoops.Held.CORD)
            .with("cord that stays", WarpLoops.Held.CORD_STAYS)
            .with("nails", WarpLoops.Held.NAILS)
            .with("linked warp", WarpLoops.Held.LINKED);
    static final Choices<Difficulty> DIFFICULTY = new Choices<Difficulty>()
            .with("first piece", Difficulty.FIRST_PIECE)
            .with("some practice", Difficulty.SOME_PRACTICE)
            .with("patient hands", Difficulty.PATIENT_HANDS);
    static final Choices<MadeFor> MADE_FOR = new Choices<MadeFor>()
            .with("hung", MadeFor.HUNG)
            .with("mounted", MadeFor.MOUNTED)
            .with("framed", MadeFor.FRAMED)
            .with("floor or table", MadeFor.FLOOR_OR_TABLE)
            .with("sample", MadeFor.SAMPLE);
    static final Choices<EdgeCord.Along> ALONG = new Choices<EdgeCord.Along>()
            .with("ends", EdgeCord.Along.ENDS)
            .with("sides", EdgeCord.Along.SIDES)
            .with("all round", EdgeCord.Along.ALL_ROUND);
    static final Choices<Fibre> FIBRE = new Choices<Fibre>()
            .with("cotton", Fibre.COTTON)
            .with("wool", Fibre.WOOL)
            .with("silk", Fibre.SILK)
            .with("linen", Fibre.LINEN);
    static final Choices<Firmness> FIRMNESS = new Choices<Firmness>()
            .with("hard", Firmness.HARD)
            .with("medium", Firmness.MEDIUM)
            .with("soft", Firmness.SOFT);
    static final Choices<LoomKind.Spacer> SPACER = new Choices<LoomKind.Spacer>()
            .with("cord", LoomKind.Spacer.CORD)
            .with("chain", LoomKind.Spacer.CHAIN)
            .with("bar", LoomKind.Spacer.BAR);
    static final Choices<LoomKind.Peg> PEG = new Choices<LoomKind.Peg>()
            .with("nails", LoomKind.Peg.NAILS)
            .with("pegs", LoomKind.Peg.PEGS)
            .with("notches", LoomKind.Peg.NOTCHES);
    static final Choices<Sheds> SHEDS = new Choices<Sheds>()
            .with("fingers", Sheds.FINGERS)
            .with("stick and leashes", Sheds.STICK_AND_LEASHES)
            .with("rotating bar", Sheds.ROTATING_BAR)
            .with("heddle", Sheds.HEDDLE);
    static final Choices<UnitSystem> UNITS =
            new Choices<UnitSystem>().with("metric", UnitSystem.METRIC).with("inches", UnitSystem.INCHES);
    static final Choices<Habits.WidthsOf> WIDTHS_OF =
            new Choices<Habits.WidthsOf>().with("warp", Habits.WidthsOf.WARP).with("loom", Habits.WidthsOf.LOOM);
    static final Choices<CountSystem> COUNT = counts();

    /** They are few, so that the right one is found sooner by going through them than by any index. */
    private final List<Choice<T>> choices = new ArrayList<>();

    private record Choice<T>(String name, T value) {}

    private static Choices<CountSystem> counts() {
        Choices<CountSystem> counts = new Choices<>();
        for (CountSystem system : CountSystem.values()) {
            counts.with(system.symbol(), system);
        }
        return counts;
    }

    Choices<T> with(String name, T value) {
        choices.add(new Choice<>(name, value));
        return this;
    }

    @Override
    public Phrase like() {
        Phrase all = null;
        for (Choice<T> choice : choices) {
            all = all == null ? quoted(choice.name()) : either(all, quoted(choice.name()));
        }
        return all;
    }

    /** “a”, “b” or “c”. */
    static Phrase oneOf(List<String> names) {
        Phrase before = quoted(names.get(0));
        for (String name : names.subList(1, names.size() - 1)) {
            before = new Phrase("like.list", Map.of("before", before, "last", quoted(name)));
        }
        return either(before, quoted(names.get(names.size() - 1)));
    }

    private static Phrase either(Phrase before, Phrase last) {
        return new Phrase("like.either", Map.of("before", before, "last", last));
    }

    private static Phrase quoted(String name) {
        return new Phrase("like.quoted", Map.of("name", name));
    }

    @Override
    public T read(Fields in, String name, Node there) throws FileProblem {
        if (there instanceof Node.Text text) {
            for (Choice<T> choice : choices) {
                if (choice.name().equals(text.value())) {
                    return choice.value();
                }
            }
        }
        throw in.mustBe(name, like());
    }

    @Override
    public Node node(T value, Unknown around, String field) {
        for (Choice<T> choice : choices) {
            if (choice.value().equals(value)) {
                return Node.Text.of(choice.name());
            }
        }
        throw new IllegalStateException("no name for " + value);
    }
}
