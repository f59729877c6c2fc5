package thrumwright.store;

import java.util.Map;
import thrumwright.measure.Phrase;
import thrumwright.measure.Refused;

/** A sort of value that is one node by itself. */
abstract class Single<V> implements ValueType<V> {
    private static final int LONGEST_TEXT = 10_000;

    abstract Node node(V value);

    @Override
    public final Node node(V value, Unknown around, String name) {
        return node(value);
    }

    /** What stands there, if it is a text that isn't too long. */
    final String text(Fields in, String name, Node there) throws FileProblem {
        if (!(there instanceof Node.Text text)) {
            throw in.problem(name, new Phrase("file.must-be-text", Map.of("like", like())), null);
        }
        int count = text.value().length();
        if (count > LONGEST_TEXT) {
            throw in.problem(name, new Phrase("file.text-long", Map.of("count", count, "most", LONGEST_TEXT)), null);
        }
        return text.value();
    }

    /** A value that is written as text and read by what refuses with a sentence. */
    abstract static class Parsed<V> extends Single<V> {
        private final String like;

        /** @param like the key of what would be right */
        Parsed(String like) {
            this.like = like;
        }

        /** @throws Refused if the text says no such value */
        abstract V parsed(String text);

        abstract String text(V value);

        @Override
        public final Phrase like() {
            return new Phrase(like);
        }

        @Override
        public final V read(Fields in, String name, Node there) throws FileProblem {
            String text = text(in, name, there);
            try {
                return parsed(text);
            } catch (Refused e) {
                throw in.problem(name, e.why(), e);
            }
        }

        @Override
        final Node node(V value) {
            return Node.Text.of(text(value));
        }
    }
}
