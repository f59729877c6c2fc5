package thrumwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import thrumwright.measure.Length;
import thrumwright.measure.Phrases;
import thrumwright.measure.Shown;
import thrumwright.piece.MeasuredStep;
import thrumwright.piece.Measures;
import thrumwright.piece.Place;
import thrumwright.plan.EndPlan;
import thrumwright.plan.Hem;
import thrumwright.plan.Plan;
import thrumwright.yarn.Yarn;

/**
 * What is planned, with how it came out as far as it was measured, and room to write the rest.
 *
 * @param facts whose it is, with lines to write dates on
 * @param columns of the measures
 * @param measures a row for each step that reaches a height, then the finished piece
 * @param yarnColumns of the yarns
 * @param yarns a row for each
 */
public record RecordSheet(
        String title,
        List<Fact> facts,
        List<String> columns,
        List<List<String>> measures,
        List<String> yarnColumns,
        List<List<String>> yarns) {
    private static final String YOURS = "____________";

    public RecordSheet {
        facts = List.copyOf(facts);
        columns = List.copyOf(columns);
        measures = List.copyOf(measures);
        yarnColumns = List.copyOf(yarnColumns);
        yarns = List.copyOf(yarns);
    }

    public static RecordSheet of(Plan plan, StepSheet sheet, Locale locale) {
        return new Writer(plan, sheet, locale, Phrases.of("thrumwright.sheet.steps", locale)).written();
    }

    private record Writer(Plan plan, StepSheet sheet, Locale locale, Phrases phrases) {
        RecordSheet written() {
            return new RecordSheet(
                    phrases.say("record.title", Map.of("piece", sheet.title())),
                    facts(),
                    said("step", "what", "height", "yours", "width", "yours"),
                    heights(),
                    said("yarn", "taken", "left"),
                    yarns());
        }

        private List<String> said(String... keys) {
            return Stream.of(keys).map(key -> phrases.say("record." + key)).toList();
        }

        private Shown shown() {
            return plan.piece().shown();
        }

        /** Those that tell which piece it is, then lines for dates. */
        private List<Fact> facts() {
            List<Fact> facts =
                    new ArrayList<>(sheet.facts().subList(0, sheet.name().isPresent() ? 3 : 2));
            Stream.of("warped", "begun", "off", "done")
                    .forEach(date -> facts.add(new Fact(phrases.say("record." + date), phrases.say("name.blank"))));
            return facts;
        }

        private List<List<String>> heights() {
            String width = shown().cut(plan.piece().warp().nominalWidth());
            List<List<String>> rows = new ArrayList<>();
            for (Step step : firstPlanned().steps()) {
                if (!step.reachBrief().isEmpty()) {
                    rows.add(measured(step, width));
                }
            }
            rows.add(row(
                    "",
                    phrases.say("record.finished"),
                    shown().height(plan.finishedHeight()),
                    shown().height(plan.finishedWidth())));
            Stream.of(plan.start(), plan.top())
                    .forEach(end -> end.hem().filter(Hem::folds).ifPresent(hem -> rows.add(hem(end, hem))));
            return rows;
        }

        /** Planned is what was planned first, whatever was changed since to make up for what was measured. */
        private StepSheet firstPlanned() {
            boolean changed =
                    measures().all().stream().anyMatch(step -> step.planned().isPresent());
            return changed ? StepSheet.of(Plan.asFirstPlanned(plan.piece()), locale) : sheet;
        }

        private Measures measures() {
            return plan.piece().measures();
        }

        private List<String> measured(Step step, String width) {
            MeasuredStep measured = measures().of(step.key());
            return List.of(
                    String.valueOf(step.number()),
                    step.title(),
                    step.reachBrief(),
                    yours(measured.height()),
                    width,
                    yours(measured.width()));
        }

        private String yours(Optional<Length> measured) {
            return measured.map(length -> shown().typed(length.text())).orElse(YOURS);
        }

        /** What was left of each cut of a yarn. */
        private String left(Optional<Yarn> yarn) {
            String left = Stream.of(plan.start(), plan.top())
                    .flatMap(end -> yarn.stream()
                            .flatMap(own -> end.taking(own).stream())
                            .flatMap(block -> measures().of(end.place().step(block.id())).left().stream()))
                    .map(length -> shown().typed(length.text()))
                    .collect(Collectors.joining(", "));
            return left.isEmpty() ? YOURS : left;
        }

        private List<String> hem(EndPlan end, Hem hem) {
            String name = phrases.say(end.place() == Place.START ? "fact.hem.start" : "fact.hem.top");
            return List.of("", name, shown().height(hem.depth()), YOURS, "", "");
        }

        private static List<String> row(String step, String what, String height, String width) {
            return List.of(step, what, height, YOURS, width, YOURS);
        }

        private List<List<String>> yarns() {
            return sheet.yarns().stream()
                    .map(yarn -> List.of(yarn.what(), yarn.length() + ", " + yarn.mass(), left(yarn.yarn())))
                    .toList();
        }
    }
}
