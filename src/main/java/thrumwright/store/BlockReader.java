package thrumwright.store;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import thrumwright.block.Amount;
import thrumwright.block.Block;
import thrumwright.block.HalfHitch;
import thrumwright.block.HemFold;
import thrumwright.block.KnotRows;
import thrumwright.block.Lean;
import thrumwright.block.Material;
import thrumwright.block.OpenWarp;
import thrumwright.block.OrderingCord;
import thrumwright.block.OwnWords;
import thrumwright.block.PlainBand;
import thrumwright.block.Side;
import thrumwright.block.Soumak;
import thrumwright.block.SpreadHeader;
import thrumwright.block.Support;
import thrumwright.block.Tag;
import thrumwright.block.TurnedEnds;
import thrumwright.block.Turning;
import thrumwright.block.Twining;
import thrumwright.block.Use;
import thrumwright.block.WarpFinish;
import thrumwright.block.WarpLoops;
import thrumwright.block.WrappedTassels;
import thrumwright.measure.Length;
import thrumwright.piece.End;

/** Reads the blocks of an end. */
final class BlockReader {
    private static final String KINDS =
            "“ordering cord”, “plain band”, “spread header”, “twining”, “soumak”, “half hitches”, “hem fold”, "
                    + "“open warp”, “warp finish”, “rows of knots”, “turned ends”, “wrapped tassels” or “warp loops”";

    /** All that blocks of any kind may have. */
    private static final Set<String> ALL_FIELDS = Set.of(
            "of",
            "yarn",
            "comesOut",
            "from",
            "picks",
            "height",
            "first",
            "for",
            "rows",
            "group",
            "twist",
            "slant",
            "countered",
            "over",
            "under",
            "firstTurn",
            "mitred",
            "band",
            "bar",
            "slat",
            "strip",
            "ends",
            "hanging",
            "split",
            "apart",
            "bothWays",
            "turns",
            "strands",
            "round",
            "thick");

    private BlockReader() {}

    /** @param yarns the ids of the yarns that a block may have for its own; empty: any */
    static End end(Fields fields, String name, Optional<Set<String>> yarns) throws FileProblem {
        List<Block> blocks = blocks(fields, name, yarns);
        try {
            return new End(blocks);
        } catch (IllegalArgumentException e) {
            throw fields.problem(name, e.getMessage() + ".", e);
        }
    }

    private static List<Block> blocks(Fields fields, String name, Optional<Set<String>> yarns) throws FileProblem {
        List<Block> blocks = new ArrayList<>();
        for (Fields block : fields.objects(name, "block", End.MOST_BLOCKS)) {
            Block made = block.made(() -> block(block, yarns));
            block.checked("words", () -> OwnWords.check(made));
            blocks.add(made);
            block.without(ALL_FIELDS, "a block of this kind");
            block.done();
        }
        return blocks;
    }

    private static Block block(Fields fields, Optional<Set<String>> yarns) throws FileProblem {
        String kind = fields.text("kind", "one of " + KINDS);
        Tag tag = new Tag(
                fields.id("a name that no other block of this end has"),
                fields.text("label", "", ""),
                fields.text("words", "", ""));
        return switch (kind) {
            case "ordering cord" ->
                new OrderingCord(
                        tag, use(fields, yarns), rows(fields, "picks"), fields.optionalChoice("first", Choices.SHED));
            case "plain band" ->
                new PlainBand(
                        tag,
                        use(fields, yarns),
                        fields.choice("for", Choices.PURPOSE, PlainBand.Purpose.PLAIN),
                        amount(fields),
                        fields.optionalChoice("first", Choices.SHED));
            case "spread header" ->
                new SpreadHeader(
                        tag,
                        use(fields, yarns),
                        rows(fields, "picks"),
                        fields.whole("strands", 1, SpreadHeader.MOST_STRANDS, 1),
                        fields.optionalChoice("first", Choices.SHED));
            case "twining" ->
                new Twining(
                        tag,
                        use(fields, yarns),
                        rows(fields, "rows"),
                        group(fields),
                        fields.choice("twist", Choices.LEAN, Lean.Z),
                        fields.flag("countered", false));
            case "soumak" ->
                new Soumak(
                        tag,
                        use(fields, yarns),
                        rows(fields, "rows"),
                        fields.whole("over", 2, 24, 2),
                        fields.whole("under", 1, 23, 1),
                        fields.choice("slant", Choices.LEAN, Lean.Z),
                        fields.flag("countered", false));
            case "half hitches" -> new HalfHitch(tag, use(fields, yarns), rows(fields, "rows"), group(fields));
            case "hem fold" -> new HemFold(tag, turning(fields), support(fields));
            case "open warp" -> new OpenWarp(tag, fields.length("height"));
            case "warp finish" ->
                new WarpFinish(tag, fields.choice("ends", Choices.FINISH), group(fields), fields.length("hanging"));
            case "rows of knots" ->
                new KnotRows(
                        tag,
                        fields.whole("rows", 1, KnotRows.MOST_ROWS, 1),
                        fields.whole("group", 2, 24, 2),
                        fields.flag("split", false),
                        fields.optionalLength("apart"),
                        fields.length("hanging"));
            case "turned ends" ->
                new TurnedEnds(
                        tag,
                        fields.whole("over", 1, TurnedEnds.MOST_OVER, 1),
                        fields.flag("bothWays", false),
                        fields.choice("from", Choices.SIDE, Side.LEFT),
                        fields.length("hanging"));
            case "wrapped tassels" ->
                new WrappedTassels(
                        tag,
                        new Use(material(fields, yarns), false, Optional.empty()),
                        fields.whole("group", 2, 24, 2),
                        fields.whole("turns", 1, WrappedTassels.MOST_TURNS),
                        fields.length("hanging"));
            case "warp loops" ->
                new WarpLoops(tag, fields.choice("round", Choices.HELD, WarpLoops.Held.ROD), fields.length("thick"));
            default -> throw fields.problem("kind", "this must be one of " + KINDS + ", not “" + kind + "”.", null);
        };
    }

    private static Turning turning(Fields fields) throws FileProblem {
        Optional<Length> first = fields.optionalLength("firstTurn");
        boolean mitred = fields.flag("mitred", false);
        Optional<Fields> band = fields.optionalObject("band");
        if (Stream.of(first.isPresent(), mitred, band.isPresent())
                        .filter(given -> given)
                        .count()
                > 1) {
            throw fields.problem("a hem has a “firstTurn”, is “mitred” or is faced with a “band”, one of them.");
        }
        if (band.isPresent()) {
            Turning faced = band.get()
                    .made(() -> new Turning.Faced(
                            band.get().length("width"), band.get().optionalLength("thickness")));
            band.get().done();
            return faced;
        }
        return mitred
                ? new Turning.Mitred()
                : first.<Turning>map(Turning.Twice::new).orElseGet(Turning.Once::new);
    }

    private static Optional<Support> support(Fields fields) throws FileProblem {
        if (Stream.of("bar", "slat", "strip").filter(fields::has).count() > 1) {
            throw fields.problem("a hem takes a “bar”, a “slat” or a “strip”, one of them.");
        }
        Optional<Length> bar = fields.optionalLength("bar");
        Optional<Length> strip = fields.optionalLength("strip");
        Optional<Fields> slat = fields.optionalObject("slat");
        if (slat.isPresent()) {
            Support both = slat.get()
                    .made(() -> new Support.Slat(
                            slat.get().length("width"), slat.get().length("thickness")));
            slat.get().done();
            return Optional.of(both);
        }
        return bar.<Support>map(Support.RoundBar::new).or(() -> strip.map(Support.Strip::new));
    }

    private static int rows(Fields fields, String name) throws FileProblem {
        return fields.whole(name, 1, Amount.MOST_ROWS, 1);
    }

    private static int group(Fields fields) throws FileProblem {
        return fields.whole("group", 1, 24, 1);
    }

    private static Amount amount(Fields fields) throws FileProblem {
        if (fields.has("picks") == fields.has("height")) {
            throw fields.problem("a plain band has either “picks” or a “height”.");
        }
        return fields.has("picks")
                ? new Amount.Picks(fields.whole("picks", 1, Amount.MOST_ROWS))
                : new Amount.Height(fields.length("height"));
    }

    private static Use use(Fields fields, Optional<Set<String>> yarns) throws FileProblem {
        Material material = material(fields, yarns);
        boolean comesOut = fields.flag("comesOut", false);
        return new Use(material, comesOut, fields.optionalChoice("from", Choices.SIDE));
    }

    private static Material material(Fields fields, Optional<Set<String>> yarns) throws FileProblem {
        if (fields.has("of") == fields.has("yarn")) {
            throw fields.problem(
                    "a block is either “of” a part (" + Choices.ROLE.listed() + ") or has a “yarn” of its own.");
        }
        return fields.has("of")
                ? new Material.Part(fields.choice("of", Choices.ROLE))
                : new Material.Own(
                        yarns.isPresent() ? fields.yarn("yarn", yarns.get()) : fields.text("yarn", "the id of a yarn"));
    }
}
