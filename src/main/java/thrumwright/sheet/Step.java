package thrumwright.sheet;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import thrumwright.piece.Place;
import thrumwright.yarn.Yarn;

/**
 * One step of the work, with a box to tick.
 *
 * @param key what the step is known by, whatever its number and its title
 * @param number counted through the whole sheet from 1
 * @param kind the same for steps that are worked alike
 * @param picture what to draw beside it
 * @param yarn that it takes, if any
 * @param take what to take in hand: yarn, length, widths; empty if nothing
 * @param told what to do, in order
 * @param reach the height to reach, in words; empty if none
 * @param reachBrief the height alone, as it is said at that end
 * @param cautions what can hurt
 */
public record Step(
        String key,
        int number,
        String kind,
        String title,
        Optional<Picture> picture,
        Optional<Yarn> yarn,
        String take,
        List<Sentence> told,
        List<RowLine> rows,
        String reach,
        String reachBrief,
        List<String> cautions) {
    /**
     * The block that a step's drawing shows.
     *
     * @param says what the drawing shows, in words
     */
    public record Picture(Place place, String blockId, String says) {}

    public Step {
        told = List.copyOf(told);
        rows = List.copyOf(rows);
        cautions = List.copyOf(cautions);
    }

    /** What to do, in order. */
    public List<String> sentences() {
        return told.stream().map(Sentence::text).toList();
    }

    /** The key of the step in which a block is worked on the loom. */
    static String key(Place place, String blockId) {
        return place.step(blockId);
    }

    /** The key of a step off the loom. */
    static String offLoom(String what) {
        return "off/" + what;
    }

    /** The key of a step off the loom that is done at one end. */
    static String offLoom(String what, Place place) {
        return offLoom(what) + "/" + place.name().toLowerCase(Locale.ROOT);
    }
}
