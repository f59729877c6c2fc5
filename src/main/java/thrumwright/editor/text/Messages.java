package thrumwright.editor.text;

/** Where the weaver is told what happened, in whole sentences. */
public interface Messages {
    void say(String sentence);

    /** Tells what went wrong. */
    void problem(String sentence);

    /**
     * Tells that something went wrong inside the program.
     *
     * @param details for whoever mends it, to be copied
     */
    void fault(String sentence, String details);

    /** Takes away what was said. */
    void clear();
}
