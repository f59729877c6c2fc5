package thrumwright.plan.words;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import thrumwright.measure.Phrases;
import thrumwright.measure.Shown;
import thrumwright.piece.Piece;
import thrumwright.plan.finding.ClassFinding;
import thrumwright.plan.finding.ClassPlan;
import thrumwright.plan.finding.Finding;
import thrumwright.plan.finding.Value;

/** Says in a sentence what is the matter and what to do. */
public final class FindingWords {
    private final Phrases phrases;
    private final Words words;
    private final Shown shown;

    /**
     * @param locale the language wanted; where there is no text in it, English
     * @param shown the units to show
     */
    public FindingWords(Locale locale, Shown shown) {
        this.phrases = Phrases.of("thrumwright.plan.findings", locale);
        this.words = new Words(locale);
        this.shown = shown;
    }

    /** In the units of a piece. */
    public static FindingWords of(Piece piece, Locale locale) {
        return new FindingWords(locale, piece.shown());
    }

    /** The sentence; where the bundle has one for what is mended in one step, or for that end, that one. */
    public String say(Finding finding) {
        Map<String, Object> said = new HashMap<>();
        finding.values().forEach((name, value) -> said.put(name, say(value)));
        finding.block().ifPresent(block -> said.put("block", words.name(block)));
        finding.place().ifPresent(place -> {
            said.put("place", words.place(place));
            said.put("Place", phrases.say("begins." + Words.key(place)));
        });
        String plain = Words.key(finding.code());
        String mended = plain + ".mended";
        String key = finding.repair().isPresent() && phrases.has(mended) ? mended : plain;
        Optional<String> placed = finding.place().map(place -> key + "." + Words.key(place));
        return phrases.say(placed.filter(phrases::has).orElse(key), said);
    }

    /** What a teacher should know of a class; what sounds alike for several members is there once. */
    public List<ClassFinding> of(ClassPlan plan) {
        Map<List<Object>, ClassFinding> once = new LinkedHashMap<>();
        for (ClassFinding each : plan.findings()) {
            Finding finding = each.finding();
            List<Object> sound = List.of(
                    finding.code(),
                    finding.place(),
                    finding.blockId(),
                    finding.repairs(),
                    say(finding),
                    each.ofClass());
            once.merge(sound, each, FindingWords::together);
        }
        return List.copyOf(once.values());
    }

    private static ClassFinding together(ClassFinding one, ClassFinding other) {
        TreeSet<Integer> members = new TreeSet<>(one.members());
        members.addAll(other.members());
        return new ClassFinding(one.finding(), new ArrayList<>(members));
    }

    /** What stands in a sentence's place. */
    private Object say(Value value) {
        if (value instanceof Value.OfNumber of) {
            return number(of.number(), of.grain());
        } else if (value instanceof Value.OfYarn of) {
            return of.yarn().name();
        } else if (value instanceof Value.OfBlock of) {
            return words.name(of.block());
        } else if (value instanceof Value.OfMeeting of) {
            return words.meets(of.passing(), of.from());
        } else if (value instanceof Value.OfSide of) {
            return words.side(of.side());
        } else if (value instanceof Value.OfAbove of) {
            return phrases.say("above." + of.datum(), Map.of("height", shown.height(of.mm())));
        } else if (value instanceof Value.OfSupport of) {
            return words.support(of.support(), shown);
        }
        return words.held(((Value.OfLoops) value).loops(), shown);
    }

    private String number(double number, Value.Grain grain) {
        return switch (grain) {
            case HEIGHT -> shown.height(number);
            case FINE -> shown.fine(number);
            case CUT -> shown.cut(number);
            case TOTAL -> shown.total(number);
            case SHARE -> shown.decimals(100 * number, 1);
            case COUNT -> String.valueOf((int) number);
        };
    }
}
