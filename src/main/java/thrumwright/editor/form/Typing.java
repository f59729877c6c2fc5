package thrumwright.editor.form;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import thrumwright.editor.text.Texts;
import thrumwright.measure.BadMeasure;
import thrumwright.measure.Decimals;
import thrumwright.measure.Length;
import thrumwright.measure.UnitSystem;

/** Reads what is typed into fields that aren't lengths only. */
record Typing(Texts texts) {
    int whole(String typed) {
        String text = typed.strip();
        if (!text.matches("\\d{1,6}")) {
            throw new BadMeasure(texts.say("reason.whole", Map.of("typed", text)));
        }
        return Integer.parseInt(text);
    }

    /** @return a share: 0.03 for {@code 3 %} */
    double percent(String typed) {
        String text = typed.strip();
        if (!text.matches("\\d{1,4}(?:[.,]\\d{1,6})?\\s*%?")) {
            throw new BadMeasure(texts.say("reason.percent", Map.of("typed", text)));
        }
        return Double.parseDouble(text.replace("%", "").strip().replace(',', '.')) / 100;
    }

    static String percent(double share) {
        return Decimals.plain(share * 100, 4, Locale.getDefault(Locale.Category.FORMAT)) + " %";
    }

    /** A length in whatever unit, the usual one where none is said. */
    static Length length(String typed, UnitSystem units) {
        return Length.parse(typed, units.usual());
    }

    static Optional<Length> lengthOrNone(String typed, UnitSystem units) {
        return typed.isBlank() ? Optional.empty() : Optional.of(length(typed, units));
    }
}
