package thrumwright.store;

/** A file can't be read as it is, or can't be written. The message is a plain sentence that says where and what. */
public final class FileProblem extends Exception {
    private static final long serialVersionUID = 1L;

    private final int line;
    private final int column;

    FileProblem(String sentence, Throwable cause) {
        super(sentence, cause);
        this.line = 0;
        this.column = 0;
    }

    FileProblem(Node.Spot spot, String path, String sentence, Throwable cause) {
        super(
                "Line " + spot.line() + ", column " + spot.column() + (path.isEmpty() ? "" : ", " + path) + ": "
                        + sentence,
                cause);
        this.line = spot.line();
        this.column = spot.column();
    }

    /** From 1; 0 if the problem has no place in the text. */
    public int line() {
        return line;
    }

    /** From 1; 0 if the problem has no place in the text. */
    public int column() {
        return column;
    }
}
