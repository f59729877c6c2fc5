package thrumwright.store;

import thrumwright.measure.Phrase;

/** How values of one sort stand in a file; the same declaration reads and writes them. */
interface ValueType<V> {
    /** What would be right, to be said where something else stands there, or nothing. */
    Phrase like();

    /**
     * The value of a field that is there.
     *
     * @param there what it holds
     * @throws FileProblem if it is none of this sort
     */
    V read(Fields in, String name, Node there) throws FileProblem;

    /** @param around what isn't known of the object in whose field of that name the value will stand */
    Node node(V value, Unknown around, String name);
}
