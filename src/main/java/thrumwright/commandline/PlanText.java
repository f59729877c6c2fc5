package thrumwright.commandline;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import thrumwright.measure.Shown;
import thrumwright.piece.Piece;
import thrumwright.plan.BlockPlan;
import thrumwright.plan.Budget;
import thrumwright.plan.Cut;
import thrumwright.plan.EndPlan;
import thrumwright.plan.Finish;
import thrumwright.plan.Hem;
import thrumwright.plan.Plan;
import thrumwright.plan.Work;
import thrumwright.plan.YarnTotal;
import thrumwright.plan.finding.Finding;
import thrumwright.plan.finding.Findings;
import thrumwright.plan.words.FindingWords;
import thrumwright.plan.words.Words;

/** A plan in a few lines of text. */
public final class PlanText {
    private static final String INDENT = "  ";

    private final Plan plan;
    private final Shown shown;
    private final Words words = new Words(Locale.UK);
    private final StringBuilder text = new StringBuilder();

    private PlanText(Plan plan) {
        this.plan = plan;
        this.shown = plan.piece().shown();
    }

    /** The summary; lines end with \n. */
    public static String of(Plan plan) {
        PlanText summary = new PlanText(plan);
        summary.write();
        return summary.text.toString();
    }

    private void write() {
        Piece piece = plan.piece();
        line(piece.title());
        warp(piece);
        budget(plan.budget());
        end(plan.start(), "plan.start");
        end(plan.top(), piece.topFollows() ? "plan.follows" : "plan.top");
        line("");
        line(Said.of("plan.yarns"));
        for (YarnTotal total : plan.totals()) {
            String length = pad(shown.total(total.length()), 10);
            line(INDENT
                    + pad(total.yarn().name(), 24)
                    + length
                    + pad(shown.mass(total.grams()), total.inDesign() > 0 ? 10 : 0)
                    + (total.inDesign() > 0 ? Said.of("plan.in-design", "length", shown.total(total.inDesign())) : ""));
        }
        findings(Findings.of(plan).all());
    }

    private void warp(Piece piece) {
        item(
                "plan.warp",
                Map.of(
                        "ends", piece.warp().ends(),
                        "yarn", piece.warpYarn().name(),
                        "sett", piece.warp().sett(),
                        "width", shown.cut(piece.warp().nominalWidth()),
                        "total", shown.total(plan.warpYarn())));
        item(
                "plan.finished",
                Map.of("width", shown.height(plan.finishedWidth()), "height", shown.height(plan.finishedHeight())));
    }

    private void budget(Budget budget) {
        item(
                budget.left() < 0 ? "plan.loom-short" : "plan.loom-spare",
                Map.of(
                        "from", shown.height(budget.startLine()),
                        "to", shown.height(budget.designEnds()),
                        "most", shown.height(budget.stopLine()),
                        "rest", shown.height(Math.abs(budget.left()))));
    }

    private void findings(List<Finding> findings) {
        if (findings.isEmpty()) {
            return;
        }
        FindingWords said = FindingWords.of(plan.piece(), Locale.UK);
        line("");
        line(Said.of("plan.findings"));
        findings.forEach(finding -> line(INDENT + Said.finding(finding.severity(), said.say(finding))));
    }

    private void end(EndPlan end, String key) {
        line("");
        String height = shown.height(end.height());
        line(end.hem()
                .map(hem -> Said.of(key + "-hem", hem(hem, height)))
                .orElseGet(() -> Said.of(key, "height", height)));
        for (BlockPlan block : end.blocks()) {
            String high = pad(block.height() == 0 ? "" : shown.height(block.height()), 10);
            line(INDENT
                    + pad(words.name(block.block()), 24)
                    + high
                    + block.work().map(this::work).orElse(""));
        }
        end.finish().ifPresent(this::finish);
    }

    private Map<String, Object> hem(Hem hem, String height) {
        return Map.of(
                "height", height,
                "depth", shown.height(hem.depth()),
                "layers", hem.layers(),
                "thickness", shown.fine(hem.thickness()));
    }

    private void finish(Finish finish) {
        Map<String, Object> values = new TreeMap<>(Map.of(
                "free", shown.height(finish.free()),
                "needed", shown.height(finish.needed()),
                "groups", finish.groups().size()));
        finish.wrapping().ifPresent(wrapping -> {
            values.put("count", wrapping.count());
            values.put("each", shown.cut(wrapping.each().length()));
            values.put("yarn", wrapping.yarn().name());
        });
        item(finish.wrapping().isPresent() ? "plan.free-wrapped" : "plan.free", values);
    }

    private String work(Work work) {
        String rows = Said.of("plan.rows", "rows", work.rows().size());
        String way = Said.of("plan.way", Map.of("from", words.side(work.begins()), "to", words.side(work.ends())));
        String yarn = words.yarn(work.yarn());
        return pad(rows, 10)
                + pad(way, 16)
                + work.toCut().map(cut -> cut(cut, yarn)).orElseGet(() -> goesOn(work, yarn));
    }

    private String goesOn(Work work, String yarn) {
        return Said.of(
                "plan.goes-on",
                Map.of(
                        "yarn",
                        yarn,
                        "before",
                        words.name(work.oneLength().before().orElseThrow())));
    }

    private String cut(Cut cut, String yarn) {
        return Said.of(
                cut.butterflies().count() == 1 ? "plan.cut" : "plan.cut-shared",
                Map.of(
                        "length", shown.cut(cut.length()),
                        "widths", shown.halves(cut.widths()),
                        "yarn", yarn,
                        "count", cut.butterflies().count(),
                        "each", shown.cut(cut.butterflies().each())));
    }

    private void item(String key, Map<String, ?> values) {
        line(INDENT + Said.of(key, values));
    }

    private void line(String line) {
        text.append(line.stripTrailing()).append('\n');
    }

    private static String pad(String text, int width) {
        return text.length() >= width ? text + " " : text + " ".repeat(width - text.length());
    }
}
