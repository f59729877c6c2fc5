package thrumwright.output.part;

import java.util.ArrayList;
import java.util.List;
import thrumwright.output.page.Paper;
import thrumwright.output.page.Part;
import thrumwright.plan.Plan;

/** Strips of paper to measure a design by that travels with its cloth: from the start line to the stop line, at true size. */
public record DesignStrips(Plan plan, PartMaker make) {
    private static final double BELOW = 8;

    /**
     * All strips in rows, at least one.
     *
     * @param width of a row at most, points, more than 0
     * @param most what a row may take down the page, points, more than 0
     */
    public List<Part> rows(double width, double most) {
        double whole = Math.max(1, plan.budget().stopLine() - plan.budget().startLine());
        double each = Math.floor((most - BELOW) / Paper.POINTS / 10) * 10;
        List<PaperStrip> strips = new ArrayList<>();
        for (double from = 0; from < whole - 0.01; from += each) {
            strips.add(new DesignStrip(
                    from,
                    Math.min(whole, from + each),
                    whole,
                    plan.piece().habits().units(),
                    make));
        }
        return StripRow.rows(strips, width);
    }
}
