package thrumwright.store;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.regex.Pattern;
import thrumwright.measure.Length;
import thrumwright.measure.Phrase;
import thrumwright.measure.Refused;
import thrumwright.measure.Sett;

/** The sorts of values that stand in files by themselves. */
final class Types {
    static final ValueType<Length> LENGTH = parsed("like.length", Length::parse, Length::text);
    static final ValueType<Sett> SETT = parsed("like.sett", Sett::parse, Sett::text);

    /** The id of one of the yarns, where it is known which there are. */
    static final ValueType<String> YARN = new Single<>(
            new Phrase("like.yarn"),
            (in, name, node) -> in.yarn(name, string(in, name, node, new Phrase("like.yarn"))),
            Node.Text::of);

    /** The id of one of the yarns that is no bundle. */
    static final ValueType<String> STRAND = new Single<>(
            new Phrase("like.yarn"), (in, name, node) -> in.strand(name, YARN.read(in, name)), Node.Text::of);

    static final ValueType<Boolean> FLAG = single(new Phrase("like.flag"), Types::flag, Node.Flag::of);

    static final ValueType<List<String>> TEXTS = new Single<>(
            new Phrase("like.items"),
            (in, name, node) -> in.texts(name),
            texts -> Node.Arr.of(texts.stream().<Node>map(Node.Text::of).toList()));

    private static final int LONGEST_TEXT = 10_000;
    private static final int MOST_DIGITS = 9;
    private static final Pattern NUMBER = Pattern.compile("[^eE]*(?:[eE][+-]?\\d{1,3})?");

    private Types() {}

    private static Optional<Boolean> flag(Node node) {
        return node instanceof Node.Flag flag ? Optional.of(flag.value()) : Optional.empty();
    }

    /** A value that is one node. */
    private record Single<V>(Phrase like, Reading<V> reading, Function<V, Node> writing) implements ValueType<V> {
        @Override
        public V read(Fields in, String name) throws FileProblem {
            return reading.of(in, name, in.node(name));
        }

        @Override
        public Node node(V value, Unknown around, String name) {
            return writing.apply(value);
        }
    }

    private interface Reading<V> {
        V of(Fields in, String name, Node node) throws FileProblem;
    }

    /** @param reader gives null for what is no such value */
    static <V> ValueType<V> single(Phrase like, Function<Node, Optional<V>> reader, Function<V, Node> writer) {
        return new Single<>(
                like, (in, name, node) -> reader.apply(node).orElseThrow(() -> in.mustBe(name, like)), writer);
    }

    /** @param like the key of what the text says */
    static ValueType<String> text(String like) {
        return text(new Phrase(like));
    }

    static ValueType<String> text(Phrase like) {
        return new Single<>(like, (in, name, node) -> string(in, name, node, like), Node.Text::of);
    }

    private static String string(Fields in, String name, Node node, Phrase like) throws FileProblem {
        if (!(node instanceof Node.Text text)) {
            throw in.problem(name, new Phrase("file.must-be-text", Map.of("like", like)), null);
        }
        int count = text.value().length();
        if (count > LONGEST_TEXT) {
            throw in.problem(name, new Phrase("file.text-long", Map.of("count", count, "most", LONGEST_TEXT)), null);
        }
        return text.value();
    }

    /** What others refer to an object by. */
    static ValueType<String> id(String like) {
        Phrase right = new Phrase(like);
        return new Single<>(
                right,
                (in, name, node) -> {
                    String id = string(in, name, node, right);
                    if (id.isBlank()) {
                        throw in.problem(name, new Phrase("file.empty-id", Map.of("like", right)), null);
                    }
                    return id;
                },
                Node.Text::of);
    }

    /** One text and no other. */
    static ValueType<String> only(String text) {
        Phrase like = new Phrase("like.quoted", Map.of("name", text));
        return single(
                like,
                node -> node instanceof Node.Text other && other.value().equals(text)
                        ? Optional.of(text)
                        : Optional.empty(),
                Node.Text::of);
    }

    /** A value that is written as text and read by what refuses with a sentence. */
    static <V> ValueType<V> parsed(String like, Function<String, V> reader, Function<V, String> writer) {
        Phrase right = new Phrase(like);
        return new Single<>(
                right,
                (in, name, node) -> {
                    String text = string(in, name, node, right);
                    try {
                        return reader.apply(text);
                    } catch (Refused e) {
                        throw in.problem(name, e.why(), e);
                    }
                },
                value -> Node.Text.of(writer.apply(value)));
    }

    /** A whole number between two, both included. */
    static ValueType<Integer> whole(int least, int most) {
        return single(
                new Phrase("like.whole", Map.of("least", least, "most", most)),
                node -> {
                    OptionalInt value = node instanceof Node.Num number ? whole(number.digits()) : OptionalInt.empty();
                    boolean right = value.isPresent() && value.getAsInt() >= least && value.getAsInt() <= most;
                    return right ? Optional.of(value.getAsInt()) : Optional.empty();
                },
                Node.Num::of);
    }

    /** What that number is, if it is written without point or power and in at most nine digits. */
    private static OptionalInt whole(String digits) {
        int from = digits.startsWith("-") ? 1 : 0;
        int value = 0;
        for (int i = from; i < digits.length(); i++) {
            int digit = digits.charAt(i) - '0';
            if (digit < 0 || digit > 9) {
                return OptionalInt.empty();
            }
            value = 10 * value + digit;
        }
        int count = digits.length() - from;
        return count == 0 || count > MOST_DIGITS ? OptionalInt.empty() : OptionalInt.of(from == 0 ? value : -value);
    }

    /** A number between two, both included. */
    static ValueType<Double> number(double least, double most) {
        return single(
                new Phrase("like.number", Map.of("least", plain(least), "most", plain(most))),
                node -> node instanceof Node.Num number
                                && NUMBER.matcher(number.digits()).matches()
                                && new BigDecimal(number.digits()).compareTo(BigDecimal.valueOf(least)) >= 0
                                && new BigDecimal(number.digits()).compareTo(BigDecimal.valueOf(most)) <= 0
                        ? Optional.of(Double.valueOf(number.digits()))
                        : Optional.empty(),
                Node.Num::of);
    }

    private static String plain(double value) {
        return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }

    /**
     * Objects in a list.
     *
     * @param what they are, as in the keys of what is said of them
     * @param most how many may stand there
     * @param id by which each is known; empty: by its position
     */
    static <V> ValueType<List<V>> list(Format<V> each, String what, int most, Optional<Function<V, String>> id) {
        return new Objects<>(each, what, most, id);
    }

    private record Objects<V>(Format<V> each, String what, int most, Optional<Function<V, String>> id)
            implements ValueType<List<V>> {
        @Override
        public Phrase like() {
            return new Phrase("like.items");
        }

        @Override
        public List<V> read(Fields in, String name) throws FileProblem {
            List<V> values = new ArrayList<>();
            for (Fields object : in.objects(name, what, most, id.isPresent())) {
                values.add(each.whole(object));
            }
            return values;
        }

        @Override
        public Node node(List<V> values, Unknown around, String name) {
            List<Node> nodes = new ArrayList<>();
            for (V value : values) {
                String known = id.map(of -> of.apply(value)).orElseGet(() -> String.valueOf(nodes.size()));
                nodes.add(each.object(value, around.within(name + "#" + known)));
            }
            return Node.Arr.of(nodes);
        }
    }
}
