package thrumwright.sheet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import thrumwright.measure.Phrases;
import thrumwright.measure.Shown;
import thrumwright.piece.LoomKind;
import thrumwright.piece.Piece;
import thrumwright.piece.Pitch;
import thrumwright.piece.Sheds;
import thrumwright.plan.Plan;
import thrumwright.plan.words.Words;

/** Writes how a warp is put on: what is counted, then the steps that this kind of loom asks for. */
final class WarpingWriter {
    private static final List<String> STEPS =
            List.of("mark", "tie", "way", "count", "runs-out", "end", "tension", "space");

    private final Plan plan;
    private final Piece piece;
    private final LoomKind kind;
    private final Shown shown;
    private final Locale locale;
    private final Phrases phrases;
    private final Map<String, Object> values;

    WarpingWriter(Plan plan, Locale locale) {
        this.plan = plan;
        this.piece = plan.piece();
        this.kind = piece.loom().kind();
        this.shown = piece.shown();
        this.locale = locale;
        this.phrases = Phrases.of("thrumwright.sheet.warping", locale);
        this.values = values();
    }

    WarpingSheet sheet() {
        return new WarpingSheet(
                say("title"),
                facts(),
                steps(),
                List.of(say("caution.tension"), say("caution.children")),
                say(keyed("picture")),
                say("picture.marks"));
    }

    private Map<String, Object> values() {
        Map<String, Object> all = new HashMap<>();
        int ends = piece.warp().ends();
        all.put("piece", piece.title());
        all.put("ends", ends);
        all.put("pairs", (ends + 1) / 2);
        all.put("yarn", new Words(locale).yarn(piece.warpYarn()));
        all.put("sett", shown.typed(piece.warp().sett().text()));
        all.put("width", shown.cut(piece.warp().nominalWidth()));
        all.put("open", shown.height(piece.loom().open().mm()));
        all.put("end", shown.cut(plan.room().perEnd()));
        all.put("all", inAll());
        all.put("edge", phrases.say(ends % 2 == 0 ? "even" : "odd"));
        all.put("last", phrases.say(ends % 2 == 0 ? "last.even" : "last.odd"));
        all.put("clearance", shown.height(plan.budget().clearance()));
        all.put("apart", shown.height(WarpMarks.of(piece).apart()));
        all.put("marks", marks());
        woven(all);
        ofKind(all);
        return all;
    }

    private void woven(Map<String, Object> all) {
        double woven =
                plan.start().height() + plan.budget().design() + plan.top().height();
        all.put("woven", shown.cut(woven));
        all.put("lost", shown.cut(Math.max(0, plan.room().perEnd() - woven)));
    }

    private void ofKind(Map<String, Object> all) {
        if (kind instanceof LoomKind.Pegged pegs) {
            int steps = new Pitch(pegs).steps(piece.warp().sett());
            all.put("pitch", shown.typed(pegs.pitch().text()));
            all.put("which", phrases.say(steps == 1 ? "which.each" : "which.some", Map.of("steps", steps)));
        } else if (kind instanceof LoomKind.JoiningBar joining) {
            all.put("above", shown.height(joining.above().mm()));
        } else if (kind instanceof LoomKind.Rollers rollers) {
            all.put("waste", shown.cut(rollers.waste().mm()));
        } else if (kind instanceof LoomKind.RoundFrame round) {
            all.put("spacer", phrases.say("spacer." + round.spacer()));
        }
    }

    private String inAll() {
        String length = shown.total(plan.warpYarn());
        return piece.warpYarn()
                .skeins(plan.warpYarn())
                .map(count -> phrases.say(
                        "all.skeins",
                        Map.of(
                                "length", length,
                                "count", count,
                                "skein",
                                        shown.typed(piece.warpYarn()
                                                .skein()
                                                .orElseThrow()
                                                .text()))))
                .orElse(length);
    }

    /** “3 × 6 ends, 5 ends”. */
    private String marks() {
        return WarpMarks.of(piece).runs().stream()
                .map(run -> phrases.say(
                        run.marks() == 1 ? "run.one" : "run.several", Map.of("marks", run.marks(), "ends", run.ends())))
                .collect(Collectors.joining(phrases.say("run.comma")));
    }

    private List<Fact> facts() {
        List<Fact> facts = new ArrayList<>();
        for (String each : List.of("warp", "count", "marks", "length", "all", "edge")) {
            facts.add(new Fact(say("fact." + each), say(keyed("fact." + each + ".value"))));
        }
        return facts;
    }

    private List<WarpingSheet.WarpStep> steps() {
        List<String> keys =
                new ArrayList<>(plan.closedWarp().isPresent() ? List.of("mark", "closed", "tension") : STEPS);
        if (piece.loom().sheds().named()) {
            keys.add("sheds");
        }
        List<WarpingSheet.WarpStep> steps = new ArrayList<>();
        for (String key : keys) {
            String said = key.equals("sheds") ? sheds(piece.loom().sheds()) : say(keyed("step." + key));
            steps.add(new WarpingSheet.WarpStep(steps.size() + 1, say("step." + key + ".title"), said));
        }
        return steps;
    }

    private String sheds(Sheds sheds) {
        return say("step.sheds." + sheds);
    }

    /** What is said on looms of this kind, if that differs. */
    private String keyed(String key) {
        String own = key + "." + kind.key();
        return phrases.has(own) ? own : key;
    }

    private String say(String key) {
        return phrases.say(key, values);
    }
}
