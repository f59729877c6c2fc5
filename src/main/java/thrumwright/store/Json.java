package thrumwright.store;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.base.ParserBase;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import thrumwright.measure.Phrase;

/** Reads JSON into nodes that know their place, within limits, and writes them. */
final class Json {
    private static final int DEEPEST = 50;
    private static final int LONGEST_TEXT = 100_000;
    private static final int LONGEST_NUMBER = 40;
    private static final int MOST_CHARACTERS = 2_000_000;
    /** Some editors begin a file with this invisible sign. */
    private static final String BYTE_ORDER_MARK = "\uFEFF";

    private static final Pattern HALF_CHARACTER =
            Pattern.compile("[\\uD800-\\uDBFF](?![\\uDC00-\\uDFFF])|(?<![\\uD800-\\uDBFF])[\\uDC00-\\uDFFF]");

    private static final JsonFactory FACTORY = factory(false);

    private static final class Twice extends IOException {
        private static final long serialVersionUID = 1;
    }

    private static JsonFactory factory(boolean strict) {
        return JsonFactory.builder()
                .configure(StreamReadFeature.STRICT_DUPLICATE_DETECTION, strict)
                .streamReadConstraints(StreamReadConstraints.builder()
                        .maxNestingDepth(DEEPEST)
                        .maxStringLength(LONGEST_TEXT)
                        .maxNumberLength(LONGEST_NUMBER)
                        .maxNameLength(LONGEST_TEXT)
                        .build())
                .build();
    }

    private Json() {}

    /** @throws FileProblem if it isn't one whole JSON document, or beyond the limits */
    static Node read(String text) throws FileProblem {
        if (text.length() > MOST_CHARACTERS) {
            throw new FileProblem(new Phrase("file.far-too-long"), null);
        }
        String document = text.startsWith(BYTE_ORDER_MARK) ? text.substring(1) : text;
        if (!begins(document)) {
            throw problem(new Node.Spot(1, 1), new Phrase("file.begins"), null);
        }
        try {
            return read(document, FACTORY);
        } catch (Twice e) {
            return readAgain(document);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Whether it begins like an object or a list, if there is anything. */
    private static boolean begins(String document) {
        int at = 0;
        while (at < document.length() && Character.isWhitespace(document.charAt(at))) {
            at++;
        }
        return at == document.length() || "{[".indexOf(document.charAt(at)) >= 0;
    }

    private static Node read(String document, JsonFactory factory) throws IOException, FileProblem {
        try (JsonParser parser = factory.createParser(document)) {
            return whole(parser);
        }
    }

    /** Where a name stands twice the parser itself says where; to look for that takes it as long as all the rest. */
    private static Node readAgain(String document) throws FileProblem {
        try {
            return read(document, factory(true));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Node whole(JsonParser parser) throws IOException, FileProblem {
        try {
            if (parser.nextToken() == null) {
                throw problem(new Node.Spot(1, 1), new Phrase("file.nothing"), null);
            }
            Node whole = node(parser);
            if (parser.nextToken() != null) {
                throw problem(spot(parser.currentTokenLocation()), new Phrase("file.follows"), null);
            }
            return whole;
        } catch (StreamConstraintsException e) {
            Phrase why = new Phrase(
                    "file.deep", Map.of("levels", DEEPEST, "characters", LONGEST_TEXT, "digits", LONGEST_NUMBER));
            throw problem(spot(parser.currentLocation()), why, e);
        } catch (JsonProcessingException e) {
            throw problem(spot(e.getLocation()), why(e), e);
        }
    }

    private static FileProblem problem(Node.Spot spot, Phrase why, Throwable cause) {
        return new FileProblem(spot, Optional.empty(), why, cause);
    }

    private static Phrase why(JsonProcessingException problem) {
        String original = problem.getOriginalMessage();
        if (original.startsWith("Duplicate field")) {
            String name = original.substring("Duplicate field ".length()).replaceAll("^'|'$", "");
            return new Phrase("file.twice", Map.of("name", name));
        }
        return new Phrase("file.not-json");
    }

    private static Node.Spot spot(JsonLocation location) {
        return location == null
                ? new Node.Spot(1, 1)
                : new Node.Spot(Math.max(1, location.getLineNr()), Math.max(1, location.getColumnNr()));
    }

    /** Asked of the parser's base, which needs not tell of each place all that there is to know. */
    private static Node.Spot valueSpot(JsonParser parser) {
        return parser instanceof ParserBase base
                ? new Node.Spot(base.getTokenLineNr(), base.getTokenColumnNr() - 1)
                : spot(parser.currentTokenLocation());
    }

    private static Node node(JsonParser parser) throws IOException {
        Node.Spot spot = valueSpot(parser);
        return switch (parser.currentToken()) {
            case START_OBJECT -> object(parser, spot);
            case START_ARRAY -> array(parser, spot);
            case VALUE_STRING -> new Node.Text(parser.getText(), spot);
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> new Node.Num(parser.getText(), spot);
            case VALUE_TRUE -> new Node.Flag(true, spot);
            case VALUE_FALSE -> new Node.Flag(false, spot);
            default -> new Node.Nothing(spot);
        };
    }

    private static Node object(JsonParser parser, Node.Spot spot) throws IOException {
        Members members = new Members();
        for (String name = parser.nextFieldName(); name != null; name = parser.nextFieldName()) {
            if (members.at(name) >= 0) {
                throw new Twice();
            }
            parser.nextToken();
            members.add(name, node(parser));
        }
        return new Node.Obj(members, spot);
    }

    private static Node array(JsonParser parser, Node.Spot spot) throws IOException {
        List<Node> items = new ArrayList<>();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            items.add(node(parser));
        }
        return new Node.Arr(items, spot);
    }

    /** Indented by two spaces, lines ending with \n alone. */
    static String write(Node whole) {
        DefaultIndenter indent = new DefaultIndenter("  ", "\n");
        Separators separators = Separators.createDefaultInstance()
                .withObjectFieldValueSpacing(Separators.Spacing.AFTER)
                .withObjectEmptySeparator("")
                .withArrayEmptySeparator("");
        DefaultPrettyPrinter printer = new DefaultPrettyPrinter(separators);
        printer.indentObjectsWith(indent);
        printer.indentArraysWith(indent);
        StringWriter text = new StringWriter();
        try (JsonGenerator generator = FACTORY.createGenerator(text)) {
            generator.setPrettyPrinter(printer);
            write(whole, generator);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return whole(text.append('\n').toString());
    }

    /** Half a character can't be written in UTF-8: it is spelt out, so that it isn't lost. */
    private static String whole(String text) {
        for (int i = 0; i < text.length(); i++) {
            if (Character.isSurrogate(text.charAt(i))) {
                return spelt(text);
            }
        }
        return text;
    }

    private static String spelt(String text) {
        return HALF_CHARACTER
                .matcher(text)
                .replaceAll(half -> String.format(
                        Locale.ROOT, "\\\\u%04x", (int) half.group().charAt(0)));
    }

    private static void write(Node node, JsonGenerator generator) throws IOException {
        if (node instanceof Node.Obj object) {
            generator.writeStartObject();
            Members members = Members.of(object.fields());
            for (int i = 0; i < members.size(); i++) {
                generator.writeFieldName(members.name(i));
                write(members.node(i), generator);
            }
            generator.writeEndObject();
        } else if (node instanceof Node.Arr array) {
            generator.writeStartArray();
            for (Node item : array.items()) {
                write(item, generator);
            }
            generator.writeEndArray();
        } else if (node instanceof Node.Text text) {
            generator.writeString(text.value());
        } else if (node instanceof Node.Num number) {
            generator.writeNumber(number.digits());
        } else if (node instanceof Node.Flag flag) {
            generator.writeBoolean(flag.value());
        } else {
            generator.writeNull();
        }
    }
}
