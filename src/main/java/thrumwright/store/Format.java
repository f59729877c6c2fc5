package thrumwright.store;

import java.util.Set;
import thrumwright.measure.Phrase;
import thrumwright.measure.Refused;

/** How objects of one sort stand in a file, field by field. */
interface Format<T> extends ValueType<T> {
    /** All fields that it knows. */
    Set<String> names();

    /**
     * Made of fields, without asking for more than its own.
     *
     * @throws FileProblem if one is missing or wrong
     */
    T make(Fields in) throws FileProblem;

    /** Writes its fields, always in the same order. */
    void write(T value, Writing out);

    @Override
    default Phrase like() {
        return new Phrase("like.object");
    }

    @Override
    default T read(Fields in, String name, Node there) throws FileProblem {
        return whole(in.object(name, there));
    }

    /** Made of all that an object holds; what isn't known of it is kept. */
    default T whole(Fields object) throws FileProblem {
        T made;
        try {
            made = make(object);
        } catch (Refused e) {
            throw object.problem(e.why(), e);
        }
        object.done(this);
        return made;
    }

    @Override
    default Node node(T value, Unknown around, String name) {
        return object(value, around.within(name));
    }

    /** @param beside what isn't known of the object */
    default Node.Obj object(T value, Unknown beside) {
        Writing out = new Writing(beside);
        write(value, out);
        return out.done();
    }
}
