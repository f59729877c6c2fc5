package thrumwright.plan.words;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeSet;
import thrumwright.measure.Phrases;
import thrumwright.measure.Shown;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;
import thrumwright.plan.finding.ClassFinding;
import thrumwright.plan.finding.ClassPlan;
import thrumwright.plan.finding.Finding;
import thrumwright.plan.finding.Value;

/** Says in a sentence what is the matter and what to do. */
public final class FindingWords {
    private final Phrases phrases;
    private final Words words;
    private final Shown shown;
    private final Value.Teller<Object> values = new Values();

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

    /** The sentence; where the bundle has one for that end, that one. */
    public String say(Finding finding) {
        Map<String, Object> said = new HashMap<>();
        finding.values().forEach((name, value) -> said.put(name, value.told(values)));
        finding.block().ifPresent(block -> said.put("block", words.name(block)));
        finding.place().ifPresent(place -> {
            said.put("place", words.place(place));
            said.put("Place", phrases.say("begins." + Words.key(place)));
        });
        String key = Words.key(finding.code());
        return phrases.say(finding.place().map(place -> key(key, place)).orElse(key), said);
    }

    private String key(String key, Place place) {
        String placed = key + "." + Words.key(place);
        return phrases.has(placed) ? placed : key;
    }

    /** What a teacher should know of a class; what sounds alike for several members is there once. */
    public List<ClassFinding> of(ClassPlan plan) {
        Map<List<Object>, ClassFinding> once = new LinkedHashMap<>();
        for (ClassFinding each : plan.findings()) {
            Finding finding = each.finding();
            List<Object> sound = List.of(
                    finding.code(), finding.place(), finding.blockId(), finding.repair(), say(finding), each.ofClass());
            once.merge(sound, each, FindingWords::together);
        }
        return List.copyOf(once.values());
    }

    private static ClassFinding together(ClassFinding one, ClassFinding other) {
        TreeSet<Integer> members = new TreeSet<>(one.members());
        members.addAll(other.members());
        return new ClassFinding(one.finding(), new ArrayList<>(members));
    }

    /** What stands in a sentence's places. */
    private final class Values implements Value.Teller<Object> {
        @Override
        public String length(Value.OfLength length) {
            return switch (length.grain()) {
                case HEIGHT -> shown.height(length.mm());
                case FINE -> shown.fine(length.mm());
                case CUT -> shown.cut(length.mm());
                case TOTAL -> shown.total(length.mm());
            };
        }

        @Override
        public String share(Value.OfShare share) {
            return shown.decimals(100 * share.share(), 1);
        }

        @Override
        public Integer count(Value.OfCount count) {
            return count.count();
        }

        @Override
        public String yarn(Value.OfYarn yarn) {
            return yarn.yarn().name();
        }

        @Override
        public String shed(Value.OfShed shed) {
            return words.shed(shed.shed());
        }

        @Override
        public String side(Value.OfSide side) {
            return words.side(side.side());
        }

        @Override
        public String support(Value.OfSupport support) {
            return words.support(support.support(), shown);
        }

        @Override
        public String loops(Value.OfLoops loops) {
            return words.held(loops.loops(), shown);
        }
    }
}
