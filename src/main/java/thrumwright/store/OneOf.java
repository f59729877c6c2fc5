package thrumwright.store;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import thrumwright.measure.Phrase;

/**
 * Fields of which an object has some or others, told apart by a field that marks each way.
 *
 * @param refusal said where none of the marks is there, or several
 * @param foreign empty; or what is said, as in {@link Fields#without}, of fields of another way than the first whose mark is there
 */
record OneOf<T>(Phrase refusal, Optional<String> foreign, List<Branch<T, ?>> ways) implements Format<T> {
    OneOf(Phrase refusal, List<Branch<T, ?>> ways) {
        this(refusal, Optional.empty(), ways);
    }

    /** One way: its mark and the objects that go that way. */
    record Branch<T, S extends T>(String mark, Class<S> sort, Format<S> format) {
        static <T, S extends T> Branch<T, S> of(String mark, Class<S> sort, Format<S> format) {
            return new Branch<>(mark, sort, format);
        }

        private void write(T value, Writing out) {
            format.write(sort.cast(value), out);
        }
    }

    @Override
    public Set<String> names() {
        Set<String> names = new HashSet<>();
        for (Branch<T, ?> way : ways) {
            names.addAll(way.format().names());
        }
        return names;
    }

    @Override
    public T make(Fields in) throws FileProblem {
        Optional<T> made = first(in);
        if (made.isEmpty()) {
            throw in.problem(refusal);
        }
        return made.get();
    }

    /** The same for objects that may go none of the ways. */
    Format<Optional<T>> orNone() {
        return new OrNone<>(this);
    }

    private record OrNone<T>(OneOf<T> some) implements Format<Optional<T>> {
        @Override
        public Set<String> names() {
            return some.names();
        }

        @Override
        public Optional<T> make(Fields in) throws FileProblem {
            return some.first(in);
        }

        @Override
        public void write(Optional<T> value, Writing out) {
            if (value.isPresent()) {
                some.write(value.get(), out);
            }
        }
    }

    private Optional<T> first(Fields in) throws FileProblem {
        Branch<T, ?> first = null;
        for (Branch<T, ?> way : ways) {
            boolean marked = in.isMarked(way.mark());
            if (marked && first != null && foreign.isEmpty()) {
                throw in.problem(refusal);
            }
            first = marked && first == null ? way : first;
        }
        if (first == null) {
            return Optional.empty();
        }
        T made = first.format().make(in);
        if (foreign.isPresent()) {
            in.without(this, foreign.get());
        }
        return Optional.of(made);
    }

    @Override
    public void write(T value, Writing out) {
        for (Branch<T, ?> way : ways) {
            if (way.sort().isInstance(value)) {
                way.write(value, out);
            }
        }
    }
}
