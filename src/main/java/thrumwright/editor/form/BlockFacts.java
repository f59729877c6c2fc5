package thrumwright.editor.form;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import thrumwright.block.Row;
import thrumwright.block.Setting;
import thrumwright.block.WarpLoops;
import thrumwright.editor.text.Texts;
import thrumwright.measure.Shown;
import thrumwright.piece.Place;
import thrumwright.plan.BlockPlan;
import thrumwright.plan.Cut;
import thrumwright.plan.Finish;
import thrumwright.plan.Hem;
import thrumwright.plan.Plan;
import thrumwright.plan.Work;
import thrumwright.plan.Wrapping;
import thrumwright.plan.words.HeightWords;

/** What a block comes to, in sentences. */
final class BlockFacts {
    private final Plan plan;
    private final Texts texts;
    private final Shown shown;
    private final List<String> facts = new ArrayList<>();

    private BlockFacts(Plan plan, Texts texts) {
        this.plan = plan;
        this.texts = texts;
        this.shown = plan.piece().shown();
    }

    static String of(Plan plan, Place place, String id, Texts texts) {
        return plan.end(place)
                .block(id)
                .map(block -> new BlockFacts(plan, texts).sentences(place, block))
                .orElse("");
    }

    private String sentences(Place place, BlockPlan block) {
        if (block.height() > 0) {
            say(
                    "fact.height",
                    Map.of(
                            "height", shown.height(block.height()),
                            "reach",
                                    new HeightWords(plan, texts.phrases())
                                            .at(place, plan.end(place).reach(block))));
        }
        block.work().ifPresent(this::work);
        plan.end(place)
                .hem()
                .filter(hem -> hem.blockId().equals(block.block().id()) && hem.folds())
                .ifPresent(this::hem);
        plan.end(place)
                .finish()
                .filter(finish -> finish.block().id().equals(block.block().id()))
                .ifPresent(finish -> {
                    if (finish.block() instanceof WarpLoops loops) {
                        loops(place, loops);
                    } else {
                        finish(finish);
                    }
                    finish.wrapping().ifPresent(this::wrapping);
                });
        return String.join("\n", facts);
    }

    private void wrapping(Wrapping wrapping) {
        say(
                "fact.wrapping",
                Map.of(
                        "height", shown.height(wrapping.height()),
                        "count", wrapping.count(),
                        "each", shown.cut(wrapping.each().length())));
    }

    private void loops(Place place, WarpLoops loops) {
        Setting warp = plan.piece().setting(plan.piece().warpYarn());
        say(
                "fact.loops",
                Map.of(
                        "loops", WarpLoops.loops(warp.ends(), place == Place.START),
                        "turn", shown.fine(loops.turn(warp)),
                        "out", shown.fine(loops.standOut(warp))));
        plan.closedWarp()
                .ifPresent(closed -> say(
                        "fact.closed",
                        Map.of(
                                "apart", shown.height(closed.apart()),
                                "each", shown.height(closed.each()),
                                "length", shown.total(plan.warpYarn()))));
    }

    private void finish(Finish finish) {
        say(
                "fact.finish",
                Map.of(
                        "groups", finish.groups().size(),
                        "needed", shown.height(finish.needed()),
                        "free", shown.height(Math.max(0, finish.free()))));
    }

    private void work(Work work) {
        work.toCut().ifPresentOrElse(this::cut, () -> goesOn(work));
        Row first = work.rows().get(0);
        texts.words().meets(first, work.setting().ends()).ifPresent(meets -> say("fact.meets", Map.of("meets", meets)));
        say(
                "fact.sides",
                Map.of(
                        "from", texts.words().side(work.begins()),
                        "to", texts.words().side(work.ends())));
    }

    private void goesOn(Work work) {
        work.oneLength()
                .before()
                .ifPresent(block ->
                        say("fact.goes-on", Map.of("before", texts.words().name(block))));
    }

    private void cut(Cut cut) {
        say(
                "fact.cut",
                Map.of(
                        "cut", shown.cut(cut.length()),
                        "widths", shown.halves(cut.widths()),
                        "woven", shown.cut(cut.exact()),
                        "ease", shown.cut(cut.ease()),
                        "hanging", shown.cut(cut.hanging())));
        if (cut.butterflies().count() > 1) {
            say(
                    "fact.butterflies",
                    Map.of(
                            "count", cut.butterflies().count(),
                            "each", shown.cut(cut.butterflies().each())));
        }
    }

    private void hem(Hem hem) {
        say(
                "fact.hem",
                Map.of(
                        "depth", shown.height(hem.depth()),
                        "layers", hem.layers(),
                        "thick", shown.height(hem.stacked())));
        hem.mitre()
                .ifPresent(mitre -> say(
                        "fact.mitre",
                        Map.of(
                                "leg", shown.height(mitre.leg()),
                                "back", shown.height(mitre.back()),
                                "crease", shown.height(mitre.crease()),
                                "thick", shown.height(hem.stacked() + hem.thickness()))));
        hem.band()
                .ifPresent(band -> say(
                        "fact.band",
                        Map.of(
                                "turned", shown.height(band.turned()),
                                "ends", shown.height(band.ends()),
                                "needed", shown.height(band.needed()),
                                "cut", shown.cut(band.length()),
                                "widths", shown.halves(band.widths()),
                                "mass", shown.mass(band.grams()))));
        hem.sleeve()
                .ifPresent(sleeve -> say(
                        "fact.sleeve",
                        Map.of(
                                "needed", shown.height(sleeve.depth()),
                                "support", texts.words().support(sleeve.support(), shown))));
    }

    private void say(String key, Map<String, ?> values) {
        facts.add(texts.say(key, values));
    }
}
