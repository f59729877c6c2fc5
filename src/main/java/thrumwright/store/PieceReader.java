package thrumwright.store;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import thrumwright.measure.UnitSystem;
import thrumwright.piece.Design;
import thrumwright.piece.End;
import thrumwright.piece.Habits;
import thrumwright.piece.Loom;
import thrumwright.piece.Piece;
import thrumwright.piece.Top;
import thrumwright.piece.Warp;
import thrumwright.yarn.Colour;
import thrumwright.yarn.Firmness;
import thrumwright.yarn.Sample;
import thrumwright.yarn.Thickness;
import thrumwright.yarn.Usage;
import thrumwright.yarn.Yarn;

/** Reads a piece. */
final class PieceReader {
    static final int MOST_YARNS = 200;

    private PieceReader() {}

    static PieceFile read(String text) throws FileProblem {
        Map<String, Map<String, Node>> unknown = new HashMap<>();
        Piece piece = whole(Fields.of(Json.read(text), unknown));
        return new PieceFile(piece, new Unknown(unknown));
    }

    /** The piece that an object holds, with its version. */
    static Piece whole(Fields fields) throws FileProblem {
        version(fields, "thrumwright", PieceFile.VERSION, "a piece");
        Piece piece = fields.made(() -> piece(fields));
        fields.done();
        return piece;
    }

    static void version(Fields fields, String name, int known, String what) throws FileProblem {
        if (!fields.has(name)) {
            throw fields.problem(
                    "this is not " + what + " of Thrumwright: it lacks the field “" + name + "” with its version.");
        }
        int version = fields.whole(name, 1, 1_000_000);
        if (version > known) {
            throw fields.problem(
                    name,
                    "this was written by a newer Thrumwright (version " + version
                            + " of the file; this one reads up to " + known + "). Open it with the newer one.",
                    null);
        }
    }

    private static Piece piece(Fields fields) throws FileProblem {
        Habits habits = habits(fields);
        List<Yarn> yarns = yarns(fields);
        Set<String> ids = yarns.stream().map(Yarn::id).collect(Collectors.toUnmodifiableSet());
        Warp warp = warp(fields.object("warp"), ids);
        Optional<Fields> materials = fields.optionalObject("materials");
        String cord = warp.yarnId();
        String waste = warp.yarnId();
        End start = BlockReader.end(fields, "start", Optional.of(ids));
        if (materials.isPresent()) {
            Fields parts = materials.get();
            cord = parts.has("cord") ? parts.yarn("cord", ids) : cord;
            waste = parts.has("waste") ? parts.yarn("waste", ids) : waste;
            parts.done();
        }
        return new Piece(
                fields.text("title", "the piece's name"),
                fields.text("note", "a text", ""),
                loom(fields.object("loom")),
                warp,
                yarns,
                cord,
                waste,
                design(fields.object("design"), ids),
                habits,
                start,
                top(fields, start, ids));
    }

    private static Loom loom(Fields fields) throws FileProblem {
        Optional<Fields> posts = fields.optionalObject("posts");
        Optional<Loom.Uprights> both = posts.isPresent() ? Optional.of(uprights(posts.get())) : Optional.empty();
        Loom loom = fields.made(() -> new Loom(
                fields.text("name", "what the loom is called", ""),
                fields.length("open"),
                both,
                fields.length("clearance"),
                fields.length("workingRoom"),
                fields.length("warpPerEnd")));
        fields.done();
        return loom;
    }

    static Loom.Uprights uprights(Fields fields) throws FileProblem {
        Loom.Uprights uprights = fields.made(() -> new Loom.Uprights(fields.length("diameter"), fields.length("gap")));
        fields.done();
        return uprights;
    }

    private static Warp warp(Fields fields, Set<String> ids) throws FileProblem {
        Warp warp = fields.made(() -> new Warp(
                fields.length("width"), fields.sett("sett"), fields.yarn("yarn", ids), fields.optionalLength("woven")));
        fields.done();
        return warp;
    }

    static List<Yarn> yarns(Fields fields) throws FileProblem {
        List<Yarn> yarns = new ArrayList<>();
        for (Fields yarn : fields.objects("yarns", "yarn", MOST_YARNS)) {
            yarns.add(yarn.made(() -> yarn(yarn)));
            yarn.done();
        }
        return yarns;
    }

    static Yarn yarn(Fields fields) throws FileProblem {
        Optional<Fields> sampled = fields.optionalObject("sample");
        Optional<Sample> sample = Optional.empty();
        if (sampled.isPresent()) {
            Fields inner = sampled.get();
            sample =
                    Optional.of(inner.made(() -> new Sample(inner.whole("picks", 1, 100_000), inner.length("height"))));
            inner.done();
        }
        String id = fields.id("a name that no other yarn has");
        return new Yarn(
                id,
                fields.text("name", "what the yarn is called", id),
                fields.parsed("colour", "a colour like “#c47a2c”", Colour::parse),
                fields.choice("fibre", Choices.FIBRE),
                thickness(fields.object("thickness")),
                fields.choice("firmness", Choices.FIRMNESS, Firmness.SOFT),
                sample,
                fields.optionalLength("stock"),
                usage(fields));
    }

    private static Optional<Usage> usage(Fields yarn) throws FileProblem {
        Optional<Fields> given = yarn.optionalObject("used");
        if (given.isEmpty()) {
            return Optional.empty();
        }
        Fields fields = given.get();
        Usage usage = fields.made(() -> new Usage(fields.whole("picks", 1, 100_000), fields.length("length")));
        fields.done();
        return Optional.of(usage);
    }

    private static Thickness thickness(Fields fields) throws FileProblem {
        Thickness thickness = fields.made(() -> {
            if (fields.has("diameter")) {
                return new Thickness.Measured(fields.length("diameter"));
            } else if (fields.has("wraps")) {
                return new Thickness.Wraps(fields.number("wraps", 0.01, 10_000), fields.length("in"));
            } else if (fields.has("count")) {
                return new Thickness.Counted(
                        fields.number("count", 0.001, 1_000_000),
                        fields.whole("plies", 1, Thickness.MOST_PLIES, 1),
                        fields.choice("system", Choices.COUNT));
            }
            throw fields.problem("a thickness is a “diameter”, “wraps” or a “count”.");
        });
        fields.without(
                Set.of("diameter", "wraps", "in", "count", "plies", "system"), "a thickness given in another way");
        fields.done();
        return thickness;
    }

    private static Design design(Fields fields, Set<String> ids) throws FileProblem {
        Optional<Fields> last = fields.optionalObject("lastPick");
        Design design = fields.made(() -> new Design(
                fields.length("height"),
                fields.yarn("firstStripe", ids),
                fields.yarn("lastStripe", ids),
                last.isPresent() ? last.get().optionalChoice("shed", Choices.SHED) : Optional.empty(),
                last.isPresent() ? last.get().optionalChoice("side", Choices.SIDE) : Optional.empty(),
                fields.number("relaxing", 0, 0.5, 0)));
        last.ifPresent(Fields::done);
        fields.done();
        return design;
    }

    private static Habits habits(Fields whole) throws FileProblem {
        Optional<Fields> given = whole.optionalObject("habits");
        if (given.isEmpty()) {
            return Habits.usual(UnitSystem.METRIC);
        }
        Fields fields = given.get();
        Habits usual = Habits.usual(fields.choice("units", Choices.UNITS, UnitSystem.METRIC));
        Habits habits = fields.made(() -> new Habits(
                usual.units(),
                fields.choice("widthsOf", Choices.WIDTHS_OF, usual.widthsOf()),
                fields.length("step", usual.step()),
                fields.length("tail", usual.tail()),
                fields.length("tie", usual.tie()),
                fields.number("ease", 0, 1, usual.ease()),
                fields.length("butterfly", usual.handful()),
                fields.length("overlap", usual.overlap())));
        fields.done();
        return habits;
    }

    private static Top top(Fields whole, End start, Set<String> ids) throws FileProblem {
        Optional<Fields> given = whole.optionalObject("top");
        return given.isPresent() ? top(given.get(), ids) : Top.FollowsStart.withoutOrderingCords(start);
    }

    private static Top top(Fields fields, Set<String> ids) throws FileProblem {
        if (fields.has("follows") == fields.has("blocks")) {
            throw fields.problem("the top either “follows” the start or has “blocks” of its own.");
        }
        Top top;
        if (fields.has("follows")) {
            if (!fields.text("follows", "“start”").equals("start")) {
                throw fields.problem("follows", "this must be “start”.", null);
            }
            top = new Top.FollowsStart(Set.copyOf(fields.texts("leavingOut")));
        } else {
            End end = BlockReader.end(fields, "blocks", Optional.of(ids));
            top = new Top.OnItsOwn(end);
        }
        fields.done();
        return top;
    }
}
