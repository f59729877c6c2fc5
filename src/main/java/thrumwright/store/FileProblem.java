package thrumwright.store;

import java.util.Map;
import java.util.Optional;
import thrumwright.measure.Phrase;

/** A file can't be read as it is, or can't be written. The message is a plain sentence that says where and what. */
public final class FileProblem extends Exception {
    private static final long serialVersionUID = 1L;

    private final Phrase why;
    private final int line;
    private final int column;

    private FileProblem(Phrase why, Node.Spot spot, Throwable cause) {
        super(cause);
        this.why = why;
        this.line = spot.line();
        this.column = spot.column();
    }

    FileProblem(Phrase why, Throwable cause) {
        this(why, Node.Spot.NOWHERE, cause);
    }

    /** @param key of the sentence in {@link Phrase#TEXTS} */
    FileProblem(String key, Map<String, ?> values, Throwable cause) {
        this(new Phrase(key, values), cause);
    }

    /** @param path to the object or field; empty: the whole document */
    FileProblem(Node.Spot spot, Optional<Phrase> path, Phrase why, Throwable cause) {
        this(
                path.map(at -> new Phrase(
                                "file.at-path",
                                Map.of("line", spot.line(), "column", spot.column(), "path", at, "why", why)))
                        .orElseGet(() -> new Phrase(
                                "file.at", Map.of("line", spot.line(), "column", spot.column(), "why", why))),
                spot,
                cause);
    }

    /** The same with the file's name before it, unless the sentence has it already. */
    public FileProblem in(String file) {
        return getMessage().contains(file)
                ? this
                : new FileProblem(
                        new Phrase("file.in-structures", Map.of("file", file, "why", why)),
                        new Node.Spot(line, column),
                        this);
    }

    /** What is wrong and where, to be said in the reader's language. */
    public Phrase why() {
        return why;
    }

    @Override
    public String getMessage() {
        return why.toString();
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
