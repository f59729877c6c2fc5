package thrumwright.commandline;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import thrumwright.block.Row;
import thrumwright.block.YarnBlock;
import thrumwright.plan.BlockPlan;
import thrumwright.plan.Budget;
import thrumwright.plan.Cut;
import thrumwright.plan.DesignWeft;
import thrumwright.plan.EndPlan;
import thrumwright.plan.Finish;
import thrumwright.plan.Hem;
import thrumwright.plan.Mitre;
import thrumwright.plan.OneLength;
import thrumwright.plan.Plan;
import thrumwright.plan.SewnBand;
import thrumwright.plan.Work;
import thrumwright.plan.Wrapping;
import thrumwright.plan.YarnTotal;
import thrumwright.plan.finding.Finding;
import thrumwright.plan.finding.Findings;
import thrumwright.plan.words.FindingWords;
import thrumwright.yarn.Yarn;

/** A plan as plain values for other programs; described in docs/commandline.md. Lengths in mm, masses in g. */
final class PlanJson {
    private static final int VERSION = 1;

    /** More rows aren't listed: from the second on they only repeat the two before. */
    private static final int ROWS_LISTED = 16;

    private PlanJson() {}

    static Map<String, Object> of(Plan plan) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("thrumwrightPlan", VERSION);
        json.put("title", plan.piece().title());
        json.put("ends", plan.piece().warp().ends());
        json.put("warpYarn", plan.warpYarn());
        json.put("finishedWidth", plan.finishedWidth());
        json.put("finishedHeight", plan.finishedHeight());
        json.put("budget", budget(plan.budget()));
        json.put("start", end(plan.start()));
        json.put("top", end(plan.top()));
        json.put("design", design(DesignWeft.of(plan.piece())));
        json.put("yarns", plan.totals().stream().map(PlanJson::total).toList());
        FindingWords words = FindingWords.of(plan.piece(), Locale.UK);
        json.put(
                "findings",
                Findings.of(plan).all().stream()
                        .map(finding -> finding(finding, words))
                        .toList());
        return json;
    }

    private static Map<String, Object> design(DesignWeft weft) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("told", weft.told());
        json.put("grams", weft.grams());
        json.put("yarns", weft.parts().stream().map(PlanJson::part).toList());
        return json;
    }

    private static Map<String, Object> part(DesignWeft.Covered part) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("yarn", part.yarn().id());
        strands(json, part.yarn());
        json.put("share", part.share());
        json.put("length", part.length());
        return json;
    }

    private static Map<String, Object> budget(Budget budget) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("open", budget.open());
        json.put("startLine", budget.startLine());
        json.put("designEnds", budget.designEnds());
        json.put("stopLine", budget.stopLine());
        json.put("workingRoom", budget.workingRoom());
        json.put("left", budget.left());
        return json;
    }

    private static Map<String, Object> end(EndPlan end) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("onLoom", end.onLoom());
        json.put("height", end.height());
        json.put("comingOut", end.comingOut());
        end.hem().ifPresent(hem -> json.put("hem", hem(hem)));
        end.finish().ifPresent(finish -> json.put("warpEnds", finish(finish)));
        json.put("blocks", end.blocks().stream().map(PlanJson::block).toList());
        return json;
    }

    private static Map<String, Object> hem(Hem hem) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("foldLine", hem.foldLine());
        json.put("cloth", hem.cloth());
        json.put("thickness", hem.thickness());
        json.put("depth", hem.depth());
        json.put("layers", hem.layers());
        hem.mitre().ifPresent(mitre -> json.put("mitre", mitre(mitre)));
        hem.band().ifPresent(band -> json.put("band", band(band)));
        return json;
    }

    private static Map<String, Object> mitre(Mitre mitre) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("back", mitre.back());
        json.put("leg", mitre.leg());
        json.put("crease", mitre.crease());
        return json;
    }

    private static Map<String, Object> band(SewnBand band) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("width", band.width());
        json.put("thickness", band.thickness());
        json.put("turned", band.turned());
        json.put("ends", band.ends());
        json.put("needed", band.needed());
        json.put("cut", band.length());
        json.put("widths", band.widths());
        json.put("grams", band.grams());
        return json;
    }

    private static Map<String, Object> finish(Finish finish) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("needed", finish.needed());
        json.put("free", finish.free());
        json.put("groups", finish.groups());
        finish.wrapping().ifPresent(wrapping -> json.put("wrapping", wrapping(wrapping)));
        return json;
    }

    private static Map<String, Object> wrapping(Wrapping wrapping) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("yarn", wrapping.yarn().id());
        strands(json, wrapping.yarn());
        json.put("height", wrapping.height());
        json.put("count", wrapping.count());
        json.put("exact", wrapping.each().exact());
        json.put("each", wrapping.each().length());
        return json;
    }

    private static Map<String, Object> block(BlockPlan block) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("id", block.block().id());
        json.put("bottom", block.bottom());
        json.put("height", block.height());
        block.work().ifPresent(work -> work(json, work));
        return json;
    }

    private static void work(Map<String, Object> json, Work work) {
        json.put("comesOut", work.block().use().comesOut());
        json.put("yarn", work.yarn().id());
        strands(json, work.yarn());
        json.put("exact", work.cut().exact());
        json.put("ease", work.cut().ease());
        work.toCut().ifPresentOrElse(cut -> cut(json, cut), () -> noCut(json));
        goesOn(json, work.oneLength());
        json.put("begins", lower(work.begins()));
        json.put("ends", lower(work.ends()));
        json.put("rowCount", work.rows().size());
        List<Row> listed =
                work.rows().subList(0, Math.min(ROWS_LISTED, work.rows().size()));
        json.put(
                "rows",
                listed.stream().map(row -> row(row, work.setting().ends())).toList());
    }

    /** How many strands of which yarn each length is wound from, if it is several. */
    private static void strands(Map<String, Object> json, Yarn yarn) {
        yarn.bundle().ifPresent(bundle -> {
            Map<String, Object> strands = new LinkedHashMap<>();
            bundle.parts().forEach(part -> strands.put(part.yarn().id(), part.count()));
            json.put("strands", strands);
        });
    }

    private static void cut(Map<String, Object> json, Cut cut) {
        json.put("hanging", cut.hanging());
        json.put("cut", cut.length());
        json.put("widths", cut.widths());
        json.put("butterflies", cut.butterflies().count());
        json.put("each", cut.butterflies().each());
    }

    private static void noCut(Map<String, Object> json) {
        List.of("hanging", "cut", "widths", "butterflies", "each").forEach(field -> json.put(field, 0));
    }

    private static void goesOn(Map<String, Object> json, OneLength length) {
        length.before().ifPresent(block -> json.put("goesOnFrom", block.id()));
        if (!length.after().isEmpty()) {
            json.put("goesOnInto", length.after().stream().map(YarnBlock::id).toList());
        }
    }

    private static Map<String, Object> row(Row row, int ends) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("from", lower(row.from()));
        row.meets(ends).ifPresent(passing -> json.put("meets", lower(passing)));
        row.shed().ifPresent(shed -> json.put("shed", lower(shed)));
        row.lean().ifPresent(lean -> json.put("lean", lean.name()));
        return json;
    }

    static Map<String, Object> total(YarnTotal total) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("yarn", total.yarn().id());
        json.put("inWarp", total.inWarp());
        json.put("inEnds", total.inEnds());
        json.put("inDesign", total.inDesign());
        json.put("sewnOn", total.sewnOn());
        json.put("grams", total.grams());
        return json;
    }

    static Map<String, Object> finding(Finding finding, FindingWords words) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("severity", lower(finding.severity()));
        json.put("code", lower(finding.code()));
        finding.place().ifPresent(place -> json.put("end", lower(place)));
        finding.blockId().ifPresent(id -> json.put("block", id));
        json.put("sentence", words.say(finding));
        return json;
    }

    private static String lower(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
