package thrumwright.store;

import java.util.LinkedHashMap;
import java.util.Map;

/** An object that is being written: known fields in their order, then the unknown ones that belong here. */
final class Writing {
    private final Map<String, Node> fields = new LinkedHashMap<>();
    private final Unknown unknown;

    Writing(Unknown unknown) {
        this.unknown = unknown;
    }

    void put(String name, Node value) {
        fields.put(name, value);
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
        unknown.fields().forEach(fields::putIfAbsent);
        return new Node.Obj(fields, Node.Spot.NOWHERE);
    }
}
