package thrumwright.sheet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import thrumwright.block.Setting;
import thrumwright.block.WarpLoops;
import thrumwright.measure.Phrases;
import thrumwright.measure.Shown;
import thrumwright.piece.Place;
import thrumwright.plan.ClosedWarp;
import thrumwright.plan.ClosingShed;
import thrumwright.plan.EndPlan;
import thrumwright.plan.Plan;
import thrumwright.plan.words.HeightWords;
import thrumwright.plan.words.Words;

/** How a closed warp is wound, woven full and taken off. */
final class LoopWords {
    /** Loops that stand out by less aren't spoken of, mm. */
    private static final double UNSEEN = 0.05;

    private final Plan plan;
    private final Shown shown;
    private final Phrases phrases;
    private final Words words;

    LoopWords(Plan plan, Phrases phrases, Words words) {
        this.plan = plan;
        this.shown = plan.piece().shown();
        this.phrases = phrases;
        this.words = words;
    }

    /** What to do on the loom. */
    List<Sentence> onLoom(EndPlan end, WarpLoops loops) {
        return end.place() == Place.START ? winding(loops) : filling(loops);
    }

    private List<Sentence> winding(WarpLoops loops) {
        List<Sentence> sentences = new ArrayList<>();
        Map<String, Object> values = values(loops);
        Optional<ClosedWarp> closed = plan.closedWarp();
        if (closed.isPresent()) {
            ClosedWarp warp = closed.get();
            values.put("above", words.held(plan.top().loops().orElseThrow(), shown));
            values.put("apart", shown.height(warp.apart()));
            values.put("ends", plan.piece().warp().ends());
            values.put("lowerLoops", warp.lowerLoops());
            values.put("upperLoops", warp.upperLoops());
            values.put("last", phrases.say(warp.endsBelow() ? "warp-loops.below" : "warp-loops.above"));
            values.put("length", shown.total(plan.warpYarn()));
            values.put("each", shown.height(warp.each()));
            values.put("yarn", plan.piece().warpYarn().name());
            values.put("up", phrases.say(onNails(plan.top()) ? "warp-loops.up-nails" : "warp-loops.up"));
            values.put("down", phrases.say(onNails(plan.start()) ? "warp-loops.down-nails" : "warp-loops.down"));
            sentences.add(said("warp-loops.fix", values));
            sentences.add(said("warp-loops.wind", values));
            sentences.add(said("warp-loops.yarn", values));
        } else {
            sentences.add(said("warp-loops.fix-one", values));
        }
        linking(Place.START).ifPresent(sentences::addAll);
        if (closed.isPresent()) {
            linking(Place.TOP).ifPresent(sentences::addAll);
        }
        sentences.add(said("warp-loops.begin", values));
        return sentences;
    }

    private List<Sentence> filling(WarpLoops loops) {
        List<Sentence> sentences = new ArrayList<>();
        Map<String, Object> values = values(loops);
        if (plan.closedWarp().isEmpty()) {
            values.put(
                    "stand",
                    new HeightWords(plan, phrases)
                            .at(
                                    Place.TOP,
                                    plan.budget().designEnds() + plan.top().height()));
            sentences.add(said("warp-loops.fix-top", values));
            linking(Place.TOP).ifPresent(sentences::addAll);
        }
        sentences.add(said("warp-loops.pack", values));
        return sentences;
    }

    /** How loops that were wound on a jig come to hang in another warp. */
    private Optional<List<Sentence>> linking(Place place) {
        return plan.end(place).loops().filter(WarpLoops::linked).map(loops -> {
            int ends = plan.piece().warp().ends();
            int count = WarpLoops.loops(ends, place == Place.START);
            double slip = loops.slip(plan.piece().setting(plan.piece().warpYarn()));
            double far = place == Place.START ? plan.budget().clearance() : plan.linked();
            Map<String, Object> values = Map.of(
                    "loops", count,
                    "far", shown.height(far),
                    "length", shown.total(2 * count * far),
                    "slip", shown.height(slip));
            List<Sentence> sentences = new ArrayList<>();
            String link = "warp-loops.link-" + (place == Place.START ? "start" : "top");
            sentences.add(said(link, values));
            sentences.add(said(link + (slip > UNSEEN ? ".slip" : ".taut"), values));
            return sentences;
        });
    }

    /** How to go on where the shed closes towards the upper loops; said before that begins, in the design. */
    List<Sentence> closing() {
        ClosingShed shed = plan.closingShed();
        double beyond = plan.linked();
        if (beyond >= shed.hands()) {
            return List.of(said("warp-loops.open", Map.of()));
        }
        double loops = plan.budget().designEnds() + plan.top().height();
        double begins = plan.budget().clearance();
        HeightWords heights = new HeightWords(plan, phrases);
        Map<String, Object> values = Map.of(
                "line", heights.at(Place.TOP, Math.max(begins, loops + beyond - shed.hands())),
                "needleLine", heights.at(Place.TOP, Math.max(begins, loops + beyond - shed.needle())),
                "needle", shown.height(Math.min(loops - begins, Math.max(0, shed.needle() - beyond))));
        Sentence low = said("warp-loops.fill", values);
        return beyond >= shed.needle() ? List.of(low) : List.of(low, said("warp-loops.needle", values));
    }

    /** Nails go through each loop singly: yarn runs round them in the plane of the frame, and nothing is lashed. */
    static boolean onNails(EndPlan end) {
        return end.loops().filter(loops -> !loops.round().across()).isPresent();
    }

    /** What the key of a sentence ends with where it depends on how the loops are held. */
    static String way(EndPlan end) {
        if (onNails(end)) {
            return "-nails";
        }
        return linked(end) ? "-linked" : "";
    }

    /** Another warp, linked through the loops, holds them on the loom. */
    static boolean linked(EndPlan end) {
        return end.loops().filter(WarpLoops::linked).isPresent();
    }

    /** What to do off the loom. */
    List<Sentence> offLoom(EndPlan end, WarpLoops loops) {
        List<Sentence> sentences = new ArrayList<>();
        Map<String, Object> values = values(loops);
        boolean lifted = plan.closedWarp().isPresent() && onNails(end);
        sentences.add(said(
                lifted
                        ? "off.loops.nails-off"
                        : "off.loops."
                                + loops.round().name().toLowerCase(Locale.ROOT).replace('_', '-'),
                values));
        Setting warp = plan.piece().setting(plan.piece().warpYarn());
        if (!loops.linked() && loops.standOut(warp) > UNSEEN) {
            values.put("out", shown.fine(loops.standOut(warp)));
            sentences.add(said("off.loops.ease", values));
        }
        if (plan.closedWarp().isPresent()) {
            int tails = end.place() == Place.START ? 1 : 0;
            tails += plan.closedWarp().get().endsBelow() == (end.place() == Place.START) ? 1 : 0;
            if (tails > 0) {
                sentences.add(said("off.loops.tails", Map.of("tails", tails)));
            }
        }
        return sentences;
    }

    private Sentence said(String key, Map<String, ?> values) {
        return Sentence.of(phrases, key, values);
    }

    private Map<String, Object> values(WarpLoops loops) {
        Map<String, Object> values = new HashMap<>();
        values.put("held", words.held(loops, shown));
        values.put(
                "clearance",
                new HeightWords(plan, phrases).at(Place.START, plan.budget().clearance()));
        return values;
    }
}
