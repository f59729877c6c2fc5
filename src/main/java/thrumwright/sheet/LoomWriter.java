package thrumwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import thrumwright.measure.Phrases;
import thrumwright.piece.Place;
import thrumwright.plan.Plan;
import thrumwright.plan.Work;
import thrumwright.plan.words.HeightWords;
import thrumwright.plan.words.Words;

/** Takes a sheet apart into what is read at the loom, one step at a time. */
final class LoomWriter {
    private final Plan plan;
    private final StepSheet sheet;
    private final BlockWords words;
    private final Phrases phrases;

    LoomWriter(Plan plan, Locale locale) {
        this.plan = plan;
        this.sheet = StepSheet.of(plan, locale);
        this.words = new BlockWords(plan, Phrases.of("thrumwright.sheet.steps", locale), new Words(locale));
        this.phrases = Phrases.of("thrumwright.sheet.loom", locale);
    }

    LoomSheet sheet() {
        List<LoomStep> steps = new ArrayList<>();
        for (Chapter chapter : sheet.chapters()) {
            List<String> opening = chapter.opening();
            for (Step step : chapter.steps()) {
                steps.add(step(step, chapter.title(), opening));
                opening = List.of();
            }
        }
        return new LoomSheet(plan, steps);
    }

    private LoomStep step(Step step, String part, List<String> opening) {
        Optional<Work> work = step.rows().isEmpty() ? Optional.empty() : LoomSheet.work(plan, step.key());
        String reach = step.reachBrief().isEmpty() ? "" : reach(step);
        return new LoomStep(
                step, part, opening, cuts(step), work.map(this::rows).orElse(List.of()), reach);
    }

    private String reach(Step step) {
        Place place = step.picture().orElseThrow().place();
        return phrases.say("reach", Map.of("reach", new HeightWords(plan, phrases).said(place, step.reachBrief())));
    }

    /** In a few words for what is woven, whose sentences say the rest; else as on the sheet. */
    private List<String> cuts(Step step) {
        if (step.rows().isEmpty()) {
            return step.take().isEmpty() ? List.of() : List.of(step.take());
        }
        return sheet.cuts().stream()
                .filter(cut -> cut.step() == step.number())
                .map(this::cut)
                .toList();
    }

    private String cut(CutLine cut) {
        return phrases.say(
                cut.count() == 1 ? "cut.one" : "cut.several",
                Map.of(
                        "what",
                        cut.whatAndStrands(),
                        "count",
                        cut.count(),
                        "length",
                        cut.length(),
                        "widths",
                        cut.widths()));
    }

    private List<LoomStep.LoomRow> rows(Work work) {
        String key = work.block().plainWeave() ? "count.pick" : "count.row";
        int all = work.rows().size();
        return words.everyRow(work).stream()
                .map(row -> new LoomStep.LoomRow(phrases.say(key, Map.of("n", row.label(), "all", all)), row))
                .toList();
    }
}
