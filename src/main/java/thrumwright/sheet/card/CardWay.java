package thrumwright.sheet.card;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import thrumwright.block.Row;
import thrumwright.block.Side;
import thrumwright.plan.Work;
import thrumwright.sheet.RowLine;

/**
 * How one row is worked, in two or three words.
 *
 * @param from the side at which it begins
 * @param brief “over”, “/ above” or “hitch”: what stands beside the arrow
 * @param says the same as a sentence, for those who hear it
 */
public record CardWay(Side from, String brief, String says) {
    /**
     * The first row, and the second if there is one: from then on they go by turns.
     *
     * @param told the same rows as the sheet tells them
     */
    static List<CardWay> of(CardVoice voice, Work work, List<RowLine> told) {
        List<CardWay> ways = new ArrayList<>();
        for (int i = 0; i < Math.min(2, work.rows().size()); i++) {
            ways.add(of(voice, work.rows().get(i), told.get(i)));
        }
        return ways;
    }

    private static CardWay of(CardVoice voice, Row row, RowLine told) {
        String brief = row.meets(voice.ends()).map(voice::passing).orElse(told.brief());
        String says = voice.phrases().say("way." + row.from(), Map.of("text", told.text()));
        return new CardWay(row.from(), brief, says);
    }

    /** An arrow the way the row runs. */
    public String arrow() {
        return from == Side.LEFT ? "→" : "←";
    }
}
