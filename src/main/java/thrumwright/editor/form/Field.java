package thrumwright.editor.form;

/** A field that follows the piece. */
interface Field {
    /** Shows what the piece says now. */
    void refresh();

    /** Takes over what is being typed, if anything is. */
    default void takeOver() {
        // Most fields take over every change at once.
    }
}
