package thrumwright.plan.words;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import thrumwright.measure.Length;
import thrumwright.measure.Phrases;
import thrumwright.measure.Shown;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;
import thrumwright.plan.finding.Repair;

/** Says what a repair does, as one would put it on a button. */
public final class RepairWords {
    private final Phrases phrases;
    private final Words words;

    /** @param locale the language wanted; where there is no text in it, English */
    public RepairWords(Locale locale) {
        this.phrases = Phrases.of("thrumwright.plan.repairs", locale);
        this.words = new Words(locale);
    }

    /** @param piece to which it is done */
    public String say(Repair repair, Piece piece) {
        if (repair instanceof Repair.StripeYarn yarn) {
            return stripe(yarn, piece);
        } else if (repair instanceof Repair.Picks picks) {
            return picks(picks, piece);
        } else if (repair instanceof Repair.MakeUp made) {
            return picks(made.picks(), piece);
        } else if (repair instanceof Repair.WovenWidth woven) {
            return phrases.say("woven-width", Map.of("width", woven.width()));
        } else if (repair instanceof Repair.YarnUsed used) {
            return phrases.say(
                    "yarn-used",
                    Map.of(
                            "yarn", piece.yarn(used.yarnId()).name(),
                            "length", used.usage().length(),
                            "picks", used.usage().picks()));
        } else if (repair instanceof Repair.NextShed shed) {
            return phrases.say("next-shed", Map.of("block", name(piece, shed.place(), shed.id())));
        } else if (repair instanceof Repair.Add add) {
            return phrases.say("add." + add.key(), Map.of("rows", add.rows()));
        } else if (repair instanceof Repair.RepeatAtTop repeat) {
            return phrases.say("repeat-at-top", Map.of("block", name(piece, Place.START, repeat.id())));
        } else if (repair instanceof Repair.FirstTurn turn) {
            return phrases.say("first-turn", Map.of("turn", turn.turn()));
        } else if (repair instanceof Repair.BandWidth band) {
            return phrases.say("band-width", Map.of("width", band.width()));
        } else if (repair instanceof Repair.TakeAway away) {
            return phrases.say(
                    away.finishes() ? "take-away.finishes" : "take-away",
                    Map.of("count", away.ids().size()));
        } else if (repair instanceof Repair.DesignHeight design) {
            return phrases.say("design-height", Map.of("height", design.height()));
        } else if (repair instanceof Repair.Clearance clearance) {
            return phrases.say("clearance", Map.of("clearance", above(clearance.clearance(), piece)));
        }
        return room(repair, piece).orElseGet(() -> plain(repair));
    }

    /** What gives back some of the loom's height. */
    private Optional<String> room(Repair repair, Piece piece) {
        if (repair instanceof Repair.WorkingRoom room) {
            return Optional.of(phrases.say("working-room", Map.of("free", room.free())));
        } else if (repair instanceof Repair.AsUsual usual) {
            Shown shown = piece.shown();
            Map<String, ?> both = Map.of("below", shown.height(usual.below()), "above", shown.height(usual.above()));
            return Optional.of(phrases.say("as-usual", both));
        } else if (repair instanceof Repair.Fringes fringes) {
            return Optional.of(phrases.say(
                    "fringes", Map.of("clearance", above(fringes.clearance(), piece), "height", fringes.height())));
        }
        return Optional.empty();
    }

    private String plain(Repair repair) {
        if (repair instanceof Repair.Mean) {
            return phrases.say("mean");
        } else if (repair instanceof Repair.MeanNoMore) {
            return phrases.say("mean-no-more");
        }
        return phrases.say(repair instanceof Repair.TopFollows ? "top-follows" : "widths-of-warp");
    }

    private String above(Length height, Piece piece) {
        return phrases.say("above." + piece.loom().kind().datum(), Map.of("height", height));
    }

    /** A change of the start shows at a top that follows, perhaps in another yarn. */
    private String stripe(Repair.StripeYarn yarn, Piece piece) {
        String there = piece.stripe(yarn.place()).name();
        String top = piece.stripe(Place.TOP).name();
        if (yarn.place() == Place.START && piece.topFollows() && !there.equals(top)) {
            return phrases.say("stripe-yarn.both", Map.of("yarn", there, "top", top));
        }
        String key = yarn.place() == Place.START ? "stripe-yarn.start" : "stripe-yarn.top";
        return phrases.say(key, Map.of("yarn", there));
    }

    private String picks(Repair.Picks picks, Piece piece) {
        int more = picks.picks() - picks.before();
        String key = more == 1 ? "picks.one-more" : more > 0 ? "picks.more" : "picks.fewer";
        return phrases.say(
                key,
                Map.of(
                        "block",
                        name(piece, picks.place(), picks.id()),
                        "picks",
                        picks.picks(),
                        "more",
                        more,
                        "fewer",
                        -more));
    }

    private String name(Piece piece, Place place, String id) {
        return piece.block(place, id).map(words::name).orElse(id);
    }
}
