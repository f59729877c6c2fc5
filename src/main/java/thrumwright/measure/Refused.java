package thrumwright.measure;

import java.util.Map;

/** A value that can't be. The message is a plain sentence for the user that says what would be right. */
public class Refused extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    private final Phrase why;

    public Refused(Phrase why) {
        this.why = why;
    }

    /** @param key of the sentence in {@link Phrase#TEXTS} */
    public Refused(String key, Map<String, ?> values) {
        this(new Phrase(key, values));
    }

    /** The reason, to be said in the reader's language. */
    public final Phrase why() {
        return why;
    }

    @Override
    public final String getMessage() {
        return why.toString();
    }
}
