package thrumwright.sheet.card;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import thrumwright.block.YarnBlock;
import thrumwright.measure.Phrases;
import thrumwright.piece.Place;
import thrumwright.plan.words.HeightWords;

/** Explains the signs that a card has, and no others. */
final class CardKeys {
    private final Phrases phrases;
    private final List<CardKey> keys = new ArrayList<>();
    private final Set<String> kinds;
    private final List<CardRow> rows;

    private CardKeys(Phrases phrases, List<CardRow> rows) {
        this.phrases = phrases;
        this.rows = rows;
        this.kinds = rows.stream().map(row -> row.block().block().key()).collect(Collectors.toSet());
    }

    static List<CardKey> of(CardVoice voice, Place place, List<CardRow> rows) {
        CardKeys all = new CardKeys(voice.phrases(), rows);
        all.add("key.passing", "key.passing.meaning", true);
        all.signs();
        all.sheds(voice);
        String from = new HeightWords(voice.plan(), voice.phrases()).from(place);
        all.keys.add(new CardKey(
                all.phrases.say("key.reach"),
                all.phrases.say("key.reach." + voice.shown().unit(), Map.of("from", from))));
        return List.copyOf(all.keys);
    }

    /** Which signs ask for which shed, where a shed is made for the whole width at once. */
    private void sheds(CardVoice voice) {
        boolean picks = rows.stream()
                .anyMatch(row -> row.block()
                        .block()
                        .woven()
                        .filter(YarnBlock::plainWeave)
                        .isPresent());
        String ends = voice.ends() % 2 == 0 ? "even" : "odd";
        add(
                "key.sheds",
                "key.sheds." + ends,
                picks && voice.plan().piece().loom().sheds().named());
    }

    private void signs() {
        boolean twined = kinds.contains("twining");
        boolean soumak = kinds.contains("soumak");
        add("key.ways", "key.ways.meaning", rows.stream().anyMatch(CardRow::twoWays));
        add("key.lean", "key.lean.meaning", twined || soumak);
        add("key.place", "key.place.both", twined && soumak);
        add("key.place", "key.place.twining", twined && !soumak);
        add("key.place", "key.place.soumak", soumak && !twined);
        add("key.hitch", "key.hitch.meaning", kinds.contains("half-hitch"));
        add("key.bind", "key.bind.meaning", kinds.contains("hemstitching"));
    }

    private void add(String sign, String meaning, boolean wanted) {
        if (wanted) {
            keys.add(new CardKey(phrases.say(sign), phrases.say(meaning)));
        }
    }
}
