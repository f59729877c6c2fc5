package thrumwright.store;

import java.util.Map;

/** An object that is being written: known fields in their order, then the unknown ones that belong here. */
final class Writing {
    private final Members fields = new Members();
    private final Unknown unknown;

    Writing(Unknown unknown) {
        this.unknown = unknown;
    }

    void put(String name, Node value) {
        fields.add(name, value);
    }

    <V> void put(String name, ValueType<V> type, V value) {
        put(name, type.node(value, unknown, name));
    }

    /** What an object keeps in a field that was declared. */
    <V> Writing put(Declared.Entry<V> field, V value) {
        field.put(value, this);
        return this;
    }

    Node.Obj done() {
        for (Map.Entry<String, Node> each : unknown.fields().entrySet()) {
            if (fields.at(each.getKey()) < 0) {
                fields.add(each.getKey(), each.getValue());
            }
        }
        return new Node.Obj(fields, Node.Spot.NOWHERE);
    }
}
