package thrumwright.sheet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import thrumwright.measure.Phrases;
import thrumwright.measure.Shown;
import thrumwright.piece.MadeFor;
import thrumwright.plan.Hem;
import thrumwright.plan.Plan;
import thrumwright.plan.Weight;
import thrumwright.plan.words.Words;

/** What becomes of the piece in the end, by what it is made for: hung, mounted, framed, laid down or kept. */
final class DestinyWords {
    /** How far glass stays from the weaving, mm (common practice, no source). */
    private static final double CLEAR = 5;
    /** How much larger a frame is inside than the board, mm: room for its cloth (common practice, no source). */
    private static final double PLAY = 3;
    /** An underlay ends so far inside the piece on every side, mm, in inches one (common practice, no source). */
    private static final double UNDER = 25;

    private final Plan plan;
    private final Shown shown;
    private final MadeFor madeFor;
    private final boolean said;
    private final HangingWords hanging;

    DestinyWords(Plan plan, Phrases phrases, Words words) {
        this.plan = plan;
        this.shown = plan.piece().shown();
        Optional<MadeFor> given = plan.piece().madeFor();
        this.madeFor = given.orElse(MadeFor.HUNG);
        // a hem that is to take a bar, a slat or a strip says it too
        this.said = given.isPresent() || plan.top().hem().flatMap(Hem::sleeve).isPresent();
        this.hanging = new HangingWords(plan, phrases, words);
    }

    /** The step's title is said under this and “.title”. */
    String titleKey() {
        return switch (madeFor) {
            case HUNG -> said ? "off.hang" : "off.if-hung";
            case MOUNTED -> "off.mount";
            case FRAMED -> "off.frame";
            case FLOOR_OR_TABLE -> "off.lay";
            case SAMPLE -> "off.sample";
        };
    }

    List<String> keys() {
        return switch (madeFor) {
            case HUNG -> hanging.keys();
            case MOUNTED, FRAMED -> mounting();
            case FLOOR_OR_TABLE -> List.of("off.lay.floor", "off.lay.table");
            case SAMPLE -> List.of("off.sample.measure", "off.sample.card");
        };
    }

    private List<String> mounting() {
        List<String> keys = new ArrayList<>(List.of(
                plan.board().orElseThrow().hides() ? "off.mount.board-hidden" : "off.mount.board",
                "off.mount.cover",
                "off.mount.pin",
                "off.mount.sew",
                "off.mount.thread"));
        if (madeFor == MadeFor.FRAMED) {
            keys.add("off.frame.rebate");
            keys.add("off.frame.gap");
        }
        keys.add("off.mount.weight");
        keys.add("off.mount.rest");
        return keys;
    }

    List<String> cautions() {
        return switch (madeFor) {
            case HUNG -> hanging.cautions();
            case MOUNTED, FRAMED -> List.of("caution.needles", "caution.overhead");
            case FLOOR_OR_TABLE -> List.of("caution.trip");
            case SAMPLE -> List.of();
        };
    }

    Map<String, Object> values() {
        if (madeFor == MadeFor.HUNG) {
            return hanging.values();
        }
        Map<String, Object> values = new HashMap<>();
        plan.board().ifPresent(board -> {
            values.putAll(SewnOnWords.seam(plan, 2 * (plan.finishedWidth() + plan.finishedHeight())));
            values.put("margin", shown.height(board.border()));
            values.put("less", shown.height(plan.finishedWidth() - board.width()));
            values.put("boardWidth", shown.cut(board.width()));
            values.put("boardHeight", shown.cut(board.height()));
            values.put("play", shown.height(PLAY));
            values.put("frameWidth", shown.cut(board.width() + PLAY));
            values.put("frameHeight", shown.cut(board.height() + PLAY));
            values.put("turnover", shown.height(board.turnover()));
            values.put("coverWidth", shown.cut(board.coverWidth()));
            values.put("coverHeight", shown.cut(board.coverHeight()));
        });
        double under = shown.system().length(UNDER, 1);
        values.put("under", shown.height(under));
        values.put("underWidth", shown.cut(Math.max(0, plan.finishedWidth() - 2 * under)));
        values.put("underHeight", shown.cut(Math.max(0, plan.finishedHeight() - 2 * under)));
        values.put("weight", shown.mass(Weight.of(plan).total()));
        values.put("times", HangingWords.TIMES);
        values.put("clear", shown.height(CLEAR));
        values.put("ends", plan.piece().warp().ends());
        values.put("sett", shown.typed(plan.piece().warp().sett().text()));
        return values;
    }
}
