package thrumwright.weaver;

/** What a weaver can't make out, or what says two things at once. */
final class Unclear extends RuntimeException {
    private static final long serialVersionUID = 1;

    Unclear(String message) {
        super(message);
    }
}
