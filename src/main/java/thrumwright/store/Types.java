package thrumwright.store;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.regex.Pattern;
import thrumwright.measure.Length;
import thrumwright.measure.Phrase;
import thrumwright.measure.Sett;

/** The sorts of values that stand in files by themselves. */
final class Types {
    static final ValueType<Length> LENGTH = new Single.Parsed<>("like.length") {
        @Override
        Length parsed(String text) {
            return Length.parse(text);
        }

        @Override
        String text(Length length) {
            return length.text();
        }
    };
    static final ValueType<Sett> SETT = new Single.Parsed<>("like.sett") {
        @Override
        Sett parsed(String text) {
            return Sett.parse(text);
        }

        @Override
        String text(Sett sett) {
            return sett.text();
        }
    };

    /** The id of one of the yarns, where it is known which there are. */
    static final ValueType<String> YARN = new OfYarn();

    /** The id of one of the yarns that is no bundle. */
    static final ValueType<String> STRAND = new OfStrand();

    static final ValueType<Boolean> FLAG = new Flags();
    static final ValueType<List<String>> TEXTS = new Texts();

    private Types() {}

    private static class AnyText extends Single<String> {
        private final Phrase like;

        AnyText(Phrase like) {
            this.like = like;
        }

        @Override
        public Phrase like() {
            return like;
        }

        @Override
        public String read(Fields in, String name, Node there) throws FileProblem {
            return text(in, name, there);
        }

        @Override
        Node node(String value) {
            return Node.Text.of(value);
        }
    }

    private static class OfYarn extends AnyText {
        OfYarn() {
            super(new Phrase("like.yarn"));
        }

        @Override
        public String read(Fields in, String name, Node there) throws FileProblem {
            return in.yarn(name, text(in, name, there));
        }
    }

    private static final class OfStrand extends OfYarn {
        @Override
        public String read(Fields in, String name, Node there) throws FileProblem {
            return in.strand(name, super.read(in, name, there));
        }
    }

    private static final class Flags extends Single<Boolean> {
        @Override
        public Phrase like() {
            return new Phrase("like.flag");
        }

        @Override
        public Boolean read(Fields in, String name, Node there) throws FileProblem {
            if (there instanceof Node.Flag flag) {
                return flag.value();
            }
            throw in.mustBe(name, like());
        }

        @Override
        Node node(Boolean value) {
            return Node.Flag.of(value);
        }
    }

    private static final class Texts extends Single<List<String>> {
        @Override
        public Phrase like() {
            return new Phrase("like.items");
        }

        @Override
        public List<String> read(Fields in, String name, Node there) throws FileProblem {
            return in.texts(name, there);
        }

        @Override
        Node node(List<String> texts) {
            return Node.Arr.of(texts.stream().<Node>map(Node.Text::of).toList());
        }
    }

    /** @param like the key of what the text says */
    static ValueType<String> text(String like) {
        return new AnyText(new Phrase(like));
    }

    static ValueType<String> text(Phrase like) {
        return new AnyText(like);
    }

    /** What others refer to an object by. */
    static ValueType<String> id(String like) {
        return new Id(new Phrase(like));
    }

    private static final class Id extends AnyText {
        Id(Phrase like) {
            super(like);
        }

        @Override
        public String read(Fields in, String name, Node there) throws FileProblem {
            String id = text(in, name, there);
            if (id.isBlank()) {
                throw in.problem(name, new Phrase("file.empty-id", Map.of("like", like())), null);
            }
            return id;
        }
    }

    /** One text and no other. */
    static ValueType<String> only(String text) {
        return new Only(text);
    }

    private static final class Only extends AnyText {
        private final String text;

        Only(String text) {
            super(new Phrase("like.quoted", Map.of("name", text)));
            this.text = text;
        }

        @Override
        public String read(Fields in, String name, Node there) throws FileProblem {
            if (there instanceof Node.Text other && other.value().equals(text)) {
                return text;
            }
            throw in.mustBe(name, like());
        }
    }

    /** A whole number between two, both included. */
    static ValueType<Integer> whole(int least, int most) {
        return new Whole(least, most);
    }

    private static final class Whole extends Single<Integer> {
        private static final int MOST_DIGITS = 9;

        private final int least;
        private final int most;

        Whole(int least, int most) {
            this.least = least;
            this.most = most;
        }

        @Override
        public Phrase like() {
            return new Phrase("like.whole", Map.of("least", least, "most", most));
        }

        @Override
        public Integer read(Fields in, String name, Node there) throws FileProblem {
            OptionalInt value = there instanceof Node.Num number ? whole(number.digits()) : OptionalInt.empty();
            if (value.isPresent() && value.getAsInt() >= least && value.getAsInt() <= most) {
                return value.getAsInt();
            }
            throw in.mustBe(name, like());
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

        @Override
        Node node(Integer value) {
            return Node.Num.of(value);
        }
    }

    /** A number between two, both included. */
    static ValueType<Double> number(double least, double most) {
        return new Decimal(BigDecimal.valueOf(least), BigDecimal.valueOf(most));
    }

    private static final class Decimal extends Single<Double> {
        private static final Pattern WRITTEN = Pattern.compile("[^eE]*(?:[eE][+-]?\\d{1,3})?");

        private final BigDecimal least;
        private final BigDecimal most;

        Decimal(BigDecimal least, BigDecimal most) {
            this.least = least;
            this.most = most;
        }

        @Override
        public Phrase like() {
            return new Phrase("like.number", Map.of("least", plain(least), "most", plain(most)));
        }

        private static String plain(BigDecimal value) {
            return value.stripTrailingZeros().toPlainString();
        }

        @Override
        public Double read(Fields in, String name, Node there) throws FileProblem {
            if (there instanceof Node.Num number && isWithin(number.digits())) {
                return Double.valueOf(number.digits());
            }
            throw in.mustBe(name, like());
        }

        private boolean isWithin(String digits) {
            if (!WRITTEN.matcher(digits).matches()) {
                return false;
            }
            BigDecimal value = new BigDecimal(digits);
            return value.compareTo(least) >= 0 && value.compareTo(most) <= 0;
        }

        @Override
        Node node(Double value) {
            return Node.Num.of(value);
        }
    }
}
