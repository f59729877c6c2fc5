package thrumwright.sheet;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import thrumwright.measure.Phrases;

/** What is sewn to a finished piece, or it to something, where a picture shows it. */
public enum Sewn {
    CORD,
    LINING,
    BOARD;

    private static final Map<String, Sewn> OF_STEPS =
            Map.of("off.cord", CORD, "off.lining", LINING, "off.mount", BOARD, "off.frame", BOARD);

    /** That of a step of some kind, see {@link Step#kind}. */
    public static Optional<Sewn> of(String kind) {
        return Optional.ofNullable(OF_STEPS.get(kind));
    }

    /** What its picture shows, in words. */
    public String says(Locale locale) {
        return Phrases.of("thrumwright.sheet.steps", locale).say("figure." + name().toLowerCase(Locale.ROOT));
    }
}
