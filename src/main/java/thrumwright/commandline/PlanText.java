package thrumwright.commandline;

import java.util.List;
import java.util.Locale;
import thrumwright.measure.Shown;
import thrumwright.piece.Piece;
import thrumwright.plan.BlockPlan;
import thrumwright.plan.Budget;
import thrumwright.plan.Cut;
import thrumwright.plan.EndPlan;
import thrumwright.plan.Plan;
import thrumwright.plan.Work;
import thrumwright.plan.Wrapping;
import thrumwright.plan.YarnTotal;
import thrumwright.plan.finding.Finding;
import thrumwright.plan.finding.Findings;
import thrumwright.plan.words.FindingWords;
import thrumwright.plan.words.Words;

/** A plan in a few lines of text. */
public final class PlanText {
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
        line("  warp      " + piece.warp().ends() + " ends of "
                + piece.warpYarn().name() + ", "
                + piece.warp().sett() + ", " + shown.cut(piece.warp().nominalWidth()) + " wide, "
                + shown.total(plan.warpYarn()) + " in all");
        line("  finished  " + shown.cut(plan.finishedWidth()) + " × " + shown.cut(plan.finishedHeight()));
        budget(plan.budget());
        end(plan.start(), "Start");
        end(plan.top(), "Top" + (piece.topFollows() ? ", following the start" : ""));
        line("");
        line("Yarn, without the design");
        for (YarnTotal total : plan.totals()) {
            line("  " + pad(total.yarn().name(), 24) + pad(shown.total(total.length()), 10)
                    + shown.mass(total.grams()));
        }
        List<Finding> findings = Findings.of(plan).all();
        if (!findings.isEmpty()) {
            FindingWords said = FindingWords.of(piece, Locale.UK);
            line("");
            line("Findings");
            for (Finding finding : findings) {
                line("  " + finding.severity().name().toLowerCase(Locale.ROOT) + ": " + said.say(finding));
            }
        }
    }

    private void budget(Budget budget) {
        line("  on loom   design from " + shown.height(budget.startLine()) + " to "
                + shown.height(budget.designEnds()) + ", at most " + shown.height(budget.stopLine())
                + (budget.left() < 0
                        ? "; " + shown.height(-budget.left()) + " too high"
                        : "; " + shown.height(budget.left()) + " to spare"));
    }

    private void end(EndPlan end, String name) {
        line("");
        line(name + ", " + shown.height(end.height()) + " on the loom"
                + end.hem()
                        .map(hem -> ", hem " + shown.height(hem.depth()) + " deep in " + hem.layers() + " layers of "
                                + shown.fine(hem.thickness()))
                        .orElse(""));
        for (BlockPlan block : end.blocks()) {
            line("  " + pad(words.name(block.block()), 24)
                    + pad(block.height() == 0 ? "" : shown.height(block.height()), 10)
                    + block.work().map(this::work).orElse(""));
        }
        end.finish()
                .ifPresent(finish -> line("  free warp " + shown.height(finish.free()) + ", needed "
                        + shown.height(finish.needed()) + ", " + finish.groups().size() + " groups"
                        + finish.wrapping().map(this::wrapping).orElse("")));
    }

    private String wrapping(Wrapping wrapping) {
        return ", cut " + wrapping.count() + " × " + shown.cut(wrapping.each().length()) + " of "
                + wrapping.yarn().name();
    }

    private String work(Work work) {
        Cut cut = work.cut();
        int rows = work.rows().size();
        String shared = cut.butterflies().count() == 1
                ? ""
                : ", " + cut.butterflies().count() + " butterflies of "
                        + shown.cut(cut.butterflies().each());
        return pad(rows + (rows == 1 ? " row" : " rows"), 10)
                + pad(words.side(work.begins()) + " to " + words.side(work.ends()), 16) + "cut "
                + shown.cut(cut.length()) + " (" + shown.halves(cut.widths()) + " ×) of "
                + work.yarn().name() + shared;
    }

    private void line(String line) {
        text.append(line.stripTrailing()).append('\n');
    }

    private static String pad(String text, int width) {
        return text.length() >= width ? text + " " : text + " ".repeat(width - text.length());
    }
}
