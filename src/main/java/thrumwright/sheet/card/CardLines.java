package thrumwright.sheet.card;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import thrumwright.block.Course;
import thrumwright.block.Passing;
import thrumwright.block.Side;
import thrumwright.measure.Phrases;
import thrumwright.piece.Place;
import thrumwright.plan.Budget;
import thrumwright.plan.Plan;
import thrumwright.sheet.Chapter;
import thrumwright.sheet.Step;
import thrumwright.sheet.StepSheet;

/** Writes the lines with which an end begins and with which the work goes on after it. */
final class CardLines {
    private final CardVoice voice;
    private final Phrases phrases;
    private final Plan plan;
    private final Budget budget;
    private final StepSheet sheet;

    CardLines(CardVoice voice, StepSheet sheet) {
        this.voice = voice;
        this.phrases = voice.phrases();
        this.plan = voice.plan();
        this.budget = plan.budget();
        this.sheet = sheet;
    }

    CardLine begin(Place place) {
        return place == Place.START ? begin() : lastPick();
    }

    List<CardLine> after(Place place) {
        return place == Place.START ? List.of(stop(), design()) : offLoom();
    }

    private CardLine begin() {
        boolean loops = plan.start().loops().isPresent();
        String key = loops ? "begin.loops" : "begin";
        String says = phrases.say(key + ".says", Map.of("line", voice.above(Place.START, budget.clearance())));
        return new CardLine(
                Optional.empty(),
                List.of(new CardSaying(phrases.say(key), says), up(Place.START, budget.clearance())),
                List.of());
    }

    private CardSaying up(Place place, double mm) {
        return new CardSaying(phrases.say("up", Map.of("height", voice.figures(place, mm))), "");
    }

    private CardLine stop() {
        String line = voice.above(Place.TOP, budget.stopLine());
        List<String> notes = new ArrayList<>();
        notes.add(phrases.say(tie(), Map.of("line", line)));
        if (budget.left() < 0) {
            notes.add(phrases.say("design.short", Map.of("short", voice.height(-budget.left()))));
        }
        CardSaying name = new CardSaying(phrases.say("stop"), phrases.say("stop.says", Map.of("line", line)));
        return new CardLine(
                Optional.of(steps(Chapter.Kind.DESIGN).get(0).number()), measured(name, budget.stopLine()), notes);
    }

    /** An arrow on the start's card is from the start's own line: where the top has another, its note alone says the height. */
    private List<CardSaying> measured(CardSaying name, double mm) {
        return plan.room().travels() ? List.of(name) : List.of(name, up(Place.TOP, mm));
    }

    private String tie() {
        if (plan.room().travels()) {
            return "stop.tie.travels";
        }
        return budget.closed() ? "stop.tie.closed" : "stop.tie";
    }

    private CardLine design() {
        Step step = steps(Chapter.Kind.DESIGN).get(1);
        Course after = plan.start().after();
        String says = phrases.say(
                "design.says",
                Map.of(
                        "side", voice.words().side(after.side()),
                        "meets", voice.words().meets(voice.next(after), after.side())));
        List<String> notes = new ArrayList<>();
        notes.add(phrases.say(
                "design.in", Map.of("yarn", plan.piece().stripe(Place.START).name())));
        // where loops close the warp, the sheet says how the shed closes
        notes.addAll(step.sentences().subList(1, step.sentences().size()));
        CardSaying name = new CardSaying(phrases.say("design"), says);
        return new CardLine(
                Optional.of(step.number()), List.of(name, pick(after.side(), voice.passing(voice.next(after)))), notes);
    }

    private static CardSaying pick(Side from, String passing) {
        return new CardSaying((from == Side.LEFT ? "→ " : "← ") + passing, "");
    }

    private CardLine lastPick() {
        Course design = plan.afterDesign();
        Side from = design.side().other();
        Passing passing = voice.meets(design.lastShed().orElseThrow(), from);
        String says = phrases.say(
                "last.says",
                Map.of(
                        "from", voice.words().side(from),
                        "meets", voice.words().meets(passing, from),
                        "side", voice.words().side(design.side())));
        CardSaying name = new CardSaying(phrases.say("last"), says);
        return new CardLine(
                steps(Chapter.Kind.TOP).stream().findFirst().map(Step::number),
                List.of(name, pick(from, voice.passing(passing)), ends()),
                List.of(phrases.say("last.otherwise")));
    }

    private CardSaying ends() {
        String key = budget.closed() ? "ends-at" : "ends-by";
        return new CardSaying(
                phrases.say(key, Map.of("height", voice.figures(Place.TOP, budget.stopLine()))),
                phrases.say(key + ".says", Map.of("line", voice.above(Place.TOP, budget.stopLine()))));
    }

    private List<CardLine> offLoom() {
        return steps(Chapter.Kind.OFF_LOOM).stream()
                .limit(1)
                .map(step -> phrases.say("then", Map.of("step", step.number())))
                .map(then -> new CardLine(Optional.empty(), List.of(), List.of(then)))
                .toList();
    }

    private List<Step> steps(Chapter.Kind kind) {
        return sheet.chapters().stream()
                .filter(chapter -> chapter.kind() == kind)
                .findFirst()
                .map(Chapter::steps)
                .orElse(List.of());
    }
}
