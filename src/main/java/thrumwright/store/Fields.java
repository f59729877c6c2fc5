package thrumwright.store;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import thrumwright.measure.Phrase;

/** The fields of one JSON object, asked for one by one; what nobody asked for is unknown and kept. */
final class Fields {
    private final Node.Obj object;
    private final Members members;
    private final Path path;
    private final Yarns yarns;
    /** By the places of the members. */
    private final boolean[] asked;
    /** Where to look first: mostly the next field to be asked for stands behind the one that was asked for last. */
    private int next;

    private List<Phrase> notices = List.of();
    private Map<String, Node> rest = Map.of();
    /** The objects within, by the field that holds one or a list of them. */
    private Map<String, List<Fields>> inner = Map.of();

    private Map<String, Unknown> elsewhere = Map.of();

    private Fields(Node.Obj object, Path path, Yarns yarns) {
        this.object = object;
        this.members = Members.of(object.fields());
        this.path = path;
        this.yarns = yarns;
        this.asked = new boolean[members.size()];
    }

    /** The ids of the yarns that a document has, once they are known; before, or where it has none of its own, any will do. */
    private static final class Yarns {
        private Optional<Set<String>> ids = Optional.empty();
        private final Set<String> bundles = new HashSet<>();
    }

    /**
     * Where an object stands in its document. It is put into words only where there is something to say of it.
     *
     * @param around the object that holds it; null: it is the whole document
     * @param field of that object
     * @param what it is one of, as in the keys of what is said of it; null: the only one
     * @param n from 1
     * @param id empty: it is known by n
     */
    private record Path(Path around, String field, String what, int n, String id) {
        static final Path WHOLE = new Path(null, "", null, 1, "");

        Path field(String name) {
            return new Path(this, name, null, 1, "");
        }

        Path item(String name, String sort, int number, String known) {
            return new Path(this, name, sort, number, known);
        }

        /** By which it is known among the objects of the one around it. */
        String place() {
            return what == null ? field : field + "#" + (id.isEmpty() ? Integer.toString(n - 1) : id);
        }

        /** To be said to the reader; empty for the whole document. */
        Optional<Phrase> said() {
            if (around == null) {
                return Optional.empty();
            }
            Phrase here = around.said()
                    .map(at -> new Phrase("path.field", Map.of("path", at, "name", field)))
                    .orElseGet(() -> Phrase.of(field));
            if (what == null) {
                return Optional.of(here);
            }
            Phrase item = new Phrase("path." + what, Map.of("path", here, "n", n));
            return Optional.of(id.isEmpty() ? item : new Phrase("path.id", Map.of("path", item, "id", id)));
        }

        FileProblem problem(Node.Spot spot, Phrase why, Throwable cause) {
            return new FileProblem(spot, said(), why, cause);
        }
    }

    /** The fields of a whole document. */
    static Fields of(String text) throws FileProblem {
        Node node = Json.read(text);
        if (node instanceof Node.Obj object) {
            return new Fields(object, Path.WHOLE, new Yarns());
        }
        throw Path.WHOLE.problem(node.spot(), new Phrase("file.begins"), null);
    }

    /** From here on, only these are ids of yarns. */
    void yarnsAre(Set<String> ids) {
        yarns.ids = Optional.of(ids);
    }

    /**
     * The same for those in a list of yarns that is still to be read.
     *
     * @param bundle the field that a bundle has
     */
    void yarnsIn(String list, String bundle) {
        Set<String> ids = new HashSet<>();
        yarns.bundles.clear();
        List<Node> items = object.fields().get(list) instanceof Node.Arr array ? array.items() : List.of();
        for (Node item : items) {
            if (item instanceof Node.Obj yarn && yarn.fields().get("id") instanceof Node.Text id) {
                ids.add(id.value());
                if (yarn.fields().containsKey(bundle)) {
                    yarns.bundles.add(id.value());
                }
            }
        }
        yarnsAre(ids);
    }

    /** That id, if it isn't that of a bundle. */
    String strand(String name, String id) throws FileProblem {
        if (yarns.bundles.contains(id)) {
            throw problem(name, new Phrase("file.strand-of-bundle", Map.of("id", id)), null);
        }
        return id;
    }

    /** That id, if there is a yarn that has it. */
    String yarn(String name, String id) throws FileProblem {
        if (yarns.ids.isPresent() && !yarns.ids.get().contains(id)) {
            throw problem(name, new Phrase("file.no-yarn", Map.of("id", id)), null);
        }
        return id;
    }

    /**
     * Refuses a field that has a meaning elsewhere but not here: it is a mistake, and no field of another version.
     *
     * @param others tells all fields that an object of this sort may have
     * @param what this object is, as in the keys of what is said of it
     */
    void without(Format<?> others, String what) throws FileProblem {
        for (int i = 0; i < asked.length; i++) {
            if (!asked[i] && others.names().contains(members.name(i))) {
                throw problem(members.name(i), new Phrase("file.foreign." + what), null);
            }
        }
    }

    /**
     * Call when all known fields have been asked for.
     *
     * @param known tells all fields that an object of this sort may have
     */
    void done(Format<?> known) {
        for (int i = 0; i < asked.length; i++) {
            if (!asked[i]) {
                left(members.name(i), members.node(i), known);
            }
        }
    }

    private void left(String name, Node value, Format<?> known) {
        if (rest.isEmpty()) {
            rest = new LinkedHashMap<>();
            notices = new ArrayList<>();
        }
        rest.put(name, value);
        if (!Spelling.isOthers(name)) {
            notices.add(problem(name, notKnown(name, known.names()), null).why());
        }
    }

    private static Phrase notKnown(String name, Set<String> known) {
        return Spelling.likely(name, known)
                .map(likely -> new Phrase("field.misspelt", Map.of("name", name, "likely", likely)))
                .orElseGet(() -> new Phrase("field.unknown", Map.of("name", name)));
    }

    /** What nobody asked for in a file that a field names. */
    void keep(String field, Unknown unknown) {
        if (elsewhere.isEmpty()) {
            elsewhere = new LinkedHashMap<>();
        }
        elsewhere.put(field, unknown);
    }

    /** What nobody asked for, here and within. */
    Unknown unknown() {
        boolean leaf = inner.isEmpty() && elsewhere.isEmpty();
        Map<String, Unknown> deeper = leaf ? Map.of() : within();
        return rest.isEmpty() && deeper.isEmpty() ? Unknown.none() : Unknown.of(rest, deeper, notices);
    }

    private Map<String, Unknown> within() {
        Map<String, Unknown> deeper = new LinkedHashMap<>(elsewhere);
        for (List<Fields> objects : inner.values()) {
            for (Fields each : objects) {
                Unknown within = each.unknown();
                if (!within.isEmpty()) {
                    deeper.put(each.path.place(), within);
                }
            }
        }
        return deeper;
    }

    boolean has(String name) {
        Node value = members.get(name);
        return value != null && !(value instanceof Node.Nothing);
    }

    /** Whether a field is there; null stands for one that isn't, and isn't kept. */
    boolean isMarked(String name) {
        int place = members.at(name, next);
        boolean nothing = place >= 0 && members.node(place) instanceof Node.Nothing;
        if (nothing) {
            asked[place] = true;
        }
        return place >= 0 && !nothing;
    }

    /** What a field holds that is there. */
    Node node(String name) {
        int place = members.at(name, next);
        if (place < 0) {
            return null;
        }
        asked[place] = true;
        next = place + 1;
        return members.node(place);
    }

    <V> V needed(String name, ValueType<V> type) throws FileProblem {
        Node there = node(name);
        if (there == null || there instanceof Node.Nothing) {
            throw problem(new Phrase("file.missing", Map.of("name", name, "like", type.like())));
        }
        return type.read(this, name, there);
    }

    <V> Optional<V> optional(String name, ValueType<V> type) throws FileProblem {
        Node there = node(name);
        return there == null || there instanceof Node.Nothing
                ? Optional.empty()
                : Optional.of(type.read(this, name, there));
    }

    /** @param what the document is, as in the keys of what is said of it */
    int version(String name, int known, String what) throws FileProblem {
        if (!has(name)) {
            throw problem(new Phrase("file.not-" + what, Map.of("name", name)));
        }
        int version = needed(name, Types.whole(1, 1_000_000));
        if (version > known) {
            throw problem(name, new Phrase("file.newer", Map.of("version", version, "known", known)), null);
        }
        return version;
    }

    /** The fields of an object in a field. */
    Fields object(String name, Node there) throws FileProblem {
        if (there instanceof Node.Obj value) {
            Fields fields = new Fields(value, path.field(name), yarns);
            within(name, List.of(fields));
            return fields;
        }
        throw mustBe(name, new Phrase("like.object"));
    }

    private void within(String name, List<Fields> objects) {
        if (inner.isEmpty()) {
            inner = new LinkedHashMap<>();
        }
        inner.put(name, objects);
    }

    /**
     * What objects in a list are.
     *
     * @param what as in the keys of what is said of them
     * @param most how many may stand there
     * @param byId whether one that has an id is known by it; else each is by its position from 0
     */
    record Sort(String what, int most, boolean byId) {}

    /** The objects of a list in a field. */
    List<Fields> objects(String name, Node there, Sort sort) throws FileProblem {
        List<Node> items = items(name, there);
        if (items.size() > sort.most()) {
            throw problem(name, new Phrase("file.list-long", Map.of("most", sort.most())), null);
        }
        List<Fields> all = new ArrayList<>(items.size());
        Set<String> ids = new HashSet<>(2 * items.size());
        for (int i = 0; i < items.size(); i++) {
            Fields item = item(name, sort, i, items.get(i));
            if (!item.path.id.isEmpty() && !ids.add(item.path.id)) {
                throw item.problem("id", new Phrase("file.id-twice." + sort.what()), null);
            }
            all.add(item);
        }
        within(name, all);
        return all;
    }

    private Fields item(String name, Sort sort, int index, Node node) throws FileProblem {
        if (!(node instanceof Node.Obj value)) {
            throw path.item(name, sort.what(), index + 1, "")
                    .problem(node.spot(), new Phrase("file.must-be-object"), null);
        }
        String id = sort.byId() && value.fields().get("id") instanceof Node.Text text ? text.value() : "";
        return new Fields(value, path.item(name, sort.what(), index + 1, id), yarns);
    }

    /** The texts of a list in a field. */
    List<String> texts(String name, Node there) throws FileProblem {
        List<String> texts = new ArrayList<>();
        for (Node item : items(name, there)) {
            if (!(item instanceof Node.Text text)) {
                throw path.field(name).problem(item.spot(), new Phrase("file.must-be-any-text"), null);
            }
            texts.add(text.value());
        }
        return texts;
    }

    private List<Node> items(String name, Node there) throws FileProblem {
        if (there instanceof Node.Arr array) {
            return array.items();
        }
        throw mustBe(name, new Phrase("like.items"));
    }

    /** A problem of this object as a whole. */
    FileProblem problem(Phrase why) {
        return problem(why, null);
    }

    /** The same, found by something else. */
    FileProblem problem(Phrase why, Throwable cause) {
        return path.problem(object.spot(), why, cause);
    }

    /** A problem of one field. */
    FileProblem problem(String name, Phrase why, Throwable cause) {
        Node value = object.fields().get(name);
        return path.field(name).problem(value == null ? object.spot() : value.spot(), why, cause);
    }

    /** A field holds something else than it should. */
    FileProblem mustBe(String name, Phrase like) {
        return problem(name, new Phrase("file.must-be", Map.of("like", like, "shown", shown(node(name)))), null);
    }

    private static Phrase shown(Node value) {
        if (value instanceof Node.Text text) {
            return brief("“" + text.value() + "”");
        } else if (value instanceof Node.Num number) {
            return brief(number.digits());
        } else if (value instanceof Node.Flag flag) {
            return brief(Boolean.toString(flag.value()));
        }
        return new Phrase(value instanceof Node.Arr ? "shown.list" : "shown.object");
    }

    private static Phrase brief(String text) {
        return Phrase.of(text.length() > 40 ? text.substring(0, 40) + "…" : text);
    }
}
