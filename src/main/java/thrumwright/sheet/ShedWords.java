package thrumwright.sheet;

import java.util.Map;
import thrumwright.block.Passing;
import thrumwright.block.Shed;
import thrumwright.block.Side;
import thrumwright.measure.Phrases;
import thrumwright.plan.words.Words;

/** How a pick is told: by the outermost end at the side where it begins, which is the first one that the hands meet. */
record ShedWords(Phrases phrases, Words words) {
    /** “over the left edge end”. */
    String meets(Passing passing, Side from) {
        return phrases.say("meets." + passing, Map.of("side", words.side(from)));
    }

    /** “over the left edge end, open shed”, where a shed is made for the whole width at once. */
    String named(String meets, Shed shed) {
        return phrases.say("row.shed." + shed, Map.of("meets", meets));
    }

    /** “over left edge”, for large type. */
    String brief(Passing passing, Side from) {
        return phrases.say("meets.brief." + passing, Map.of("side", words.side(from)));
    }
}
