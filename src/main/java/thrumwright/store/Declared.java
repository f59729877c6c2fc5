package thrumwright.store;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.function.Function;

/**
 * The fields of one sort of object, each declared once with its name, its type and where the object keeps it, in the order
 * in which they are written.
 */
class Declared<T> {
    private final Set<String> names = new LinkedHashSet<>();
    private final List<BiConsumer<T, Writing>> written = new ArrayList<>();

    /** A field that was declared, to be asked for while the object is made. */
    interface Entry<V> {
        V of(Fields in) throws FileProblem;
    }

    /** All fields declared so far. */
    final Set<String> names() {
        return Set.copyOf(names);
    }

    /** What makes an object of its fields. */
    interface Maker<T> {
        T of(Fields in) throws FileProblem;
    }

    /** A field that every object has. */
    final <V> Entry<V> needed(String name, ValueType<V> type, Function<? super T, ? extends V> kept) {
        written(name, (value, out) -> out.put(name, type, kept.apply(value)));
        return in -> in.needed(name, type);
    }

    /** A field that may be left out, and is where there is nothing to say. */
    final <V> Entry<Optional<V>> optional(
            String name, ValueType<V> type, Function<? super T, ? extends Optional<? extends V>> kept) {
        written(name, (value, out) -> kept.apply(value).ifPresent(there -> out.put(name, type, there)));
        return in -> in.optional(name, type);
    }

    /** A field that may be left out, but is always written. */
    final <V> Entry<V> usual(String name, ValueType<V> type, V usual, Function<? super T, ? extends V> kept) {
        needed(name, type, kept);
        return in -> in.optional(name, type).orElse(usual);
    }

    /** A field that is left out where it holds what is usual. */
    final <V> Entry<V> spare(String name, ValueType<V> type, V usual, Function<? super T, ? extends V> kept) {
        optional(name, type, value -> Optional.<V>of(kept.apply(value)).filter(there -> !there.equals(usual)));
        return in -> in.optional(name, type).orElse(usual);
    }

    /** A field that holds the same in all objects of the sort. */
    final void always(String name, Node.Text text) {
        written(name, (value, out) -> out.put(name, text));
    }

    /** The version of a whole document, to be asked for first. */
    final Entry<Integer> version(String name, int known, String what) {
        written(name, (value, out) -> out.put(name, Node.Num.of(known)));
        return in -> in.version(name, known, what);
    }

    /** Fields that make a value together, beside the others. */
    final <V> Entry<V> together(Format<V> format, Function<? super T, ? extends V> kept) {
        written(format.names(), (value, out) -> format.write(kept.apply(value), out));
        return format::make;
    }

    private void written(String name, BiConsumer<T, Writing> how) {
        written(Set.of(name), how);
    }

    /** Fields that are written together. */
    final void written(Set<String> together, BiConsumer<T, Writing> how) {
        names.addAll(together);
        written.add(how);
    }

    /** The format of objects with these fields. */
    final Format<T> as(Maker<T> maker) {
        return new Whole<>(Set.copyOf(names), List.copyOf(written), maker);
    }

    private record Whole<T>(Set<String> names, List<BiConsumer<T, Writing>> written, Maker<T> maker)
            implements Format<T> {
        @Override
        public T make(Fields in) throws FileProblem {
            return maker.of(in);
        }

        @Override
        public void write(T value, Writing out) {
            for (BiConsumer<T, Writing> field : written) {
                field.accept(value, out);
            }
        }
    }
}
