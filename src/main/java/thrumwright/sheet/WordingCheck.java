package thrumwright.sheet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import thrumwright.block.Lean;
import thrumwright.block.Passing;
import thrumwright.block.Row;
import thrumwright.block.Shed;
import thrumwright.block.Side;
import thrumwright.measure.Phrases;
import thrumwright.piece.Place;
import thrumwright.plan.BlockPlan;
import thrumwright.plan.EndPlan;
import thrumwright.plan.Finish;
import thrumwright.plan.Plan;
import thrumwright.plan.Work;
import thrumwright.plan.words.Words;

/**
 * Reads a weaver's own wording of a step and says what it leaves out or contradicts: where to begin, over or under, how many
 * rows, which way they lean. It knows plain turns of speech only; what it can't read it takes for missing.
 */
public final class WordingCheck {
    private final Plan plan;
    private final Phrases phrases;
    private final Phrases steps;
    private final Words words;

    /** @param locale the language wanted; where there is no text in it, English */
    public WordingCheck(Plan plan, Locale locale) {
        this.plan = plan;
        this.phrases = Phrases.of("thrumwright.sheet.wording", locale);
        this.steps = Phrases.of("thrumwright.sheet.steps", locale);
        this.words = new Words(locale);
    }

    /** One sentence for each; none for an empty wording, for a fold, loops or open warp, and where all is well. */
    public List<String> remarks(Place place, String blockId, String wording) {
        if (wording.isBlank()) {
            return List.of();
        }
        EndPlan end = plan.end(place);
        OwnWording own = new OwnWording(plan, steps, words);
        String said = String.join(" ", own.preview(place, blockId, wording));
        Optional<Work> work = end.block(blockId).flatMap(BlockPlan::work);
        return work.map(woven -> woven(said, woven))
                .orElseGet(() -> end
                        .finish()
                        .filter(finish -> finish.block().id().equals(blockId))
                        .flatMap(finish -> worked(said, finish))
                        .stream()
                        .toList());
    }

    /** Ends that hang are parted into groups; such as go round their neighbours set out from a side. */
    private Optional<String> worked(String said, Finish finish) {
        return finish.block().hangs()
                ? groups(said, finish.groups().size())
                : finish.block().begins().flatMap(side -> side(said, side));
    }

    private List<String> woven(String said, Work work) {
        List<String> remarks = new ArrayList<>();
        side(said, work.begins()).ifPresent(remarks::add);
        meets(said, work).ifPresent(remarks::add);
        // what goes round picks that are woven already tells of these
        if (work.stands()) {
            count(said, work.rows().size()).ifPresent(remarks::add);
        }
        work.rows().get(0).lean().flatMap(lean -> lean(said, lean)).ifPresent(remarks::add);
        return remarks;
    }

    private Matcher reading(String key, String said) {
        return Pattern.compile(phrases.unfilled("reads." + key), Pattern.CASE_INSENSITIVE)
                .matcher(said);
    }

    private Side side(String word) {
        return word.equalsIgnoreCase(phrases.unfilled("reads.left")) ? Side.LEFT : Side.RIGHT;
    }

    private Optional<String> side(String said, Side begins) {
        String planned = words.side(begins);
        if (!reading("side", said).find()) {
            return Optional.of(phrases.say("side.missing", Map.of("side", planned)));
        }
        Matcher found = reading("begins", said);
        if (!found.find()) {
            return Optional.empty();
        }
        String named = group(found);
        return side(named) == begins
                ? Optional.empty()
                : Optional.of(phrases.say("side.other", Map.of("side", planned, "said", named)));
    }

    /** Named by either edge end: the pick meets each of them in one way. */
    private Optional<String> meets(String said, Work work) {
        Row first = work.rows().get(0);
        int ends = work.setting().ends();
        Optional<Shed> shed = first.shed();
        if (shed.isEmpty()) {
            return Optional.empty();
        }
        String planned = words.meets(first, ends).orElseThrow();
        Matcher meets = reading("meets", said);
        if (!meets.find()) {
            return Optional.of(phrases.say("meets.missing", Map.of("meets", planned)));
        }
        boolean named = List.of(phrases.unfilled("reads.left"), phrases.unfilled("reads.right"))
                .contains(meets.group(2).toLowerCase(Locale.ROOT));
        Side side = named ? side(meets.group(2)) : first.from();
        Passing passing =
                meets.group(1).equalsIgnoreCase(phrases.unfilled("reads.over")) ? Passing.OVER : Passing.UNDER;
        return shed.get().meets(side, ends) == passing
                ? Optional.empty()
                : Optional.of(phrases.say("meets.other", Map.of("meets", planned, "said", meets.group())));
    }

    /** The one group that was met. */
    private static String group(Matcher found) {
        int at = 1;
        while (found.group(at) == null) {
            at++;
        }
        return found.group(at);
    }

    /** Of a single row nobody has to say that it is one. */
    private Optional<String> count(String said, int rows) {
        Matcher count = reading("count", said);
        Optional<String> other = Optional.empty();
        while (count.find()) {
            if (number(count.group(1)) == rows) {
                return Optional.empty();
            }
            other = other.or(() -> Optional.of(count.group()));
        }
        return other.map(wrong -> phrases.say("count.other", Map.of("said", wrong, "rows", rows)))
                .or(() ->
                        rows == 1 ? Optional.empty() : Optional.of(phrases.say("count.missing", Map.of("rows", rows))));
    }

    /** Into how many groups the warp ends are parted. */
    private Optional<String> groups(String said, int groups) {
        Map<String, Object> values = new HashMap<>(Map.of("groups", groups));
        Matcher count = reading("groups", said);
        if (!count.find()) {
            return Optional.of(phrases.say("groups.missing", values));
        }
        values.put("said", count.group());
        return number(count.group(1)) == groups ? Optional.empty() : Optional.of(phrases.say("groups.other", values));
    }

    private int number(String word) {
        int named = List.of(phrases.unfilled("reads.numbers").split(" ")).indexOf(word.toLowerCase(Locale.ROOT));
        return named >= 0
                ? named + 1
                : new java.math.BigInteger(word)
                        .min(java.math.BigInteger.TEN.pow(6))
                        .intValue();
    }

    private Optional<String> lean(String said, Lean planned) {
        Map<String, Object> values = Map.of("lean", steps.say("lean." + planned));
        Matcher lean = reading("lean", said);
        if (!lean.find()) {
            return Optional.of(phrases.say("lean.missing", values));
        }
        String word = group(lean);
        boolean z = List.of(phrases.unfilled("reads.lean.z")
                        .toUpperCase(Locale.ROOT)
                        .split(" "))
                .contains(word.toUpperCase(Locale.ROOT));
        return z == (planned == Lean.Z) ? Optional.empty() : Optional.of(phrases.say("lean.other", values));
    }
}
