package thrumwright.plan.words;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import thrumwright.block.Block;
import thrumwright.block.Passing;
import thrumwright.block.Row;
import thrumwright.block.Side;
import thrumwright.block.Support;
import thrumwright.block.WarpLoops;
import thrumwright.measure.Phrases;
import thrumwright.measure.Shown;
import thrumwright.piece.Place;
import thrumwright.yarn.Bundle;
import thrumwright.yarn.Yarn;

/** What things are called. */
public final class Words {
    private final Phrases phrases;

    /** @param locale the language wanted; where there is no text in it, English */
    public Words(Locale locale) {
        this.phrases = Phrases.of("thrumwright.plan.words", locale);
    }

    /** What a block is called: the weaver's own label, else the name of its kind. */
    public String name(Block block) {
        String label = block.tag().label();
        return label.isBlank() ? kind(block) : label;
    }

    /** The name of a block's kind. */
    public String kind(Block block) {
        return phrases.say("block." + block.key());
    }

    /** “the start” or “the top”. */
    public String place(Place place) {
        return phrases.say("place." + key(place));
    }

    /** “over the left edge end”: how a pick meets the outermost end at a side, where it begins. */
    public String meets(Passing passing, Side from) {
        return phrases.say("meets." + key(passing), Map.of("side", side(from)));
    }

    /**
     * How a plain pick meets the outermost end at the side where it begins; empty where a row uses no shed.
     *
     * @param ends number of warp ends, 1 or more
     */
    public Optional<String> meets(Row row, int ends) {
        return row.meets(ends).map(passing -> meets(passing, row.from()));
    }

    /** “left” or “right”. */
    public String side(Side side) {
        return phrases.say("side." + key(side));
    }

    /** “a bar of 15 mm”, “a slat of 3 cm by 5 mm” or “a strip of 2 cm”. */
    public String support(Support support, Shown shown) {
        return phrases.say(
                "support." + key(support.kind()),
                Map.of("size", shown.height(support.size().mm()), "thick", shown.height(support.thick())));
    }

    /**
     * “a band of cloth, 2.5 cm wide and 0.5 mm thick”, with a capital.
     *
     * @param width mm, more than 0
     * @param thickness mm, more than 0
     */
    public String band(double width, double thickness, Shown shown) {
        return phrases.say("band", Map.of("width", shown.height(width), "thick", shown.fine(thickness)));
    }

    /** What a yarn is called; of a bundle its strands besides: “Grey blend (3 strands of Slate and 2 of Mist)”. */
    public String yarn(Yarn yarn) {
        return yarn.bundle()
                .map(bundle -> phrases.say("yarn.wound", Map.of("yarn", yarn.name(), "strands", strands(bundle))))
                .orElse(yarn.name());
    }

    /** “3 strands of Slate and 2 strands of Mist”. */
    public String strands(Bundle bundle) {
        List<String> parts = bundle.parts().stream()
                .map(part -> phrases.say(
                        "strands",
                        Map.of("count", part.count(), "yarn", part.yarn().name())))
                .toList();
        String all = parts.get(0);
        for (int i = 1; i < parts.size(); i++) {
            String key = i == parts.size() - 1 ? "strands.last" : "strands.next";
            all = phrases.say(key, Map.of("before", all, "next", parts.get(i)));
        }
        return all;
    }

    /** What warp loops lie round: “a rod of 3 mm” or “a row of nails of 2 mm, one for each loop”. */
    public String held(WarpLoops loops, Shown shown) {
        return phrases.say(
                "held." + key(loops.round()),
                Map.of("thick", shown.height(loops.thick().mm())));
    }

    /** The part that stands for it in keys of text bundles: small letters and hyphens. */
    static String key(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
