package thrumwright.editor.text;

/** Where the weaver is told what happened, in whole sentences. */
public interface Messages {
    void say(String sentence);

    /** Tells what went wrong. */
    void problem(String sentence);

    /** Takes away what was said. */
    void clear();
}
