package thrumwright.plan.words;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import thrumwright.block.Block;
import thrumwright.block.HalfHitch;
import thrumwright.block.HemFold;
import thrumwright.block.KnotRows;
import thrumwright.block.OpenWarp;
import thrumwright.block.OrderingCord;
import thrumwright.block.PlainBand;
import thrumwright.block.Shed;
import thrumwright.block.Side;
import thrumwright.block.Soumak;
import thrumwright.block.SpreadHeader;
import thrumwright.block.Support;
import thrumwright.block.TurnedEnds;
import thrumwright.block.Twining;
import thrumwright.block.WarpFinish;
import thrumwright.block.WarpLoops;
import thrumwright.block.WrappedTassels;
import thrumwright.measure.Phrases;
import thrumwright.measure.Shown;
import thrumwright.piece.Place;
import thrumwright.plan.finding.Finding;
import thrumwright.plan.finding.Repair;

/** The names of things and the sentences of findings. */
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
        return phrases.say("block." + key(block));
    }

    /** A name for a block's kind in keys of text bundles, such as {@code plain-stiff}. */
    public static String key(Block block) {
        if (block instanceof OrderingCord) {
            return "ordering-cord";
        } else if (block instanceof PlainBand band) {
            return "plain-" + lower(band.purpose());
        } else if (block instanceof SpreadHeader) {
            return "spread-header";
        } else if (block instanceof Twining) {
            return "twining";
        } else if (block instanceof Soumak) {
            return "soumak";
        } else if (block instanceof HalfHitch) {
            return "half-hitch";
        } else if (block instanceof HemFold) {
            return "hem-fold";
        } else if (block instanceof OpenWarp) {
            return "open-warp";
        } else if (block instanceof KnotRows) {
            return "knot-rows";
        } else if (block instanceof TurnedEnds) {
            return "turned-ends";
        } else if (block instanceof WrappedTassels) {
            return "wrapped-tassels";
        } else if (block instanceof WarpLoops) {
            return "warp-loops";
        }
        return "finish-" + lower(((WarpFinish) block).kind());
    }

    /** “the start” or “the top”. */
    public String place(Place place) {
        return phrases.say("place." + lower(place));
    }

    /** “over the first end” or “under the first end”. */
    public String shed(Shed shed) {
        return phrases.say("shed." + lower(shed));
    }

    /** “left” or “right”. */
    public String side(Side side) {
        return phrases.say("side." + lower(side));
    }

    /** “a bar of 15 mm”, “a slat of 3 cm by 5 mm” or “a strip of 2 cm”. */
    public String support(Support support, Shown shown) {
        return phrases.say(
                "support." + lower(support.kind()),
                Map.of("size", shown.height(support.size().mm()), "thick", shown.height(support.thick())));
    }

    /** “a band of cloth, 2.5 cm wide and 0.5 mm thick”, with a capital. */
    public String band(double width, double thickness, Shown shown) {
        return phrases.say("band", Map.of("width", shown.height(width), "thick", shown.fine(thickness)));
    }

    /** What warp loops lie round: “a rod of 3 mm” or “a row of nails of 2 mm, one for each loop”. */
    public String held(WarpLoops loops, Shown shown) {
        return phrases.say(
                "held." + lower(loops.round()),
                Map.of("thick", shown.height(loops.thick().mm())));
    }

    public String say(String key) {
        return phrases.say(key);
    }

    public String say(String key, Map<String, ?> values) {
        return phrases.say(key, values);
    }

    /** @param values for the sentence's places */
    public Finding finding(
            Finding.Code code,
            Optional<Place> place,
            Optional<String> blockId,
            Map<String, ?> values,
            Optional<Repair> repair) {
        String sentence = phrases.say("finding." + lower(code), values);
        return new Finding(code.severity(), code, place, blockId, sentence, repair);
    }

    private static String lower(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
