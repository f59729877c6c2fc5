package thrumwright.measure;

/** What was typed is no measure. The message is a plain sentence for the user that says what would be right. */
public final class BadMeasure extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    public BadMeasure(String sentence) {
        super(sentence);
    }
}
