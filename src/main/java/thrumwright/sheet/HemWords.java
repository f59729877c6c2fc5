package thrumwright.sheet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import thrumwright.measure.Phrases;
import thrumwright.measure.Shown;
import thrumwright.piece.Habits;
import thrumwright.plan.EndPlan;
import thrumwright.plan.Hem;
import thrumwright.plan.HemStitch;
import thrumwright.plan.Mitre;
import thrumwright.plan.Plan;
import thrumwright.plan.SewnBand;
import thrumwright.plan.words.Words;

/** How to fold a hem and sew it down: which sentences, and what they name. */
record HemWords(Plan plan, Shown shown, Phrases phrases, Words words) {
    Map<String, Object> values(EndPlan end, Hem hem) {
        Map<String, Object> values = new HashMap<>();
        values.put("place", words.place(end.place()));
        values.put("spacing", shown.height(HemStitch.spacing(shown.system())));
        values.put("depth", shown.height(hem.depth()));
        values.put("layers", hem.layers());
        hem.firstTurn().ifPresent(turn -> values.put("turn", shown.height(turn)));
        hem.mitre().ifPresent(mitre -> mitre(mitre, hem, values));
        hem.band().ifPresent(band -> band(band, hem, values));
        hem.sleeve().ifPresent(sleeve -> values.put("support", words.support(sleeve.support(), shown)));
        thread(hem, values);
        return values;
    }

    private void mitre(Mitre mitre, Hem hem, Map<String, Object> values) {
        values.put("back", shown.height(mitre.back()));
        values.put("leg", shown.height(mitre.leg()));
        values.put("ends", Math.round(mitre.leg() / plan.piece().warp().spacing()));
        values.put("crease", shown.height(mitre.crease()));
        values.put("corner", shown.height(hem.stacked() + hem.thickness()));
    }

    private void band(SewnBand band, Hem hem, Map<String, Object> values) {
        values.put("band", words.band(band.width(), band.thickness(), shown));
        values.put("cut", shown.cut(band.length()));
        values.put("turned", shown.height(band.turned()));
        values.put("ends", shown.height(band.ends()));
        values.put("in", shown.height(SewnBand.TURNED_IN));
        values.put("back", shown.height(SewnBand.BACK));
        values.put("thick", shown.height(hem.stacked()));
    }

    private void thread(Hem hem, Map<String, Object> values) {
        Habits habits = plan.piece().habits();
        double width = plan.finishedWidth();
        double layer = hem.thickness() + hem.band().map(SewnBand::thickness).orElse(0.0);
        double seam = hem.mitre()
                .map(mitre -> Math.max(0, mitre.between(width)) + (takesRod(hem) ? 0 : 2 * mitre.crease()))
                .orElse(width);
        int seams = hem.band().isPresent() ? 2 : 1;
        HemStitch stitch = HemStitch.of(seams * seam, layer, habits);
        values.put("stitches", HemStitch.of(seam, layer, habits).stitches());
        values.put("thread", shown.cut(stitch.thread()));
        values.put("threads", stitch.threads());
        values.put("each", shown.cut(stitch.each()));
    }

    List<String> keys(EndPlan end, Hem hem) {
        Optional<SewnBand> band = hem.band();
        List<String> keys = new ArrayList<>(band.map(sewn -> bandKeys(hem)).orElseGet(() -> hemKeys(end, hem)));
        keys.add("off.hem.thread");
        String closed = hem.mitre().isPresent() ? "off.hem.mitred-sides" : "off.hem.sides";
        keys.add(takesRod(hem) ? "off.hem.sleeve" : band.isPresent() ? "off.band.sides" : closed);
        if (band.isPresent()) {
            keys.add("off.band.basting");
        }
        return keys;
    }

    private static List<String> bandKeys(Hem hem) {
        return List.of(
                hem.cloth() > 0 ? "off.band.fold" : "off.band.fold-ends",
                "off.band.turn-in",
                "off.band.first",
                "off.band.second");
    }

    private static List<String> hemKeys(EndPlan end, Hem hem) {
        List<String> keys = new ArrayList<>();
        if (hem.firstTurn().isPresent()) {
            keys.add("off.hem.first-turn");
        }
        if (hem.mitre().isPresent()) {
            keys.add("off.hem.mitre");
            keys.add("off.hem.mitre-hold");
        }
        keys.add("off.hem.fold");
        keys.add("off.hem.pin");
        keys.add(stitchKey(end, hem));
        return keys;
    }

    /** A hem turned twice has its outer edge inside: what is stitched down is the edge that the first turn makes. */
    private static String stitchKey(EndPlan end, Hem hem) {
        if (hem.firstTurn().isPresent()) {
            return "off.hem.stitch-turned";
        }
        boolean stiff =
                end.blocks().stream().anyMatch(block -> block.block().key().equals("plain-stiff"));
        return stiff ? "off.hem.stitch-stiff" : "off.hem.stitch";
    }

    private static boolean takesRod(Hem hem) {
        return hem.sleeve().filter(Hem.Sleeve::slidesIn).isPresent();
    }
}
