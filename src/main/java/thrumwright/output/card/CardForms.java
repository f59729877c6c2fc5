package thrumwright.output.card;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** An end in all the forms that it can be set in, each set once, when it is first tried. */
final class CardForms {
    private final List<CardForm> forms;
    private final Function<CardForm, CardContent> setter;
    private final List<CardContent> set = new ArrayList<>();

    /** @param forms to try, the best to read first; at least one */
    CardForms(List<CardForm> forms, Function<CardForm, CardContent> setter) {
        this.forms = forms;
        this.setter = setter;
    }

    /**
     * A form that was chosen.
     *
     * @param runs how its rows are divided between cards
     * @param faults how far it is from what a card should be, 0 or more
     */
    record Chosen(CardContent content, List<CardBreaks.Run> runs, int faults) {
        private static Chosen of(CardContent content, List<CardBreaks.Run> runs) {
            return new Chosen(content, runs, faults(content, runs.size()));
        }

        /** Every further card counts, then drawings, then lines that are broken. */
        private static int faults(CardContent content, int cards) {
            boolean drawn = content.style().form().picture() > 0;
            int bare = content.style().form().bare() ? 1000 : 0;
            return bare + 4 * (cards - 1) + (drawn ? 0 : 2) + (content.neat() ? 0 : 1);
        }
    }

    /**
     * The form that is best to read of those that take the fewest cards; the closest if the end fits none.
     *
     * @param height of a card, points
     */
    Chosen best(double height) {
        Chosen best = null;
        for (int i = 0; i < forms.size() && (best == null || best.faults() > 0); i++) {
            CardContent content = content(i);
            CardBreaks breaks = new CardBreaks(content, height);
            List<CardBreaks.Run> runs = content.wideEnough() ? breaks.runs() : List.of();
            if (!runs.isEmpty() && breaks.fit(runs)) {
                Chosen one = Chosen.of(content, runs);
                best = best == null || one.faults() < best.faults() ? one : best;
            }
        }
        return best == null ? closest(height) : best;
    }

    private Chosen closest(double height) {
        CardContent last = content(forms.size() - 1);
        return Chosen.of(last, new CardBreaks(last, height).runs());
    }

    private CardContent content(int form) {
        while (set.size() <= form) {
            set.add(setter.apply(forms.get(set.size())));
        }
        return set.get(form);
    }
}
