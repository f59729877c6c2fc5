package thrumwright.block;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import thrumwright.measure.BadMeasure;
import thrumwright.measure.Phrases;

/**
 * A weaver's or teacher's own wording of a block's step. Places in braces, such as {@code {picks}}, are filled in with what
 * the plan says; which there are depends on the kind of the block.
 */
public final class OwnWords {
    /** The most characters of an own wording: more wouldn't be read with yarn in both hands. */
    public static final int MOST = 1000;

    private static final List<String> OF_ALL = List.of("block", "place", "height", "reach");
    private static final List<String> OF_YARN =
            List.of("yarn", "cut", "widths", "pieces", "rows", "picks", "side", "otherSide", "endSide", "tail");

    private OwnWords() {}

    /** The places that the wording of a block may have; the same for all blocks of one class. */
    public static List<String> places(Block block) {
        List<String> places = new ArrayList<>(OF_ALL);
        if (block.woven().isPresent()) {
            places.addAll(OF_YARN);
        }
        places.addAll(block.ownPlaces());
        return places;
    }

    /**
     * Looks a block's own wording over.
     *
     * @throws BadMeasure if it is too long or has a place that can't be filled, listing those that can
     */
    public static void check(Block block) {
        String words = block.tag().words();
        if (words.isEmpty()) {
            return;
        }
        if (words.length() > MOST) {
            throw new BadMeasure("words.long", Map.of("most", MOST, "count", words.length()));
        }
        List<String> known = places(block);
        Optional<String> wrong = Phrases.places(words).stream()
                .filter(place -> !known.contains(place))
                .findFirst();
        if (wrong.isPresent()) {
            throw new BadMeasure("words.place", Map.of("place", listed(List.of(wrong.get())), "known", listed(known)));
        }
        Phrases.stray(words).ifPresent(stray -> {
            String like = listed(known.subList(known.size() - 1, known.size()));
            throw new BadMeasure("words.stray", Map.of("stray", stray, "like", like, "known", listed(known)));
        });
    }

    private static String listed(List<String> places) {
        return places.stream().map(place -> "{" + place + "}").collect(Collectors.joining(", "));
    }
}
