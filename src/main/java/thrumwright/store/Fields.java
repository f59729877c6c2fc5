package thrumwright.store;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Pattern;
import thrumwright.measure.BadMeasure;
import thrumwright.measure.Length;
import thrumwright.measure.Sett;

/** The fields of one JSON object, asked for one by one; what nobody asked for is unknown and kept. */
final class Fields {
    private static final int LONGEST_TEXT = 10_000;
    private static final Pattern NUMBER = Pattern.compile("[^eE]*(?:[eE][+-]?\\d{1,3})?");

    private final Node.Obj object;
    private final String path;
    private final String place;
    private final Map<String, Map<String, Node>> unknown;
    private final Set<String> asked = new HashSet<>();

    private Fields(Node.Obj object, String path, String place, Map<String, Map<String, Node>> unknown) {
        this.object = object;
        this.path = path;
        this.place = place;
        this.unknown = unknown;
    }

    /** The fields of a whole document. */
    static Fields of(Node node, Map<String, Map<String, Node>> unknown) throws FileProblem {
        if (node instanceof Node.Obj object) {
            return new Fields(object, "", "", unknown);
        }
        throw new FileProblem(node.spot(), "", "a piece begins with “{”.", null);
    }

    /**
     * Refuses a field that has a meaning elsewhere but not here: it is a mistake, and no field of another version.
     *
     * @param others all fields that an object of this sort may have
     * @param what what this object is
     */
    void without(Set<String> others, String what) throws FileProblem {
        for (String name : object.fields().keySet()) {
            if (others.contains(name) && !asked.contains(name)) {
                throw problem(name, "this doesn't belong to " + what + "; take it out.", null);
            }
        }
    }

    /** Call when all known fields have been asked for. */
    void done() {
        Map<String, Node> rest = new LinkedHashMap<>(object.fields());
        rest.keySet().removeAll(asked);
        if (!rest.isEmpty()) {
            unknown.put(place, rest);
        }
    }

    boolean has(String name) {
        Node value = object.fields().get(name);
        return value != null && !(value instanceof Node.Nothing);
    }

    /** Whether a field is there and holds a text. */
    boolean isText(String name) {
        return object.fields().get(name) instanceof Node.Text;
    }

    private Optional<Node> value(String name) {
        asked.add(name);
        return has(name) ? Optional.of(object.fields().get(name)) : Optional.empty();
    }

    private Node needed(String name, String like) throws FileProblem {
        return value(name).orElseThrow(() -> problem("“" + name + "” is missing; give " + like + "."));
    }

    private static String join(String path, String name) {
        return path.isEmpty() ? name : path + " › " + name;
    }

    /** A problem of this object as a whole. */
    FileProblem problem(String sentence) {
        return new FileProblem(object.spot(), path, sentence, null);
    }

    /** A problem of one field. */
    FileProblem problem(String name, String sentence, Throwable cause) {
        Node value = object.fields().get(name);
        return new FileProblem(value == null ? object.spot() : value.spot(), join(path, name), sentence, cause);
    }

    String text(String name, String like) throws FileProblem {
        return text(name, needed(name, like), like);
    }

    String text(String name, String like, String otherwise) throws FileProblem {
        Optional<Node> value = value(name);
        return value.isPresent() ? text(name, value.get(), like) : otherwise;
    }

    private String text(String name, Node value, String like) throws FileProblem {
        if (value instanceof Node.Text text) {
            if (text.value().length() > LONGEST_TEXT) {
                throw problem(
                        name,
                        "this text is too long: " + text.value().length() + " characters; at most " + LONGEST_TEXT
                                + " are kept.",
                        null);
            }
            return text.value();
        }
        throw problem(name, "this must be text in quotation marks, " + like + ".", null);
    }

    /** What others refer to it by. */
    String id(String like) throws FileProblem {
        String id = text("id", like);
        if (id.isBlank()) {
            throw problem("id", "this is empty; give " + like + ".", null);
        }
        return id;
    }

    /** The id of one of those yarns. */
    String yarn(String name, Set<String> ids) throws FileProblem {
        String id = text(name, "the id of a yarn");
        if (!ids.contains(id)) {
            throw problem(name, "there is no yarn with the id “" + id + "” among the yarns.", null);
        }
        return id;
    }

    Optional<String> optionalYarn(String name, Set<String> ids) throws FileProblem {
        asked.add(name);
        return has(name) ? Optional.of(yarn(name, ids)) : Optional.empty();
    }

    /** A value that is written as text and read by {@code reader}, which refuses with a sentence. */
    <T> T parsed(String name, String like, Function<String, T> reader) throws FileProblem {
        String text = text(name, like);
        try {
            return reader.apply(text);
        } catch (BadMeasure e) {
            throw problem(name, e.getMessage(), e);
        }
    }

    Length length(String name) throws FileProblem {
        return parsed(name, "a length like “12 mm” or “1/2 in”", Length::parse);
    }

    Length length(String name, Length otherwise) throws FileProblem {
        asked.add(name);
        return has(name) ? length(name) : otherwise;
    }

    Optional<Length> optionalLength(String name) throws FileProblem {
        asked.add(name);
        return has(name) ? Optional.of(length(name)) : Optional.empty();
    }

    Sett sett(String name) throws FileProblem {
        return parsed(name, "a sett like “3/cm” or “8/in”", Sett::parse);
    }

    Optional<Sett> optionalSett(String name) throws FileProblem {
        asked.add(name);
        return has(name) ? Optional.of(sett(name)) : Optional.empty();
    }

    int whole(String name, int least, int most) throws FileProblem {
        String like = "a whole number from " + least + " to " + most;
        Node value = needed(name, like);
        if (value instanceof Node.Num number && number.digits().matches("-?\\d{1,9}")) {
            int parsed = Integer.parseInt(number.digits());
            if (parsed >= least && parsed <= most) {
                return parsed;
            }
        }
        throw problem(name, "this must be " + like + ", not " + shown(value) + ".", null);
    }

    int whole(String name, int least, int most, int otherwise) throws FileProblem {
        asked.add(name);
        return has(name) ? whole(name, least, most) : otherwise;
    }

    double number(String name, double least, double most) throws FileProblem {
        String like = "a number from " + plain(least) + " to " + plain(most);
        Node value = needed(name, like);
        if (value instanceof Node.Num number && NUMBER.matcher(number.digits()).matches()) {
            BigDecimal parsed = new BigDecimal(number.digits());
            if (parsed.compareTo(BigDecimal.valueOf(least)) >= 0 && parsed.compareTo(BigDecimal.valueOf(most)) <= 0) {
                return parsed.doubleValue();
            }
        }
        throw problem(name, "this must be " + like + ", not " + shown(value) + ".", null);
    }

    double number(String name, double least, double most, double otherwise) throws FileProblem {
        asked.add(name);
        return has(name) ? number(name, least, most) : otherwise;
    }

    private static String plain(double value) {
        return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }

    private static String shown(Node value) {
        String text;
        if (value instanceof Node.Text string) {
            text = "“" + string.value() + "”";
        } else if (value instanceof Node.Num number) {
            text = number.digits();
        } else if (value instanceof Node.Flag flag) {
            text = Boolean.toString(flag.value());
        } else {
            text = value instanceof Node.Arr ? "a list" : "an object";
        }
        return text.length() > 40 ? text.substring(0, 40) + "…" : text;
    }

    boolean flag(String name, boolean otherwise) throws FileProblem {
        Optional<Node> value = value(name);
        if (value.isEmpty()) {
            return otherwise;
        }
        if (value.get() instanceof Node.Flag flag) {
            return flag.value();
        }
        throw problem(name, "this must be true or false, not " + shown(value.get()) + ".", null);
    }

    <T> T choice(String name, Choices<T> choices) throws FileProblem {
        Node value = needed(name, choices.listed());
        if (value instanceof Node.Text text) {
            Optional<T> chosen = choices.value(text.value());
            if (chosen.isPresent()) {
                return chosen.get();
            }
        }
        throw problem(name, "this must be " + choices.listed() + ", not " + shown(value) + ".", null);
    }

    <T> T choice(String name, Choices<T> choices, T otherwise) throws FileProblem {
        return optionalChoice(name, choices).orElse(otherwise);
    }

    <T> Optional<T> optionalChoice(String name, Choices<T> choices) throws FileProblem {
        asked.add(name);
        return has(name) ? Optional.of(choice(name, choices)) : Optional.empty();
    }

    Fields object(String name) throws FileProblem {
        Node value = needed(name, "an object, “{ … }”");
        if (value instanceof Node.Obj inner) {
            return new Fields(inner, join(path, name), place + "/" + name, unknown);
        }
        throw problem(name, "this must be an object, “{ … }”, not " + shown(value) + ".", null);
    }

    Optional<Fields> optionalObject(String name) throws FileProblem {
        asked.add(name);
        return has(name) ? Optional.of(object(name)) : Optional.empty();
    }

    /** The objects of a list; each is known by its id where it has one. */
    List<Fields> objects(String name, String each, int most) throws FileProblem {
        return objects(name, each, most, true);
    }

    /** The objects of a list; each is known by its position from 0. */
    List<Fields> objectsByPosition(String name, String each, int most) throws FileProblem {
        return objects(name, each, most, false);
    }

    private List<Fields> objects(String name, String each, int most, boolean byId) throws FileProblem {
        List<Node> items = items(name, "a list, “[ … ]”");
        if (items.size() > most) {
            throw problem(name, "this list is too long; at most " + most + " are taken.", null);
        }
        List<Fields> all = new ArrayList<>();
        Set<String> ids = new HashSet<>();
        for (int i = 0; i < items.size(); i++) {
            String at = join(path, name) + " › " + each + " " + (i + 1);
            if (!(items.get(i) instanceof Node.Obj inner)) {
                throw new FileProblem(items.get(i).spot(), at, "this must be an object, “{ … }”.", null);
            }
            String id = byId && inner.fields().get("id") instanceof Node.Text text ? text.value() : "";
            String called = id.isEmpty() ? at : at + " “" + id + "”";
            Fields fields = new Fields(inner, called, place + "/" + name + "#" + (id.isEmpty() ? i : id), unknown);
            if (!id.isEmpty() && !ids.add(id)) {
                throw fields.problem("id", "another " + each + " before has this id; give each its own.", null);
            }
            all.add(fields);
        }
        return all;
    }

    List<String> texts(String name) throws FileProblem {
        asked.add(name);
        if (!has(name)) {
            return List.of();
        }
        List<String> texts = new ArrayList<>();
        for (Node item : items(name, "a list of texts")) {
            if (!(item instanceof Node.Text text)) {
                throw new FileProblem(item.spot(), join(path, name), "this must be text in quotation marks.", null);
            }
            texts.add(text.value());
        }
        return texts;
    }

    private List<Node> items(String name, String like) throws FileProblem {
        Node value = needed(name, like);
        if (value instanceof Node.Arr array) {
            return array.items();
        }
        throw problem(name, "this must be a list, “[ … ]”, not " + shown(value) + ".", null);
    }

    /** Looks at something made of one field; what is refused becomes a problem of that field. */
    void checked(String name, Runnable check) throws FileProblem {
        try {
            check.run();
        } catch (BadMeasure e) {
            throw problem(name, e.getMessage(), e);
        }
    }

    /** Makes something of the fields; what its constructor refuses becomes a problem of this object. */
    <T> T made(Maker<T> maker) throws FileProblem {
        try {
            return maker.make();
        } catch (IllegalArgumentException e) {
            throw new FileProblem(object.spot(), path, e.getMessage(), e);
        }
    }

    /** Something that may refuse. */
    interface Maker<T> {
        T make() throws FileProblem;
    }
}
