package thrumwright.editor.form;

import java.util.Optional;
import java.util.function.UnaryOperator;

/** What some fields show and change, with whatever was typed into them that isn't right yet. */
interface Holder<T> {
    /** As it is to be shown now; empty if it is gone. */
    Optional<T> value();

    /**
     * Puts something else in its place.
     *
     * @param label of the field
     * @param run changes in a row with the same run can be taken back together; null: a change of its own
     * @throws IllegalArgumentException if the change refuses, with the reason for the weaver; nothing has changed then
     */
    void change(String label, UnaryOperator<T> change, Object run);

    /** The next change begins another run. */
    void endRun();

    /** Takes back what was done in a run that is still going on. */
    void dropRun(Object run);

    /** Keeps what was typed in a field and can't be taken. */
    void keep(String field, String typed);

    void forget(String field);

    Optional<String> kept(String field);
}
