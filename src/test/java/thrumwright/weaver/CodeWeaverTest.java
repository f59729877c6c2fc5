package thrumwright.weaver;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import thrumwright.block.Block;
import thrumwright.block.EdgeFinish;
import thrumwright.block.Setting;
import thrumwright.block.Shed;
import thrumwright.block.Side;
import thrumwright.block.WarpLoops;
import thrumwright.drawing.Fonts;
import thrumwright.drawing.Palette;
import thrumwright.measure.Phrases;
import thrumwright.output.html.HtmlFile;
import thrumwright.output.html.LoomPage;
import thrumwright.piece.End;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;
import thrumwright.piece.Top;
import thrumwright.plan.BlockPlan;
import thrumwright.plan.EndPlan;
import thrumwright.plan.Plan;
import thrumwright.sheet.LoomSheet;
import thrumwright.sheet.PlainText;
import thrumwright.sheet.StepSheet;
import thrumwright.testing.RandomPieces;
import thrumwright.testing.Seeds;

/** Whoever does just what the sheet says gets the cloth that was planned. */
class CodeWeaverTest {
    private static final int SEEDS = Seeds.of(500);
    private static final Phrases HEADINGS = Phrases.of("thrumwright.sheet.steps", Locale.UK);

    @Test
    void whoeverDoesJustWhatTheSheetSaysGetsTheClothThatWasPlanned() {
        List<String> wrong = new ArrayList<>();
        for (int seed = 0; seed < SEEDS; seed++) {
            Piece piece = inOurWords(new RandomPieces(seed).next());
            for (String difference : differences(Plan.of(piece))) {
                wrong.add("Piece " + seed + ": " + difference);
            }
        }
        assertThat(wrong.stream().limit(20).collect(Collectors.joining("\n"))).isEmpty();
    }

    /** Own wordings are the weaver's own affair. */
    static Piece inOurWords(Piece piece) {
        Piece start = piece.withStart(inOurWords(piece.start()));
        return piece.top() instanceof Top.OnItsOwn own ? start.withTop(new Top.OnItsOwn(inOurWords(own.end()))) : start;
    }

    private static End inOurWords(End end) {
        List<Block> blocks = new ArrayList<>();
        for (Block block : end.blocks()) {
            blocks.add(block.withTag(block.tag().withWords("")));
        }
        return new End(blocks);
    }

    static String text(Plan plan) {
        return text(plan, Locale.UK);
    }

    static String text(Plan plan, Locale locale) {
        return PlainText.of(StepSheet.of(plan, locale), HEADINGS);
    }

    /** The same words as a browser shows them. */
    @Test
    void thePageForABrowserIsWovenAlike() {
        List<String> wrong = new ArrayList<>();
        for (int seed = 0; seed < Seeds.of(60); seed++) {
            Plan plan = Plan.of(inOurWords(new RandomPieces(1000 + seed).next()));
            String html = HtmlFile.of(plan, false, Optional.empty(), Fonts.load(), Palette.onPaper(), Locale.UK);
            for (String difference : differences(plan, HtmlWords.of(html))) {
                wrong.add("Piece " + (1000 + seed) + ": " + difference);
            }
        }
        assertThat(wrong.stream().limit(20).collect(Collectors.joining("\n"))).isEmpty();
    }

    /** The same words as they are read at the loom, row by row, on a screen or on the page for a phone. */
    @Test
    void whatIsReadAtTheLoomIsWovenAlike() {
        List<String> wrong = new ArrayList<>();
        for (int seed = 0; seed < Seeds.of(60); seed++) {
            Plan plan = Plan.of(inOurWords(new RandomPieces(2000 + seed).next()));
            String page = LoomPage.of(plan, Palette.onPaper(), Locale.UK);
            for (String text : List.of(LoomWords.of(LoomSheet.of(plan, Locale.UK)), LoomWords.ofPage(page))) {
                for (String difference : differences(plan, head(plan) + text)) {
                    wrong.add("Piece " + (2000 + seed) + ": " + difference);
                }
            }
        }
        assertThat(wrong.stream().limit(20).collect(Collectors.joining("\n"))).isEmpty();
    }

    /** Whoever stands at the loom sees how many warp ends there are. */
    private static String head(Plan plan) {
        return text(plan)
                .lines()
                .takeWhile(line -> !line.equals("The start"))
                .collect(Collectors.joining("\n", "", "\n"));
    }

    static List<String> differences(Plan plan) {
        return differences(plan, text(plan));
    }

    /** @param text the sheet to weave from */
    static List<String> differences(Plan plan, String text) {
        List<String> differences = new ArrayList<>();
        CodeWeaver weaver = new CodeWeaver(text);
        try {
            compare(plan.start(), weaver.start(), differences);
            compare(plan.top(), weaver.top(), differences);
            compareJoins(weaver.start(), differences);
            compareJoins(weaver.top(), differences);
            compare(plan, weaver, differences);
            compareEdge(plan, plan.start(), weaver, differences);
            compareEdge(plan, plan.top(), weaver, differences);
            compareTails(plan, weaver, differences);
        } catch (Unclear unclear) {
            differences.add(unclear.getMessage());
        }
        return differences;
    }

    private static List<BlockPlan> onTheLoom(EndPlan end) {
        return end.blocks().stream()
                .filter(block -> !(block.block() instanceof EdgeFinish) || block.block() instanceof WarpLoops)
                .toList();
    }

    private static void compare(EndPlan end, List<Cloth> woven, List<String> differences) {
        List<BlockPlan> blocks = onTheLoom(end);
        assertThat(woven).hasSameSizeAs(blocks);
        for (int i = 0; i < blocks.size(); i++) {
            Cloth planned = blocks.get(i).work().map(PlannedCloth::of).orElse(new Cloth(List.of(), List.of()));
            if (!planned.equals(woven.get(i))) {
                differences.add(blocks.get(i).block() + " in " + end.place() + ": planned " + planned + "\n  woven "
                        + woven.get(i));
            }
        }
    }

    /** A yarn that goes on must go round the edge end there, or nothing holds it. */
    private static void compareJoins(List<Cloth> woven, List<String> differences) {
        List<Cloth> rows =
                woven.stream().filter(cloth -> !cloth.rows().isEmpty()).toList();
        for (int i = 1; i < rows.size(); i++) {
            if (rows.get(i).goesOn() && !rows.get(i).holdsAfter(rows.get(i - 1))) {
                differences.add(
                        "What goes on holds nothing at the edge: " + rows.get(i - 1) + "\n  then " + rows.get(i));
            }
        }
    }

    private static void compareEdge(Plan plan, EndPlan end, CodeWeaver weaver, List<String> differences) {
        if (inOwnWords(end)) {
            return;
        }
        String place = end.place() == Place.START ? "the start" : "the top";
        Optional<EdgeWork> planned = end.finish().map(finish -> PlannedEdge.of(finish, warp(plan)));
        Optional<EdgeWork> worked = weaver.edge(place);
        if (!planned.equals(worked)) {
            differences.add("The edge of " + place + ": planned " + planned + "\n  worked " + worked);
        }
        int tails = plan.closedWarp()
                .map(closed -> (end.place() == Place.START ? 1 : 0)
                        + (closed.endsBelow() == (end.place() == Place.START) ? 1 : 0))
                .orElse(0);
        if (weaver.warpTails(place) != tails) {
            differences.add("Tails of the warp at " + place + ": " + tails + ", not " + weaver.warpTails(place));
        }
    }

    private static boolean inOwnWords(EndPlan end) {
        return end.finish()
                .filter(finish -> !finish.block().tag().words().isBlank())
                .isPresent();
    }

    private static int hanging(Cloth cloth) {
        return (int) cloth.tails().stream()
                .filter(tail -> tail.kept() == Cloth.Kept.HANGING)
                .count();
    }

    private static Setting warp(Plan plan) {
        return plan.piece().setting(plan.piece().warpYarn());
    }

    /** What hangs of the cloth that stays is finished: all of it and nothing else. */
    private static void compareTails(Plan plan, CodeWeaver weaver, List<String> differences) {
        int holding = 0;
        int weft = 0;
        for (EndPlan end : List.of(plan.start(), plan.top())) {
            List<Cloth> woven = end == plan.start() ? weaver.start() : weaver.top();
            List<BlockPlan> blocks = onTheLoom(end);
            for (int i = 0; i < blocks.size(); i++) {
                int tails = blocks.get(i).stays() ? hanging(woven.get(i)) : 0;
                holding += blocks.get(i).block().holds() ? tails : 0;
                weft += blocks.get(i).block().holds() ? 0 : tails;
            }
        }
        List<Integer> hanging = List.of(holding, weft);
        if (!weaver.tailsToFinish().equals(hanging)) {
            differences.add("Tails to finish: " + hanging + ", not " + weaver.tailsToFinish());
        }
    }

    private static void compare(Plan plan, CodeWeaver weaver, List<String> differences) {
        int ends = plan.piece().warp().ends();
        Side side = plan.start().after().side();
        Shed next = plan.start().after().nextShed();
        CodeWeaver.EdgePick begins = new CodeWeaver.EdgePick(side, over(next, side, ends));
        if (!weaver.designBegins().equals(begins)) {
            differences.add("The design begins with " + begins + ", not " + weaver.designBegins());
        }
        Side from = plan.afterDesign().side().other();
        CodeWeaver.EdgePick last =
                new CodeWeaver.EdgePick(from, over(plan.afterDesign().lastShed().orElseThrow(), from, ends));
        weaver.designEnds()
                .filter(said -> !said.equals(last))
                .ifPresent(said -> differences.add("The design ends with " + last + ", not " + said));
    }

    /** At the right edge a pick is over where the left one is over and there is an odd number of ends, or neither. */
    private static boolean over(Shed shed, Side side, int ends) {
        boolean left = shed == Shed.OVER_FIRST;
        return side == Side.LEFT ? left : left == (ends % 2 == 1);
    }
}
