package thrumwright.store;

import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;

/**
 * The fields of one sort of object, each declared once with its name and its type, to be read and written by. A sort is a
 * class of its own, which keeps the fields, makes an object of them and puts down what the object keeps in each: code that is
 * made at run time, as for lambdas, takes longer at a start than all reading.
 */
abstract class Declared<T> implements Format<T> {
    private final Set<String> names = new LinkedHashSet<>();

    /** A field that was declared. */
    interface Entry<V> {
        /** What it holds, to be asked for while the object is made. */
        V of(Fields in) throws FileProblem;

        void put(V value, Writing out);
    }

    @Override
    public final Set<String> names() {
        return Collections.unmodifiableSet(names);
    }

    /** A field that every object has. */
    final <V> Entry<V> needed(String name, ValueType<V> type) {
        names.add(name);
        return new Needed<>(name, type);
    }

    private record Needed<V>(String name, ValueType<V> type) implements Entry<V> {
        @Override
        public V of(Fields in) throws FileProblem {
            return in.needed(name, type);
        }

        @Override
        public void put(V value, Writing out) {
            out.put(name, type, value);
        }
    }

    /** A field that may be left out, and is where there is nothing to say. */
    final <V> Entry<Optional<V>> optional(String name, ValueType<V> type) {
        names.add(name);
        return new Perhaps<>(name, type);
    }

    private record Perhaps<V>(String name, ValueType<V> type) implements Entry<Optional<V>> {
        @Override
        public Optional<V> of(Fields in) throws FileProblem {
            return in.optional(name, type);
        }

        @Override
        public void put(Optional<V> value, Writing out) {
            if (value.isPresent()) {
                out.put(name, type, value.get());
            }
        }
    }

    /** A field that may be left out, but is always written. */
    final <V> Entry<V> usual(String name, ValueType<V> type, V usual) {
        names.add(name);
        return new Usual<>(name, type, usual, false);
    }

    /** A field that is left out where it holds what is usual. */
    final <V> Entry<V> spare(String name, ValueType<V> type, V usual) {
        names.add(name);
        return new Usual<>(name, type, usual, true);
    }

    private record Usual<V>(String name, ValueType<V> type, V usual, boolean spare) implements Entry<V> {
        @Override
        public V of(Fields in) throws FileProblem {
            return in.optional(name, type).orElse(usual);
        }

        @Override
        public void put(V value, Writing out) {
            if (!spare || !value.equals(usual)) {
                out.put(name, type, value);
            }
        }
    }

    /** The version of a whole document, to be asked for first. */
    final Entry<Integer> version(String name, int known, String what) {
        names.add(name);
        return new Version(name, known, what);
    }

    private record Version(String name, int known, String what) implements Entry<Integer> {
        @Override
        public Integer of(Fields in) throws FileProblem {
            return in.version(name, known, what);
        }

        @Override
        public void put(Integer value, Writing out) {
            out.put(name, Node.Num.of(value));
        }
    }

    /** Fields that make a value together, beside the others. */
    final <V> Entry<V> together(Format<V> format) {
        names.addAll(format.names());
        return new Together<>(format);
    }

    private record Together<V>(Format<V> format) implements Entry<V> {
        @Override
        public V of(Fields in) throws FileProblem {
            return format.make(in);
        }

        @Override
        public void put(V value, Writing out) {
            format.write(value, out);
        }
    }
}
