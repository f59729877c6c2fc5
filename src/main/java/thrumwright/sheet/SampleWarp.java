package thrumwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import thrumwright.block.Amount;
import thrumwright.block.Block;
import thrumwright.block.EdgeFinish;
import thrumwright.block.Lean;
import thrumwright.block.MaterialRole;
import thrumwright.block.OpenWarp;
import thrumwright.block.PlainBand;
import thrumwright.block.Tag;
import thrumwright.block.Twining;
import thrumwright.block.Use;
import thrumwright.block.YarnBlock;
import thrumwright.measure.Length;
import thrumwright.measure.Phrases;
import thrumwright.measure.Refused;
import thrumwright.measure.UnitSystem;
import thrumwright.piece.Design;
import thrumwright.piece.Destiny;
import thrumwright.piece.End;
import thrumwright.piece.MadeFor;
import thrumwright.piece.Meant;
import thrumwright.piece.Measures;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;
import thrumwright.piece.Structure;
import thrumwright.piece.Ticks;
import thrumwright.piece.Top;
import thrumwright.plan.EndPlan;
import thrumwright.plan.Plan;
import thrumwright.plan.words.Words;

/**
 * A narrow warp that tries several edges, one above the other: a piece whose start is all of them, each with a strip of plain
 * weave to write on and with open warp below the next, as much as that one's ends need. The lowest keeps its fold and its
 * finish; how the others are folded and finished stands in the piece's note, since on the loom nothing is done for it.
 */
public final class SampleWarp {
    /** So many edges at most. */
    public static final int MOST = 12;

    /** Open warp between two samples at least, so that hands and scissors get in, mm (common practice, no source). */
    private static final double APART = 40;

    /** What is lost where the warp is cut, mm (common practice, no source). */
    private static final double CUT = 10;

    private final Piece base;
    private final List<Structure> edges;
    private final Locale locale;
    private final Phrases phrases;
    private final Words words;

    private SampleWarp(Piece base, List<Structure> edges, Locale locale) {
        this.base = base;
        this.edges = edges;
        this.locale = locale;
        this.phrases = Phrases.of("thrumwright.sheet.samples", locale);
        this.words = new Words(locale);
    }

    /**
     * The piece to weave.
     *
     * @param base loom, warp and yarns of all samples; its ends and its design give way
     * @param edges from below to above, 2 to {@link #MOST}
     * @param locale the language of names and note
     * @throws Refused if there are too few or too many, or one is closed by loops of the warp
     */
    public static Piece of(Piece base, List<Structure> edges, Locale locale) {
        if (edges.size() < 2 || edges.size() > MOST) {
            throw new Refused("samples.count", Map.of("count", edges.size(), "most", MOST));
        }
        for (Structure edge : edges) {
            if (!canStand(edge.end())) {
                throw new Refused("samples.closed", Map.of("name", edge.name()));
            }
        }
        Piece unwoven = base.withTicks(Ticks.NONE).withMeasures(Measures.NONE).withMeant(Meant.NOTHING);
        return new SampleWarp(unwoven, List.copyOf(edges), locale).piece();
    }

    /** How wide the warp is unless it is said. */
    public static Length usualWidth(UnitSystem units) {
        return Length.parse(units == UnitSystem.INCHES ? "4 in" : "10 cm");
    }

    /** Whether an edge can stand above another: its warp isn't turned back in loops. */
    public static boolean canStand(End edge) {
        return edge.blocks().stream()
                .noneMatch(block -> block.finish().filter(EdgeFinish::closed).isPresent());
    }

    private Piece piece() {
        List<Block> blocks = new ArrayList<>();
        List<String> note = new ArrayList<>();
        List<Plan> plans = IntStream.range(0, edges.size())
                .mapToObj(index -> Plan.of(alone(index)))
                .toList();
        for (int i = 0; i < edges.size(); i++) {
            Plan alone = plans.get(i);
            if (i > 0) {
                blocks.add(gap(i + 1, alone.start()));
            }
            blocks.addAll(stack(i + 1, alone));
            if (i < edges.size() - 1) {
                blocks.addAll(strip(i + 1));
            }
            note.add(finish(i + 1, alone));
        }
        note.addAll(
                0,
                List.of(
                        phrases.say("note", Map.of("names", names())),
                        phrases.say("note.cut", Map.of("parts", edges.size() - 1)),
                        phrases.say("note.finish")));
        Plan lowest = plans.get(0);
        double below = Math.max(
                lowest.room().clearance(),
                base.loom().clearance().map(Length::mm).orElse(0.0));
        return lowest.piece()
                .withTitle(phrases.say("title", Map.of("count", edges.size())))
                .withNote(String.join("\n", note))
                .withDestiny(Destiny.UNSAID.withMadeFor(Optional.of(MadeFor.SAMPLE)))
                .withLoom(base.loom().withClearance(Optional.of(rounded(below))))
                .withDesign(design())
                .withStart(new End(blocks))
                .withTop(new Top.OnItsOwn(new End(List.of(hold(edges.size()), waste()))));
    }

    /** One of the edges on the same warp, with nothing above it; only the lowest has what orders the warp. */
    private Piece alone(int index) {
        Piece bare =
                base.withTop(new Top.OnItsOwn(End.empty())).withLoom(base.loom().withClearance(Optional.empty()));
        Piece alone = edges.get(index).on(bare, Place.START);
        return index == 0
                ? alone
                : alone.withStart(alone.start()
                        .without(alone.start().blocks().stream()
                                .filter(Block::startOnly)
                                .map(Block::id)
                                .toList()));
    }

    /** The highest label strip; how its last pick goes isn't known yet. */
    private Design design() {
        Design design = base.design();
        return new Design(
                stripHeight(),
                design.firstYarnId(),
                design.firstYarnId(),
                Optional.empty(),
                Optional.empty(),
                design.relaxing());
    }

    private String names() {
        return String.join(", ", edges.stream().map(Structure::name).toList());
    }

    /** What is woven of an edge; the first yarn after open warp is cut by itself. */
    private List<Block> stack(int number, Plan alone) {
        List<Block> stack = new ArrayList<>();
        for (Block block : alone.piece().start().blocks()) {
            boolean folded = block.finish().isPresent()
                    || alone.start().block(block.id()).orElseThrow().fold().isPresent();
            if (number == 1 || !folded) {
                Tag tag = new Tag(
                        "s" + number + "-" + block.id(),
                        phrases.say("block", Map.of("number", number, "block", words.name(block))),
                        block.tag().words());
                stack.add(byItself(block.withTag(tag), number > 1 && stack.isEmpty()));
            }
        }
        return stack;
    }

    private static Block byItself(Block block, boolean wanted) {
        return wanted
                ? block.woven()
                        .<Block>map(woven -> woven.withUse(woven.use().withByItself(true)))
                        .orElse(block)
                : block;
    }

    /** As much open warp as the ends of the sample above it need, beyond what comes out of it again. */
    private OpenWarp gap(int number, EndPlan above) {
        double needed = above.finish()
                .map(finish -> finish.needed() - above.edge() + CUT)
                .orElse(APART);
        String label = phrases.say("gap", Map.of("number", number));
        return new OpenWarp(new Tag("s" + number + "-gap", label), rounded(Math.max(APART, needed)));
    }

    private List<Block> strip(int number) {
        String label = phrases.say("strip", Map.of("number", number));
        return List.of(
                new PlainBand(
                        new Tag("s" + number + "-label", label),
                        Use.of(MaterialRole.WEFT),
                        PlainBand.Purpose.PLAIN,
                        new Amount.Height(stripHeight()),
                        Optional.empty()),
                hold(number));
    }

    private Length stripHeight() {
        return Length.parse(inches() ? "1 1/4 in" : "3 cm");
    }

    private YarnBlock hold(int number) {
        String label = phrases.say("hold", Map.of("number", number));
        return new Twining(new Tag("s" + number + "-hold", label), Use.of(MaterialRole.WARP_CORD), 1, 1, Lean.Z, false);
    }

    private static YarnBlock waste() {
        return new PlainBand(
                Tag.of("waste"),
                Use.comingOut(MaterialRole.WASTE),
                PlainBand.Purpose.WASTE,
                new Amount.Picks(6),
                Optional.empty());
    }

    /** What is done with a sample once it is cut off, in the words of its own sheet. */
    private String finish(int number, Plan alone) {
        String name = edges.get(number - 1).name();
        if (number == 1) {
            return phrases.say("note.first", Map.of("name", name));
        }
        List<String> told = StepSheet.of(alone, locale).chapters().stream()
                .flatMap(chapter -> chapter.steps().stream())
                .filter(step ->
                        step.key().startsWith(Step.offLoom("")) && step.key().endsWith("/start"))
                .flatMap(step -> step.sentences().stream())
                .toList();
        Map<String, ?> values = Map.of("number", number, "name", name, "told", String.join(" ", told));
        return phrases.say(told.isEmpty() ? "note.nothing" : "note.told", values);
    }

    private boolean inches() {
        return base.habits().units() == UnitSystem.INCHES;
    }

    /** Up to what a rule shows. */
    private Length rounded(double mm) {
        double part = inches() ? 25.4 / 4 : 5;
        double parts = Math.ceil(mm / part - 1e-9);
        return inches()
                ? Length.of(parts / 4, base.habits().units().usual())
                : Length.of(parts / 2, base.habits().units().usual());
    }
}
