package thrumwright.store;

import java.util.ArrayList;
import java.util.List;
import thrumwright.measure.Phrase;

/** Objects of one sort in a list, each known by its position. */
class Listed<V> implements ValueType<List<V>> {
    private final Format<V> each;
    private final Fields.Sort sort;

    /**
     * @param what they are, as in the keys of what is said of them
     * @param most how many may stand there
     */
    Listed(Format<V> each, String what, int most) {
        this(each, new Fields.Sort(what, most, false));
    }

    private Listed(Format<V> each, Fields.Sort sort) {
        this.each = each;
        this.sort = sort;
    }

    /** The same, each known by an id of its own, which stands in the field of that name. */
    abstract static class ById<V> extends Listed<V> {
        ById(Format<V> each, String what, int most) {
            super(each, new Fields.Sort(what, most, true));
        }

        abstract String id(V value);

        @Override
        final String known(V value, int place) {
            return id(value);
        }
    }

    /** @param place from 0 */
    String known(V value, int place) {
        return String.valueOf(place);
    }

    @Override
    public final Phrase like() {
        return new Phrase("like.items");
    }

    @Override
    public final List<V> read(Fields in, String name, Node there) throws FileProblem {
        List<Fields> objects = in.objects(name, there, sort);
        List<V> values = new ArrayList<>(objects.size());
        for (Fields object : objects) {
            values.add(each.whole(object));
        }
        return values;
    }

    @Override
    public final Node node(List<V> values, Unknown around, String name) {
        List<Node> nodes = new ArrayList<>(values.size());
        for (V value : values) {
            nodes.add(each.object(value, around.within(name + "#" + known(value, nodes.size()))));
        }
        return Node.Arr.of(nodes);
    }
}
